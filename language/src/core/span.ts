/** Half-open range of UTF-16 offsets in one document. Line and column are made of it in one place only, at the door of an editor or a terminal. */
export interface Span {
    readonly uri: string;
    readonly start: number;
    readonly end: number;
}

/** A value together with the text it was written as. Everything a designer typed reaches the engines as one of these. */
export interface Sourced<T> {
    readonly value: T;
    readonly span: Span;
}

export const sourced = <T>(value: T, span: Span): Sourced<T> => ({ value, span });

/** The smallest span that holds both; they must lie in one document. */
export function joinSpans(a: Span, b: Span): Span {
    if (a.uri !== b.uri) throw new Error(`Spans of two documents cannot be joined: ${a.uri} and ${b.uri}`);
    return { uri: a.uri, start: Math.min(a.start, b.start), end: Math.max(a.end, b.end) };
}

export const spanContains = (outer: Span, inner: Span): boolean =>
    outer.uri === inner.uri && outer.start <= inner.start && inner.end <= outer.end;
