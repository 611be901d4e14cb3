import { chmodSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { CommandFailure, exitCodes } from './exit-codes.js';
import { reasonOf, shown } from './files.js';

/**
 * Writes all of a file or nothing: a list cut off in the middle would be taken for a whole one. A file that is replaced keeps its permissions.
 * @param name as the person knows it, for the message when it fails
 */
export function writeWhole(file: string, content: string | Uint8Array, name: string): void {
    const draft = `${file}.${process.pid}.part`;
    try {
        const before = statSync(file, { throwIfNoEntry: false });
        if (before && !before.isFile()) throw Object.assign(new Error('it is not a file'), { code: before.isDirectory() ? 'EISDIR' : 'ENOTFILE' });
        writeFileSync(draft, content, { flag: 'wx' });
        if (before) chmodSync(draft, before.mode);
        renameSync(draft, file);
    } catch (error) {
        rmSync(draft, { force: true });
        throw new CommandFailure(exitCodes.unreadable, `Cannot write ${shown(name)}: ${reasonOf(error)}.`);
    }
}
