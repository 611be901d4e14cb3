import type { Length } from '../core/length.js';
import { showLength } from '../core/show.js';
import type { Span } from '../core/span.js';
import type { Block, Given, Link, LinkedLayer } from '../model/block.js';
import { propertiesOf } from '../vocabulary/index.js';
import { showDate, type CalendarDate, type Density, type LengthRange, type NumberRange, type Place, type Price, type Size, type Supply, type Tariff, type ValueKind, type WallLength } from '../vocabulary/values.js';
import type { ModelLength, ModelPlainValue, ModelValue } from './model-schema.js';

/** Text in inches whatever the job is written in, so that equal lengths are equal bytes. */
export const modelLength = (length: Length): ModelLength => ({ ticks: length, text: showLength(length, 'in') });
const ofLength = (length: Length): ModelPlainValue => ({ kind: 'length', ...modelLength(length) });
const ofAmount = (value: number, unit: string): ModelPlainValue => ({ kind: 'amount', value, unit });
const ofWord = (word: string): ModelPlainValue => ({ kind: 'word', word });
const ofLink = ({ name }: Link): ModelPlainValue => ({ kind: 'reference', name });
const ofList = (items: readonly ModelPlainValue[]): ModelValue => ({ kind: 'list', items: [...items] });
export const byText = (a: string, b: string): number => a < b ? -1 : a > b ? 1 : 0;

/** The unit each kind of amount is kept in. */
const units: Partial<Record<ValueKind, string>> = { power: 'W', voltage: 'V', current: 'A', mass: 'kg', temperature: 'degC', area: 'm2', volume: 'm3', number: '', count: '', percent: '%', time: 's', pressure: 'Pa' };

type Piece = readonly [part: string | undefined, value: ModelValue];

/** A given value as its pieces, each under the word the language knows it by: `width` of a size, `wall` of a place. */
function pieces(kind: ValueKind, given: unknown): readonly Piece[] {
    const one = (value: ModelValue): readonly Piece[] => [[undefined, value]];
    switch (kind) {
        case 'length': return one(ofLength(given as Length));
        case 'lengths': return one(ofList((given as readonly Length[]).map(ofLength)));
        case 'size': { const { width, height } = given as Size; return [['width', ofLength(width)], ['height', ofLength(height)]]; }
        case 'length-range': { const { from, to } = given as LengthRange; return [['from', ofLength(from)], ['to', ofLength(to)]]; }
        case 'volume-range': { const { from, to } = given as NumberRange; return [['from', ofAmount(from, 'm3')], ['to', ofAmount(to, 'm3')]]; }
        case 'place': case 'centre-place': { const { wall, distance } = given as Place; return [['wall', ofWord(wall)], ['distance', ofLength(distance)]]; }
        case 'wall-lengths': return (given as readonly WallLength[]).map(({ wall, length }): Piece => [wall, ofLength(length)]);
        case 'layer': { const { of, thickness } = given as LinkedLayer<never>; return [[undefined, ofLink(of)], ['thickness', ofLength(thickness)]]; }
        case 'number': case 'count': case 'percent': case 'power': case 'voltage': case 'current': case 'mass': case 'temperature': case 'area': case 'volume': case 'time': case 'pressure':
            return one(ofAmount(given as number, units[kind] ?? ''));
        case 'text': return one({ kind: 'text', text: given as string });
        case 'choice': return one(ofWord(given as string));
        // Their order says nothing.
        case 'choices': case 'walls': return one(ofList([...new Set(given as readonly string[])].sort(byText).map(ofWord)));
        case 'flag': case 'holds': return one({ kind: 'flag', flag: given as boolean });
        case 'date': return one({ kind: 'date', date: showDate(given as CalendarDate) });
        case 'supply': { const { volts, phases } = given as Supply; return [['volts', ofAmount(volts, 'V')], ['phases', ofWord(`${phases}_phase`)]]; }
        case 'supplies': return one(ofList((given as readonly Supply[]).map(({ volts, phases }) => `${volts} V ${phases}_phase`).sort(byText).map(text => ({ kind: 'text', text }))));
        case 'price': { const { minor, currency, per } = given as Price; return [[undefined, ofAmount(minor / 100, currency)], ['per', ofWord(per)]]; }
        case 'tariff': { const { perKwh, currency } = given as Tariff; return one(ofAmount(perKwh, `${currency}/kWh`)); }
        case 'density': return one(ofAmount((given as Density).kgPerM3, 'kg/m3'));
        case 'reference': return one(ofLink(given as Link));
        case 'references': return one(ofList((given as readonly Link[]).map(ofLink).sort((a, b) => a.kind === 'reference' && b.kind === 'reference' ? byText(a.name, b.name) : 0)));
        // These stand in parameters and house rules only, which are no part of a job.
        case 'value': case 'values': case 'condition': return [];
        default: return kind satisfies never;
    }
}

/** A fact with its path and the text that says it. */
export type PlacedFact = readonly [path: string, value: ModelValue, at: Span];

/**
 * What a block says of itself, not what stands in it.
 * @param path the block's own, such as `upper`
 */
export function factsOfBlock(block: Block, path: string): readonly PlacedFact[] {
    const own: PlacedFact = [path, {
        kind: 'block', block: block.kind, ...(block.title && block.kind !== 'job' && { title: block.title.value }), walls: block.walls.map(({ value }) => value),
    }, block.head];
    const values = Object.entries<Given<unknown> | undefined>(block.values);
    const known = propertiesOf(block.kind);
    return [own, ...values.flatMap(([key, given]) => {
        const type = known.get(key)?.property.type;
        // A block that is here belongs here; what decided that is no part of the job.
        if (!type || !given || key === 'when') return [];
        return pieces(type.kind, given.value).map(([part, value]) => [part === undefined ? `${path}.${key}` : `${path}.${key}.${part}`, value, given.fact] as const);
    })];
}

/** Names of blocks among their neighbours: their own, else their kind, numbered from the second on, as everywhere in the product. */
export function namedBlocks(blocks: readonly Block[]): readonly (readonly [string, Block])[] {
    const taken = new Map<string, number>();
    return blocks.map(block => {
        const name = block.name?.value ?? block.kind;
        const times = (taken.get(name) ?? 0) + 1;
        taken.set(name, times);
        return [times === 1 ? name : `${name}_${times}`, block] as const;
    });
}

/** Every fact of a block and of the blocks in it. */
export const factsWithin = (block: Block, path: string): readonly PlacedFact[] =>
    [...factsOfBlock(block, path), ...namedBlocks(block.children).flatMap(([name, child]) => factsWithin(child, `${path}.${name}`))];
