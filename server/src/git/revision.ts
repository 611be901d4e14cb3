import { realpathSync } from 'node:fs';
import { settingsFileName } from '../../../language/src/settings/settings.js';
import { GitFailure, runGit } from './run-git.js';

/** A commit of a repository, found by what a person calls it. */
export interface Revision {
    /** As the person wrote it. */
    readonly name: string;
    /** Its tree, as git numbers it: from here on no word of outside is handed to git. */
    readonly tree: string;
    /** Folder the repository is checked out in. */
    readonly top: string;
}

/** Names git could take for an option, or that reach outside of naming a commit. */
export const isRevisionName = (name: string): boolean => name !== '' && name.length <= 500 && !name.startsWith('-') && !/[\u0000-\u001f\u007f\\:]|\.\.|^\/|\/$/.test(name);

/** The top folder of the repository a folder lies in. */
export async function repositoryTop(folder: string): Promise<string> {
    return realpathSync((await runGit(['rev-parse', '--show-toplevel'], folder)).toString('utf8').replace(/\r?\n$/, ''));
}

/** @throws a `GitFailure` when there is no such commit */
export async function findRevision(name: string, folder: string): Promise<Revision> {
    if (!isRevisionName(name)) throw new GitFailure('refused', 'it is no name of a revision.');
    const top = await repositoryTop(folder);
    const found = await runGit(['rev-parse', '--verify', '--quiet', '--end-of-options', `${name}^{tree}`], folder).catch((error: unknown) => {
        throw error instanceof GitFailure && error.kind === 'failed' ? new GitFailure('failed', 'there is no such revision.') : error;
    });
    return { name, tree: objectName(found), top };
}

/** Where two lines of work parted. */
export async function mergeBase(a: string, b: string, folder: string): Promise<string> {
    const [one, other] = [await commitOf(a, folder), await commitOf(b, folder)];
    return objectName(await runGit(['merge-base', one, other], folder).catch((error: unknown) => {
        throw error instanceof GitFailure && error.kind === 'failed' ? new GitFailure('failed', 'they have no commit in common.') : error;
    }));
}
/** The number of a commit. */
export async function commitOf(name: string, folder: string): Promise<string> {
    if (!isRevisionName(name)) throw new GitFailure('refused', 'it is no name of a revision.');
    return objectName(await runGit(['rev-parse', '--verify', '--quiet', '--end-of-options', `${name}^{commit}`], folder).catch((error: unknown) => {
        throw error instanceof GitFailure && error.kind === 'failed' ? new GitFailure('failed', 'there is no such revision.') : error;
    }));
}

function objectName(answer: Buffer): string {
    const name = answer.toString('utf8').trim();
    if (!/^[0-9a-f]{40}([0-9a-f]{24})?$/.test(name)) throw new GitFailure('failed', 'there is no such revision.');
    return name;
}

/** Job files are a page of text; more is something else. */
const mostBytes = 8_000_000;

/** Contents of files by the number git gives them: the same contents are read once, and are the same array. */
export type Contents = Map<string, Uint8Array>;

/**
 * Job files and settings files of a revision, by their path from the top of the repository. Links, submodules and names that lead out of a folder are left
 * out. Nothing is checked out: the contents are read as they are stored.
 * @param contents what is known of other revisions of the repository; what is read is added
 */
export async function readRevision({ tree, top }: Revision, contents: Contents = new Map()): Promise<ReadonlyMap<string, Uint8Array>> {
    const listed = (await runGit(['ls-tree', '-r', '-z', '-l', '--full-tree', tree], top)).toString('utf8').split('\0');
    const files = listed.flatMap(line => {
        const [, mode = '', object = '', size = '', path = ''] = /^(\d+) blob ([0-9a-f]+) +(\d+)\t([^]*)$/.exec(line) ?? [];
        return (mode === '100644' || mode === '100755') && isOrdinaryPath(path) && Number(size) <= mostBytes ? [{ object, path }] : [];
    });
    await readContents([...new Set(files.map(({ object }) => object))].filter(object => !contents.has(object)), top, contents);
    return new Map(files.flatMap(({ object, path }) => { const bytes = contents.get(object); return bytes ? [[path, bytes] as const] : []; }));
}

async function readContents(objects: readonly string[], top: string, contents: Contents): Promise<void> {
    if (objects.length === 0) return;
    const answer = await runGit(['cat-file', '--batch'], top, objects.map(object => `${object}\n`).join(''));
    let at = 0;
    for (const object of objects) {
        const end = answer.indexOf(0x0a, at);
        const size = Number(/ blob (\d+)$/.exec(answer.subarray(at, end).toString('latin1'))?.[1]);
        if (end < 0 || !Number.isInteger(size)) throw new GitFailure('failed', 'git did not give the contents of a file.');
        contents.set(object, answer.subarray(end + 1, end + 1 + size));
        at = end + 1 + size + 1;
    }
}

/** Whether a path is one of a job or settings file and leads nowhere else. */
export const isOrdinaryPath = (path: string): boolean => {
    const words = path.split('/');
    const last = words.at(-1) ?? '';
    return (last.endsWith('.hotroom') || last === settingsFileName) && !/[\\\u0000-\u001f]/.test(path) && words.every(word => word !== '' && word !== '.' && word !== '..' && word.toLowerCase() !== '.git');
};
