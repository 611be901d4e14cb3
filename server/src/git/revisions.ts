import { existsSync, realpathSync } from 'node:fs';
import path from 'node:path';
import type { CalendarDate } from '../../../language/src/vocabulary/values.js';
import { branchBase } from './branch-base.js';
import { commitOf, findRevision, readRevision, repositoryTop, type Contents } from './revision.js';
import { RevisionWorkspace, type RevisionOptions } from './revision-workspace.js';
import { GitFailure } from './run-git.js';

/** Which revision is meant. */
export type WantedRevision = { readonly kind: 'last-commit' } | { readonly kind: 'branch-base' } | { readonly kind: 'revision'; readonly name: string };

/** A revision of the repository a file lies in. */
export interface OpenedRevision {
    readonly workspace: RevisionWorkspace;
    readonly tree: string;
    /** First figures of its commit. */
    readonly short: string;
    /** `the last commit, 3f2a1c9`. */
    readonly label: string;
    /** Top folder of the repository. */
    readonly top: string;
    /** The file, from the top. */
    readonly path: string;
}

/** More revisions than somebody looks at beside each other. */
const mostKept = 4;
const mostContents = 20_000;

/** Revisions as somebody goes on comparing with them: read once, for as long as they are asked for. */
export class Revisions {
    private readonly kept = new Map<string, RevisionWorkspace>();
    private readonly contents = new Map<string, Contents>();
    private options: RevisionOptions | undefined;

    /**
     * @param file its whole path; it need not be in the revision, nor on disk
     * @throws a `GitFailure` in the words of the person who asks
     */
    async open(file: string, wanted: WantedRevision, today: CalendarDate): Promise<OpenedRevision> {
        const folder = nearestFolder(path.dirname(file));
        const real = realpathSync(folder);
        const { commit, label } = await named(wanted, real);
        const { tree, top } = await findRevision(commit, real);
        const short = commit.slice(0, 7);
        const inTop = path.relative(top, path.join(real, path.relative(folder, file)));
        return { workspace: await this.workspace(tree, top, short, today), tree, short, label: `${label}, ${short}`, top, path: inTop.split(path.sep).join('/') };
    }

    /** Text of one file of a tree. @returns nothing when it has no such file */
    async text(near: string, tree: string, file: string): Promise<string | undefined> {
        const top = await repositoryTop(realpathSync(nearestFolder(path.dirname(near))));
        const known = this.kept.get(`${top}\0${tree}`) ?? new RevisionWorkspace(await readRevision({ name: tree, tree, top }, this.contentsOf(top)), tree.slice(0, 7), optionsOf({ year: 2000, month: 1, day: 1 }));
        return known.textIn(file);
    }

    private async workspace(tree: string, top: string, short: string, today: CalendarDate): Promise<RevisionWorkspace> {
        const options = this.optionsFor(today);
        const key = `${top}\0${tree}`;
        const known = this.kept.get(key);
        const workspace = known?.options === options ? known : new RevisionWorkspace(await readRevision({ name: short, tree, top }, this.contentsOf(top)), short, options);
        // The one asked for last stays longest.
        this.kept.delete(key);
        this.kept.set(key, workspace);
        for (const old of [...this.kept.keys()].slice(0, -mostKept)) this.kept.delete(old);
        return workspace;
    }

    private contentsOf(top: string): Contents {
        const known = this.contents.get(top);
        if (known && known.size <= mostContents) return known;
        const fresh: Contents = new Map();
        this.contents.set(top, fresh);
        return fresh;
    }

    /** The same object for as long as the day is the same. */
    private optionsFor(today: CalendarDate): RevisionOptions {
        if (JSON.stringify(this.options?.today) === JSON.stringify(today) && this.options) return this.options;
        return this.options = optionsOf(today);
    }
}

async function named(wanted: WantedRevision, folder: string): Promise<{ readonly commit: string; readonly label: string }> {
    switch (wanted.kind) {
        case 'last-commit': return { commit: await commitOf('HEAD', folder).catch(noCommitYet), label: 'the last commit' };
        case 'branch-base': { const { commit, from } = await branchBase(folder); return { commit, label: `where the branch left ${from}` }; }
        case 'revision': return { commit: await commitOf(wanted.name, folder), label: wanted.name };
        default: return wanted satisfies never;
    }
}

function noCommitYet(error: unknown): never {
    throw error instanceof GitFailure && error.kind === 'failed' ? new GitFailure('failed', 'nothing has been committed in this repository yet.') : error;
}

/** A folder, or the nearest above it that is there. */
function nearestFolder(folder: string): string {
    let at = folder;
    while (!existsSync(at) && path.dirname(at) !== at) at = path.dirname(at);
    return at;
}

const optionsOf = (today: CalendarDate): RevisionOptions => ({ today, textOf: textOfBytes, tooDeep: name => new GitFailure('failed', `${name} is nested too deeply to be read.`) });

function textOfBytes(bytes: Uint8Array, name: string): string {
    try {
        return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    } catch {
        throw new GitFailure('failed', `${name} is not a text in UTF-8.`);
    }
}
