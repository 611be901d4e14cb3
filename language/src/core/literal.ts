import { add, multiply, parseRational, rational, type Rational } from './rational.js';
import { bareNumber, dimensions, quantityOf, type Quantity } from './quantity.js';
import { TICKS_PER_FOOT, TICKS_PER_INCH } from './length.js';

/**
 * Reads a figure as the language writes it: `34 3/4"`, `7'6"`, `7'-6 1/2"`, `2210 mm`, `34-3/4 in`, `12.40 USD`, `3`.
 * @returns the exact quantity with the unit as written (`ft_in` for feet and inches); `undefined` when it cannot be read (zero denominator)
 */
export function parseLiteral(written: string): Quantity | undefined {
    const text = written.replace(/[\u2018\u2019\u2032]/g, '\'').replace(/[\u201c\u201d\u2033]/g, '"').trim();
    const marked = /^(?:(\d+(?:\.\d+)?)')?[ \t-]?(?:([\d./ \t-]+)")?$/.exec(text);
    if (marked && (marked[1] !== undefined || marked[2] !== undefined)) return feetAndInches(marked[1], marked[2]);
    const withUnit = /^([\d./ \t-]*\d)[ \t]*([A-Za-z][A-Za-z0-9]*)$/.exec(text);
    if (withUnit) {
        const value = parseRational(withUnit[1] ?? '');
        return value && quantityOf(value, withUnit[2] ?? '');
    }
    const value = parseRational(text);
    return value && bareNumber(value);
}

function feetAndInches(feet: string | undefined, inch: string | undefined): Quantity | undefined {
    let total: Rational = rational(0n);
    if (feet !== undefined) {
        const value = parseRational(feet);
        if (!value) return undefined;
        total = add(total, multiply(value, rational(BigInt(TICKS_PER_FOOT))));
    }
    if (inch !== undefined) {
        const value = parseRational(inch);
        if (!value) return undefined;
        total = add(total, multiply(value, rational(BigInt(TICKS_PER_INCH))));
    }
    return { value: total, dimension: dimensions.length, unit: feet === undefined ? 'in' : 'ft_in' };
}
