import { isWall, walls } from '../core/geometry.js';
import { compareQuantities, dimensions, dimensionWords, sameDimension } from '../core/quantity.js';
import { isWhole } from '../core/rational.js';
import { type LengthUnit, showList, spoken } from '../core/show.js';
import { sameValue, showValue, valueWords, type Value } from '../core/value.js';
import * as ast from '../syntax/generated/ast.js';
import { nameOf, type BaseTerm } from '../syntax/words.js';
import { evaluateOrWord } from './evaluate.js';
import { isKind, type Block } from './block.js';
import type { Reading } from './reading.js';

/** Values of a series' parameters for one job; absent when a value waits for something or could not be read. */
export type Arguments = ReadonlyMap<string, Value | undefined>;

/** The parameters of a series, in the order written. */
export const parametersOf = (series: Block): readonly Block<'parameter'>[] => series.children.filter(child => isKind(child, 'parameter'));

/**
 * The words a parameter may stand for, as its text lists them; nothing when it takes any, or something else than words, or when the list is not whole:
 * what is missing from it may be the very word that is asked for.
 */
export function wordsAmong(facts: readonly ast.Fact[], name: string, isDamaged: (fact: ast.Fact) => boolean): readonly string[] | undefined {
    const parameter = facts.find(fact => fact.key === 'parameter' && nameOf(fact) === name);
    const list = parameter?.body.find(({ key }) => key === 'one_of');
    if (!list || isDamaged(list)) return undefined;
    const words = list.phrases.map(({ terms: [word, ...more] }) => ast.isWord(word) && more.length === 0 ? word.ref.$refText : undefined);
    return words.every(word => word !== undefined) ? words : undefined;
}

/** How a series is called, for messages: `cottage(w, d, side)`. */
export const showCall = (series: Block): string => `${series.name?.value ?? 'series'}(${parametersOf(series).flatMap(({ name }) => name?.value ?? []).join(', ')})`;

/**
 * Gives every parameter its value: by place, or by name as in `w = 72"`, or its own default. Reports at the job what is missing, too much or not
 * allowed.
 * @param isDamaged whether something in the brackets could not be read: then nobody knows which value is whose
 */
export function readArguments(base: BaseTerm, series: Block, reading: Reading, isDamaged: boolean): Arguments {
    const parameters = parametersOf(series);
    if (isDamaged) return new Map(parameters.flatMap(({ name }): [string, undefined][] => name ? [[name.value, undefined]] : []));
    const given = new Map<string, { readonly value: Value | undefined; readonly at: ast.Expr }>();
    let place = 0;
    for (const argument of base.args) {
        const byName = ast.isComparison(argument) && argument.operator === '=' && ast.isWord(argument.left) && argument.left.path.length === 0 ? argument.left.ref.$refText : undefined;
        const parameter = byName === undefined ? parameters[place++] : parameters.find(one => one.name?.value === byName);
        const name = parameter?.name?.value;
        // A parameter without a name has its own message, in the series.
        if (parameter && name === undefined) continue;
        if (!parameter || name === undefined) {
            reading.report('argument-not-expected', argument, byName === undefined
                ? `${reading.textOf(argument)} is one value too many: ${showCall(series)} takes ${parameters.length}.`
                : `${series.name?.value ?? 'The series'} has no parameter ${byName}. It is written ${showCall(series)}.`);
            continue;
        }
        if (given.has(name)) { reading.report('argument-not-expected', argument, `${name} is given twice.`); continue; }
        const written = byName !== undefined && ast.isComparison(argument) ? argument.right : argument;
        given.set(name, { value: evaluateOrWord(written, reading), at: written });
    }
    const values = new Map<string, Value | undefined>();
    const missing: string[] = [];
    for (const parameter of parameters) {
        const name = parameter.name?.value;
        if (name === undefined) continue;
        const own = given.get(name);
        if (own) {
            const why = own.value && misfit(own.value, parameter, unitIn(own.value));
            if (why !== undefined) reading.report('argument-does-not-fit', own.at, `${name} is ${reading.textOf(own.at)}; ${why}.`, { related: [{ at: parameter.head, message: `${name} is a parameter of series ${series.name?.value ?? ''}.` }] });
            values.set(name, why === undefined ? own.value : undefined);
        } else if (parameter.values.otherwise) values.set(name, parameter.values.otherwise.value);
        else { values.set(name, undefined); missing.push(name); }
    }
    if (missing.length > 0) {
        const docs = parameters.filter(({ name }) => missing.includes(name?.value ?? '')).map(({ name, values: { doc } }) => doc ? `${name?.value ?? ''} (${doc.value})` : name?.value ?? '');
        reading.report('argument-missing', base.term, `${showList(docs)} ${missing.length > 1 ? 'are' : 'is'} missing. Write ${showCall(series)}.`, { related: [{ at: series.head, message: 'The series is here.' }] });
    }
    return values;
}

const unitIn = (value: Value): LengthUnit => value.kind === 'quantity' && ['mm', 'cm', 'm'].includes(value.quantity.unit) ? value.quantity.unit as LengthUnit : 'in';

/** Why a value cannot be taken by a parameter; nothing when it can. */
function misfit(value: Value, { values }: Block<'parameter'>, unit: LengthUnit): string | undefined {
    const takes = values.takes?.value;
    if (!takes) return undefined;
    switch (takes) {
        case 'length': case 'number': case 'count': case 'power': case 'voltage': case 'current': case 'temperature': {
            const dimension = takes === 'count' ? dimensions.number : dimensions[takes];
            if (value.kind !== 'quantity' || !sameDimension(value.quantity.dimension, dimension)) return `${dimensionWords(dimension)} is wanted`;
            if (takes === 'count' && !(isWhole(value.quantity.value) && value.quantity.value.n >= 0n)) return 'a whole number is wanted';
            break;
        }
        case 'wall':
            if (value.kind !== 'word' || !isWall(value.word)) return `a wall is wanted: ${showList([...walls], 'or')}`;
            break;
        case 'flag':
            if (value.kind !== 'flag' && !(value.kind === 'word' && ['yes', 'no'].includes(value.word))) return 'yes or no is wanted';
            break;
        case 'text':
            if (value.kind !== 'text') return 'a text in quotes is wanted';
            break;
        case 'word': case 'panel_system': case 'door_model': case 'window_model': case 'bench_build': case 'heater_model':
            if (value.kind !== 'word') return takes === 'word' ? `a word is wanted, not ${valueWords(value)}` : `the name of a ${spoken(takes)} is wanted`;
            break;
        default: takes satisfies never;
    }
    const { least, most, one_of: oneOf } = values;
    const compare = (bound: Value | undefined): number => bound?.kind === 'quantity' && value.kind === 'quantity' && sameDimension(bound.quantity.dimension, value.quantity.dimension) ? compareQuantities(value.quantity, bound.quantity) : 0;
    if (least && compare(least.value) < 0) return `at least ${showValue(least.value, unit)} is allowed`;
    if (most && compare(most.value) > 0) return `at most ${showValue(most.value, unit)} is allowed`;
    if (oneOf && !oneOf.value.some(one => sameValue(one, value))) return `${showList(oneOf.value.map(one => showValue(one, unit)), 'or')} is wanted`;
    return undefined;
}
