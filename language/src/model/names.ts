import type { Value } from '../core/value.js';

/** What stands behind a name at one place of the text. */
export type NameFound =
    | { readonly kind: 'value'; readonly value: Value; readonly among?: Among }
    /** Nothing of the name is in sight; `known` are names to choose the nearest from, `of` the kind of block whose fact was asked for. */
    | { readonly kind: 'unknown'; readonly known: readonly string[]; readonly of?: string }
    /** The name is right and its value cannot be told: it waits for something, or lacks something that has a message of its own. */
    | { readonly kind: 'waits'; readonly among?: Among };

/** The only words a name may stand for, when its series says so. */
export type Among = readonly string[];

/** The names an expression can see: `let`s, parameters, and what was written and computed in its job. */
export interface Names {
    find(path: readonly string[]): NameFound;
}

/** Where no job is in sight, such as in a catalogue: any path may mean something to a job that uses it. */
export const noNames: Names = { find: path => path.length > 1 ? { kind: 'waits' } : { kind: 'unknown', known: [] } };
