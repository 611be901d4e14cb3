import type { Figure } from './finding.js';
import { ticks } from './length.js';
import { bareNumber, dimensionWords, dimensions, lengthQuantity, quantityOf, sameDimension, toLength, toSi, units, type Quantity } from './quantity.js';
import { divide, multiply, rational, subtract, toNumber, type Rational } from './rational.js';
import { nearestWritable, showLength, showNumber, showRational, showWritable, type LengthUnit } from './show.js';

/** What an expression of the language can come to. Words are choices, walls and names of blocks. */
export type Value =
    | { readonly kind: 'quantity'; readonly quantity: Quantity }
    | { readonly kind: 'flag'; readonly flag: boolean }
    | { readonly kind: 'word'; readonly word: string }
    | { readonly kind: 'text'; readonly text: string }
    | { readonly kind: 'date'; readonly date: string }
    | { readonly kind: 'list'; readonly items: readonly Value[] };

export const ofQuantity = (quantity: Quantity): Value => ({ kind: 'quantity', quantity });
export const ofFlag = (flag: boolean): Value => ({ kind: 'flag', flag });
export const ofWord = (word: string): Value => ({ kind: 'word', word });
export const ofText = (text: string): Value => ({ kind: 'text', text });
export const ofList = (items: readonly Value[]): Value => ({ kind: 'list', items });

/** A number of some unit, taken as the decimal it is shown as, so that 0.1 stays one tenth. Nothing for a figure that is no number. */
export function ofAmount(value: number, unit: string): Value | undefined {
    if (!Number.isFinite(value)) return undefined;
    const exact = decimal(value);
    const quantity = unit === '' || unit === '%' ? bareNumber(exact) : quantityOf(exact, unit);
    return quantity && ofQuantity(quantity);
}
/** Cubic ticks as a volume. */
export const ofVolume = (cubic: bigint): Value => ofQuantity({ value: rational(cubic), dimension: dimensions.volume, unit: 'ft3' });
export const ofLength = (length: number, unit = 'in'): Value => ofQuantity(lengthQuantity(ticks(length), unit));

function decimal(value: number): Rational {
    const [digits = '0', exponent = '0'] = value.toExponential().split('e');
    const [whole = '0', fraction = ''] = digits.replace('-', '').split('.');
    const power = Number(exponent) - fraction.length;
    const n = BigInt(whole + fraction) * (value < 0 ? -1n : 1n);
    return power >= 0 ? rational(n * 10n ** BigInt(power)) : rational(n, 10n ** BigInt(-power));
}

/** The value of a computed figure. A figure in words is a word, `yes` and `no` among them a flag. */
export function ofFigure(figure: Figure): Value | undefined {
    switch (figure.kind) {
        case 'length': return ofLength(figure.length);
        case 'amount': return ofAmount(figure.value, figure.unit);
        case 'words': return figure.words === 'yes' || figure.words === 'no' ? ofFlag(figure.words === 'yes') : /^[A-Za-z_][\w-]*$/.test(figure.words) ? ofWord(figure.words) : ofText(figure.words);
        default: return figure satisfies never;
    }
}

/** What a value is, with its article, for messages: `a length`, `yes or no`, `a list`. */
export function valueWords(value: Value): string {
    switch (value.kind) {
        case 'quantity': return dimensionWords(value.quantity.dimension);
        case 'flag': return 'yes or no';
        case 'word': return 'a word';
        case 'text': return 'a text';
        case 'date': return 'a date';
        case 'list': return 'a list';
        default: return value satisfies never;
    }
}

/** The unit each dimension is shown in: the inch world's and the metric one. */
const shownIn: readonly (readonly [keyof typeof dimensions, string, string])[] = [
    ['area', 'ft2', 'm2'], ['volume', 'ft3', 'm3'], ['mass', 'lb', 'kg'], ['time', 'min', 'min'], ['current', 'A', 'A'], ['power', 'W', 'W'],
    ['voltage', 'V', 'V'], ['temperature', 'degF', 'degC'], ['pressure', 'psi', 'psi'],
];

/** A value as messages and hovers show it, lengths in `unit`. */
export function showValue(value: Value, unit: LengthUnit): string {
    switch (value.kind) {
        case 'quantity': return showQuantity(value.quantity, unit);
        case 'flag': return value.flag ? 'yes' : 'no';
        case 'word': return value.word;
        case 'text': return `"${value.text}"`;
        case 'date': return value.date;
        case 'list': return value.items.map(item => showValue(item, unit)).join(', ');
        default: return value satisfies never;
    }
}

function showQuantity(quantity: Quantity, unit: LengthUnit): string {
    const { dimension, value } = quantity;
    if (Object.keys(dimension).length === 0) { const short = showRational(value); return short.length <= 9 ? short : `≈${showNumber(toNumber(value), 4)}`; }
    if (sameDimension(dimension, dimensions.length)) {
        const length = toLength(quantity);
        return length === undefined ? `≈${showLength(nearestWritable(value)[unit.endsWith('m') ? 'metric' : 'inch'], unit)}` : showWritable(length, unit);
    }
    const money = Object.keys(dimension).find(base => base.startsWith('money '));
    if (money) return `${toNumber(value).toFixed(2)} ${money.slice(6)}`;
    const own = units[quantity.unit];
    if (own && sameDimension(own.dimension, dimension)) return `${showNumber(toNumber(divide(own.offset ? subtract(value, own.offset) : value, own.factor)))} ${quantity.unit}`;
    const row = shownIn.find(([name]) => sameDimension(dimensions[name], dimension));
    const name = row?.[unit.endsWith('m') ? 2 : 1];
    const chosen = name === undefined ? undefined : units[name];
    return chosen && name !== undefined ? `${showNumber(toNumber(divide(value, chosen.factor)))} ${name}` : showCompound(quantity, unit.endsWith('m'));
}

/** Units that a figure of several dimensions is shown in, those of the inch world first. */
const compoundUnits: Readonly<Record<string, readonly [inch: readonly string[], metric: readonly string[]]>> = {
    length: [['ft', 'ft2', 'ft3'], ['m', 'm2', 'm3']], mass: [['lb'], ['kg']], time: [['min'], ['min']], current: [['A'], ['A']], power: [['kW'], ['kW']], pressure: [['psi'], ['psi']],
};

/** `40 ft3 / 1 kW`, as it may be written. A dimension no unit of the language fits is said in words beside the SI figure. */
function showCompound(quantity: Quantity, isMetric: boolean): string {
    let { value } = quantity;
    const above: string[] = [];
    const below: string[] = [];
    for (const [base, exponent = 0] of Object.entries(quantity.dimension)) {
        const name = compoundUnits[base]?.[isMetric ? 1 : 0][Math.abs(exponent) - 1];
        const factor = name === undefined ? undefined : units[name]?.factor;
        if (name === undefined || !factor) return `${significant(toSi(quantity))} (${dimensionWords(quantity.dimension)})`;
        value = exponent > 0 ? divide(value, factor) : multiply(value, factor);
        (exponent > 0 ? above : below).push(name);
    }
    const figure = significant(toNumber(value));
    const [first = '', ...more] = above;
    return `${figure}${first === '' ? '' : ` ${first}`}${more.map(name => ` * 1 ${name}`).join('')}${below.map(name => ` / 1 ${name}`).join('')}`;
}
/** Four significant figures: such figures have no usual size. */
const significant = (value: number): string => Number.isFinite(value) ? String(Number(value.toPrecision(4))) : String(value);

/** A value as a figure of a finding or a fact. */
export function toFigure(value: Value, unit: LengthUnit): Figure {
    if (value.kind === 'quantity') {
        const length = sameDimension(value.quantity.dimension, dimensions.length) ? toLength(value.quantity) : undefined;
        if (length !== undefined) return { kind: 'length', length };
        if (Object.keys(value.quantity.dimension).length === 0) return { kind: 'amount', value: toNumber(value.quantity.value), unit: '' };
    }
    return { kind: 'words', words: showValue(value, unit) };
}

/** Whether two values are one and the same; figures of unlike dimensions are not. */
export function sameValue(a: Value, b: Value): boolean {
    switch (a.kind) {
        case 'quantity': return b.kind === 'quantity' && sameDimension(a.quantity.dimension, b.quantity.dimension) && a.quantity.value.n === b.quantity.value.n && a.quantity.value.d === b.quantity.value.d;
        case 'flag': return b.kind === 'flag' ? a.flag === b.flag : b.kind === 'word' && b.word === (a.flag ? 'yes' : 'no');
        case 'word': return b.kind === 'flag' ? sameValue(b, a) : wordOf(b) === a.word;
        case 'text': return wordOf(b) === a.text;
        case 'date': return b.kind === 'date' && a.date === b.date;
        case 'list': return b.kind === 'list' && a.items.length === b.items.length && a.items.every((item, i) => { const other = b.items[i]; return other !== undefined && sameValue(item, other); });
        default: return a satisfies never;
    }
}
const wordOf = (value: Value): string | undefined => value.kind === 'word' ? value.word : value.kind === 'text' ? value.text : undefined;
