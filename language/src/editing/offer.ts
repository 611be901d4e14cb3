import type { JobAnalysis } from '../analyze.js';
import type { Block } from '../model/block.js';

/** One thing completion offers. Offsets are UTF-16 in the text it was asked for. */
export interface Offer {
    readonly label: string;
    readonly kind: 'block' | 'fact' | 'word' | 'name' | 'wall' | 'unit' | 'file' | 'value' | 'function' | 'operator';
    /** What replaces `start` to `end`; with `$1` places to fill when `isSnippet`. */
    readonly text: string;
    readonly isSnippet: boolean;
    /** Beside the label: what it takes or where it comes from. */
    readonly detail: string;
    readonly doc: string;
    /** Offers stand in this order, then as given. */
    readonly order: number;
    readonly start: number;
    readonly end: number;
    /** Set when more has to follow, which an editor may offer at once: the point behind a name. */
    readonly leadsOn?: true;
    /** Set when it is worth offering to somebody who asks or types a letter, and not to somebody who typed a space. */
    readonly isQuiet?: true;
    /** What the word typed so far is compared with, when that is not the label. */
    readonly filter?: string;
}

/** A block that can be named at some place, with the file it stands in when that is another. */
export interface SeenName { readonly name: string; readonly kind: string; readonly title?: string; readonly from?: string }

/** What completion has to know beyond the text. */
export interface Sight {
    /** Blocks of these kinds that a reference at `offset` can name. */
    readonly names: (kinds: readonly string[], offset: number) => readonly SeenName[];
    /** Paths of the other files of the workspace, as `use` writes them. */
    readonly paths: () => readonly string[];
    /** The job or variant around an offset with everything computed for it; for a series, a job made from it, `as` which its values are told. */
    readonly job?: (offset: number) => SeenJob | undefined;
    /** A series in sight. */
    readonly series?: (name: string) => Block<'series'> | undefined;
    /** House rules the file's jobs have to keep. */
    readonly houseRules?: () => readonly Block<'rule'>[];
}
export interface SeenJob { readonly analysis: JobAnalysis; readonly as?: string }

/** Text that stands for itself in a snippet. */
export const plain = (text: string): string => text.replace(/[\\$}]/g, match => `\\${match}`);
/** A place to fill with a few words to choose from. */
export const oneOf = (place: number, words: readonly string[]): string =>
    words.length === 0 ? `\${${place}}` : `\${${place}|${words.map(word => word.replace(/[\\$},|]/g, match => `\\${match}`)).join(',')}|}`;
