import type { AstNode } from 'langium';
import type { Wall } from '../core/geometry.js';
import { isWall } from '../core/geometry.js';
import { nearestName } from '../core/nearest.js';
import { showList } from '../core/show.js';
import type { Sourced, Span } from '../core/span.js';
import * as ast from '../syntax/generated/ast.js';
import { nameWord, parentOf, textOf } from '../syntax/words.js';
import { beginsFact, blocksIn, definitionOf, isBlockKind, propertiesOf, type BlockKind } from '../vocabulary/index.js';
import { wordText } from './evaluate.js';
import type { Block, Given, Link } from './block.js';
import { readValue } from './read-value.js';
import type { Reading } from './reading.js';

/** What lowering needs from outside one block: resolved references and what the reading of the text already found damaged. */
export interface LoweringContext {
    readonly reading: Reading;
    /** Key offsets of facts that are not whole. */
    readonly damaged: ReadonlySet<number>;
    /** The block a word refers to, lowered with its own document. */
    readonly resolve: (word: ast.Word, kinds: readonly string[]) => (() => Block | undefined) | 'unknown';
    /** Remembers a name nothing answers to; they are reported together, one message a name. */
    readonly unknownName: (word: ast.Word, kinds: readonly string[]) => void;
}

/** Lowers one braced fact and all in it. Never fails: what cannot be read is left out and reported, here or by the reading before. */
export function lowerBlock(fact: ast.Fact, kind: BlockKind, context: LoweringContext): Block {
    const definition = definitionOf(kind);
    const { reading, damaged } = context;
    const isDamaged = damaged.has(keyOffset(fact));
    const header = lowerHeader(fact, kind, context, isDamaged);
    const values: Record<string, Given<unknown>> = {};
    const written = new Set<string>();
    const children: Block[] = [];
    let isWhole = !isDamaged && header.isWhole && fact.braced;
    const places = new Map<string, ast.Fact>();

    for (const item of fact.body) {
        const known = propertiesOf(kind).get(item.key);
        if (known && !item.braced) {
            const { key, property } = known;
            const earlier = places.get(key);
            if (earlier) {
                reading.report('fact-repeated', keySpan(item, reading), `${key} is written twice; one of the two has to go.`,
                    { related: [{ at: keySpan(earlier, reading), message: 'It is written here first.' }], fixes: [reading.replace('Remove this fact', item, '', reading.textOf(earlier) === reading.textOf(item) ? 'safe' : 'review')] });
                continue;
            }
            places.set(key, item);
            written.add(key);
            if (damaged.has(keyOffset(item))) { isWhole = false; continue; }
            const read = readValue({ fact: item, key: item.key, property, reading, link: (word, kinds) => lowerLink(word, kinds, context) });
            if (!read) { isWhole = false; continue; }
            values[key] = { value: read.value, span: valueSpan(item, reading), fact: reading.spanOf(item), ...(read.unit && { unit: read.unit }) };
        } else if (isBlockKind(item.key) && blocksIn(kind).includes(item.key)) {
            const child = lowerBlock(item, item.key, context);
            if (!item.braced) isWhole = false;
            children.push(child);
        } else {
            isWhole = false;
            if (known) reading.report('property-with-body', keySpan(item, reading), `${item.key} takes a value, not facts in braces: ${known.property.type.words}.`);
            else if (!damaged.has(keyOffset(item)) || !item.braced) reportUnknownWord(item, kind, reading);
        }
    }
    if (!fact.braced && !isDamaged) {
        reading.report('block-without-body', keySpan(fact, reading), `${showHeader(fact)} has no facts. Put them in braces: ${showHeader(fact)} { … }.`);
    }
    const block: Block = {
        kind, ...header.parts, values: values, written, children,
        span: reading.spanOf(fact), head: headSpan(fact, reading), isWhole,
        ...(fact.braced && { insertAt: insertPlace(fact, reading) }),
    };
    if (isWhole) reportMissing(block, definition, reading);
    reportRepeated(block, reading);
    return block;
}

function lowerHeader(fact: ast.Fact, kind: BlockKind, { reading }: LoweringContext, isDamaged: boolean): { readonly parts: Pick<Block, 'name' | 'title' | 'walls'>; readonly isWhole: boolean } {
    const definition = definitionOf(kind);
    const phrases = fact.phrases.map(phrase => phrase.terms as readonly (ast.Expr | undefined)[]);
    const first = [...phrases[0] ?? []];
    const name = nameWord(fact);
    if (name) first.shift();
    const title = definition.hasTitle && ast.isText(first[0]) ? first.shift() : undefined;
    const walls: Sourced<Wall>[] = [];
    let isComplained = false;
    const complain = (rule: 'wall-missing' | 'part-not-expected' | 'name-missing', at: AstNode | Span, message: string, fixes: Parameters<Reading['report']>[3] = {}): void => {
        if (!isComplained && !isDamaged) reading.report(rule, at, message, fixes);
        isComplained = true;
    };
    if (!name && definition.name === 'required') complain('name-missing', keySpan(fact, reading), `This ${kind.replaceAll('_', ' ')} has no name. Put one behind ${kind}.`);
    const [on] = first;
    const hasOn = on !== undefined && ast.isWord(on) && wordText(on) === 'on';
    const wallTerms = hasOn ? [first.slice(1), ...phrases.slice(1)] : [];
    if (hasOn && definition.walls === 'none') complain('part-not-expected', on, `A ${kind.replaceAll('_', ' ')} does not stand on a wall; remove ‘on’ and what follows.`);
    else if (hasOn) {
        for (const terms of wallTerms) {
            const [wall, extra] = terms;
            const word = ast.isWord(wall) ? wordText(wall) : undefined;
            if (!wall) complain('wall-missing', on, 'A wall stands behind ‘on’: front, left, back or right.');
            else if (word === undefined || !isWall(word)) {
                const nearest = word === undefined ? undefined : nearestName(word, ['front', 'left', 'back', 'right']);
                complain('wall-missing', wall, `‘${reading.textOf(wall)}’ is no wall; the walls are front, left, back and right.${nearest ? ` Is ${nearest} meant?` : ''}`, nearest ? { fixes: [reading.replace(`Write ${nearest}`, wall, nearest)] } : {});
            } else if (extra) complain('part-not-expected', extra, `‘${reading.textOf(extra)}’ does not belong in this header. Walls are divided by commas.`);
            else if (walls.some(other => other.value === word)) complain('part-not-expected', wall, `The ${word} wall is named twice.`);
            else walls.push({ value: word, span: reading.spanOf(wall) });
        }
        if (walls.length > 1 && definition.walls !== 'several' && phrases[1]?.[0]) complain('part-not-expected', phrases[1][0], `A ${kind.replaceAll('_', ' ')} stands on one wall.`);
    } else if (on) complain('part-not-expected', on, headerExtra(on, kind, reading));
    else if (phrases[1]?.[0]) complain('part-not-expected', phrases[1][0], headerExtra(phrases[1][0], kind, reading));
    if (!hasOn && (definition.walls === 'one' || definition.walls === 'several')) {
        complain('wall-missing', headSpan(fact, reading), `${showHeader(fact)} needs its wall, such as ${showHeader(fact)} on back.`);
    }
    return {
        parts: {
            ...(name && { name: { value: name.ref.$refText, span: reading.spanOf(name) } }),
            ...(title && ast.isText(title) && { title: { value: textOf(title), span: reading.spanOf(title) } }),
            walls,
        },
        isWhole: !isComplained,
    };
}

function headerExtra(term: ast.Expr, kind: BlockKind, reading: Reading): string {
    const word = ast.isWord(term) ? wordText(term) : undefined;
    if (word !== undefined && isWall(word) && definitionOf(kind).walls !== 'none') return `The word ‘on’ is missing before the wall ${word}.`;
    return `‘${reading.textOf(term)}’ does not belong in the header of a ${kind.replaceAll('_', ' ')}.`;
}

/** A reference by name. Resolving waits until somebody reads `block`, so catalogues may refer to each other in any order. */
function lowerLink(word: ast.Word, kinds: readonly string[], context: LoweringContext): Link | undefined {
    const name = word.ref.$refText;
    const target = context.resolve(word, kinds);
    if (target === 'unknown') context.unknownName(word, kinds);
    const find = target === 'unknown' ? () => undefined : target;
    return { name, span: context.reading.spanOf(word), get block() { return find(); } };
}

function reportUnknownWord(item: ast.Fact, kind: BlockKind, reading: Reading): void {
    const candidates = [...propertiesOf(kind).keys(), ...blocksIn(kind)];
    const nearest = nearestName(item.key, candidates);
    const elsewhere = [...candidatesElsewhere(item.key)];
    const help = nearest ? `Is ${nearest} meant?` : elsewhere.length > 0 ? `It belongs in a ${elsewhere.map(k => k.replaceAll('_', ' ')).join(' or ')}.` : whatMayStand(item, kind);
    reading.report('unknown-word', keySpan(item, reading), `‘${item.key}’ is not known in a ${kind.replaceAll('_', ' ')}. ${help}`,
        nearest ? { fixes: [reading.replace(`Write ${nearest}`, keySpan(item, reading), nearest)] } : {});
}
/** The words a block lacks, and some of those that may stand in it besides: a block with an unknown word is not told of missing facts elsewhere. */
function whatMayStand(item: ast.Fact, kind: BlockKind): string {
    const here = parentOf(item)?.body ?? [];
    const written = new Set(here.flatMap(({ key }) => propertiesOf(kind).get(key)?.key ?? []));
    const open = Object.entries(definitionOf(kind).properties).filter(([key]) => !written.has(key));
    const [missing, optional] = [true, false].map(isRequired => open.filter(([, property]) => property.isRequired === isRequired).map(([key]) => key)) as [string[], string[]];
    const blocks = blocksIn(kind).filter(child => definitionOf(child).isRepeatable || !here.some(({ key }) => key === child));
    const others = [...optional, ...blocks];
    const more = others.length - mostWords;
    const may = more > 1 ? `${others.slice(0, mostWords).join(', ')} and ${more} other words` : showList(others);
    const lacks = missing.length > 0 ? `Missing here ${missing.length === 1 ? 'is' : 'are'} ${showList(missing)}` : undefined;
    if (others.length === 0) return lacks ? `${lacks}.` : 'Nothing more may stand here; remove the line.';
    return lacks ? `${lacks}; ${may} may stand here too.` : `Here may stand ${may}.`;
}
const mostWords = 10;
function* candidatesElsewhere(word: string): Generator<string> {
    let count = 0;
    for (const kind of ['job', 'site', 'room', 'door', 'bench', 'heater', 'vent', 'catalogue', 'panel_system', 'heater_model'] as const) {
        if (count < 2 && beginsFact(kind, word)) { count++; yield kind; }
    }
}

function reportMissing(block: Block, definition: ReturnType<typeof definitionOf>, reading: Reading): void {
    const missing = Object.entries(definition.properties).filter(([key, property]) => property.isRequired && !block.written.has(key));
    if (missing.length === 0) return;
    const names = missing.map(([key]) => key);
    const [first] = missing;
    reading.report('fact-missing', block.head, names.length === 1 && first
        ? `${capital(showKind(block))} lacks ${first[0]}: ${first[1].type.words}.`
        : `${capital(showKind(block))} lacks ${names.slice(0, -1).join(', ')} and ${names.at(-1) ?? ''}.`);
}

function reportRepeated(block: Block, reading: Reading): void {
    const singles = new Map<BlockKind, Block>();
    const names = new Map<string, Block>();
    for (const child of block.children) {
        if (!definitionOf(child.kind).isRepeatable) {
            const earlier = singles.get(child.kind);
            if (earlier) reading.report('block-repeated', child.head, `There is one ${child.kind.replaceAll('_', ' ')} in a ${block.kind}; this is the second.`, { related: [{ at: earlier.head, message: 'The first is here.' }] });
            else singles.set(child.kind, child);
        }
        if (!child.name) continue;
        const same = names.get(child.name.value);
        if (same) reading.report('name-taken', child.name.span, `The name ${child.name.value} is taken; give this ${child.kind.replaceAll('_', ' ')} another.`, { related: [{ at: same.name?.span ?? same.head, message: `It names this ${same.kind.replaceAll('_', ' ')}.` }] });
        else names.set(child.name.value, child);
    }
}

const showKind = (block: Block): string => block.name ? `${block.kind.replaceAll('_', ' ')} ${block.name.value}` : `the ${block.kind.replaceAll('_', ' ')}`;
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
const showHeader = (fact: ast.Fact): string => { const name = nameWord(fact); return name ? `${fact.key} ${name.ref.$refText}` : fact.key; };

/** Offset of the key of a fact: how the reading of the text names it. */
export const keyOffset = (fact: ast.Fact): number => fact.$cstNode?.offset ?? -2;
export function keySpan(fact: ast.Fact, reading: Reading): Span {
    const { uri, start } = reading.spanOf(fact);
    return { uri, start, end: start + fact.key.length };
}
function headSpan(fact: ast.Fact, reading: Reading): Span {
    const key = keySpan(fact, reading);
    const name = nameWord(fact);
    return name ? { ...key, end: reading.spanOf(name).end } : key;
}
function valueSpan(fact: ast.Fact, reading: Reading): Span {
    const [first] = fact.phrases;
    const last = fact.phrases.at(-1);
    if (!first || !last) return reading.spanOf(fact);
    return { uri: reading.uri, start: reading.spanOf(first).start, end: reading.spanOf(last).end };
}
function insertPlace(fact: ast.Fact, reading: Reading): Span {
    const last = fact.body.at(-1);
    const end = last ? reading.spanOf(last).end : reading.spanOf(fact).end - 1;
    return { uri: reading.uri, start: end, end };
}
