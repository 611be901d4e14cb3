import { lengthUnits } from '../core/quantity.js';
import { endOf, touches, type Token } from '../syntax/token-list.js';
import type { ValueKind } from '../vocabulary/values.js';
import { definitionOf } from '../vocabulary/index.js';
import { describeChoice, kindWords } from './describe.js';
import { oneOf, type Offer, type Sight } from './offer.js';
import { isWordToken, type RawText } from './raw-facts.js';
import { neighbourWalls, walls } from './samples.js';
import { headerParts, phraseAround, termsOf, type Spot } from './spot.js';

type ValueSpot = Extract<Spot, { kind: 'value' }>;
type HeaderSpot = Extract<Spot, { kind: 'header' }>;
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
        case 'density': return ['figure', { words: ['per'], kind: 'word' }, { words: ['m3', 'ft3'], kind: 'word' }];
        case 'reference': case 'references': return ['name'];
        case 'layer': return ['name', 'figure'];
        case 'text': case 'date': return ['other'];
        default: return ['figure'];
    }
}

/** Words, names and units that can stand at one place of a value. */
export function completeValue(raw: RawText, spot: ValueSpot, offset: number, sight: Sight): Offer[] {
    const { own, behind, others } = phraseAround(spot.before, spot.after);
    const at = { start: spot.current?.startOffset ?? offset, end: spot.current ? endOf(spot.current) : offset };
    const last = own.at(-1);
    const terms = termsOf(own);
    const following = termsOf(behind);
    if (last && behind.length === 0 && last.tokenType === raw.types.number && terms.length <= 1) return completeUnits(spot, last, at);
    const joined = joiningWord(spot.property.type.kind);
    if (joined && terms.length === 1 && behind.length === 0 && !own.some(token => token.image === joined)) return [word(joined, '', 'to the second figure', at)];
    if (last && (/^[-+*/.(]$/.test(last.image) || last.image === joined)) return [];
    const slots = slotsOf(spot, raw, own);
    const slot = slots[terms.length];
    const isRoom = slots.length >= terms.length + 1 + following.length && following.every((term, i) => fits(slots[terms.length + 1 + i], term[0], raw));
    if (slot === undefined || slot === 'figure' || slot === 'other' || !isRoom) return [];
    const used = new Set(others.map(token => token.image));
    if (slot !== 'name') {
        return slot.words.filter(candidate => !used.has(candidate)).map(candidate => word(candidate, describeChoice(candidate), spot.property.doc, at, slot.kind));
    }
    const self = spot.fact.scope.header ? headerParts(raw, spot.fact.scope.header).name?.image : undefined;
    return sight.names(spot.property.type.refersTo ?? [], offset).filter(({ name }) => name !== self && !used.has(name)).map(({ name, kind, title, from }) => ({
        ...at, label: name, kind: 'name', text: name, isSnippet: false, order: 0, detail: [kindWords(kind), title && `“${title}”`].filter(Boolean).join(' '),
        doc: from === undefined ? 'In this file.' : `From ${from}.`,
    }));
}

function fits(slot: Slot | undefined, token: Token | undefined, raw: RawText): boolean {
    if (!slot || !token) return false;
    return (slot === 'name' || typeof slot === 'object') === isWordToken(token, raw.types);
}

const joiningWord = (kind: ValueKind): string | undefined =>
    kind === 'size' ? 'x' : kind === 'length-range' || kind === 'volume-range' ? 'to' : undefined;

const word = (label: string, detail: string, doc: string, at: { start: number; end: number }, kind: Offer['kind'] = 'word'): Offer =>
    ({ ...at, label, kind, text: label, isSnippet: false, order: 0, detail, doc });

const unitsByKind: Partial<Record<ValueKind, readonly string[]>> = {
    power: ['kW', 'W'], voltage: ['V'], supply: ['V'], supplies: ['V'], current: ['A'], mass: ['lb', 'kg'], density: ['kg', 'lb'], temperature: ['degF', 'degC'],
    area: ['ft2', 'm2'], volume: ['ft3', 'm3'], 'volume-range': ['ft3', 'm3'], time: ['min', 'h'], price: ['USD', 'CAD', 'EUR', 'GBP'],
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

/** The word `on` and the walls of a header. Names are for the designer to find. */
export function completeHeader(raw: RawText, spot: HeaderSpot, offset: number): Offer[] {
    const { block, before, after, current } = spot;
    const definition = definitionOf(block);
    if (definition.walls === 'none') return [];
    const at = { start: current?.startOffset ?? offset, end: current ? endOf(current) : offset };
    const on = before.findIndex(token => token.image === 'on');
    if (on < 0) {
        const hasName = before[0] !== undefined && isWordToken(before[0], raw.types);
        if (after.length > 0 || (definition.name === 'required' && !hasName)) return [];
        const doc = definition.walls === 'several' ? 'The walls it stands on stand behind this word.' : 'The wall it stands on stands behind this word.';
        return [{ ...word('on', 'and its wall', doc, at), text: `on ${oneOf(1, walls)}`, isSnippet: true }];
    }
    const last = before.at(-1);
    const isPlace = last?.image === 'on' || (last?.image === ',' && definition.walls === 'several');
    if (!isPlace || (after[0] && isWordToken(after[0], raw.types))) return [];
    const used = new Set([...before, ...after].map(token => token.image));
    return walls.filter(wall => !used.has(wall)).map(wall => word(wall, 'wall', `The ${wall} wall.`, at, 'wall'));
}
