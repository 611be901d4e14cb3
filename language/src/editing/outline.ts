import { endOf } from '../syntax/token-list.js';
import { blocksIn, isBlockKind } from '../vocabulary/index.js';
import { kindWords } from './describe.js';
import type { RawFact, RawScope, RawText } from './raw-facts.js';
import { headerParts } from './spot.js';

/** A block as an outline shows it. */
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

/** Jobs, catalogues and the blocks in them, by syntax alone. */
export const outlineOf = (raw: RawText, scope: RawScope = raw.file): readonly OutlineEntry[] =>
    scope.facts.flatMap(fact => fact.key && fact.body && isBlockKind(fact.key.image) && blocksIn(scope.kind).includes(fact.key.image) ? [entryOf(fact, fact.body, raw)] : []);

function entryOf(fact: RawFact, body: RawScope, raw: RawText): OutlineEntry {
    const { name, title, on, walls } = headerParts(raw, fact);
    const kind = fact.key?.image ?? '';
    const head = name ?? fact.key;
    const model = body.facts.find(inner => inner.key?.image === 'model' || inner.key?.image === 'system')?.tokens[1]?.image;
    const detail = [
        name ? kindWords(kind) : '', title ? title.image.slice(1, -1) : '', on ? `on ${walls.map(wall => wall.image).join(', ')}` : '', model ?? '',
    ].filter(Boolean).join(' · ');
    return {
        name: name?.image ?? kindWords(kind), detail, kind, start: fact.start, end: endOfFact(fact),
        headStart: head?.startOffset ?? fact.start, headEnd: head ? endOf(head) : fact.start, children: outlineOf(raw, body),
    };
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
