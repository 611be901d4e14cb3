import { isWall } from '../core/geometry.js';
import { nearestName } from '../core/nearest.js';
import { showList, spoken } from '../core/show.js';
import type * as ast from '../syntax/generated/ast.js';
import { nameWord, parentOf } from '../syntax/words.js';
import { beginsFact, blocksIn, definitionOf, oftenCalled, propertiesOf, type BlockKind } from '../vocabulary/index.js';
import { statements, statementsIn } from '../vocabulary/statements.js';
import { showBlock, type Block } from './block.js';
import { keySpan } from './places.js';
import type { Reading } from './reading.js';

export function reportUnknownWord(item: ast.Fact, kind: BlockKind, reading: Reading): void {
    const candidates = [...propertiesOf(kind).keys(), ...blocksIn(kind), ...statementsIn(kind)];
    // `door` in a catalogue is short for door_model, though the words are not spelt alike
    const said = oftenCalled(kind);
    const alike = nearestName(item.key, [...candidates, ...said.keys()]);
    const nearest = (alike !== undefined ? said.get(alike) ?? alike : undefined) ?? onlyOne(candidates.filter(word => word.startsWith(`${item.key}_`)));
    const statement = Object.hasOwn(statements, item.key) ? statements[item.key] : undefined;
    if (statement) {
        reading.report('unknown-word', keySpan(item, reading), `‘${item.key}’ does not stand in a ${spoken(kind)}. It stands ${showList(statement.standsIn.map(place => place === 'file' ? 'at the top of a file' : `in a ${spoken(place)}`), 'or')}.`);
        return;
    }
    const elsewhere = [...candidatesElsewhere(item.key)];
    if (item.key === 'and' || item.key === 'or') {
        reading.report('unknown-word', keySpan(item, reading), `A line ends a fact, so ‘${item.key}’ begins none here. Write the whole condition on one line; a let beside the rule can give a part of it a name.`);
        return;
    }
    const help = nearest ? `Is ${nearest} meant?`
        : isWall(item.key) && propertiesOf(kind).has('from') ? `A place is written with from and the wall, such as from ${item.key} 12 1/2".`
        : elsewhere.length > 0 ? `It belongs in a ${elsewhere.map(spoken).join(' or ')}.${whatIsMissing(item, kind)}` : whatMayStand(item, kind);
    reading.report('unknown-word', keySpan(item, reading), `‘${item.key}’ is not known in a ${spoken(kind)}. ${help}`,
        nearest ? { fixes: [reading.replace(`Write ${nearest}`, keySpan(item, reading), nearest)] } : {});
}
const onlyOne = (words: readonly string[]): string | undefined => words.length === 1 ? words[0] : undefined;
/** The facts a block lacks, as a sentence behind another. */
function whatIsMissing(item: ast.Fact, kind: BlockKind): string {
    const written = new Set(parentOf(item)?.body.flatMap(({ key }) => propertiesOf(kind).get(key)?.key ?? []));
    const missing = Object.entries(definitionOf(kind).properties).flatMap(([key, { isRequired }]) => isRequired && !written.has(key) ? [key] : []);
    return missing.length > 0 ? ` Missing here ${missing.length === 1 ? 'is' : 'are'} ${showList(missing)}.` : '';
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

export function reportMissing(block: Block, reading: Reading): void {
    const definition = definitionOf(block.kind);
    const missing = Object.entries(definition.properties).filter(([key, property]) => property.isRequired && !block.written.has(key) && !Object.hasOwn(block.values, key));
    if (missing.length === 0) return;
    const names = missing.map(([key]) => key);
    const [first] = missing;
    reading.report('fact-missing', block.head, names.length === 1 && first
        ? `${capital(showBlock(block))} lacks ${first[0]}: ${first[1].type.words}.`
        : `${capital(showBlock(block))} lacks ${names.slice(0, -1).join(', ')} and ${names.at(-1) ?? ''}.`);
}

export function reportRepeated(block: Block, reading: Reading): void {
    const singles = new Map<BlockKind, Block>();
    const names = new Map<string, Block>();
    for (const child of block.children) {
        if (!definitionOf(child.kind).isRepeatable) {
            const earlier = singles.get(child.kind);
            if (earlier) reading.report('block-repeated', child.head, `There is one ${spoken(child.kind)} in a ${block.kind}; this is the second.`, { related: [{ at: earlier.head, message: 'The first is here.' }] });
            else singles.set(child.kind, child);
        }
        if (!child.name) continue;
        const same = names.get(child.name.value);
        if (same) reading.report('name-taken', child.name.span, `The name ${child.name.value} is taken; give this ${spoken(child.kind)} another.`, { related: [{ at: same.name?.span ?? same.head, message: `It names this ${spoken(same.kind)}.` }] });
        else names.set(child.name.value, child);
    }
}

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
export const showHeader = (fact: ast.Fact): string => { const name = nameWord(fact); return name ? `${fact.key} ${name.ref.$refText}` : fact.key; };

