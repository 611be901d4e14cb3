import { rational, roundHalfEven, type Rational } from './rational.js';
import { TICKS_PER_FOOT, TICKS_PER_INCH, TICKS_PER_METRE, TICKS_PER_MM, type Length } from './length.js';

/** The units a length can be written in. `ft_in` is feet and inches, `7'6"`. */
export type LengthUnit = 'in' | 'ft_in' | 'ft' | 'mm' | 'cm' | 'm';
/** What the figure is for: the shop reads 1/32", a drawing 1/16"; metric is 0.5 mm in both; `exact` never rounds. */
export type Purpose = 'shop' | 'drawing' | 'exact';

export const isMetric = (unit: LengthUnit): boolean => unit === 'mm' || unit === 'cm' || unit === 'm';

/**
 * A length as people write it: `34 3/4"`, `7'6"`, `2210 mm`. Rounds once, half to even, and puts `≈` before a figure that is not the value.
 * `exact` shows a fraction as fine as 1/128", then decimals, and only then `≈` with five decimals.
 */
export function showLength(length: Length, unit: LengthUnit = 'in', purpose: Purpose = 'exact'): string {
    const sign = length < 0 ? '-' : '';
    const size = Math.abs(length);
    switch (unit) {
        case 'mm': return metric(sign, size, TICKS_PER_MM, 'mm', purpose);
        case 'cm': return metric(sign, size, 10 * TICKS_PER_MM, 'cm', purpose);
        case 'm': return metric(sign, size, TICKS_PER_METRE, 'm', purpose);
        case 'in': return inchText(sign, size, purpose);
        case 'ft': case 'ft_in': {
            const feet = Math.floor(size / TICKS_PER_FOOT);
            const rest = size - feet * TICKS_PER_FOOT;
            if (feet === 0) return inchText(sign, size, purpose);
            if (rest === 0) return `${sign}${feet}'`;
            const inch = inchFigure(rest, purpose);
            return inch.figure === '12' ? `≈${sign}${feet + 1}'` : `${inch.isExact ? '' : '≈'}${sign}${feet}'${inch.figure.includes('/') && /^\d+ /.test(inch.figure) ? ` ${inch.figure}` : inch.figure}"`;
        }
    }
}

/** A length exactly when that is a figure people write, else rounded as for the shop: roots and shares have no short exact figure. */
export function showWritable(length: Length, unit: LengthUnit): string {
    const exact = showLength(length, unit);
    return exact.startsWith('≈') || /\.\d{3,}/.test(exact) ? showLength(length, unit, 'shop') : exact;
}

/** A word of the language as people say it: `door_section` is a door section. */
export const spoken = (word: string): string => word.replaceAll('_', ' ');

/** The same length in the other system, for hovers: inches for metric figures and millimetres for the rest. */
export const showOther = (length: Length, unit: LengthUnit, purpose: Purpose = 'drawing'): string =>
    showLength(length, isMetric(unit) ? 'in' : 'mm', purpose);

/** `34 3/4" (882.5 mm)`. */
export const showBoth = (length: Length, unit: LengthUnit, purpose: Purpose = 'drawing'): string =>
    `${showLength(length, unit, purpose)} (${showOther(length, unit, purpose)})`;

function inchText(sign: string, size: number, purpose: Purpose): string {
    const { figure, isExact } = inchFigure(size, purpose);
    return `${isExact ? '' : '≈'}${sign}${figure}"`;
}

function inchFigure(size: number, purpose: Purpose): { figure: string; isExact: boolean } {
    const finest = purpose === 'shop' ? 32n : purpose === 'drawing' ? 16n : 128n;
    const value: Rational = rational(BigInt(size), BigInt(TICKS_PER_INCH));
    const parts = roundHalfEven({ n: value.n * finest, d: value.d });
    const isExact = parts * value.d === value.n * finest;
    if (purpose === 'exact' && !isExact) return decimals(value, 5);
    const whole = parts / finest;
    const fraction = rational(parts % finest, finest);
    const figure = fraction.n === 0n ? `${whole}` : whole === 0n ? `${fraction.n}/${fraction.d}` : `${whole} ${fraction.n}/${fraction.d}`;
    return { figure, isExact };
}

function metric(sign: string, size: number, ticksPerUnit: number, unit: string, purpose: Purpose): string {
    if (purpose === 'exact') {
        const { figure, isExact } = decimals(rational(BigInt(size), BigInt(ticksPerUnit)), 6);
        return `${isExact ? '' : '≈'}${sign}${figure} ${unit}`;
    }
    const halfMm = TICKS_PER_MM / 2;
    const steps = roundHalfEven(rational(BigInt(size), BigInt(halfMm)));
    const isExact = steps * BigInt(halfMm) === BigInt(size);
    const { figure } = decimals(rational(steps * BigInt(halfMm), BigInt(ticksPerUnit)), 6);
    return `${isExact ? '' : '≈'}${sign}${figure} ${unit}`;
}

function decimals(value: Rational, places: number): { figure: string; isExact: boolean } {
    const scale = 10n ** BigInt(places);
    const rounded = roundHalfEven({ n: value.n * scale, d: value.d });
    const isExact = rounded * value.d === value.n * scale;
    const text = `${rounded / scale}.${(rounded % scale).toString().padStart(places, '0')}`.replace(/\.?0+$/, '');
    return { figure: text, isExact };
}

/** A figure with at most `places` decimals and no trailing zeros, halves to even on the decimal text of the value. */
export function showNumber(value: number, places = 2): string {
    if (!Number.isFinite(value)) return String(value);
    const text = value.toFixed(places);
    return (text.includes('.') ? text.replace(/\.?0+$/, '') : text).replace(/^-0$/, '0');
}

/** Exact rational as text: a whole number, a short decimal or a fraction. */
export function showRational(value: Rational): string {
    const { figure, isExact } = decimals(value.n < 0n ? { n: -value.n, d: value.d } : value, 6);
    const sign = value.n < 0n ? '-' : '';
    return isExact ? sign + figure : `${value.n}/${value.d}`;
}

/** Lengths that lie nearest to an exact value which is no whole number of ticks: on the 1/64" and the 0.1 mm grid. */
export function nearestWritable(valueInTicks: Rational): { readonly inch: Length; readonly metric: Length } {
    const onGrid = (step: number): Length => Number(roundHalfEven({ n: valueInTicks.n, d: valueInTicks.d * BigInt(step) })) * step as Length;
    return { inch: onGrid(TICKS_PER_INCH / 64), metric: onGrid(TICKS_PER_MM / 10) };
}

/** A list as a sentence has it: `a`, `a and b`, `a, b and c`. */
export function showList(items: readonly string[], word: 'and' | 'or' = 'and'): string {
    if (items.length <= 1) return items[0] ?? '';
    return `${items.slice(0, -1).join(', ')} ${word} ${items.at(-1)}`;
}

