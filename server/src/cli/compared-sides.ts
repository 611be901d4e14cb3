import { existsSync, realpathSync, statSync } from 'node:fs';
import path from 'node:path';
import type { SideJob } from '../../../language/src/compare/compare-jobs.js';
import { Places } from '../../../language/src/renderings/findings-text.js';
import { findRevision, isRevisionName, mergeBase, readRevision, repositoryTop, type Contents, type Revision } from '../git/revision.js';
import { RevisionWorkspace, type RevisionOptions } from '../git/revision-workspace.js';
import { GitFailure } from '../git/run-git.js';
import type { ParsedArguments } from './arguments.js';
import type { Console } from './console.js';
import { unreadable, usageFailure } from './exit-codes.js';
import { findFiles, isBelow, shown, textOfBytes } from './files.js';
import { SettingsFiles } from './settings-files.js';
import { todayOf } from './today-option.js';
import { openWorkspace } from './workspace.js';

/** One side of a comparison as the person names it. */
export type WantedSide =
    | { readonly kind: 'disk'; readonly path: string }
    /** `paths` from the top of the repository; none for all of it. */
    | { readonly kind: 'revision'; readonly name: string; readonly paths: readonly string[]; readonly isMergeBaseWith?: string };

export interface LoadedSide { readonly label: string; readonly jobs: readonly SideJob[] }

const wants = 'hotroom diff wants two sides, such as hotroom diff old.hotroom new.hotroom, hotroom diff main jobs or hotroom diff main..HEAD -- jobs.';

/** Reads the words of the call. A file or folder that is there goes before a revision of that name; `REV:` is always a revision. */
export async function wantedSides(words: readonly string[], cwd: string): Promise<readonly [WantedSide, WantedSide]> {
    const [first, second, ...more] = words;
    if (first === undefined) throw usageFailure(wants);
    const range = isThere(first, cwd) ? undefined : readRange(first);
    if (range) {
        const paths = await fromTop(words.slice(1), cwd);
        return [
            { kind: 'revision', name: range.from, paths, ...(range.isFromMergeBase && { isMergeBaseWith: range.to }) },
            { kind: 'revision', name: range.to, paths },
        ];
    }
    const a = sideOf(first, cwd);
    if (second === undefined) {
        if (a.kind !== 'disk') throw usageFailure(wants);
        return [{ kind: 'revision', name: 'HEAD', paths: await fromTop([a.path], cwd) }, a];
    }
    const b = sideOf(second, cwd);
    if (a.kind === 'revision' && b.kind === 'revision' && a.paths.length === 0 && b.paths.length === 0) {
        const paths = await fromTop(more, cwd);
        return [{ ...a, paths }, { ...b, paths }];
    }
    if (more.length > 0) throw usageFailure(`${wants} ${shown(more[0] ?? '')} is one word too many.`);
    // A revision without a path is compared at the place of the other side.
    if (a.kind === 'revision' && b.kind === 'disk' && !first.includes(':')) return [{ ...a, paths: await fromTop([b.path], cwd) }, b];
    if (b.kind === 'revision' && a.kind === 'disk' && !second.includes(':')) return [a, { ...b, paths: await fromTop([a.path], cwd) }];
    return [a, b];
}

function readRange(word: string): { readonly from: string; readonly to: string; readonly isFromMergeBase: boolean } | undefined {
    const [, from = '', dots = '', to = ''] = /^([^]*?)(\.\.\.?)([^.][^]*)?$/.exec(word) ?? [];
    if (dots === '' || word.startsWith('-') || (from === '' && to === '')) return undefined;
    const [left, right] = [from === '' ? 'HEAD' : from, to === '' ? 'HEAD' : to];
    return isRevisionName(left) && isRevisionName(right) ? { from: left, to: right, isFromMergeBase: dots === '...' } : undefined;
}

const isThere = (word: string, cwd: string): boolean => word !== '' && !word.includes('\0') && existsSync(path.resolve(cwd, word));

function sideOf(word: string, cwd: string): WantedSide {
    if (isThere(word, cwd)) return { kind: 'disk', path: word };
    const colon = word.indexOf(':');
    const name = colon < 0 ? word : word.slice(0, colon);
    const isPath = colon < 0 && word.endsWith('.hotroom');
    if (isPath) return { kind: 'disk', path: word };
    if (!isRevisionName(name)) throw usageFailure(`${shown(word)} is neither a file that is there nor the name of a revision.`);
    const inside = colon < 0 ? '' : word.slice(colon + 1).replace(/\/+$/, '');
    if (inside.split('/').some(one => one === '..') || /[\0\\]/.test(inside) || inside.startsWith('/')) throw usageFailure(`${shown(word)}: the path behind a revision begins at the top of the repository and stays in it.`);
    return { kind: 'revision', name, paths: inside === '' || inside === '.' ? [] : [inside] };
}

/** Paths as the person writes them, from the top of the repository. */
async function fromTop(words: readonly string[], cwd: string): Promise<readonly string[]> {
    const top = await asked('the repository', () => repositoryTop(realpathSync(cwd)));
    const paths = words.map(word => {
        const full = path.resolve(realpathSync(cwd), word);
        const real = existsSync(full) ? realpathSync(full) : full;
        if (real !== top && !isBelow(top, real)) throw usageFailure(`${shown(word)} does not lie in the repository ${shown(top)}.`);
        return path.relative(top, real).split(path.sep).join('/');
    });
    return paths.includes('') ? [] : paths;
}

/** Puts what git says into the words of the program. */
async function asked<T>(what: string, ask: () => Promise<T>): Promise<T> {
    try {
        return await ask();
    } catch (error) {
        if (error instanceof GitFailure) throw unreadable(`Cannot read ${shown(what)}: ${shown(error.message)}${error.message.endsWith('.') ? '' : '.'}`);
        throw error;
    }
}

/** Both sides. What two revisions have in common is read and analysed once. */
export async function loadSides(before: WantedSide, after: WantedSide, args: ParsedArguments, console: Console): Promise<readonly [LoadedSide, LoadedSide]> {
    const reading = new RevisionReading(args, console);
    const load = (side: WantedSide, other: WantedSide): Promise<LoadedSide> => side.kind === 'disk' ? loadDisk(side, other, args, console) : reading.load(side);
    return [await load(before, after), await load(after, before)];
}

/** @param other the other side: a folder is read with the root its revision has */
async function loadDisk(side: WantedSide & { readonly kind: 'disk' }, other: WantedSide, args: ParsedArguments, console: Console): Promise<LoadedSide> {
    const { cwd } = console;
    const root = args.value('root') ?? (other.kind === 'revision' ? await asked('the repository', () => repositoryTop(realpathSync(cwd))) : undefined);
    const files = findFiles([side.path], cwd, root);
    const workspace = await openWorkspace(files, cwd, { settings: new SettingsFiles(args, cwd), today: todayOf(args, console) });
    for (const remark of workspace.remarks) console.stderr.write(`hotroom: ${remark}\n`);
    const places = new Places(workspace.sources);
    const base = realpathSync(path.resolve(cwd, side.path));
    const isFolder = statSync(base).isDirectory();
    return {
        label: side.path,
        jobs: workspace.files.flatMap((file, i) => {
            const real = files[i]?.path ?? '';
            const name = isFolder ? path.relative(base, real).split(path.sep).join('/') : path.basename(real);
            return file.models().map((model): SideJob => ({ file: name, model, showPlace: span => places.showLine(span) }));
        }),
    };
}

class RevisionReading {
    private readonly cwd: string;
    private readonly contents: Contents = new Map();
    private readonly options: RevisionOptions;
    private before: RevisionWorkspace | undefined;
    private top: string | undefined;

    constructor(args: ParsedArguments, console: Console) {
        this.cwd = realpathSync(console.cwd);
        const own = args.value('settings') === undefined ? undefined : new SettingsFiles(args, console.cwd);
        this.options = {
            today: todayOf(args, console), textOf: (bytes, file) => textOfBytes(bytes, file).text, tooDeep: file => unreadable(`Cannot read ${shown(file)}: it is nested too deeply.`),
            ...(own ? { settingsOf: file => own.of(path.join(this.top ?? this.cwd, file), this.top ?? this.cwd) } : args.flag('no-settings') === true ? { settingsOf: () => undefined } : {}),
        };
    }

    async load(side: WantedSide & { readonly kind: 'revision' }): Promise<LoadedSide> {
        const name = side.isMergeBaseWith === undefined ? side.name : `${side.name}...${side.isMergeBaseWith}`;
        const revision: Revision = await asked(name, async () => findRevision(side.isMergeBaseWith === undefined ? side.name : await mergeBase(side.name, side.isMergeBaseWith, this.cwd), this.cwd));
        this.top = revision.top;
        const files = await asked(name, () => readRevision(revision, this.contents));
        const workspace = new RevisionWorkspace(files, side.name, this.options);
        const places = new Places(workspace.sources);
        const isWanted = (file: string): boolean => file.endsWith('.hotroom') && (side.paths.length === 0 || side.paths.some(one => file === one || file.startsWith(`${one}/`)));
        const [only] = side.paths;
        // Of one folder or file the rest of the path says nothing; the other side may have it elsewhere.
        const shortened = (file: string): string => side.paths.length !== 1 || only === undefined ? file : file === only ? path.posix.basename(file) : file.slice(only.length + 1);
        const opened = await workspace.models([...files.keys()].filter(file => isWanted(file) && !file.split('/').includes('node_modules') && !file.split('/').slice(0, -1).some(word => word.startsWith('.'))).sort(), this.before);
        this.before = workspace;
        return {
            label: side.paths.length === 0 ? name : `${name}:${side.paths.join(', ')}`,
            jobs: opened.flatMap(({ path: file, models }) => models.map((model): SideJob => ({ file: shortened(file), model, showPlace: span => places.showLine(span) }))),
        };
    }
}
