import { spoken } from '../core/show.js';
import { lengthUnits } from '../core/quantity.js';
import { endOf, touches, type Token } from '../syntax/token-list.js';
import type { ValueKind } from '../vocabulary/values.js';
import { isBlockKind } from '../vocabulary/index.js';
import { completeExpression } from './complete-expression.js';
import { describeChoice } from './describe.js';
import { expressionPlace } from './expression-place.js';
import { wantedBy, type Wanted } from './kinds-of-value.js';
import { valuesInSight, type SeenValue } from './names-in-sight.js';
import type { Offer, Sight } from './offer.js';
import { isWordToken, type RawScope, type RawText } from './raw-facts.js';
import { neighbourWalls, walls } from './samples.js';
import { headerParts, phraseAround, termsOf, type Spot } from './spot.js';

type ValueSpot = Extract<Spot, { kind: 'value' }>;
/** What one place of a value holds: a figure, a text or date, or one of some words. */
type Slot = 'figure' | 'other' | 'name' | { readonly words: readonly string[]; readonly kind: 'word' | 'wall' };

function slotsOf({ property, fact, key }: ValueSpot, raw: RawText, own: readonly Token[]): readonly Slot[] {
    const { kind, choices = [] } = property.type;
    const neighbours: Slot = { words: neighbourWalls(raw, fact.scope), kind: 'wall' };
    switch (kind) {
        case 'place': return [neighbours, 'figure'];
        case 'centre-place': return [{ words: ['from'], kind: 'word' }, neighbours, 'figure'];
        case 'wall-lengths': return [{ words: walls, kind: 'wall' }, 'figure'];
        case 'walls': return [{ words: choices, kind: 'wall' }];
        case 'choice': return [{ words: key === 'hinge' ? neighbourWalls(raw, fact.scope) : choices, kind: choices.includes('front') ? 'wall' : 'word' }];
        case 'choices': case 'flag': return [{ words: choices, kind: 'word' }];
        case 'supply': case 'supplies': return ['figure', { words: choices, kind: 'word' }];
        case 'price': return own.some(token => token.image === 'each') ? ['figure', { words: ['per', 'each'], kind: 'word' }]
            : ['figure', { words: ['per', 'each'], kind: 'word' }, { words: ['ft', 'm', 'ft2', 'm2', 'each'], kind: 'word' }];
        case 'tariff': return ['figure', { words: ['per'], kind: 'word' }, { words: ['kWh'], kind: 'word' }];
        case 'density': return ['figure', { words: ['per'], kind: 'word' }, { words: ['m3', 'ft3'], kind: 'word' }];
        case 'reference': case 'references': return ['name'];
        case 'layer': return ['name', 'figure'];
        case 'text': case 'date': return ['other'];
        default: return ['figure'];
    }
}

/** Words, names, units and the parts of a calculation that can stand at one place of a value. */
export function completeValue(raw: RawText, spot: ValueSpot, offset: number, sight: Sight): Offer[] {
    const { own, behind, others } = phraseAround(spot.before, spot.after);
    const at = { start: spot.current?.startOffset ?? offset, end: spot.current ? endOf(spot.current) : offset };
    const last = own.at(-1);
    const terms = termsOf(own);
    const following = termsOf(behind);
    const base = wantedAt(spot);
    const term = terms.at(-1) ?? [];
    const place = expressionPlace(term, raw.types);
    const slots = slotsOf(spot, raw, own);
    const isOpen = term.length > 0 && (place.levels.length > 1 || place.expects === 'operand');
    if (isOpen) {
        const here = slots[terms.length - 1];
        const words = typeof here === 'object' ? here.words : [];
        const wanted = here === 'figure' ? base : typeof here === 'object' ? 'word' : undefined;
        return wanted === undefined ? [] : completeExpression({ raw, fact: spot.fact, offset, at, sight, base: wanted, place, behind, words });
    }
    if (last && behind.length === 0 && last.tokenType === raw.types.number && terms.length <= 1 && base !== 'any') return completeUnits(spot, last, at);
    const joined = joiningWord(spot.property.type.kind);
    const goesOn = term.length > 0 && base !== undefined && slots[terms.length - 1] === 'figure' ? completeExpression({ raw, fact: spot.fact, offset, at, sight, base, place, behind }) : [];
    if (joined && terms.length === 1 && behind.length === 0 && !own.some(token => token.image === joined)) return [word(joined, '', 'to the second figure', at), ...goesOn];
    const slot = slots[terms.length];
    const isRoom = slots.length >= terms.length + 1 + following.length && following.every((one, i) => fits(slots[terms.length + 1 + i], one[0], raw));
    if (slot === undefined || slot === 'other' || !isRoom) return goesOn;
    const start = expressionPlace([], raw.types);
    if (slot === 'figure') {
        return base === undefined ? goesOn : [...goesOn, ...completeExpression({ raw, fact: spot.fact, offset, at, sight, base, place: start, behind, words: wordsOfValue(spot, raw, sight, offset) }).map(offer => ({ ...offer, isQuiet: true as const }))];
    }
    const used = new Set(others.map(token => token.image));
    if (slot !== 'name') {
        const holding = valuesInSight(raw, spot.fact.scope, offset, sight).filter(value => holdsOneOf(value, slot));
        return [
            ...slot.words.filter(candidate => !used.has(candidate)).map(candidate => word(candidate, describeChoice(candidate), spot.property.doc, at, slot.kind)),
            ...holding.map(value => fromValue(value, at)),
        ];
    }
    const self = spot.fact.scope.header ? headerParts(raw, spot.fact.scope.header).name?.image : undefined;
    const kinds = spot.property.type.refersTo ?? [];
    const names = sight.names(kinds, offset).filter(({ name }) => name !== self && !used.has(name));
    const seen = new Set<string>();
    return [
        ...names.filter(({ name }) => !seen.has(name) && seen.add(name)).map(({ name, kind, title, from }): Offer => ({
            ...at, label: name, kind: 'name', text: name, isSnippet: false, order: 0, detail: [spoken(kind), title && `“${title}”`].filter(Boolean).join(' '),
            doc: from === undefined ? 'In this file.' : `From ${from}.`,
        })),
        ...valuesInSight(raw, spot.fact.scope, offset, sight).filter(value => kinds.includes(value.holds ?? '') || (value.value?.kind === 'word' && names.some(({ name }) => value.value?.kind === 'word' && name === value.value.word))).map(value => fromValue(value, at)),
    ];
}

/** A `let` or parameter that holds one of the words of a place, as far as that is known. */
function holdsOneOf({ value, holds, sort }: SeenValue, slot: { readonly words: readonly string[]; readonly kind: 'word' | 'wall' }): boolean {
    if (value) return (value.kind === 'word' && slot.words.includes(value.word)) || (value.kind === 'flag' && slot.words.includes('yes'));
    return slot.kind === 'wall' ? holds === 'wall' : sort === 'flag' ? slot.words.includes('yes') : false;
}
export const fromValue = (value: SeenValue, at: { readonly start: number; readonly end: number }): Offer => ({
    ...at, label: value.name, kind: 'value', text: value.name, isSnippet: false, order: 1,
    detail: value.value?.kind === 'word' ? value.value.word : value.text, doc: [value.doc, `\`${value.is} ${value.name}${value.is === 'let' ? ' =' : ' takes'} ${value.text}\``].filter(Boolean).join('\n\n'),
});

/** What the figures of a value are; a parameter's bounds are of what it takes. */
function wantedAt({ property, fact, key }: ValueSpot): Wanted | undefined {
    if (fact.scope.kind !== 'parameter') return wantedBy(property.type.kind);
    if (property.type.kind !== 'value' && property.type.kind !== 'values') return wantedBy(property.type.kind);
    const takes = takesIn(fact.scope);
    if (takes === 'count') return 'number';
    const isFigure = ['length', 'number', 'power', 'voltage', 'current', 'temperature'].includes(takes);
    return isFigure ? takes as Wanted : key === 'least' || key === 'most' ? undefined : 'word';
}
const takesIn = (scope: RawScope): string => scope.facts.find(({ key }) => key?.image === 'takes')?.tokens[1]?.image ?? '';

/** Words that can be the value of a parameter. */
function wordsOfValue({ fact, property }: ValueSpot, raw: RawText, sight: Sight, offset: number): readonly string[] {
    if (fact.scope.kind !== 'parameter' || (property.type.kind !== 'value' && property.type.kind !== 'values')) return [];
    const allowed = property.type.kind === 'value' ? fact.scope.facts.find(one => one.key?.image === 'one_of')?.tokens.slice(1).filter(token => isWordToken(token, raw.types)).map(({ image }) => image) : undefined;
    return (allowed ?? wordsTaken(takesIn(fact.scope), sight, offset)).filter(word => !fact.tokens.some(token => token.image === word && isWordToken(token, raw.types)));
}
/** Words a parameter of some kind can be given. */
export const wordsTaken = (takes: string, sight: Sight, offset: number): readonly string[] =>
    takes === 'wall' ? walls : takes === 'flag' ? ['yes', 'no'] : isBlockKind(takes) ? [...new Set(sight.names([takes], offset).map(({ name }) => name))] : [];

function fits(slot: Slot | undefined, token: Token | undefined, raw: RawText): boolean {
    if (!slot || !token) return false;
    // A name may stand for a figure, and a word of the language for itself only.
    if (slot === 'figure') return !isWordToken(token, raw.types) || !['from', 'per', 'to', 'x', ...walls].includes(token.image);
    return (slot === 'name' || typeof slot === 'object') === isWordToken(token, raw.types);
}

const joiningWord = (kind: ValueKind): string | undefined =>
    kind === 'size' ? 'x' : kind === 'length-range' || kind === 'volume-range' ? 'to' : undefined;

export const word = (label: string, detail: string, doc: string, at: { start: number; end: number }, kind: Offer['kind'] = 'word'): Offer =>
    ({ ...at, label, kind, text: label, isSnippet: false, order: 0, detail, doc });

const unitsByKind: Partial<Record<ValueKind, readonly string[]>> = {
    power: ['kW', 'W'], voltage: ['V'], supply: ['V'], supplies: ['V'], current: ['A'], mass: ['lb', 'kg'], density: ['kg', 'lb'], temperature: ['degF', 'degC'],
    area: ['ft2', 'm2'], volume: ['ft3', 'm3'], 'volume-range': ['ft3', 'm3'], time: ['min', 'h'], pressure: ['psi'], tariff: ['USD', 'CAD', 'EUR', 'GBP'], price: ['USD', 'CAD', 'EUR', 'GBP'],
    number: [], count: [], percent: [], text: [], date: [], choice: [], choices: [], flag: [], walls: [], reference: [], references: [],
};

/** Units of a bare figure; an inch or foot mark only where it would touch its digit. */
function completeUnits({ property, current }: ValueSpot, figure: Token, at: { start: number; end: number }): Offer[] {
    const known = unitsByKind[property.type.kind] ?? lengthUnits;
    const isTouching = current === undefined ? endOf(figure) === at.start : touches(figure, current);
    const isLength = known === lengthUnits;
    const marks = isLength && isTouching && current === undefined ? [['"', 'inches'], ['\'', 'feet']] as const : [];
    const unit = (label: string, text: string, detail: string): Offer => ({ ...at, label, kind: 'unit', text, isSnippet: false, order: 0, detail, doc: `${figure.image} ${detail || label}` });
    return [...marks.map(([mark, name]) => unit(mark, mark, name)), ...known.map(name => unit(name, isTouching ? ` ${name}` : name, ''))];
}
