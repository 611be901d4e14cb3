import { TICKS_PER_FOOT, TICKS_PER_INCH, TICKS_PER_METRE, TICKS_PER_MM, ticks, type Length } from './length.js';
import { add, compare, divide, isWhole, multiply, rational, subtract, toNumber, type Rational } from './rational.js';

/**
 * Exact quantities with their dimension. Base units: length in ticks, mass in kg, time in s, current in A, power in W, temperature in K
 * (a temperature is a point on a scale, not a difference: it takes no part in arithmetic), pressure in Pa, money in its currency's unit.
 */
export interface Quantity {
    readonly value: Rational;
    readonly dimension: Dimension;
    /** The unit of the first literal, so that messages can answer in what the designer wrote. */
    readonly unit: string;
    /** Set for the sum of nothing at all: a zero of whatever dimension the other side has. */
    readonly isNothing?: true;
}

/** Exponents by base, absent for zero; `{}` is a bare number. */
export type Dimension = Readonly<Partial<Record<Base, number>>>;
export type Base = 'length' | 'mass' | 'time' | 'current' | 'power' | 'temperature' | 'pressure' | `money ${string}`;

export const dimensions = {
    number: {}, length: { length: 1 }, area: { length: 2 }, volume: { length: 3 }, mass: { mass: 1 }, time: { time: 1 },
    current: { current: 1 }, power: { power: 1 }, voltage: { power: 1, current: -1 }, temperature: { temperature: 1 }, pressure: { pressure: 1 },
} as const satisfies Record<string, Dimension>;
export type DimensionName = keyof typeof dimensions;

interface Unit { readonly dimension: Dimension; readonly factor: Rational; readonly offset?: Rational }

const r = (n: number | bigint, d: number | bigint = 1): Rational => rational(BigInt(n), BigInt(d));
const power3 = (n: number): bigint => BigInt(n) ** 3n;
const power2 = (n: number): bigint => BigInt(n) ** 2n;
const pound = r(45_359_237, 100_000_000);

/** Every unit word. Factors are definitions (international inch and pound, SI), exact. */
export const units: Readonly<Record<string, Unit>> = {
    mm: { dimension: dimensions.length, factor: r(TICKS_PER_MM) },
    cm: { dimension: dimensions.length, factor: r(10 * TICKS_PER_MM) },
    m: { dimension: dimensions.length, factor: r(TICKS_PER_METRE) },
    in: { dimension: dimensions.length, factor: r(TICKS_PER_INCH) },
    ft: { dimension: dimensions.length, factor: r(TICKS_PER_FOOT) },
    ft2: { dimension: dimensions.area, factor: r(power2(TICKS_PER_FOOT)) },
    m2: { dimension: dimensions.area, factor: r(power2(TICKS_PER_METRE)) },
    in2: { dimension: dimensions.area, factor: r(power2(TICKS_PER_INCH)) },
    cm2: { dimension: dimensions.area, factor: r(power2(10 * TICKS_PER_MM)) },
    ft3: { dimension: dimensions.volume, factor: r(power3(TICKS_PER_FOOT)) },
    m3: { dimension: dimensions.volume, factor: r(power3(TICKS_PER_METRE)) },
    lb: { dimension: dimensions.mass, factor: pound },
    kg: { dimension: dimensions.mass, factor: r(1) },
    kW: { dimension: dimensions.power, factor: r(1000) },
    W: { dimension: dimensions.power, factor: r(1) },
    V: { dimension: dimensions.voltage, factor: r(1) },
    A: { dimension: dimensions.current, factor: r(1) },
    degC: { dimension: dimensions.temperature, factor: r(1), offset: r(27315, 100) },
    degF: { dimension: dimensions.temperature, factor: r(5, 9), offset: r(45967 * 5, 900) },
    // One pound-force (0.45359237 kg x 9.80665 m/s2) on a square inch (0.00064516 m2).
    psi: { dimension: dimensions.pressure, factor: divide(multiply(pound, r(980_665, 100_000)), r(64_516, 100_000_000)) },
    min: { dimension: dimensions.time, factor: r(60) },
    h: { dimension: dimensions.time, factor: r(3600) },
};
export const lengthUnits = ['in', 'ft', 'mm', 'cm', 'm'] as const;

/** `value` of `unit` as a quantity; three capitals are a currency; `undefined` for an unknown unit. */
export function quantityOf(value: Rational, unit: string): Quantity | undefined {
    const known = Object.hasOwn(units, unit) ? units[unit] : undefined;
    if (known) {
        const scaled = multiply(value, known.factor);
        return { value: known.offset ? add(scaled, known.offset) : scaled, dimension: known.dimension, unit };
    }
    return /^[A-Z]{3}$/.test(unit) ? { value, dimension: { [`money ${unit}`]: 1 }, unit } : undefined;
}
export const bareNumber = (value: Rational): Quantity => ({ value, dimension: {}, unit: '' });
export const lengthQuantity = (length: Length, unit = 'in'): Quantity => ({ value: r(length), dimension: dimensions.length, unit });

export function sameDimension(a: Dimension, b: Dimension): boolean {
    const bases = new Set([...Object.keys(a), ...Object.keys(b)] as Base[]);
    return [...bases].every(base => (a[base] ?? 0) === (b[base] ?? 0));
}

/** The dimension in words, for messages: `a length`, `an area`, `a number`. */
export function dimensionWords(dimension: Dimension): string {
    const names: Record<DimensionName, string> = {
        number: 'a bare number', length: 'a length', area: 'an area', volume: 'a volume', mass: 'a mass', time: 'a time', current: 'a current',
        power: 'a power', voltage: 'a voltage', temperature: 'a temperature', pressure: 'a pressure',
    };
    for (const [name, known] of Object.entries(dimensions)) if (sameDimension(known, dimension)) return names[name as DimensionName];
    const money = Object.keys(dimension).find(base => base.startsWith('money ') && dimension[base as Base] === 1);
    if (money && Object.keys(dimension).length === 1) return `money in ${money.slice(6)}`;
    return Object.entries(dimension).filter(([, e]) => e !== 0).map(([base, e]) => e === 1 ? base : `${base} to the power ${e}`).join(' by ') || 'a bare number';
}

/** Two figures that meet, where the sum of nothing is taken as a zero of the other's dimension. */
export function brought(left: Quantity, right: Quantity): readonly [Quantity, Quantity] {
    if (left.isNothing && !right.isNothing) return [{ ...left, dimension: right.dimension, unit: right.unit }, right];
    if (right.isNothing && !left.isNothing) return [left, { ...right, dimension: left.dimension, unit: left.unit }];
    return [left, right];
}

export type Operator = '+' | '-' | '*' | '/';
export type Calculation = { readonly ok: true; readonly value: Quantity } | { readonly ok: false; readonly why: 'dimensions' | 'zero' | 'temperature' };

/** One step of exact arithmetic. Sums want equal dimensions; a temperature takes no part; nothing is rounded. */
export function calculate(one: Quantity, operator: Operator, other: Quantity): Calculation {
    const [left, right] = operator === '+' || operator === '-' ? brought(one, other) : [one, other];
    if (left.dimension.temperature || right.dimension.temperature) return { ok: false, why: 'temperature' };
    const unit = left.unit || right.unit;
    switch (operator) {
        case '+': case '-':
            if (!sameDimension(left.dimension, right.dimension)) return { ok: false, why: 'dimensions' };
            return { ok: true, value: { value: (operator === '+' ? add : subtract)(left.value, right.value), dimension: left.dimension, unit } };
        case '*': return { ok: true, value: { value: multiply(left.value, right.value), dimension: combine(left.dimension, right.dimension, 1), unit } };
        case '/':
            if (right.value.n === 0n) return { ok: false, why: 'zero' };
            return { ok: true, value: { value: divide(left.value, right.value), dimension: combine(left.dimension, right.dimension, -1), unit } };
    }
}

function combine(a: Dimension, b: Dimension, sign: 1 | -1): Dimension {
    const result: Partial<Record<Base, number>> = { ...a };
    for (const [base, exponent] of Object.entries(b) as [Base, number][]) {
        const total = (result[base] ?? 0) + sign * exponent;
        result[base] = total;
    }
    return Object.fromEntries(Object.entries(result).filter(([, exponent]) => exponent !== 0));
}

/** The quantity as a length; `undefined` when it is no whole number of ticks (the caller names the nearest ones). */
export function toLength(quantity: Quantity): Length | undefined {
    if (!isWhole(quantity.value)) return undefined;
    const count = Number(quantity.value.n);
    return Number.isSafeInteger(count) ? ticks(count) : undefined;
}
/** SI figure of anything that is not a length: W, V, A, kg, s, Pa, m2 and m3 (from square and cubic ticks), degC for a temperature. */
export function toSi(quantity: Quantity): number {
    const exponent = quantity.dimension.length ?? 0;
    if (quantity.dimension.temperature) return toNumber(subtract(quantity.value, r(27315, 100)));
    return exponent === 0 ? toNumber(quantity.value) : toNumber(divide(quantity.value, r(BigInt(TICKS_PER_METRE) ** BigInt(exponent))));
}
export const compareQuantities = (a: Quantity, b: Quantity): number => compare(a.value, b.value);
