import { declaredFacts, type DeclaredFact } from '../facts/declared.js';
import { functions } from '../model/functions.js';
import { units } from '../core/quantity.js';
import { blockKinds, blocksIn, definitionOf, derivesFrom, isBlockKind, mayBeLeftOut, propertiesOf, type BlockKind } from '../vocabulary/index.js';
import type { Property } from '../vocabulary/block.js';
import { statements } from '../vocabulary/statements.js';
import { showList, spoken } from '../core/show.js';
import { escapeMarkdown } from './markdown.js';
import { wrap } from './report-text.js';

/** How a block is written, on one line. */
export function blockForm(kind: BlockKind): string {
    const { name, hasTitle, walls } = definitionOf(kind);
    const parts: string[] = [kind];
    if (name !== 'none') parts.push(name === 'required' ? 'NAME' : '[NAME]');
    if (hasTitle) parts.push('["TITLE"]');
    const from = derivesFrom(kind);
    if (from !== undefined) parts.push(from === 'series' ? '[is SERIES(VALUES)]' : '[is OTHER]');
    if (walls === 'one') parts.push('on WALL');
    if (walls === 'several') parts.push('on WALL, …');
    if (walls === 'optional') parts.push('[on WALL]');
    return `${parts.join(' ')} { … }`;
}

const places = (kinds: readonly string[]): string => showList(kinds.map(place => place === 'file' ? 'at the top of a file' : `in a ${spoken(place)}`), 'or');
const standsIn = (kind: BlockKind): string => places(definitionOf(kind).standsIn);
const otherwise = ({ isRequired, otherwise: rest }: Property): string => isRequired ? 'must be written' : rest ?? 'may be left out';
const dimensionWords: Readonly<Record<DeclaredFact['is'], string>> = {
    length: 'a length', area: 'an area', volume: 'a volume', mass: 'a mass', power: 'a power', current: 'a current', voltage: 'a voltage', number: 'a number', words: 'words', flag: 'yes or no', time: 'a time', temperature: 'a temperature',
};

/** Kinds in the order of the reference: what a job is made of, what a catalogue holds, the rest. */
const chapters: readonly (readonly [string, (kind: BlockKind) => boolean])[] = [
    ['A job', kind => kind === 'job' || blocksIn('job').includes(kind) || definitionOf(kind).standsIn.some(place => blocksIn('job').includes(place as BlockKind))],
    ['A catalogue', kind => kind === 'catalogue' || definitionOf(kind).standsIn.some(place => place === 'catalogue' || blocksIn('catalogue').includes(place as BlockKind))],
    ['Lines of rooms and house rules', () => true],
];

/** The whole language as one page: how it is written, every block with its facts, every function, everything that is computed. */
export function languageReference(): string {
    const taken = new Set<BlockKind>();
    const blocks = chapters.map(([title, belongs]) => {
        const own = blockKinds.filter(kind => !taken.has(kind) && belongs(kind));
        for (const kind of own) taken.add(kind);
        return `## ${title}\n\n${own.map(blockSection).join('\n')}`;
    });
    return [
        '# Language reference', '',
        'Made from the vocabulary by `npm run generate`. What is reported, and why, stands in the [rule handbook](README.md).', '',
        ...howItIsWritten, '', '## Lines of their own', '', ...Object.entries(statements).flatMap(([word, { doc, standsIn: kinds, written }]) => [
            `### ${word}`, '', `${doc} It stands ${places(kinds)}.`, '', '```hotroom', written, '```', '',
        ]),
        '## Functions', '', '| function | gives |', '| --- | --- |', ...Object.values(functions).map(({ written, doc }) => `| \`${written}\` | ${cell(doc)} |`), '',
        ...blocks, '## What is computed', '',
        'Behind the name of a block: `upper.ledger.top`. Behind its kind, for all of that kind at once: `max(bench.ledger.top)`. `*` stands for a wall. Everything that is written can be named too: `upper.depth`, `entry.hinge`, `stove.model.power`, and `wall` or `walls` for where it stands.', '',
        ...Object.entries(declaredFacts).flatMap(([kind, facts]) => [`### ${kind}`, '', '| name | what | is |', '| --- | --- | --- |', ...facts.map(({ path, title, is }) => `| \`${path}\` | ${cell(title)} | ${dimensionWords[is]} |`), '']),
    ].join('\n').replace(/\n{3,}/g, '\n\n').trimEnd() + '\n';
}

const cell = (text: string): string => escapeMarkdown(text).replaceAll('|', '\\|');

function blockSection(kind: BlockKind): string {
    const { doc, isRepeatable } = definitionOf(kind);
    const inside = blocksIn(kind);
    const facts = [...new Map([...propertiesOf(kind).values()].map(entry => [entry.key, entry.property]))].filter(([key]) => key !== 'when' || kind === 'rule');
    const aliases = (key: string): string => { const all = [...propertiesOf(kind)].filter(([word, entry]) => entry.key === key && word !== key).map(([word]) => `\`${word}\``); return all.length > 0 ? ` (or ${all.join(', ')})` : ''; };
    return [
        `### ${kind}`, '', `\`${blockForm(kind)}\``, '', `${escapeMarkdown(doc)} It stands ${standsIn(kind)}${isRepeatable ? '' : ', once'}.${mayBeLeftOut(kind) ? ' With `when` and a condition it is left out where that does not hold.' : ''}${inside.length > 0 ? ` Blocks in it: ${inside.map(child => `[${child}](#${child})`).join(', ')}.` : ''}`, '',
        ...facts.length > 0 ? ['| fact | takes | otherwise | what it is |', '| --- | --- | --- | --- |', ...facts.map(([key, property]) => `| \`${key}\`${aliases(key)} | ${cell(property.type.words)} | ${cell(otherwise(property))} | ${cell(property.doc)} |`), ''] : [],
    ].join('\n');
}

const howItIsWritten = [
    '## How it is written', '',
    '- One fact a line: a word and its value. A line ends the fact; so does `;`. `//` begins a remark. Facts and blocks come in any order.',
    '- A block is a kind, mostly a name, its walls, and its facts in braces. The `{` stands on the header\'s line.',
    `- A figure carries its unit: \`34 3/4"\`, \`34-3/4"\`, \`7'6"\`, \`2210 mm\`. Units: ${Object.keys(units).join(', ')}, and three capitals for money.`,
    '- A hyphen joins inside a figure or a name, and subtracts between spaces.', '',
    '### Calculations', '',
    'Wherever a value stands, a calculation may stand. From the loosest to the tightest:', '',
    '| written | is |', '| --- | --- |',
    '| `if a then b else c` | one of two values |', '| `a or b` | yes when one holds |', '| `a and b` | yes when both hold |',
    '| `=` `!=` `<` `<=` `>` `>=` | a comparison, yes or no; both sides of one kind. Words are compared by `=` and `!=`: `entry.hinge = left` |',
    '| `a to b` | a range |', '| `a x b` | a size |', '| `+` `-` | both sides of one dimension |', '| `*` `/` | dimensions multiply and divide |', '| `(a)` `f(a, b)` | brackets, and functions, whose bracket touches the name |', '',
    'Figures are exact: nothing is rounded. A length has to come out on a mark; `round_down` and `round_up` put it on one.', '',
    '### Names', '',
    'A name in a calculation is, in this order: a `let` or a parameter in sight; a block of the job (`upper`), behind whose name stands what it was given and what was computed for it (`upper.top`, `upper.ledger.top`); the kind of a block (`bench`), which stands for all of that kind and so gives a list (`max(bench.top)`, `all(bench.depth >= 18")`, `count(door)`). A kind of which a job may hold several is always a list, also where there is one: `max(heater.power)`, `all(door.hinge = opposite(heater.wall))`. A block of which there can be one only, such as `room` or `site`, is no list; a fact that takes several figures is one: `min(site.ceiling)`. Over a kind the job has none of, `count` and `sum` are nothing, `all` is yes, `any` is no, and `max` and `min` have no value. What is computed for the air is named `air.exhaust` and `air.intake`. In a house rule with `each bench`, `bench` is the one that is asked.', '',
    'A fact that takes two figures is named by its pieces: `width` and `height` of a size (`vent.size.width`), `from` and `to` of a range, `volts` and `phases` of a supply, `thickness` of a layer. A reference is followed: `door.model.leaf_mass`, `stove.model.body.width`. A fact that is not written has the value the tables give for it where that begins with one word or figure of its kind, or is that of the model (`bench.fascia` is no, `light.rating` is its model\'s); else it has none.', '',
    'What is written and what is computed are two things: `circuit.device` is the device the job names, `heater.device` the one that was worked out. Units divide like figures: `4 in2 / 1 kW`.', '',
    '### House rules', '',
    'A `rule` at the top of a file or in a catalogue holds for every job of that file and of the files that use it. `each` names the kind of block it is asked of, one by one; without it the job is asked once. `when` leaves some out, `require` must hold, `because` says where it comes from and is printed with every finding. `when` and `require` take anything that comes to yes or no: a comparison, a fact such as `bench.is_highest`, `and`, `or`, `not(…)`, `any(…)`, `all(…)`. A rule may have its facts on lines of their own or, divided by `;`, on one; each condition stands on one line. A `let` stands beside the rule, not in it; it gives a long part of a condition a name. Words such as `outward` or `left` are written as they are, without quotes; whether a figure lies between two others is asked by two comparisons and `and`. A rule that needs what a job does not say is not asked of it, and says so; one whose `when` holds nowhere in a job has nothing to say there.', '',
    '```hotroom', 'rule seated_headroom "Head clearance over the top bench" {', '    severity  warning', '    each      bench', '    when      bench.is_highest', '    require   room.inside.height - bench.top >= 42"', '    because   "house standard 7"', '}',
    'let air_per_kilowatt = 4 in2 / 1 kW',
    'rule air_too_little { require sum(vent.free_area) >= max(heater.power) * air_per_kilowatt; because "house standard 8" }',
    'rule lock_on_the_door { each door; require door.model.catch != lock and door.hinge = left; because "house standard 9" }',
    'rule no_warning_sign { require count(sign.says = warning) >= 1; because "house standard 10" }',
    'rule near_the_wall { each heater; require heater.clearance.side >= if heater.guard then 4" else 8"; because "house standard 11" }', '```', '',
    '### Series and variants', '',
    'A `series` is a job with its sizes left open as parameters. A job made from it gives the values by place or by name and may say single facts otherwise; what it says of a block that the series does not have is a mistake, unless it is a whole block of its own. A series may be made from another, a catalogue entry from another of its kind. A `variant` in a job is the same job with what differs.', '',
    '```hotroom', 'series cottage "Cottage" {', '    parameter w    { takes length; least 60"; most 120"; doc "Outside width" }', '    parameter side { takes wall; one_of left, right; otherwise right }', '    room { system Skerry; width w; depth 72"; height 84" }', '    heater stove on side { model Tarn60; from front 4 1/2" }', '}', '', 'job n2418 "Second unit" is cottage(72", side = left) {', '    room { height 80" }', '}', '```', '',
    '### Waivers', '',
    'A finding that may be waived is taken on record by `waive`, with the reason, who decided, and the last day it holds. It then stays as an info. Without `on` it is meant for every finding of that kind. What keeps people from harm can never be waived.',
];

/** What a word of the language means, for a terminal; nothing for a word it does not have. */
export function wordHelp(word: string, width: number): string | undefined {
    const parts: string[] = [];
    if (isBlockKind(word)) {
        const facts = [...new Map([...propertiesOf(word).values()].map(entry => [entry.key, entry.property]))];
        const longest = Math.max(0, ...facts.map(([key]) => key.length));
        parts.push([
            blockForm(word), ...wrap(`${definitionOf(word).doc} It stands ${standsIn(word)}.`, width), '',
            ...facts.flatMap(([key, property]) => indented(`  ${key.padEnd(longest)}  `, `${property.doc} Takes ${property.type.words}; ${otherwise(property)}.`, width)),
            ...(declaredFacts[word] ? ['', ...wrap(`Computed: ${declaredFacts[word].map(({ path }) => `${word}.${path}`).join(', ')}.`, width)] : []), '',
        ].join('\n'));
    }
    const statement = Object.hasOwn(statements, word) ? statements[word] : undefined;
    if (statement) parts.push([statement.written, ...wrap(statement.doc, width), ''].join('\n'));
    const known = Object.hasOwn(functions, word) ? functions[word] : undefined;
    if (known) parts.push([known.written, ...wrap(known.doc, width), ''].join('\n'));
    const uses = blockKinds.flatMap(kind => { const entry = propertiesOf(kind).get(word); return entry ? [{ kind, property: entry.property }] : []; });
    if (uses.length > 0 && word !== 'when') parts.push(uses.flatMap(({ kind, property }) => wrap(`${word} in ${spoken(kind)}: ${property.doc} Takes ${property.type.words}; ${otherwise(property)}.`, width)).join('\n') + '\n');
    if (word === 'when') parts.push([...wrap('when and a condition in a block of a job or series leaves the block out where the condition does not hold; in a house rule it says where the rule is asked.', width), ''].join('\n'));
    return parts.length > 0 ? parts.join('\n') : undefined;
}

/** Text behind a label, its further lines under its first. */
function indented(label: string, text: string, width: number): string[] {
    const [first = '', ...rest] = wrap(text, Math.max(30, width - label.length));
    return [`${label}${first}`, ...rest.map(line => `${' '.repeat(label.length)}${line}`)];
}
