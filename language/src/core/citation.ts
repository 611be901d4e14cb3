/**
 * Where a requirement comes from. `geometry` needs no document (it follows from the shape of things), `practice` is common practice
 * with no published source, `manual` is what the heater's own catalogue entry states, `standard` is a published clause.
 */
export type Citation =
    | { readonly kind: 'geometry'; readonly text: string }
    | { readonly kind: 'practice'; readonly text: string }
    | { readonly kind: 'manual'; readonly text: string }
    | { readonly kind: 'catalogue'; readonly text: string }
    /** A rule of the maker's own house, as its text says. */
    | { readonly kind: 'house'; readonly text: string }
    | {
        readonly kind: 'standard';
        readonly document: string;
        readonly edition: string;
        readonly clause: string;
        readonly text: string;
        /** True when the figure was written down from memory of the document and still has to be compared with a copy of it. */
        readonly fromMemory?: true;
    };

/** The citation as it stands in a message: short, with edition and clause. */
export function showCitation(citation: Citation): string {
    switch (citation.kind) {
        case 'standard': return `${citation.document} ${citation.edition}, ${citation.clause}`;
        case 'manual': return citation.text;
        case 'catalogue': return citation.text;
        case 'house': return citation.text;
        case 'practice': return 'common practice, no source';
        case 'geometry': return citation.text;
    }
}
