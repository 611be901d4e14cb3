import { showCitation } from '../core/citation.js';
import type { ReportedFinding, Severity } from '../core/finding.js';
import type { Span } from '../core/span.js';
import { characterWidth, displayWidth, printable } from './printable.js';
import { hang } from './report-text.js';
import { showCount } from './show-figures.js';
import { severityChanges, waiversInForce } from './standing.js';
import { TextLines, type TextPosition } from './text-lines.js';

/** The texts findings point into, and what they are called where they are read. */
export interface FindingSources {
    readonly textOf: (uri: string) => string | undefined;
    readonly nameOf: (uri: string) => string;
}

/** How parts of a message are coloured; plain text when absent. */
export interface Paint {
    readonly severity: (severity: Severity, text: string) => string;
    readonly faint: (text: string) => string;
}
export const noPaint: Paint = { severity: (_, text) => text, faint: text => text };

/** Lines and columns of spans, each text split once. */
export class Places {
    private readonly texts = new Map<string, TextLines | undefined>();

    constructor(readonly sources: FindingSources) {}

    linesOf(uri: string): TextLines | undefined {
        if (!this.texts.has(uri)) {
            const text = this.sources.textOf(uri);
            this.texts.set(uri, text === undefined ? undefined : new TextLines(text));
        }
        return this.texts.get(uri);
    }

    start(span: Span): TextPosition | undefined { return this.linesOf(span.uri)?.at(span.start); }
    end(span: Span): TextPosition | undefined { return this.linesOf(span.uri)?.at(span.end); }

    /** `examples/birch-point.hotroom:47:9`, lines and UTF-16 columns counted from 1 as editors show them. */
    show(span: Span): string {
        const start = this.start(span);
        const name = printable(this.sources.nameOf(span.uri));
        return start ? `${name}:${start.line + 1}:${start.character + 1}` : name;
    }
    /** The same without the column. */
    showLine(span: Span): string {
        const start = this.start(span);
        const name = printable(this.sources.nameOf(span.uri));
        return start ? `${name}:${start.line + 1}` : name;
    }
}

/**
 * One finding for a terminal. The first line is `path:line:column: severity rule: message`, which tools read; below stand the line of the job with
 * what is meant underlined, the source of the requirement, further places and the fixes the editor offers.
 */
export function findingText(finding: ReportedFinding, places: Places, { width, paint = noPaint }: { readonly width: number; readonly paint?: Paint }): string {
    const { at, severity, rule, message, citation, related = [], fixes = [] } = finding;
    const note = (label: string, text: string): string[] => hang(text, width, `    ${label}: `);
    return [
        `${places.show(at)}: ${paint.severity(severity, severity)} ${rule}: ${oneLine(message)}`,
        ...excerpt(at, severity, places, width, paint),
        ...(citation ? note('source', `${showCitation(citation)}${citation.kind === 'standard' && citation.fromMemory ? ' (figure from memory of the document)' : ''}`) : []),
        ...related.map(({ at: place, message: words }) => `    see ${places.show(place)}: ${oneLine(words)}`),
        ...fixes.flatMap(({ title, safety }) => note('fix', `${oneLine(title)}${safety === 'review' ? ' (changes the design)' : ''}`)),
    ].join('\n');
}

const oneLine = (text: string): string => printable(text.replaceAll(/\s*[\r\n]+\s*/g, ' '));

function excerpt(at: Span, severity: Severity, places: Places, width: number, paint: Paint): string[] {
    const lines = places.linesOf(at.uri);
    if (!lines) return [];
    const start = lines.at(at.start);
    const end = lines.at(at.end);
    const full = lines.line(start.line);
    const isLong = end.line > start.line;
    const until = isLong ? full.trimEnd().length : end.character;
    const { shown, from, to } = windowOn(full, start.character, Math.max(start.character, until), width - 10);
    const number = String(start.line + 1);
    const margin = ' '.repeat(number.length);
    const marks = '^'.repeat(Math.max(1, to - from));
    return [
        `${paint.faint(`  ${number} |`)} ${shown}`.trimEnd(),
        `${paint.faint(`  ${margin} |`)} ${' '.repeat(from)}${paint.severity(severity, marks)}${isLong ? paint.faint(` to line ${end.line + 1}`) : ''}`,
    ];
}

/** The line as printed, with display columns of the marked part; a long line is cut to a window that holds its beginning. */
function windowOn(line: string, start: number, end: number, width: number): { readonly shown: string; readonly from: number; readonly to: number } {
    const before = expand(line.slice(0, start), 0);
    const marked = expand(line.slice(start, end), displayWidth(before));
    const after = expand(line.slice(end), displayWidth(before) + displayWidth(marked));
    const [left, middle] = [displayWidth(before), displayWidth(marked)];
    if (left + middle + displayWidth(after) <= width) return { shown: before + marked + after, from: left, to: left + middle };
    const lead = lastColumns(before, Math.max(8, Math.floor(width / 3)));
    const isCut = lead !== before;
    const shown = firstColumns(`${isCut ? '…' : ''}${lead}${marked}${after}`, width);
    const from = displayWidth(lead) + (isCut ? 1 : 0);
    return { shown, from, to: Math.min(from + middle, Math.max(from + 1, width)) };
}

/** Tabs become spaces up to stops of four columns, so that the underline stands below its text in every terminal. */
function expand(text: string, column: number): string {
    let result = '';
    let at = column;
    for (const character of text) {
        const piece = character === '\t' ? ' '.repeat(4 - at % 4) : printable(character);
        result += piece;
        at += displayWidth(piece);
    }
    return result;
}

function firstColumns(text: string, width: number): string {
    let used = 0;
    let result = '';
    for (const character of text) {
        used += characterWidth(character);
        if (used > width - 1) return `${result}…`;
        result += character;
    }
    return result;
}
function lastColumns(text: string, width: number): string {
    let used = 0;
    let result = '';
    for (const character of Array.from(text).reverse()) {
        used += characterWidth(character);
        if (used > width) return result;
        result = character + result;
    }
    return result;
}

/** What stands behind the findings: waivers in force with who, why and until when, and what the settings of the project changed. Nothing when there is neither. */
export function standingText(findings: readonly ReportedFinding[], leftOut: readonly ReportedFinding[], places: Places, width: number): string {
    const item = (text: string): string => hang(oneLine(text), width, '  ').join('\n');
    const waivers = waiversInForce(findings).map(({ rule, by, because, until, at, count }) => item(`${rule}, ${showCount(count, 'finding')}: accepted by ${by} until ${until}: ${because} (${places.show(at)})`));
    const changes = severityChanges([...findings, ...leftOut]).map(({ rule, from, to, at, count }) => item(`${rule}, ${showCount(count, 'finding')}: ${to}, by itself ${from} (${places.show(at)})`));
    return [...(waivers.length > 0 ? ['Waivers in force', ...waivers, ''] : []), ...(changes.length > 0 ? ['Severities changed by settings', ...changes, ''] : [])].map(line => `${line}\n`).join('');
}

/** Findings by severity, gravest first. */
export type SeverityCounts = Readonly<Record<Severity, number>>;
export const severities: readonly Severity[] = ['error', 'warning', 'info', 'hint'];

export function countSeverities(findings: readonly Pick<ReportedFinding, 'severity'>[]): SeverityCounts {
    const counts = { error: 0, warning: 0, info: 0, hint: 0 };
    for (const { severity } of findings) counts[severity] += 1;
    return counts;
}

/** `2 errors, 1 warning in 3 files.`, or that there is none. */
export function summaryText(counts: SeverityCounts, files: number): string {
    const names: Readonly<Record<Severity, readonly [string, string]>> = { error: ['error', 'errors'], warning: ['warning', 'warnings'], info: ['info', 'infos'], hint: ['hint', 'hints'] };
    const found = severities.filter(severity => counts[severity] > 0).map(severity => showCount(counts[severity], ...names[severity]));
    return `${found.length > 0 ? found.join(', ') : 'No findings'} in ${showCount(files, 'file')}.`;
}
