import { endOf, type Token } from '../syntax/token-list.js';
import { blocksIn, isBlockKind, propertiesOf } from '../vocabulary/index.js';
import { isWordToken, type RawFact, type RawText } from './raw-facts.js';
import { walls } from './samples.js';
import { headerParts } from './spot.js';

/** What a piece of text is, for colouring. */
export type HighlightKind = 'block' | 'property' | 'name' | 'reference' | 'choice' | 'connective' | 'figure' | 'text' | 'remark' | 'operator';
export interface Highlight { readonly start: number; readonly end: number; readonly kind: HighlightKind }

const connectives = new Set(['on', 'from', 'to', 'x', 'per']);
const isWall = (word: string): boolean => (walls as readonly string[]).includes(word);

/** Every piece of the text that has a meaning of its own, in order. A word that means nothing where it stands is left out. */
export function highlights(raw: RawText): readonly Highlight[] {
    const found: Highlight[] = raw.comments.map(comment => piece(comment, 'remark'));
    for (const fact of raw.facts) {
        const kinds = wordsOf(fact, raw);
        for (const token of fact.tokens) {
            const kind = kinds.get(token) ?? literalKind(token, raw);
            if (kind) found.push(piece(token, kind));
        }
    }
    return found.sort((a, b) => a.start - b.start);
}

const piece = (token: Token, kind: HighlightKind): Highlight => ({ start: token.startOffset, end: endOf(token), kind });

function literalKind(token: Token, { types }: RawText): HighlightKind | undefined {
    switch (token.tokenType) {
        case types.text: return 'text';
        case types.length: case types.quantity: case types.number: case types.date: return 'figure';
        default: return /^[-+*/]$/.test(token.image) ? 'operator' : undefined;
    }
}

/** The words of one fact by what they are. */
function wordsOf(fact: RawFact, raw: RawText): ReadonlyMap<Token, HighlightKind> {
    const kinds = new Map<Token, HighlightKind>();
    const { key, scope } = fact;
    if (!key) return kinds;
    if (key.image === 'use' && scope.kind === 'file') return kinds.set(key, 'block');
    const property = fact.body ? undefined : propertiesOf(scope.kind).get(key.image)?.property;
    if (property) {
        kinds.set(key, 'property');
        let isFirst = true;
        for (const token of fact.tokens.slice(1)) {
            if (isWordToken(token, raw.types)) {
                const isChoice = property.type.choices?.includes(token.image) || isWall(token.image);
                if (isFirst && property.type.refersTo) kinds.set(token, 'reference');
                else if (isChoice && !(token.image === 'per')) kinds.set(token, 'choice');
                else if (connectives.has(token.image)) kinds.set(token, 'connective');
            }
            isFirst = token.image === ',';
        }
        return kinds;
    }
    if (!isBlockKind(key.image) || !blocksIn(scope.kind).includes(key.image)) return kinds;
    kinds.set(key, 'block');
    const { name, on, walls: standsOn } = headerParts(raw, fact);
    if (name) kinds.set(name, 'name');
    if (on) kinds.set(on, 'connective');
    for (const wall of standsOn) if (isWall(wall.image)) kinds.set(wall, 'choice');
    return kinds;
}
