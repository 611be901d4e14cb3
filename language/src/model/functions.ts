import { isWall, neighbours } from '../core/geometry.js';
import { bareNumber, compareQuantities, sameDimension, type Quantity } from '../core/quantity.js';
import { add, divide, multiply, rational, type Rational } from '../core/rational.js';
import { ofFlag, ofQuantity, ofWord, valueWords, type Value } from '../core/value.js';

/** What a function gives: a value, or why it cannot; `waits` when a list it needs is empty and has no answer. */
export type FunctionResult = { readonly ok: true; readonly value: Value } | { readonly ok: false; readonly why: string; readonly waits?: true };

export interface FunctionDefinition {
    /** How it is written: `max(bench.top)`. */
    readonly written: string;
    readonly doc: string;
    readonly parameters: readonly string[];
    /** Whether one list may stand for any number of values. */
    readonly takesList: boolean;
    /** Whether a word that names nothing stands for itself in it, such as a wall. */
    readonly takesWords?: true;
    readonly apply: (values: readonly Value[]) => FunctionResult;
}

const ok = (value: Value): FunctionResult => ({ ok: true, value });
const no = (why: string): FunctionResult => ({ ok: false, why });
const flat = (values: readonly Value[]): readonly Value[] => values.flatMap(value => value.kind === 'list' ? flat(value.items) : [value]);

/** Quantities of one dimension, or what is wrong with them. */
function quantities(values: readonly Value[]): readonly Quantity[] | string {
    const found: Quantity[] = [];
    for (const value of flat(values)) {
        if (value.kind !== 'quantity') return `${valueWords(value)} is no figure`;
        const [first] = found;
        if (first && !sameDimension(first.dimension, value.quantity.dimension)) return `${valueWords(ofQuantity(first))} and ${valueWords(value)} are of two kinds`;
        found.push(value.quantity);
    }
    return found;
}
function flags(values: readonly Value[]): readonly boolean[] | string {
    const found: boolean[] = [];
    for (const value of flat(values)) {
        if (value.kind !== 'flag') return `${valueWords(value)} is neither yes nor no`;
        found.push(value.flag);
    }
    return found;
}

const extreme = (sign: 1 | -1) => (values: readonly Value[]): FunctionResult => {
    const all = quantities(values);
    if (typeof all === 'string') return no(all);
    const [first, ...rest] = all;
    return first ? ok(ofQuantity(rest.reduce((best, next) => sign * compareQuantities(next, best) > 0 ? next : best, first))) : { ok: false, why: 'there is nothing to choose from', waits: true };
};
const ofFlags = (decide: (all: readonly boolean[]) => boolean) => (values: readonly Value[]): FunctionResult => {
    const all = flags(values);
    return typeof all === 'string' ? no(all) : ok(ofFlag(decide(all)));
};
const rounded = (toWhole: (ratio: Rational) => bigint) => (values: readonly Value[]): FunctionResult => {
    const all = quantities(values);
    if (typeof all === 'string') return no(all);
    const [value, step] = all;
    if (!value || !step || step.value.n <= 0n) return no('a figure and a step above zero are needed');
    return ok(ofQuantity({ ...value, value: multiply(rational(toWhole(divide(value.value, step.value))), step.value) }));
};
const floor = ({ n, d }: Rational): bigint => n >= 0n ? n / d : -((-n + d - 1n) / d);

/** Every function of the language. Names are plain words, so each stays usable as a name. */
export const functions: Readonly<Record<string, FunctionDefinition>> = {
    min: { written: 'min(a, b, …)', doc: 'The smallest of some figures, or of a list such as bench.top.', parameters: ['value', '…'], takesList: true, apply: extreme(-1) },
    max: { written: 'max(a, b, …)', doc: 'The greatest of some figures, or of a list.', parameters: ['value', '…'], takesList: true, apply: extreme(1) },
    sum: {
        written: 'sum(list)', doc: 'All figures of a list added up.', parameters: ['list'], takesList: true,
        apply: values => {
            const all = quantities(values);
            if (typeof all === 'string') return no(all);
            const [first, ...rest] = all;
            return ok(ofQuantity(first ? rest.reduce<Quantity>((total, next) => ({ ...total, value: add(total.value, next.value) }), first) : { ...bareNumber(rational(0n)), isNothing: true }));
        },
    },
    count: {
        written: 'count(list)', doc: 'How many there are: count(bench); of comparisons, how many hold: count(bench.top > 30").', parameters: ['list'], takesList: true,
        apply: values => { const all = flat(values); return ok(ofQuantity(bareNumber(rational(BigInt(all.every(value => value.kind === 'flag') ? all.filter(value => value.flag).length : all.length))))); },
    },
    any: { written: 'any(list)', doc: 'Whether one of them holds.', parameters: ['conditions'], takesList: true, apply: ofFlags(all => all.some(Boolean)) },
    all: { written: 'all(list)', doc: 'Whether every one of them holds.', parameters: ['conditions'], takesList: true, apply: ofFlags(all => all.every(Boolean)) },
    not: { written: 'not(condition)', doc: 'Whether it does not hold.', parameters: ['condition'], takesList: false, apply: ofFlags(all => all.length > 0 && !all.some(Boolean)) },
    round_down: { written: 'round_down(value, step)', doc: 'The greatest whole number of steps that is not above the value.', parameters: ['value', 'step'], takesList: false, apply: rounded(floor) },
    round_up: { written: 'round_up(value, step)', doc: 'The smallest whole number of steps that is not below the value.', parameters: ['value', 'step'], takesList: false, apply: rounded(({ n, d }) => -floor({ n: -n, d })) },
    opposite: {
        written: 'opposite(wall)', doc: 'The wall across the room.', parameters: ['wall'], takesList: false, takesWords: true,
        apply: ([value]) => value?.kind === 'word' && isWall(value.word) ? ok(ofWord(neighbours[neighbours[value.word].right].right)) : no('a wall is needed: front, left, back or right'),
    },
};
export const isFunction = (name: string): boolean => Object.hasOwn(functions, name);
