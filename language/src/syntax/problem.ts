/**
 * A mistake in how the text is written, found while reading it. Offsets are UTF-16 in the document read.
 * `damages` holds the offset of the key of every fact that is no longer whole because of it (`-1` for the file itself), so that nobody reports
 * as missing what could merely not be read.
 */
export interface SyntaxProblem {
    readonly id: SyntaxProblemId;
    readonly message: string;
    readonly start: number;
    readonly end: number;
    readonly damages: readonly number[];
    readonly fix?: TextFix;
}

export interface TextFix {
    readonly title: string;
    readonly edits: readonly { readonly start: number; readonly end: number; readonly newText: string }[];
}

export type SyntaxProblemId =
    | 'unexpected-character' | 'typeset-sign' | 'unclear-sign' | 'file-too-large' | 'negative-length' | 'text-not-closed' | 'curly-quote' | 'decimal-comma' | 'unknown-unit' | 'inch-mark-missing' | 'hyphen-spacing'
    | 'value-missing' | 'bracket-not-closed' | 'bracket-without-partner' | 'block-not-closed' | 'brace-without-partner' | 'brace-missing'
    | 'brace-on-its-own-line' | 'line-without-a-word' | 'two-facts-on-one-line' | 'part-out-of-place' | 'kind-missing' | 'unknown-word' | 'use-not-a-path' | 'wall-missing' | 'part-not-expected';
