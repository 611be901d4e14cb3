import type { Fix, ReportedFinding } from '../../language/src/core/finding.js';
import type { Span } from '../../language/src/core/span.js';

/** The name and the text of the file a span lies in, so that a baseline says where and what without an absolute path. */
export type FindFile = (uri: string) => { readonly path: string; readonly text: string } | undefined;

/**
 * The file's text with, under each line on which findings begin, `//@[column:length] severity rule-id: message` for each, and below it, further in,
 * what else it points to and the fixes it offers. A diff of two such texts shows a changed finding where it stands.
 * @param findings in the order of the text
 */
export function annotate(text: string, findings: readonly ReportedFinding[], uri: string, findFile: FindFile): string {
    const starts = lineStarts(text);
    const below = new Map<number, string[]>();
    for (const finding of findings) {
        const { line, column } = placeOf(starts, finding.at.start);
        const notes = below.get(line) ?? [];
        below.set(line, notes);
        notes.push(
            `//@[${column}:${finding.at.end - finding.at.start}] ${finding.severity} ${finding.rule}: ${finding.message}`,
            ...(finding.related ?? []).map(({ at, message }) => `//@    see ${showPlace(at, uri, starts, findFile)}: ${message}`),
            ...(finding.fixes ?? []).map(fix => `//@    fix, ${fix.safety}: ${fix.title}${showEdits(fix, uri, text, starts, findFile)}`),
        );
    }
    return text.split('\n').flatMap((line, index) => [line, ...(below.get(index + 1) ?? [])]).join('\n');
}

function showEdits(fix: Fix, uri: string, text: string, starts: readonly number[], findFile: FindFile): string {
    return fix.edits.map(({ span, newText }) => {
        const source = span.uri === uri ? text : findFile(span.uri)?.text ?? '';
        return `; ${showPlace(span, uri, starts, findFile)} ${JSON.stringify(source.slice(span.start, span.end))} -> ${JSON.stringify(newText)}`;
    }).join('');
}

function showPlace({ uri, start }: Span, own: string, starts: readonly number[], findFile: FindFile): string {
    const other = uri === own ? undefined : findFile(uri);
    const { line, column } = placeOf(other ? lineStarts(other.text) : starts, start);
    return `${other ? `${other.path}:` : ''}${line}:${column}`;
}

function lineStarts(text: string): readonly number[] {
    return [0, ...[...text.matchAll(/\n/g)].map(match => match.index + 1)];
}
/** Line and column from 1. */
function placeOf(starts: readonly number[], offset: number): { readonly line: number; readonly column: number } {
    const line = starts.findLastIndex(start => start <= offset);
    return { line: line + 1, column: offset - (starts[line] ?? 0) + 1 };
}
