import { parseLiteral } from '../core/literal.js';
import { ofQuantity, showValue } from '../core/value.js';
import { functions, isFunction } from '../model/functions.js';
import type { Property } from '../vocabulary/block.js';
import { definitionOf, isBlockKind, propertiesOf } from '../vocabulary/index.js';
import type { Token } from '../syntax/token-list.js';
import type { ExpressionPlace } from './expression-place.js';
import { isFigure, sortOf, type SortOfValue, type Wanted } from './kinds-of-value.js';
import { valueOfPath, type SeenHead, type SeenValue } from './names-in-sight.js';
import type { SeenJob } from './offer.js';
import { isWordToken, type RawText } from './raw-facts.js';
import { pathsUnder } from './paths-in-sight.js';
import { isMetricText, walls } from './samples.js';

/** Everything an expression at some place can name. */
export interface ExpressionSight {
    readonly raw: RawText;
    readonly values: readonly SeenValue[];
    readonly heads: readonly SeenHead[];
    readonly job: SeenJob | undefined;
    /** The kind a house rule asks of, one by one: there it is a single thing. */
    readonly each: string | undefined;
}

/** What is wanted at the end of an expression, and whether a list may stand there. */
export interface WantedHere {
    readonly wanted: Wanted;
    readonly mayBeList: boolean;
    /** Words that are compared with, such as the choices of a property. */
    readonly words: readonly string[];
    /** Whether conditions are read here, so that comparing makes sense. */
    readonly isCondition: boolean;
}

export function wantedHere(place: ExpressionPlace, base: Wanted, sight: ExpressionSight): WantedHere {
    let here: WantedHere = { wanted: base, mayBeList: false, words: [], isCondition: base === 'any' || base === 'flag' };
    for (const { bracket, choice, left, isScaled } of place.levels) {
        if (bracket?.name) here = { ...here, ...insideCall(bracket.name.image, here.wanted), words: [] };
        if (choice === 'if') here = { ...here, wanted: 'any', mayBeList: false, words: [], isCondition: true };
        else if (choice) here = { ...here, isCondition: base === 'flag' };
        if (left) here = { ...here, wanted: sortOfTokens(left, sight) ?? 'any', words: wordsComparedWith(left, sight) };
        else if (isScaled) here = { ...here, wanted: 'figure', words: [] };
    }
    return here;
}

function insideCall(name: string, outer: Wanted): Pick<WantedHere, 'wanted' | 'mayBeList' | 'isCondition'> {
    switch (name) {
        case 'count': return { wanted: 'list', mayBeList: true, isCondition: true };
        case 'any': case 'all': case 'not': return { wanted: 'any', mayBeList: name !== 'not', isCondition: true };
        case 'opposite': return { wanted: 'word', mayBeList: false, isCondition: false };
        default: return { wanted: outer === 'any' ? 'figure' : outer, mayBeList: isFunction(name) && functions[name]?.takesList === true, isCondition: false };
    }
}

/** Tokens of a name with points, or nothing. */
function pathOf(tokens: readonly Token[], raw: RawText): readonly string[] | undefined {
    const isPath = tokens.length % 2 === 1 && tokens.every((token, i) => i % 2 === 1 ? token.image === '.' : isWordToken(token, raw.types));
    return isPath ? tokens.filter((_, i) => i % 2 === 0).map(({ image }) => image) : undefined;
}

/** What sort some tokens come to, where that is plain. */
export function sortOfTokens(tokens: readonly Token[], sight: ExpressionSight): SortOfValue | undefined {
    const [first] = tokens;
    if (!first) return undefined;
    const { raw } = sight;
    if (tokens.length === 1 && !isWordToken(first, raw.types)) {
        if (first.tokenType === raw.types.text) return 'text';
        const quantity = parseLiteral(first.image);
        return quantity && sortOf(ofQuantity(quantity));
    }
    const path = pathOf(tokens, raw);
    if (!path) return first.image === 'count' ? 'number' : ['any', 'all', 'not'].includes(first.image) ? 'flag' : first.image === 'opposite' ? 'word' : undefined;
    const value = sight.each === path[0] ? undefined : valueOfPath(path, sight.job);
    if (value) return sortOf(value);
    const [name, ...rest] = path;
    if (rest.length === 0) return sight.values.find(one => one.name === name)?.sort;
    const head = sight.heads.find(one => one.name === name);
    const below = head && (pathsUnder(head.kind, rest.slice(0, -1), head.block).find(one => one.path === rest.at(-1)) ?? pathsUnder(head.kind, []).find(one => one.path === rest.join('.')));
    return below?.sort;
}

/** The property a name with points leads to. */
export function propertyOfPath(kind: string, rest: readonly string[]): Property | undefined {
    const [key, ...further] = rest;
    const known = key === undefined ? undefined : propertiesOf(kind).get(key)?.property;
    if (!known || further.length === 0) return known;
    const [target] = known.type.refersTo ?? [];
    return target === undefined ? undefined : propertyOfPath(target, further);
}

/** Words a name can be equal to: choices of its property, walls, or values its parameter allows. */
export function wordsComparedWith(left: readonly Token[], sight: ExpressionSight): readonly string[] {
    const path = pathOf(left, sight.raw);
    if (!path) return left[0]?.image === 'opposite' ? walls : [];
    const [name = '', ...rest] = path;
    if (rest.length === 0) {
        const value = sight.values.find(one => one.name === name);
        const known = value?.value?.kind === 'word' ? value.value.word : '';
        return value?.holds === 'wall' || (walls as readonly string[]).includes(known) ? walls : value?.sort === 'flag' ? ['yes', 'no'] : [];
    }
    const head = sight.heads.find(one => one.name === name);
    if (!head) return [];
    if (rest.length === 1 && rest[0] === 'wall') return walls;
    if (rest.at(-1) === 'wall') return walls;
    const property = propertyOfPath(head.kind, rest);
    if (property?.type.choices) return property.type.choices;
    return sortOfTokens(left, sight) === 'flag' ? ['yes', 'no'] : [];
}

const samples: Readonly<Record<string, readonly [string, string]>> = {
    length: ['12"', '300 mm'], number: ['1', '1'], power: ['1 kW', '1 kW'], voltage: ['240 V', '230 V'], current: ['16 A', '16 A'], mass: ['10 lb', '5 kg'], temperature: ['68 degF', '20 degC'],
    area: ['10 ft2', '1 m2'], volume: ['100 ft3', '3 m3'], time: ['60 min', '60 min'], pressure: ['1000 psi', '1000 psi'], flag: ['yes', 'yes'],
};
/** A figure of some sort to type over; nothing where none is plain. */
export const sampleOf = (wanted: Wanted | undefined, raw: RawText): string | undefined => samples[wanted === 'any' || wanted === 'figure' || wanted === 'list' ? 'number' : wanted ?? '']?.[isMetricText(raw) ? 1 : 0];

/** A condition that can stand anywhere, to type over. */
export function sampleCondition({ heads }: ExpressionSight): string {
    const kind = heads.find(({ isKind, kind: one }) => isKind && isBlockKind(one) && definitionOf(one).isRepeatable)?.kind;
    return kind === undefined ? '1 < 2' : `count(${kind}) > 1`;
}
export const isFigureWanted = (wanted: Wanted): boolean => wanted === 'any' || wanted === 'figure' || (wanted !== 'list' && !wanted.startsWith('list of') && isFigure(wanted));
export const shownValue = (value: SeenValue, { job }: ExpressionSight): string => value.value && job ? showValue(value.value, job.analysis.job.unit) : value.text;
