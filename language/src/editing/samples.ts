import type { Property } from '../vocabulary/block.js';
import { definitionOf, propertiesOf, type BlockKind } from '../vocabulary/index.js';
import { oneOf, plain, type Sight } from './offer.js';
import { headerParts } from './spot.js';
import type { RawScope, RawText } from './raw-facts.js';

/** Column in which the value of a fact begins when its key is shorter; a longer key is followed by one space. */
export const valueColumn = 10;
export const padKey = (key: string): string => key.length < valueColumn ? key.padEnd(valueColumn) : `${key} `;

export const walls = ['front', 'left', 'back', 'right'] as const;

/** Walls a place on something at `scope` can be measured from: the neighbours of its own wall, or all when that is not known. */
export function neighbourWalls(raw: RawText, scope: RawScope): readonly string[] {
    const wall = scope.header ? headerParts(raw, scope.header).walls[0]?.image : undefined;
    if (wall === 'front' || wall === 'back') return ['left', 'right'];
    if (wall === 'left' || wall === 'right') return ['front', 'back'];
    return walls;
}

/** What completion puts as the value of a property: words to choose from, or a sample to type over. `place` is the first number of its places. */
export function sampleValue(property: Property, raw: RawText, scope: RawScope, sight: Sight, place = 1): string {
    const { kind, choices, refersTo, words } = property.type;
    const names = refersTo ? [...new Set(sight.names(refersTo, scope.open?.startOffset ?? 0).map(({ name }) => name))] : [];
    switch (kind) {
        case 'choice': case 'choices': case 'flag': case 'walls': return oneOf(place, choices ?? []);
        case 'reference': case 'references': return oneOf(place, names);
        case 'layer': return `${oneOf(place, names)} \${${place + 1}:${plain(isMetricText(raw) ? '20 mm' : '3/4"')}}`;
        case 'place': case 'wall-lengths': return `${oneOf(place, neighbourWalls(raw, scope))} \${${place + 1}:${plain(lengthSample(raw))}}`;
        case 'centre-place': return `from ${oneOf(place, neighbourWalls(raw, scope))} \${${place + 1}:${plain(lengthSample(raw))}}`;
        case 'number': case 'count': case 'percent': return `\${${place}:1}`;
        case 'text': return `"\${${place}}"`;
        // A condition that can be read in any job, and in a rule whatever it is about.
        case 'holds': return `\${${place}:count(bench) > 1}`;
        case 'condition': return `\${${place}:all(bench.top <= 40")}`;
        case 'value': case 'values': return sampleTaken(scope, raw, place);
        default: {
            const [inch, metric] = (/such as (.+)$/.exec(words)?.[1] ?? '').split(' or ');
            const sample = isMetricText(raw) && metric !== undefined && /m$/.test(metric) ? metric : inch;
            return sample ? `\${${place}:${plain(sample)}}` : `\${${place}}`;
        }
    }
}

const figuresTaken: Readonly<Record<string, readonly [string, string]>> = {
    length: ['72"', '1800 mm'], number: ['1', '1'], count: ['1', '1'], power: ['6 kW', '6 kW'], voltage: ['240 V', '230 V'], current: ['40 A', '40 A'], temperature: ['68 degF', '20 degC'],
    wall: ['left', 'left'], flag: ['yes', 'yes'], text: ['"text"', '"text"'],
};
/** A value of what a parameter takes. */
function sampleTaken(scope: RawScope, raw: RawText, place: number): string {
    const takes = scope.facts.find(({ key }) => key?.image === 'takes')?.tokens[1]?.image ?? '';
    const sample = figuresTaken[takes]?.[isMetricText(raw) ? 1 : 0];
    return sample === undefined ? `\${${place}}` : `\${${place}:${plain(sample)}}`;
}

/** Whether lengths of this text are metric: some are, and none has an inch or foot mark. */
export const isMetricText = (raw: RawText): boolean =>
    !raw.tokens.some(token => token.tokenType === raw.types.length) && raw.tokens.some(token => token.tokenType === raw.types.quantity && /[0-9 \t][mc]?m$/.test(token.image));
const lengthSample = (raw: RawText): string => isMetricText(raw) ? '300 mm' : '12"';

/** The text of a new block: as the vocabulary writes it, or its header with the facts it must have. Names in sight stand where references do, and a name already taken is not offered again. */
export function sampleBlock(kind: BlockKind, raw: RawText, scope: RawScope, sight: Sight): string {
    const definition = definitionOf(kind);
    const inner: RawScope = { kind, parent: scope, header: undefined, open: scope.open, close: undefined, facts: [] };
    if (definition.snippet === undefined) return freshBlock(kind, raw, inner, sight);
    const taken = new Set(scope.facts.flatMap(fact => headerParts(raw, fact).name?.image ?? []));
    return definition.snippet.split('\n').map((line, i) => {
        if (i === 0) return line.replace(/\$\{1:([a-z]+)\}/, (whole, name: string) => taken.has(name) ? `\${1:${name}_2}` : whole);
        return line.replace(/^(\t)([a-z_]+)(\s+)\$\{(\d+):[^}]*\}/, (whole, tab: string, key: string, gap: string, place: string) => {
            const refersTo = propertiesOf(kind).get(key)?.property.type.refersTo;
            const names = refersTo ? [...new Set(sight.names(refersTo, scope.open?.startOffset ?? 0).map(({ name }) => name))] : [];
            return names.length > 0 ? `${tab}${key}${gap}${oneOf(Number(place), names)}` : whole;
        });
    }).join('\n');
}

function freshBlock(kind: BlockKind, raw: RawText, inner: RawScope, sight: Sight): string {
    const { name, walls: standsOn, properties } = definitionOf(kind);
    let place = 1;
    const header = [kind as string];
    if (name === 'required') header.push(`\${${place++}:name}`);
    if (standsOn === 'one' || standsOn === 'several') header.push(`on ${oneOf(place++, walls)}`);
    const lines = Object.entries(properties).filter(([, property]) => property.isRequired).map(([key, property]) => {
        const line = `\t${padKey(key)}${sampleValue(property, raw, inner, sight, place)}`;
        place += /\$\{\d+[^}]*\}.*\$\{\d+/.test(line) ? 2 : 1;
        return line;
    });
    return `${header.join(' ')} {\n${(lines.length > 0 ? lines : ['\t$0']).join('\n')}\n}`;
}
