import { readFileSync, readdirSync, realpathSync, statSync } from 'node:fs';
import path from 'node:path';
import { nearestName } from '../../../language/src/core/nearest.js';
import { printable } from '../../../language/src/renderings/printable.js';
import { unreadable, usageFailure } from './exit-codes.js';

const extension = '.hotroom';
/** A job is a page of text; a file of this size is something else and would only use up the machine. */
const mostBytes = 8_000_000;

/** A file that was named or found, by its real path. */
export interface JobFile {
    readonly path: string;
    /** As the person knows it: relative to the folder they work in, with `/`. */
    readonly name: string;
    /** Folder its `use`s may not leave. */
    readonly root: string;
}

/**
 * Files to read, each once: files as named, folders searched through for job files in the order of their names.
 * @param rootOption folder of `--root`; else the working folder for files below it, and a file's own folder for others
 * @throws a failure that says which argument is wrong
 */
export function findFiles(named: readonly string[], cwd: string, rootOption?: string): readonly JobFile[] {
    const realCwd = realpathSync(cwd);
    const root = rootOption === undefined ? undefined : realFolder(rootOption, cwd);
    const files = new Map<string, JobFile>();
    for (const argument of named) {
        const real = realPathOf(argument, cwd);
        const found = statSync(real).isDirectory() ? walk(real) : [checkedFile(real, argument)];
        if (found.length === 0) throw usageFailure(`There is no ${extension} file in ${shown(argument)}.`);
        for (const file of found) {
            const own = root ?? (isBelow(realCwd, file) ? realCwd : path.dirname(file));
            if (!isBelow(own, file)) throw usageFailure(`${shown(argument)} does not lie in the root ${shown(rootOption ?? own)}.`);
            files.set(file, { path: file, name: displayName(file, realCwd), root: own });
        }
    }
    return [...files.values()];
}

function realPathOf(argument: string, cwd: string): string {
    if (argument === '' || argument.includes('\0')) throw usageFailure('An empty name is not a file.');
    try {
        return realpathSync(path.resolve(cwd, argument));
    } catch (error) {
        throw unreadable(`Cannot read ${shown(argument)}: ${reasonOf(error)}.${isMissing(error) ? meantBy(argument, cwd) : ''}`);
    }
}

const isMissing = (error: unknown): boolean => error instanceof Error && 'code' in error && error.code === 'ENOENT';

/** The job file beside a name that leads nowhere which is most like it, when one is. */
function meantBy(argument: string, cwd: string): string {
    const folder = path.dirname(argument);
    let names: readonly string[];
    try {
        names = readdirSync(path.resolve(cwd, folder)).filter(name => name.endsWith(extension)).sort();
    } catch {
        return '';
    }
    const meant = nearestName(path.basename(argument, extension), names.map(name => path.basename(name, extension)));
    return meant === undefined ? '' : ` Is ${shown(path.join(folder, meant + extension).split(path.sep).join('/'))} meant?`;
}

function realFolder(argument: string, cwd: string): string {
    const real = realPathOf(argument, cwd);
    if (!statSync(real).isDirectory()) throw usageFailure(`--root wants a folder; ${shown(argument)} is none.`);
    return real;
}

function checkedFile(real: string, argument: string): string {
    if (!real.endsWith(extension)) throw usageFailure(`${shown(argument)} is not a job file; those end in ${extension}.`);
    return real;
}

/** Job files below a folder, in the order of their names. Links are not followed: they can lead out of it or round in a ring. */
function walk(folder: string): string[] {
    let entries;
    try {
        entries = readdirSync(folder, { withFileTypes: true });
    } catch (error) {
        throw unreadable(`Cannot read the folder ${shown(folder)}: ${reasonOf(error)}.`);
    }
    return entries.sort((a, b) => a.name < b.name ? -1 : a.name > b.name ? 1 : 0).flatMap(entry => {
        const full = path.join(folder, entry.name);
        if (entry.isDirectory()) return entry.name.startsWith('.') || entry.name === 'node_modules' ? [] : walk(full);
        return entry.isFile() && entry.name.endsWith(extension) ? [full] : [];
    });
}

/** Text of a job file, without a byte order mark: editors leave it out and count places without it. */
export const readText = (file: string, name: string): string => readMarkedText(file, name).text;

/** Text of a job file, and apart from it the byte order mark it begins with. */
export function readMarkedText(file: string, name: string): { readonly text: string; readonly mark: '' | '\ufeff' } {
    let bytes;
    try {
        if (!statSync(file).isFile()) throw unreadable(`Cannot read ${shown(name)}: it is not a file.`);
        if (statSync(file).size > mostBytes) throw unreadable(`Cannot read ${shown(name)}: it is larger than ${mostBytes / 1_000_000} MB, which no job file is.`);
        bytes = readFileSync(file);
    } catch (error) {
        if (error instanceof Error && 'exitCode' in error) throw error;
        throw unreadable(`Cannot read ${shown(name)}: ${reasonOf(error)}.`);
    }
    return textOfBytes(bytes, name);
}

/** @throws a failure for what is no UTF-8 */
export function textOfBytes(bytes: Uint8Array, name: string): { readonly text: string; readonly mark: '' | '\ufeff' } {
    try {
        const text = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
        return text.startsWith('\ufeff') ? { text: text.slice(1), mark: '\ufeff' } : { text, mark: '' };
    } catch {
        throw unreadable(`Cannot read ${shown(name)}: it is not a text in UTF-8.`);
    }
}

/** What went wrong outside, in words. */
export function reasonOf(error: unknown): string {
    const code = error instanceof Error && 'code' in error ? error.code : undefined;
    switch (code) {
        case 'ENOENT': return 'there is no such file';
        case 'EACCES': case 'EPERM': return 'it may not be read or written';
        case 'EISDIR': return 'it is a folder';
        case 'ENOTDIR': return 'part of its path is not a folder';
        case 'ELOOP': return 'its links lead round in a ring';
        case 'ENAMETOOLONG': return 'its name is too long';
        case 'ENOSPC': return 'the disk is full';
        case 'EROFS': return 'the disk can only be read';
        default: return error instanceof Error ? error.message : String(error);
    }
}

export const isBelow = (folder: string, file: string): boolean => file.startsWith(folder.endsWith(path.sep) ? folder : folder + path.sep);

/** Relative when the file lies below the working folder, else the whole path. */
export function displayName(file: string, cwd: string): string {
    const relative = isBelow(cwd, file) ? path.relative(cwd, file) : file;
    return relative.split(path.sep).join('/');
}

/** A name as it may be printed, whatever characters it has. */
export const shown = (name: string): string => printable(name);
