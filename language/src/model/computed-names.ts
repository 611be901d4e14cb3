import type { Span } from '../core/span.js';
import { isBlockKind } from '../vocabulary/index.js';
import type { NameFound, Names } from './names.js';

/** One name that was asked for, by whom. */
export interface Asked { readonly path: string; readonly owner: string; readonly at: Span }

/** Names of what a job was given and what was computed for it, seen from its own text: who asked for what is remembered. */
export class ComputedNames implements Names {
    readonly asked: Asked[] = [];
    /** Uses of `let`s, which have values of their own. */
    readonly lets: Asked[] = [];
    /** Values that were looked at while they had none, since this was last emptied. */
    readonly missed = new Set<string>();
    private readonly owners: { readonly owner: string; readonly at: Span }[] = [];

    /** @param lookUp finds a path in the job as it was known before; absent while nothing is known */
    constructor(private readonly lookUp?: (path: readonly string[]) => NameFound) {}

    find(path: readonly string[]): NameFound {
        const [first = ''] = path;
        const found: NameFound = this.lookUp ? this.lookUp(path) : path.length > 1 || isBlockKind(first) ? { kind: 'waits' } : { kind: 'unknown', known: [] };
        const owner = this.owners.at(-1);
        if (found.kind !== 'unknown' && owner) this.asked.push({ path: path.join('.'), ...owner });
        return found;
    }

    noteLet(name: string): void {
        const owner = this.owners.at(-1);
        if (owner) this.lets.push({ path: name, ...owner });
    }

    asking<T>(owner: string, at: Span, work: () => T): T {
        this.owners.push({ owner, at });
        try { return work(); } finally { this.owners.pop(); }
    }
}
