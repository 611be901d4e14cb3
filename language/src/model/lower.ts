import { spoken } from '../core/show.js';
import { nearestName } from '../core/nearest.js';
import type * as ast from '../syntax/generated/ast.js';
import { baseTermOf, nameOf } from '../syntax/words.js';
import { blocksIn, definitionOf, derivesFrom, isBlockKind, isJobLike, propertiesOf, type BlockKind } from '../vocabulary/index.js';
import { isStatement } from '../vocabulary/statements.js';
import { capital, reportMissing, reportRepeated, reportUnknownWord, showHeader } from './block-mistakes.js';
import { showBlock, type Block, type Given, type Link } from './block.js';
import { readHeader, reportHeader, type Header } from './header.js';
import type { Layer, LoweringContext, Winner } from './layers.js';
import { headSpan, insertPlace, keyOffset, keySpan, valueSpan } from './places.js';
import { readValue } from './read-value.js';

/** How a block is lowered. */
export interface Lowering {
    /** Whether what is missing is left to others: a series leaves to its jobs what it likes. */
    readonly isPartial?: boolean;
    /** The kind it counts as, when its text says another: a variant is a job. */
    readonly as?: BlockKind;
    /** Values of facts that are not written; they stand at the head of the block. Not for a block in part unread: what could not be read may say otherwise. */
    readonly defaults?: Readonly<Record<string, unknown>>;
}

/**
 * Lowers one block from its layers (one, mostly) and all in it. Never fails: what cannot be read is left out and reported, here or by the reading
 * before. Each text reports its own mistakes; what the whole lacks is reported at the last layer.
 */
export function lowerBlock(layers: readonly [Layer, ...Layer[]], kind: BlockKind, lowering: Lowering = {}): Block {
    const last = layers.at(-1) ?? layers[0];
    const { fact, context } = last;
    const { reading } = context;
    const isDamaged = layers.some(layer => layer.context.damaged.has(keyOffset(layer.fact)));
    const headers = layers.map(layer => readHeader(layer.fact, isBlockKind(layer.fact.key) ? layer.fact.key : kind, layer.context, layer.context.damaged.has(keyOffset(layer.fact))));
    const header = mergeHeaders(headers);
    const gathered = gather(layers, kind);
    let isWhole = gathered.isWhole && !isDamaged && headers.every(one => one.isWhole) && layers.every((layer, i) => layer.fact.braced || (headers[i]?.base && isJobLike(layer.fact.key)));
    if (!lowering.isPartial && !isDamaged && header.isWhole && reportHeader(fact, kind, header, reading)) isWhole = false;

    const owner = header.name?.value ?? kind;
    const values: Record<string, Given<unknown>> = {};
    for (const [key, { item, context: its, over }] of gathered.facts) {
        if (its.damaged.has(keyOffset(item))) { isWhole = false; continue; }
        const known = propertiesOf(kind).get(item.key) ?? propertiesOf(its === context ? fact.key : kind).get(item.key);
        if (!known) continue;
        const at = valueSpan(item, its.reading);
        const read = its.asking(`${owner}.${key}`, at, () => readValue({ fact: item, key: item.key, property: known.property, reading: its.reading, link: (word, kinds) => lowerLink(word, kinds, its) }));
        if (!read) {
            isWhole = false;
            // Who needs it is told apart from who does not only by looking: a ring of names is found that way.
            Object.defineProperty(values, key, { get: () => { its.missed(`${owner}.${key}`); return undefined; }, enumerable: false });
            continue;
        }
        values[key] = { value: read.value, span: at, fact: its.reading.spanOf(item), ...(read.unit && { unit: read.unit }), ...(over.length > 0 && { wonOver: over }) };
    }
    const children: Block[] = [];
    const leftOut: string[] = [];
    for (const group of gathered.blocks) {
        if (isOverrideOfNothing(group, layers, gathered.blocks)) { isWhole = false; continue; }
        const [{ fact: item, context: its }] = group;
        const kindOf = item.key as BlockKind;
        const base = its.baseOf(item);
        if (base === 'unknown') reportUnknownBase(item, its);
        const child = lowerBlock([...base === 'unknown' ? [] : base, ...group] as unknown as [Layer, ...Layer[]], kindOf, { isPartial: base === 'unknown' || lowering.isPartial === true || kind === 'series' || (kind === 'job' && !header.isWhole) });
        if (!group.every(layer => layer.fact.braced)) isWhole = false;
        if (child.written.has('when') && child.kind !== 'rule') {
            // Nobody knows whether a block is there whose condition cannot be told: nothing is judged with it, and nothing is called missing for it.
            const { when } = child.values as { when?: Given<boolean> };
            if (when === undefined) isWhole = false;
            if (when?.value !== true) {
                if (child.name) leftOut.push(child.name.value);
                if (when) reportOverrideOfLeftOut(child, when, group, layers);
                continue;
            }
        }
        children.push(child);
    }
    if (!fact.braced && !isDamaged && !(header.base && isJobLike(fact.key))) {
        reading.report('block-without-body', keySpan(fact, reading), `${showHeader(fact)} has no facts. Put them in braces: ${showHeader(fact)} { … }.`);
    }
    const head = headSpan(fact, reading);
    if (isWhole) for (const [key, value] of Object.entries(lowering.defaults ?? {})) if (!gathered.facts.has(key)) values[key] = { value, span: head, fact: head };
    const block: Block = {
        kind: lowering.as ?? kind, ...(header.name && { name: header.name }), ...(header.title && { title: header.title }), ...(header.base && { base: header.base }),
        walls: header.walls, values, written: new Set(gathered.facts.keys()), children, ...(leftOut.length > 0 && { leftOut }),
        span: reading.spanOf(fact), head, isWhole,
        ...(fact.braced && { insertAt: insertPlace(fact, reading) }),
    };
    for (const layer of layers) layer.context.remember(layer.fact, block);
    if (isWhole && lowering.isPartial !== true && kind !== 'series') reportMissing(block, reading);
    reportRepeated(block, reading);
    return block;
}

/** What an entry is made from is not there: that is told once, and nobody calls missing what it may have said. */
export function reportUnknownBase(fact: ast.Fact, { unknownName }: LoweringContext): void {
    const word = baseTermOf(fact)?.word;
    if (word) unknownName(word, [derivesFrom(fact.key) ?? fact.key]);
}

/** The last text that says a thing wins; a name is the first one's, because the others only repeat it. */
function mergeHeaders(headers: readonly Header[]): Header {
    const name = headers.at(-1)?.name ?? headers.find(header => header.name)?.name;
    const title = headers.findLast(header => header.title)?.title;
    const base = headers.findLast(header => header.base)?.base;
    const walled = headers.findLast(header => header.hasOn);
    return {
        ...(name && { name }), ...(title && { title }), ...(base && { base }), walls: walled?.walls ?? [], hasOn: walled !== undefined,
        isWhole: headers.every(header => header.isWhole),
    };
}

interface Gathered {
    readonly facts: ReadonlyMap<string, Winner>;
    /** Blocks of one kind and name through all layers. */
    readonly blocks: readonly (readonly [Layer, ...Layer[]])[];
    readonly isWhole: boolean;
}

/** Sorts what stands in the layers: facts by key, blocks by kind and name; a text that says a fact twice is told so. */
function gather(layers: readonly Layer[], kind: BlockKind): Gathered {
    const facts = new Map<string, Winner>();
    const blocks: [Layer, ...Layer[]][] = [];
    let isWhole = true;
    for (const { fact, context } of layers) {
        const { reading, damaged } = context;
        // A job made from a series reads the series' text by the words of a series.
        const words = isBlockKind(fact.key) ? fact.key : kind;
        const places = new Map<string, ast.Fact>();
        const earlier = [...blocks];
        for (const item of fact.body) {
            const known = propertiesOf(words).get(item.key);
            if (known && !item.braced) {
                const { key } = known;
                const first = places.get(key);
                if (first) {
                    reading.report('fact-repeated', keySpan(item, reading), `${key} is written twice; one of the two has to go.`,
                        { related: [{ at: keySpan(first, reading), message: 'It is written here first.' }], fixes: [reading.replace('Remove this fact', item, '', reading.textOf(first) === reading.textOf(item) ? 'safe' : 'review')] });
                    continue;
                }
                places.set(key, item);
                const beaten = facts.get(key);
                facts.set(key, { item, context, over: beaten ? [...beaten.over, valueSpan(beaten.item, beaten.context.reading)] : [] });
            } else if (isStatement(words, item.key) && !item.braced) {
                if (damaged.has(keyOffset(item))) isWhole = false;
            } else if (isBlockKind(item.key) && blocksIn(words).includes(item.key)) {
                // What only a series or a job as a whole has is read where that is lowered.
                if (kind === 'job' && (item.key === 'variant' || item.key === 'parameter')) { if (damaged.has(keyOffset(item))) isWhole = false; continue; }
                const group = earlier.find(([first]) => first.fact.key === item.key && (nameOf(first.fact) !== undefined || nameOf(item) !== undefined
                    ? nameOf(first.fact) === nameOf(item) : !definitionOf(item.key as BlockKind).isRepeatable));
                if (group) group.push({ fact: item, context }); else blocks.push([{ fact: item, context }]);
            } else {
                isWhole = false;
                if (known) reading.report('property-with-body', keySpan(item, reading), `${item.key} takes a value, not facts in braces: ${known.property.type.words}.`);
                else if (!damaged.has(keyOffset(item)) || !(item.braced || reading.followedBy(keySpan(item, reading), '='))) reportUnknownWord(item, words, reading);
            }
        }
    }
    return { facts, blocks, isWhole };
}

/** A block of an upper layer that answers to nothing below and does not stand for itself: it lacks the wall it would need. */
function isOverrideOfNothing(group: readonly [Layer, ...Layer[]], layers: readonly Layer[], all: Gathered['blocks']): boolean {
    const [{ fact: item, context }] = group;
    const [bottom] = layers;
    if (group.length > 1 || layers.length < 2 || !bottom || bottom.fact.body.includes(item)) return false;
    const kind = item.key as BlockKind;
    const name = nameOf(item);
    const { walls } = definitionOf(kind);
    const header = readHeader(item, kind, { ...context, reading: context.reading.withNames(context.reading.names, true) }, false);
    if (name === undefined || header.hasOn || (walls !== 'one' && walls !== 'several')) return false;
    const others = all.flatMap(([other]) => other.fact.key === item.key && other.fact !== item ? nameOf(other.fact) ?? [] : []);
    const nearest = nearestName(name, others);
    const kindWords = spoken(kind);
    const at = headSpan(item, context.reading);
    context.reading.report('nothing-to-override', at,
        `There is no ${kindWords} ${name} to say this of. ${nearest ? `Is ${nearest} meant?` : others.length > 0 ? `There is ${others.join(', ')}.` : ''} A ${kindWords} of its own needs its wall: ${item.key} ${name} on back { … }.`.replace('  ', ' '),
        nearest ? { fixes: [context.reading.replace(`Write ${nearest}`, { ...at, start: at.end - name.length }, nearest)] } : {});
    return true;
}

/** What the last text says of a block that another text leaves out has no effect; whoever wrote it meant the block to be there. */
function reportOverrideOfLeftOut(child: Block, when: Given<boolean>, group: readonly [Layer, ...Layer[]], layers: readonly Layer[]): void {
    const last = group.at(-1);
    if (!last || group.length < 2 || layers.at(-1)?.fact.body.includes(last.fact) !== true) return;
    const { reading } = last.context;
    reading.report('nothing-to-override', headSpan(last.fact, reading),
        `${capital(showBlock(child))} is left out here: the condition behind its when does not hold, so what is said of it has no effect. Give the values that bring it in, or remove this.`,
        { related: [{ at: when.span, message: 'Its condition is written here.' }] });
}

/** A reference by name. Resolving waits until somebody reads `block`, so catalogues may refer to each other in any order. */
function lowerLink(word: ast.Word, kinds: readonly string[], context: LoweringContext): Link | undefined {
    let name = word.ref.$refText;
    let target = context.resolve(word, kinds);
    if (target === 'unknown') {
        // A parameter or a `let` may hold the name of an entry.
        const found = context.reading.names.find([name]);
        if (found.kind === 'waits') return undefined;
        if (found.kind === 'value' && found.value.kind === 'word') {
            name = found.value.word;
            target = context.resolve(word, kinds, name);
        }
    }
    if (target === 'unknown') context.unknownName(word, kinds);
    const find = target === 'unknown' ? () => undefined : target;
    return { name, span: context.reading.spanOf(word), get block() { return find(); } };
}
