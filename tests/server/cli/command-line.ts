import { mkdirSync, mkdtempSync, readFileSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach } from 'vitest';
import { run } from '../../../server/src/cli/run.js';
import { exampleText } from '../../support/workspace.js';

const folders: string[] = [];
afterEach(() => { for (const folder of folders.splice(0)) rmSync(folder, { recursive: true, force: true }); });

export interface Answer { readonly code: number; readonly out: string; readonly err: string }
export interface Setting { readonly isTTY?: boolean; readonly columns?: number; readonly env?: Readonly<Record<string, string>>; readonly cwd?: string; readonly now?: () => Date; readonly serve?: () => Promise<void> }

/** A folder of its own for one test, removed behind it. */
export class Folder {
    readonly path = realpathSync(mkdtempSync(path.join(tmpdir(), 'hotroom-')));
    constructor(files: Readonly<Record<string, string | Uint8Array>> = {}) {
        folders.push(this.path);
        for (const [name, text] of Object.entries(files)) this.write(name, text);
    }
    at(name: string): string { return path.join(this.path, name); }
    write(name: string, text: string | Uint8Array): void {
        mkdirSync(path.dirname(this.at(name)), { recursive: true });
        writeFileSync(this.at(name), text);
    }
    read(name: string): string { return readFileSync(this.at(name), 'utf8'); }

    /** Runs a command line in the folder, without a process of its own. */
    async run(words: readonly string[], { isTTY = false, columns, env = {}, cwd, now = () => new Date(2026, 10, 25, 12), serve = () => Promise.resolve() }: Setting = {}): Promise<Answer> {
        const written = { out: '', err: '' };
        const sink = (name: 'out' | 'err') => ({ write: (text: string) => { written[name] += text; }, isTTY, ...(columns !== undefined && { columns }) });
        const code = await run(words, { cwd: cwd ?? this.path, stdout: sink('out'), stderr: sink('err'), env, now, serve });
        return { code, ...written };
    }
}

/** The standard job and its catalogues, as they lie in examples/. */
export const birchPoint = (): Folder => new Folder(Object.fromEntries(
    ['birch-point.hotroom', 'catalogue/skerry.hotroom', 'catalogue/heaters.hotroom'].map(name => [name, exampleText(name)])));

/** A job with one mistake of the language: an unknown word on line 2, column 5. */
export const misspelt = 'job j {\n    topp 37"\n}\n';
