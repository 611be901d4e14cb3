import type { Span } from '../core/span.js';
import type * as ast from '../syntax/generated/ast.js';
import type { Block } from './block.js';
import type { Reading } from './reading.js';

/** What lowering needs from outside one block, for the text of one document: resolved references and what the reading found damaged. */
export interface LoweringContext {
    readonly reading: Reading;
    /** Key offsets of facts that are not whole. */
    readonly damaged: ReadonlySet<number>;
    /** The block a word refers to, or the one `name` stands for where the word is a parameter; lowered with its own document. */
    readonly resolve: (word: ast.Word, kinds: readonly string[], name?: string) => (() => Block | undefined) | 'unknown';
    /** Remembers a name nothing answers to; they are reported together, one message a name. */
    readonly unknownName: (word: ast.Word, kinds: readonly string[]) => void;
    /** Remembers the block a fact became. */
    readonly remember: (fact: ast.Fact, block: Block) => void;
    /** The layers of what a catalogue entry is made from (`is …`), the first of them first; `unknown` when that is not in sight. */
    readonly baseOf: (fact: ast.Fact) => readonly Layer[] | 'unknown';
    /** Does some work on behalf of one value, so that names asked for meanwhile are known to be asked by it. */
    readonly asking: <T>(owner: string, at: Span, work: () => T) => T;
    /** Notes that somebody looked at a value that is written and could not be read. */
    readonly missed: (owner: string) => void;
}

/**
 * One text of a block that may have several: what a series says, what the job that is made from it says otherwise, what a variant changes. The last
 * layer that states a fact wins.
 */
export interface Layer {
    readonly fact: ast.Fact;
    readonly context: LoweringContext;
}

/** A fact among the layers, and those it wins over. */
export interface Winner { readonly item: ast.Fact; readonly context: LoweringContext; readonly over: readonly Span[] }
