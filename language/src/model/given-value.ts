import type { Length } from '../core/length.js';
import { walls } from '../core/geometry.js';
import { parseLiteral } from '../core/literal.js';
import { dimensions, sameDimension } from '../core/quantity.js';
import { ofQuantity, ofAmount, ofFlag, ofLength, ofList, ofText, ofWord, type Value } from '../core/value.js';
import { showDate, type CalendarDate, type Density, type LengthRange, type NumberRange, type Place, type Price, type Size, type Supply, type Tariff, type ValueKind, type WallLength } from '../vocabulary/values.js';
import type { Property } from '../vocabulary/block.js';
import { blocksIn, isBlockKind, propertiesOf } from '../vocabulary/index.js';
import type { Block, Given, Link, LinkedLayer } from './block.js';

/** One pound-force on a square inch. */
const pascalsPerPsi = 0.45359237 * 9.80665 / 0.00064516;

/** The unit each kind of amount is kept in. */
const units: Partial<Record<ValueKind, string>> = { power: 'W', voltage: 'V', current: 'A', mass: 'kg', temperature: 'degC', area: 'm2', volume: 'm3', number: '', count: '', percent: '' };

/** A value as it was given, for a name such as `upper.depth`; `part` names a piece of it, such as `width` of a size. Nothing when there is none. */
export function givenValue(kind: ValueKind, given: unknown, part: string | undefined): Value | undefined {
    switch (kind) {
        case 'length': return part === undefined ? ofLength(given as Length) : undefined;
        case 'lengths': return part === undefined ? ofList((given as readonly Length[]).map(length => ofLength(length))) : undefined;
        case 'size': { const { width, height } = given as Size; return part === 'width' ? ofLength(width) : part === 'height' ? ofLength(height) : undefined; }
        case 'length-range': { const { from, to } = given as LengthRange; return part === 'from' ? ofLength(from) : part === 'to' ? ofLength(to) : undefined; }
        case 'volume-range': { const { from, to } = given as NumberRange; return part === 'from' ? ofAmount(from, 'm3') : part === 'to' ? ofAmount(to, 'm3') : undefined; }
        case 'place': case 'centre-place': { const { wall, distance } = given as Place; return part === 'wall' ? ofWord(wall) : part === undefined || part === 'distance' ? ofLength(distance) : undefined; }
        case 'wall-lengths': return ofWallLengths(given as readonly WallLength[], part);
        case 'layer': return part === 'thickness' ? ofLength((given as LinkedLayer<never>).thickness) : undefined;
        case 'number': case 'count': case 'percent': case 'power': case 'voltage': case 'current': case 'mass': case 'temperature': case 'area': case 'volume':
            return part === undefined ? ofAmount(given as number, units[kind] ?? '') : undefined;
        case 'time': return part === undefined ? ofAmount((given as number) / 60, 'min') : undefined;
        case 'pressure': return part === undefined ? ofAmount((given as number) / pascalsPerPsi, 'psi') : undefined;
        case 'text': return ofText(given as string);
        case 'choice': return ofWord(given as string);
        case 'choices': case 'walls': return ofList((given as readonly string[]).map(ofWord));
        case 'flag': case 'holds': return ofFlag(given as boolean);
        case 'date': return { kind: 'date', date: showDate(given as CalendarDate) };
        case 'supply': { const { volts, phases } = given as Supply; return part === 'volts' ? ofAmount(volts, 'V') : part === 'phases' ? ofWord(`${phases}_phase`) : undefined; }
        case 'price': { const { minor, currency } = given as Price; return part === undefined ? ofAmount(minor / 100, currency) : undefined; }
        case 'tariff': { const { perKwh, currency } = given as Tariff; return part === undefined ? ofAmount(perKwh, currency) : undefined; }
        case 'density': return ofAmount((given as Density).kgPerM3, '');
        case 'reference': return part === undefined ? ofWord((given as Link).name) : undefined;
        case 'references': return part === undefined ? ofList((given as readonly Link[]).map(({ name }) => ofWord(name))) : undefined;
        case 'value': return part === undefined ? given as Value : undefined;
        case 'values': return part === undefined ? ofList(given as readonly Value[]) : undefined;
        case 'supplies': case 'condition': return undefined;
        default: return kind satisfies never;
    }
}
const ofWallLengths = (given: readonly WallLength[], part: string | undefined): Value | undefined => {
    const found = given.find(({ wall }) => wall === part);
    return found && ofLength(found.length);
};

export type GivenFound = { readonly kind: 'value'; readonly value: Value } | { readonly kind: 'absent' } | { readonly kind: 'unknown'; readonly known: readonly string[] };

/** What a block was given under a path of keys; a reference is followed, so `stove.model.power` reaches the catalogue. */
export function givenIn(block: Block, path: readonly string[]): GivenFound {
    const [key, ...rest] = path;
    if (key === undefined) return { kind: 'value', value: ofWord(block.name?.value ?? block.kind) };
    if (key === 'name' && rest.length === 0) return { kind: 'value', value: ofWord(block.name?.value ?? block.kind) };
    if (key === 'wall' && rest.length === 0 && block.walls.length === 1 && block.walls[0]) return { kind: 'value', value: ofWord(block.walls[0].value) };
    if (key === 'walls' && rest.length === 0 && block.walls.length > 0) return { kind: 'value', value: ofList(block.walls.map(({ value }) => ofWord(value))) };
    const child = block.children.find(one => one.name?.value === key);
    if (child) return givenIn(child, rest);
    if (isBlockKind(key) && blocksIn(block.kind).includes(key)) {
        const all = block.children.filter(one => one.kind === key).map(one => givenIn(one, rest));
        const unknown = all.find(one => one.kind === 'unknown');
        return unknown ? below(key, unknown) : { kind: 'value', value: ofList(all.flatMap(one => one.kind === 'value' ? [one.value] : [])) };
    }
    const known = propertiesOf(block.kind).get(key);
    if (!known) return { kind: 'unknown', known: [...propertiesOf(block.kind).keys()] };
    const { kind } = known.property.type;
    const given = (block.values as Readonly<Record<string, Given<unknown>>>)[known.key];
    if (!given) {
        if (known.property.takenFrom !== undefined && !block.written.has(known.key)) return givenIn(block, [...known.property.takenFrom.split('.'), ...rest]);
        const otherwise = rest.length === 0 && !block.written.has(known.key) ? defaultOf(known.property) : undefined;
        return otherwise ? { kind: 'value', value: otherwise } : { kind: 'absent' };
    }
    if (kind === 'reference' && rest.length > 0) { const linked = (given.value as Link).block; return linked ? below(key, givenIn(linked, rest)) : { kind: 'absent' }; }
    if (kind === 'layer' && rest[0] !== 'thickness') { const { of } = given.value as LinkedLayer<never>; return rest.length === 0 ? { kind: 'value', value: ofWord((of as Link).name) } : (of as Link).block ? below(key, givenIn((of as Link).block as Block, rest)) : { kind: 'absent' }; }
    const value = rest.length <= 1 ? givenValue(kind, given.value, rest[0]) : undefined;
    return value ? { kind: 'value', value } : { kind: 'unknown', known: (parts[kind] ?? []).map(part => `${key}.${part}`) };
}

/** Names to choose from below a reference are called by the way that leads there. */
const below = (key: string, found: GivenFound): GivenFound => found.kind === 'unknown' ? { kind: 'unknown', known: found.known.map(name => `${key}.${name}`) } : found;

/** The only words a fact of some type can have; nothing where it takes figures, names or texts. */
export const wordsOf = ({ kind, choices }: Property['type']): readonly string[] | undefined => kind === 'choice' || kind === 'flag' || kind === 'choices' || kind === 'walls' ? choices : undefined;

/** Pieces of values that cannot be named as a whole. */
export const parts: Readonly<Partial<Record<ValueKind, readonly string[]>>> = {
    size: ['width', 'height'], 'length-range': ['from', 'to'], 'volume-range': ['from', 'to'], layer: ['thickness'], supply: ['volts', 'phases'], 'wall-lengths': walls,
};

/** What holds without a fact, where the vocabulary says it in a word or a figure of the fact's own kind. */
function defaultOf({ type, otherwise: words }: Property): Value | undefined {
    if (words === undefined) return undefined;
    // What stands behind the comma says why: 6", common practice.
    const [otherwise = ''] = words.split(',');
    switch (type.kind) {
        case 'flag': return otherwise === 'no' || otherwise === 'yes' ? ofFlag(otherwise === 'yes') : undefined;
        case 'choice': return type.choices?.includes(otherwise) ? ofWord(otherwise) : undefined;
        case 'length': { const quantity = parseLiteral(otherwise); return quantity && sameDimension(quantity.dimension, dimensions.length) ? ofQuantity(quantity) : undefined; }
        case 'number': case 'count': case 'percent': return otherwise === 'one' ? ofAmount(1, '') : /^\d+(?:\.\d+)?$/.test(otherwise) ? ofAmount(Number(otherwise), '') : undefined;
        default: return undefined;
    }
}
