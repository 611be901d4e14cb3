import type { Citation } from '../core/citation.js';
import type { Figure } from '../core/finding.js';
import type { Span } from '../core/span.js';
import type { Value } from '../core/value.js';

/** One computed value with where it comes from: everything a user sees of an engine is one of these. */
export interface FactEntry {
    /** Dotted path by which names, hovers and exports reach it: `room.inside.volume`, `upper.ledger.top`. */
    readonly path: string;
    /** What it is, in trade words: `inside volume`. */
    readonly title: string;
    readonly value: Figure;
    /** The same exactly, for calculations, where the figure is a rounded one. */
    readonly exact?: Value;
    /** How it was worked out, in one line, with the figures put in. */
    readonly how?: string;
    /** The text that decided it; the first is the one the designer would change. */
    readonly because: readonly Span[];
    readonly source?: Citation;
}

/** A value not yet worked out; may read other facts of the same tree. */
export interface FactProvider {
    readonly path: string;
    readonly compute: (tree: FactsTree) => Omit<FactEntry, 'path'> | undefined;
}

export type FactLookup =
    | { readonly kind: 'value'; readonly fact: FactEntry }
    | { readonly kind: 'absent' }
    /** The paths that need each other, in order; the last closes the ring on the first. */
    | { readonly kind: 'cycle'; readonly chain: readonly string[] };

/**
 * Results of all engines of one job as `path → value`, worked out when somebody asks and then kept. Hover, inlay hints, export, drawing captions
 * and house rules read this tree only.
 */
export class FactsTree {
    private made: ReadonlyMap<string, FactProvider> | undefined;
    private readonly known = new Map<string, FactLookup>();
    private readonly asking: string[] = [];

    /** @param publish gives the facts when somebody first asks for one; a path given twice is a defect of ours and throws */
    constructor(private readonly publish: () => Iterable<FactProvider>) {}

    private get providers(): ReadonlyMap<string, FactProvider> {
        if (this.made) return this.made;
        const map = new Map<string, FactProvider>();
        for (const provider of this.publish()) {
            if (map.has(provider.path)) throw new Error(`Two facts have the path ${provider.path}`);
            map.set(provider.path, provider);
        }
        return this.made = map;
    }

    get(path: string): FactLookup {
        const known = this.known.get(path);
        if (known) return known;
        const provider = this.providers.get(path);
        if (!provider) return { kind: 'absent' };
        const start = this.asking.indexOf(path);
        if (start >= 0) return { kind: 'cycle', chain: [...this.asking.slice(start), path] };
        this.asking.push(path);
        try {
            const value = provider.compute(this);
            const lookup: FactLookup = value ? { kind: 'value', fact: { path, ...value } } : { kind: 'absent' };
            this.known.set(path, lookup);
            return lookup;
        } finally {
            this.asking.pop();
        }
    }

    /** Every path of the tree, or those under `prefix`, in the order given. */
    paths(prefix?: string): readonly string[] {
        const all = [...this.providers.keys()];
        return prefix === undefined ? all : all.filter(path => path === prefix || path.startsWith(`${prefix}.`));
    }

    /** Facts under `prefix` that have a value. */
    under(prefix?: string): readonly FactEntry[] {
        return this.paths(prefix).flatMap(path => { const found = this.get(path); return found.kind === 'value' ? [found.fact] : []; });
    }
}
