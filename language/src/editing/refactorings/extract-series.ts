import type { Edit } from '../../core/finding.js';
import { endOf } from '../../syntax/token-list.js';
import type { RawFact, RawScope, RawText } from '../raw-facts.js';
import { headerParts } from '../spot.js';
import type { Refactoring } from './refactoring.js';

/** What stays with the job: who ordered it, where it stands, what was accepted for it. */
const ofTheOrder: ReadonlySet<string> = new Set(['number', 'revision', 'drawn_by', 'site', 'waive', 'variant', 'sign_off']);
const sizes = [['w', 'width', 'Outside width along the front'], ['d', 'depth', 'Outside depth from front to back'], ['h', 'height', 'Floor to the top of the ceiling panels']] as const;

/**
 * Turns a job into a series with the sizes of its room as parameters, and the job into one that is made from it. The job keeps what belongs to the order;
 * everything else moves. The room stays the same to the last part.
 */
export function extractSeries(raw: RawText, uri: string, offset: number): readonly Refactoring[] {
    const job = raw.file.facts.find(fact => fact.key?.image === 'job' && fact.body !== undefined && fact.start <= offset && offset <= (fact.body.close ? endOf(fact.body.close) : fact.end));
    if (!job?.body?.open || !job.body.close) return [];
    const onHeader = offset <= endOf(job.body.open);
    const { name, title } = headerParts(raw, job);
    if (!onHeader || !name || job.tokens.some(token => token.image === 'is')) return [];
    const taken = new Set(raw.file.facts.flatMap(fact => headerNames(raw, fact)));
    const seriesName = freeName(`${name.image}_series`, taken);
    const room = job.body.facts.find(fact => fact.key?.image === 'room')?.body;
    const names = new Set(job.body.facts.flatMap(fact => headerNames(raw, fact)));
    const parameters = sizes.flatMap(([short, key, doc]) => {
        const fact = room?.facts.find(other => other.key?.image === key && other.body === undefined);
        const [, ...value] = fact?.tokens ?? [];
        const [first] = value;
        const last = value.at(-1);
        // Only a figure becomes a parameter: what is calculated hangs on names that stay inside.
        if (!first || !last || value.some(token => token.tokenType === raw.types.word)) return [];
        return [{ name: freeName(short, names), doc, start: first.startOffset, end: endOf(last), text: raw.text.slice(first.startOffset, endOf(last)) }];
    });
    const { body } = job;
    const stays = body.facts.filter(fact => ofTheOrder.has(fact.key?.image ?? ''));
    const moves = body.facts.filter(fact => !stays.includes(fact));
    if (moves.length === 0) return [];
    const eol = raw.text.includes('\r\n') ? '\r\n' : '\n';
    const head = `series ${seriesName}${title ? ` ${title.image}` : ''} {${eol}`;
    const declared = parameters.map(({ name: parameter, doc, text }) => `    parameter ${parameter} { takes length; otherwise ${text}; doc "${doc}" }${eol}`).join('');
    const inside = moves.map(fact => pieceOf(raw, body, fact, parameters)).join('');
    const series = `${head}${declared}${eol}${inside.replace(/^(?:[ \t]*\r?\n)+/, '')}}${eol}${eol}`;
    const args = parameters.length > 0 ? `(${parameters.map(({ text }) => text).join(', ')})` : '';
    const kept = stays.map(fact => pieceOf(raw, body, fact, [])).join('').replace(/^(?:[ \t]*\r?\n)+/, '');
    const made = `job ${name.image}${title ? ` ${title.image}` : ''} is ${seriesName}${args} {${eol}${kept}}`;
    const edit: Edit = { span: { uri, start: job.start, end: endOf(job.body.close) }, newText: series + made };
    return [{ title: `Extract a series from ${name.image}`, kind: 'extract', edits: [edit] }];
}

const headerNames = (raw: RawText, fact: RawFact): readonly string[] => { const { name } = headerParts(raw, fact); return name ? [name.image] : []; };
function freeName(wanted: string, taken: ReadonlySet<string>): string {
    for (let i = 1; ; i++) { const name = i === 1 ? wanted : `${wanted}_${i}`; if (!taken.has(name)) return name; }
}

/** A fact with the remarks over it and its line end, figures that became parameters replaced by their names. */
function pieceOf(raw: RawText, scope: RawScope, fact: RawFact, parameters: readonly { readonly name: string; readonly start: number; readonly end: number }[]): string {
    const i = scope.facts.indexOf(fact);
    const before = scope.facts[i - 1];
    const start = before ? wholeEnd(raw, before) : endOf(scope.open ?? fact.tokens[0] as RawFact['tokens'][number]);
    const end = wholeEnd(raw, fact);
    let text = raw.text.slice(start, end);
    for (const parameter of [...parameters].sort((a, b) => b.start - a.start)) {
        if (parameter.start >= start && parameter.end <= end) text = text.slice(0, parameter.start - start) + parameter.name + text.slice(parameter.end - start);
    }
    // What stands behind a brace or a semicolon of another fact's line begins a line of its own.
    const isOwnLine = /^[ \t]*\r?\n/.test(text) || start === 0 || raw.text[start - 1] === '\n';
    const lines = isOwnLine ? text.replace(/^[ \t]*\r?\n/, '') : `    ${text.replace(/^[ \t;]+/, '')}`;
    return `${lines.replace(/[\s;]+$/, '')}${raw.text.includes('\r\n') ? '\r\n' : '\n'}`;
}

/** Where a fact ends with what belongs to its line: a remark behind it, a separator, the line end. */
function wholeEnd(raw: RawText, fact: RawFact): number {
    const end = fact.body?.close ? endOf(fact.body.close) : endOf(fact.tokens.at(-1) as RawFact['tokens'][number]);
    const rest = /^[ \t]*;?[ \t]*(?:\/\/[^\r\n]*)?(?:\r?\n)?/.exec(raw.text.slice(end))?.[0] ?? '';
    // A line that goes on with another fact ends at its separator.
    return /\n$/.test(rest) || /^[ \t]*;?[ \t]*$/.test(rest) ? end + rest.length : end;
}
