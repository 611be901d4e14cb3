import { existsSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { CommandFailure, exitCodes } from './exit-codes.js';
import { run } from './run.js';

/** The server is a program of its own beside this one: whoever only checks files does not load it. */
function serve(): Promise<void> {
    const server = path.join(path.dirname(fileURLToPath(import.meta.url)), 'server.cjs');
    if (!existsSync(server)) throw new CommandFailure(exitCodes.unreadable, 'The language server is not beside this program. Install it again.');
    createRequire(import.meta.url)(server);
    // the server ends the process itself when its editor is gone
    return new Promise(() => undefined);
}

// A reader that has seen enough (`hotroom check | head`) closes the pipe; that is no defect of ours.
for (const stream of [process.stdout, process.stderr]) {
    stream.on('error', (error: NodeJS.ErrnoException) => {
        if (error.code === 'EPIPE') process.exit(process.exitCode ?? exitCodes.none);
        throw error;
    });
}

void run(process.argv.slice(2), { cwd: process.cwd(), stdout: process.stdout, stderr: process.stderr, env: process.env, now: () => new Date(), serve })
    .then(code => { process.exitCode = code; });
