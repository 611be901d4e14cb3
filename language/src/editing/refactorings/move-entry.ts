import { endOf } from '../../syntax/token-list.js';
import { isShared, propertiesOf } from '../../vocabulary/index.js';
import type { RawFact, RawScope, RawText } from '../raw-facts.js';
import { headerParts } from '../spot.js';
import type { Refactoring } from './refactoring.js';

/** A file an entry can move to: one this file uses that has a catalogue. */
export interface EntryHome {
    readonly uri: string;
    /** Its path as this file writes it. */
    readonly path: string;
    readonly raw: RawText;
    /** Names its entries can see. */
    readonly sees: (name: string) => boolean;
    readonly exports: (name: string) => boolean;
}

/** Moves the catalogue entry at a place of a file to a catalogue this file uses, so that other jobs can use it too. */
export function moveEntry(raw: RawText, uri: string, offset: number, homes: readonly EntryHome[]): readonly Refactoring[] {
    const catalogue = raw.file.facts.find(fact => fact.key?.image === 'catalogue' && fact.body !== undefined && fact.start <= offset && offset <= endOfFact(fact));
    const entry = catalogue?.body?.facts.find(fact => fact.body !== undefined && fact.start <= offset && offset <= endOfFact(fact));
    const kind = entry?.key?.image ?? '';
    const name = entry && headerParts(raw, entry).name?.image;
    if (!entry?.body?.close || !catalogue?.body || name === undefined || !isShared(kind)) return [];
    const needs = namesIn(entry).filter(other => other !== name);
    return homes.flatMap((home): Refactoring[] => {
        const target = home.raw.file.facts.find(fact => fact.key?.image === 'catalogue' && fact.body?.close !== undefined)?.body;
        if (!target?.close || home.uri === uri) return [];
        const title = `Move ${name} to ${home.path}`;
        const missing = needs.filter(other => !home.sees(other));
        if (home.exports(name)) return [{ title, kind: 'move', edits: [], refusal: `${home.path} has an entry ${name} already.` }];
        if (missing.length > 0) return [{ title, kind: 'move', edits: [], refusal: `${home.path} does not know ${missing.join(', ')}, which ${name} needs.` }];
        const lineStart = raw.text.lastIndexOf('\n', entry.start - 1) + 1;
        const ownLine = /^[ \t]*$/.test(raw.text.slice(lineStart, entry.start));
        const end = endOfFact(entry);
        const rest = /^[ \t]*;?[ \t]*(?:\/\/[^\r\n]*)?\r?\n/.exec(raw.text.slice(end))?.[0] ?? '';
        const at = lastEnd(target) ?? endOf(target.open ?? target.close);
        return [{
            title, kind: 'move', edits: [
                { span: { uri, start: ownLine ? lineStart : entry.start, end: end + (ownLine ? rest.length : 0) }, newText: '' },
                { span: { uri: home.uri, start: at, end: at }, newText: `\n\n    ${raw.text.slice(entry.start, end)}` },
            ],
        }];
    });
}

const endOfFact = (fact: RawFact): number => fact.body?.close ? endOf(fact.body.close) : fact.end;
const lastEnd = (scope: RawScope): number | undefined => { const last = scope.facts.at(-1); return last && (last.body?.close ? endOf(last.body.close) : endOf(last.tokens.at(-1) as RawFact['tokens'][number])); };

/** Names an entry refers to: the first word of each of its values that is a reference, and what it is made from. */
function namesIn(entry: RawFact): readonly string[] {
    const is = entry.tokens.findIndex(token => token.image === 'is');
    const base = is > 0 ? entry.tokens[is + 1]?.image : undefined;
    return [...new Set([...base === undefined ? [] : [base], ...(entry.body?.facts ?? []).flatMap(fact => {
        const property = fact.key && propertiesOf(entry.key?.image ?? '').get(fact.key.image)?.property;
        const isEach = property?.type.kind === 'references';
        return property?.type.refersTo ? fact.tokens.slice(1).filter((_token, i) => isEach ? i % 2 === 0 : i === 0).map(token => token.image) : [];
    })])];
}
