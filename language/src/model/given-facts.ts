import type { Length } from '../core/length.js';
import { showLength } from '../core/show.js';
import type { Span } from '../core/span.js';
import type { Wall } from '../core/geometry.js';
import type { Block, Given, Link, LinkedLayer } from './block.js';
import { propertiesOf, type BlockKind } from '../vocabulary/index.js';
import { showDate, type CalendarDate, type Density, type LengthRange, type NumberRange, type Place, type Price, type Size, type Supply, type Tariff, type ValueKind, type WallLength } from '../vocabulary/values.js';
import type { Job } from './job.js';

/** A length as exact ticks of 12.5 nm, and in inches for people. */
export interface FactLength { ticks: number; text: string }
/** A value of the job or its catalogues as data, without regard to how it was written. */
export type PlainFactValue =
    | { kind: 'length' } & FactLength
    | { kind: 'amount'; value: number; unit: string }
    | { kind: 'word'; word: string }
    | { kind: 'text'; text: string }
    | { kind: 'flag'; flag: boolean }
    | { kind: 'date'; date: string }
    | { kind: 'reference'; name: string };
export type FactValue = PlainFactValue | { kind: 'list'; items: PlainFactValue[] } | { kind: 'block'; block: BlockKind; title?: string; walls: Wall[] };

/** Text in inches whatever the job is written in, so that equal lengths are equal bytes. */
export const factLength = (length: Length): FactLength => ({ ticks: length, text: showLength(length, 'in') });
const ofLength = (length: Length): PlainFactValue => ({ kind: 'length', ...factLength(length) });
const ofAmount = (value: number, unit: string): PlainFactValue => ({ kind: 'amount', value, unit });
const ofWord = (word: string): PlainFactValue => ({ kind: 'word', word });
const ofLink = ({ name }: Link): PlainFactValue => ({ kind: 'reference', name });
const ofList = (items: readonly PlainFactValue[]): FactValue => ({ kind: 'list', items: [...items] });
export const byText = (a: string, b: string): number => a < b ? -1 : a > b ? 1 : 0;

/** The unit each kind of amount is kept in. */
const units: Partial<Record<ValueKind, string>> = { power: 'W', voltage: 'V', current: 'A', mass: 'kg', temperature: 'degC', area: 'm2', volume: 'm3', number: '', count: '', percent: '%', time: 's', pressure: 'Pa' };

type Piece = readonly [part: string | undefined, value: FactValue];

/** A given value as its pieces, each under the word the language knows it by: `width` of a size, `wall` of a place. */
function pieces(kind: ValueKind, given: unknown): readonly Piece[] {
    const one = (value: FactValue): readonly Piece[] => [[undefined, value]];
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
export type PlacedFact = readonly [path: string, value: FactValue, at: Span];

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

/** Facts of the job itself that name the paper, not the room. */
const isOfPaper = (path: string): boolean => path === 'job' || path === 'job.number' || path === 'job.revision';

/** Every fact of a job and its blocks, except those that only name it; sign-offs are no part of what it says. */
export function factsOfJob(job: Job): readonly PlacedFact[] {
    const blocks = job.block.children.filter(({ kind }) => kind !== 'variant' && kind !== 'sign_off');
    return [...factsOfBlock(job.block, 'job').filter(([path]) => !isOfPaper(path)), ...namedBlocks(blocks).flatMap(([name, block]) => factsWithin(block, name))];
}

/** Sign-offs by the revision they are of, whatever their order. A point would divide the path. */
export const factsOfSignOffs = (job: Job): readonly PlacedFact[] =>
    keyed(job.signOffs, ({ values }) => `sign_off ${(values.revision?.value ?? '').replaceAll('.', '_')}`, block => factsWithin(block, '').map(([path, value]) => [path, value]))
        .flatMap(([name, block]) => factsWithin(block, name));

/** Entries of catalogues the job reaches; two of one name in two catalogues are numbered by what they say. */
export function catalogueFacts(job: Job): readonly PlacedFact[] {
    const entries = catalogueEntries(job).map(block => ({ name: block.name?.value ?? block.kind, block }));
    return keyed(entries, ({ name }) => name, ({ name, block }) => factsWithin(block, name).map(([path, value]) => [path, value])).flatMap(([name, { block }]) => factsWithin(block, name));
}

/** Every catalogue entry a job depends on, in the order it is reached: what its blocks name, what those entries name, and so on. */
export function catalogueEntries(job: Job): readonly Block[] {
    const found = new Set<Block>();
    const visit = (block: Block): void => {
        for (const linked of linkedBlocks(block)) {
            if (found.has(linked)) continue;
            found.add(linked);
            visit(linked);
        }
        for (const child of block.children) visit(child);
    };
    visit(job.block);
    return [...found].filter(block => !isWithin(block, job.block));
}

const isWithin = (inner: Block, outer: Block): boolean =>
    inner.span.uri === outer.span.uri && inner.span.start >= outer.span.start && inner.span.end <= outer.span.end;

const linkedBlocks = (block: Block): readonly Block[] => Object.values(block.values as Readonly<Record<string, { readonly value: unknown } | undefined>>).flatMap(given => blocksOf(given?.value));

function blocksOf(value: unknown): readonly Block[] {
    if (Array.isArray(value)) return value.flatMap(blocksOf);
    if (typeof value !== 'object' || value === null) return [];
    if ('of' in value) return blocksOf(value.of);
    return isLink(value) && value.block ? [value.block] : [];
}

const isLink = (value: object): value is Link => 'block' in value && 'name' in value && 'span' in value;

/** Rows under keys of their own, in the order of the keys; what shares one is numbered in the order of what it says, which is no order of the text. */
export function keyed<T>(rows: readonly T[], keyOf: (row: T) => string, saysOf: (row: T) => unknown): readonly (readonly [string, T])[] {
    return [...grouped(rows, keyOf)].sort(([a], [b]) => byText(a, b)).flatMap(([key, same]) => same.map(row => [JSON.stringify(saysOf(row)), row] as const).sort(([a], [b]) => byText(a, b))
        .map(([, row], i) => [i === 0 ? key : `${key} (${i + 1})`, row] as const));
}

function grouped<T>(rows: readonly T[], keyOf: (row: T) => string): ReadonlyMap<string, readonly T[]> {
    const groups = new Map<string, T[]>();
    for (const row of rows) {
        const group = groups.get(keyOf(row));
        if (group) group.push(row); else groups.set(keyOf(row), [row]);
    }
    return groups;
}
