import { spoken } from '../core/show.js';
import { endOf, type Token } from '../syntax/token-list.js';
import { blocksIn, isBlockKind, isJobLike } from '../vocabulary/index.js';
import { isStatement } from '../vocabulary/statements.js';
import { isWordToken, type RawFact, type RawScope, type RawText } from './raw-facts.js';
import { headerParts } from './spot.js';

/** A block, a `let` or a waiver as an outline shows it. */
export interface OutlineEntry {
    readonly name: string;
    readonly detail: string;
    readonly kind: string;
    readonly start: number;
    readonly end: number;
    /** What is selected when somebody goes there: the name, else the key. */
    readonly headStart: number;
    readonly headEnd: number;
    readonly children: readonly OutlineEntry[];
}

/** Jobs, series, catalogues and what stands in them: blocks, parameters, variants, house rules, `let`s and waivers. By syntax alone. */
export const outlineOf = (raw: RawText, scope: RawScope = raw.file): readonly OutlineEntry[] => scope.facts.flatMap(fact => {
    const kind = fact.key?.image ?? '';
    if (kind === 'let' || kind === 'waive') return isStatement(scope.kind, kind) && !fact.body ? statementEntry(fact, raw) : [];
    if (!isBlockKind(kind) || !blocksIn(scope.kind).includes(kind)) return [];
    return fact.body || isMadeFrom(fact) ? [entryOf(fact, raw)] : [];
});
/** A job or series may be all header. */
const isMadeFrom = ({ tokens }: RawFact): boolean => isJobLike(tokens[0]?.image ?? '') && tokens.slice(2, 4).some(token => token.image === 'is');

function entryOf(fact: RawFact, raw: RawText): OutlineEntry {
    const { name, title, on, walls } = headerParts(raw, fact);
    const kind = fact.key?.image ?? '';
    const head = name ?? fact.key;
    const detail = [
        name ? spoken(kind) : '', title ? title.image.slice(1, -1) : '', madeFrom(fact, raw), on ? `on ${walls.map(wall => wall.image).join(', ')}` : '',
        ...(telling[kind] ?? telling['']).flatMap(({ key, before = '' }) => { const value = valueOf(fact, key, raw); return value === undefined ? [] : [before + value]; }),
    ].filter(Boolean).join(' · ');
    return {
        name: name?.image ?? spoken(kind), detail, kind, start: fact.start, end: endOfFact(fact),
        headStart: head?.startOffset ?? fact.start, headEnd: head ? endOf(head) : fact.start, children: fact.body ? outlineOf(raw, fact.body) : [],
    };
}

/** Facts that tell most of a block, by its kind; those of most kinds are what it is built after. */
const telling: Readonly<Record<string, readonly { readonly key: string; readonly before?: string }[]>> & { readonly '': readonly { readonly key: string; readonly before?: string }[] } = {
    '': [{ key: 'model' }, { key: 'system' }],
    parameter: [{ key: 'takes' }, { key: 'otherwise', before: 'otherwise ' }],
    rule: [{ key: 'severity' }, { key: 'each', before: 'each ' }],
};
const valueOf = ({ body }: RawFact, key: string, raw: RawText): string | undefined => {
    const fact = body?.facts.find(inner => inner.key?.image === key);
    return fact && textOf(fact.tokens.slice(1), raw);
};
function madeFrom({ tokens }: RawFact, raw: RawText): string {
    const at = tokens.findIndex((token, i) => token.image === 'is' && i > 0);
    return at < 2 ? '' : textOf(tokens.slice(at), raw);
}
/** Longer values than this say no more in an outline. */
const longest = 60;
function textOf(tokens: readonly Token[], raw: RawText): string {
    const [first] = tokens;
    const last = tokens.at(-1);
    const text = first && last ? raw.text.slice(first.startOffset, endOf(last)).replace(/\s+/g, ' ') : '';
    return text.length > longest ? `${text.slice(0, longest)}…` : text;
}

/** A `let` goes by its name, a waiver by the finding it accepts. */
function statementEntry(fact: RawFact, raw: RawText): OutlineEntry[] {
    const [key, name, ...rest] = fact.tokens;
    if (!key || !name || !isWordToken(name, raw.types)) return [];
    const because = rest.findIndex(token => token.image === 'because');
    const until = rest.findIndex(token => token.image === 'until');
    const detail = key.image === 'let' ? textOf(rest, raw)
        : ['waived', textOf(rest.slice(0, because < 0 ? 0 : because), raw), textOf(until < 0 ? [] : rest.slice(until), raw)].filter(Boolean).join(' · ');
    return [{ name: name.image, detail, kind: key.image, start: fact.start, end: endOfFact(fact), headStart: name.startOffset, headEnd: endOf(name), children: [] }];
}

/** End of the last character of a fact, its closing brace included. */
export function endOfFact(fact: RawFact): number {
    let last = fact;
    while (last.body && !last.body.close) {
        const inner = last.body.facts.at(-1);
        if (!inner) return last.body.open ? endOf(last.body.open) : last.end;
        last = inner;
    }
    const token = last.body?.close ?? last.tokens.at(-1);
    return token ? endOf(token) : last.end;
}
