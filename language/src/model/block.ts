import { spoken } from '../core/show.js';
import type { Wall } from '../core/geometry.js';
import type { Sourced, Span } from '../core/span.js';
import type { BlockKind, ValuesOf } from '../vocabulary/index.js';
import type { Layer, Named } from '../vocabulary/values.js';

/** A value as given by one fact: where the value stands, where the whole fact stands, and the unit of its first figure. */
export interface Given<T> extends Sourced<T> {
    readonly fact: Span;
    /** `in`, `ft_in`, `mm`, `kW` …; absent for words. */
    readonly unit?: string;
    /** Places of the facts this one won over, the first of them first: what a series says and a job says otherwise. */
    readonly wonOver?: readonly Span[];
}

/** A name that was resolved; `block` is absent when nothing of that name is in sight (which is a finding of its own). */
export interface Link<K extends BlockKind = BlockKind> {
    readonly name: string;
    readonly span: Span;
    readonly block: Block<K> | undefined;
}
export interface LinkedLayer<K extends BlockKind> { readonly of: Link<K>; readonly thickness: Layer<K>['thickness'] }

type Resolved<T> =
    T extends Named<infer K> ? Link<K & BlockKind>
    : T extends readonly Named<infer K>[] ? readonly Link<K & BlockKind>[]
    : T extends Layer<infer K> ? LinkedLayer<K & BlockKind>
    : T;

/** Facts of one block by key. A key is absent when the fact is not written or could not be read. */
export type GivenValues<K extends BlockKind> = { readonly [P in keyof ValuesOf<K>]?: Given<Resolved<ValuesOf<K>[P]>> };

/**
 * One block of the text as immutable values with their places. Holds offsets, never syntax nodes. What could not be read is left out, never
 * guessed: `isWhole` tells whether something is missing because of that.
 */
export interface Block<K extends BlockKind = BlockKind> {
    readonly kind: K;
    readonly name?: Sourced<string>;
    readonly title?: Sourced<string>;
    /** Walls after `on`, in the order written. */
    readonly walls: readonly Sourced<Wall>[];
    readonly values: GivenValues<K>;
    /** Keys that are written, readable or not. */
    readonly written: ReadonlySet<string>;
    readonly children: readonly Block[];
    /** Names of blocks in it that are left out because their condition does not hold, or cannot be told. */
    readonly leftOut?: readonly string[];
    /** What it was made from (`is …`), as written. */
    readonly base?: Sourced<string>;
    /** From the key to the closing brace. */
    readonly span: Span;
    /** Key and name: where a finding about the block as a whole stands. */
    readonly head: Span;
    /** Just before the closing brace, where a fact can be added; absent when the block has no braces. */
    readonly insertAt?: Span;
    /** Whether everything in it was read. Only then may something be called missing. */
    readonly isWhole: boolean;
}

export const isKind = <K extends BlockKind>(block: Block, kind: K): block is Block & Block<K> => block.kind === kind;

/** How messages name a block: `bench upper`, `the room`. */
export const showBlock = (block: Block): string => block.name ? `${spoken(block.kind)} ${block.name.value}` : `the ${spoken(block.kind)}`;

/** Whether something in a block refers to what is not in sight; that has a message of its own. */
export const hasLooseLink = (block: Block): boolean => block.children.some(hasLooseLink)
    || (Object.values(block.values) as readonly (Given<unknown> | undefined)[]).some(given => isLooseLink(given?.value));
const isLooseLink = (value: unknown): boolean => typeof value === 'object' && value !== null && 'name' in value && 'span' in value && 'block' in value && value.block === undefined;
