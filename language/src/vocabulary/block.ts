import type { ValueType } from './values.js';

/** One property of a block: the single place that says how it is written, what it means and since when it exists. */
export interface Property<T = unknown> {
    readonly type: ValueType<T>;
    /** One line in plain trade words. */
    readonly doc: string;
    readonly isRequired: boolean;
    /** What holds when the fact is not written, in words. */
    readonly otherwise?: string;
    readonly since: string;
    /** Other accepted spellings of the key. */
    readonly aliases?: readonly string[];
    /** Path from its block to the fact that holds when it is not written: `model.rating`. */
    readonly takenFrom?: string;
    /** Words people often say for it. They are not read; a message leads from them to the key. */
    readonly oftenCalled?: readonly string[];
}

interface MoreOfProperty { readonly takenFrom?: string; readonly aliases?: readonly string[]; readonly oftenCalled?: readonly string[] }

/** What a block is, where it may stand and what may stand in it. */
export interface BlockDefinition {
    readonly doc: string;
    /** Kinds of block it may stand in; `file` is the top of a file. */
    readonly standsIn: readonly string[];
    readonly name: 'required' | 'optional' | 'none';
    /** Whether a quoted title may follow the name. */
    readonly hasTitle?: boolean;
    /** Walls after the word `on` in the header. */
    readonly walls: 'none' | 'one' | 'several' | 'optional';
    /** Whether it may be made from another of its kind (a job from a series): `is` and a name in the header. */
    readonly derivesFrom?: string;
    /** Another kind whose facts and blocks may stand in it too. */
    readonly like?: string;
    /** Whether it belongs to the kinds it stands in alone, and not to others that are like them. */
    readonly isOwn?: true;
    /** Whether a parent may hold more than one. */
    readonly isRepeatable: boolean;
    /** A short body offered by completion; `$1` marks places to fill. */
    readonly snippet?: string;
    readonly since: string;
    readonly properties: Readonly<Record<string, Property>>;
}

const since = '0.1';

/** A property that may be left out. */
export const may = <T>(type: ValueType<T>, doc: string, more: MoreOfProperty & { readonly otherwise?: string } = {}): Property<T> & { readonly isRequired: false } =>
    ({ type, doc, isRequired: false, since, ...more });
/** A property without which the block means nothing; its absence is a finding. */
export const must = <T>(type: ValueType<T>, doc: string, more: MoreOfProperty = {}): Property<T> & { readonly isRequired: true } =>
    ({ type, doc, isRequired: true, since, ...more });

export const block = <const B extends Omit<BlockDefinition, 'since'>>(definition: B): B & { readonly since: string } => ({ since, ...definition });
