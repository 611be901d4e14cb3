import fc from 'fast-check';
import { expect, test } from 'vitest';
import { inches, mm } from '../../language/src/core/length.js';
import { parseLiteral } from '../../language/src/core/literal.js';
import { editDistance, nearestName } from '../../language/src/core/nearest.js';
import { bareNumber, calculate, dimensionWords, lengthQuantity, toLength, toSi } from '../../language/src/core/quantity.js';
import { parseRational, rational, roundHalfEven } from '../../language/src/core/rational.js';
import { showLength } from '../../language/src/core/show.js';

test.each([
    ['34 3/4"', inches(34, 3, 4)], ['34-3/4"', inches(34, 3, 4)], ['34.75 in', inches(34, 3, 4)], ['34 3/4 in', inches(34, 3, 4)], ['3/4"', inches(0, 3, 4)], ['7\'6"', inches(90)], ['7\'-6"', inches(90)],
    ['7\' 6 3/4"', inches(90, 3, 4)], ['7\'', inches(84)], ['7.5\'', inches(90)], ['2210 mm', mm(2210)], ['2.21 m', mm(2210)], ['221 cm', mm(2210)], ['7\u20326\u2033', inches(90)], ['7\u20196\u201d', inches(90)], ['8 ft', inches(96)],
] as const)('reads %s exactly', (text, length) => {
    const quantity = parseLiteral(text);
    expect(quantity && toLength(quantity)).toBe(length);
});
test.each([['240 V', 240], ['6 kW', 6000], ['50 A', 50], ['32 degF', 0], ['212 degF', 100], ['20 degC', 20], ['60 min', 3600], ['1 lb', 0.45359237], ['300 ft3', 300 * 0.028316846592], ['12 ft2', 12 * 0.09290304], ['1 psi', 6894.757293168361]] as const)('reads %s as %s in SI', (text, value) => {
    const quantity = parseLiteral(text);
    expect(quantity && toSi(quantity)).toBeCloseTo(value, 9);
});
test('a fraction over zero, an unknown unit and nothing are no quantities', () => {
    expect([parseLiteral('3/0"'), parseLiteral('3 xy'), parseLiteral('"'), parseRational(''), parseRational('1.5 1/2')]).toEqual([undefined, undefined, undefined, undefined, undefined]);
});
test('a length shown exactly reads back as itself, in every unit', () => {
    fc.assert(fc.property(fc.integer({ min: 0, max: 128 * 300 }), parts => {
        const length = (parts * 15_875) as ReturnType<typeof inches>;
        for (const unit of ['in', 'ft_in'] as const) {
            const quantity = parseLiteral(showLength(length, unit));
            expect(quantity && toLength(quantity)).toBe(length);
        }
    }));
    fc.assert(fc.property(fc.integer({ min: 0, max: 99_999 }), tenths => {
        for (const unit of ['mm', 'cm', 'm'] as const) {
            const quantity = parseLiteral(showLength(mm(tenths / 10), unit));
            expect(quantity && toLength(quantity)).toBe(mm(tenths / 10));
        }
    }));
});
test('arithmetic keeps dimensions: sums of unlike things, division by zero and temperatures are refused', () => {
    const length = lengthQuantity(inches(36));
    const volts = parseLiteral('240 V');
    const degrees = parseLiteral('20 degC');
    if (!volts || !degrees) throw new Error('unreadable');
    expect(calculate(length, '+', volts)).toEqual({ ok: false, why: 'dimensions' });
    expect(calculate(length, '/', bareNumber(rational(0n)))).toEqual({ ok: false, why: 'zero' });
    expect(calculate(degrees, '+', degrees)).toEqual({ ok: false, why: 'temperature' });
    const product = calculate(length, '*', length);
    expect(product.ok && dimensionWords(product.value.dimension)).toBe('an area');
    const watts = calculate(volts, '*', parseLiteral('25 A') ?? volts);
    expect(watts.ok && [dimensionWords(watts.value.dimension), toSi(watts.value)]).toEqual(['a power', 6000]);
});
test('halves go to even', () => {
    expect([1n, 3n, 5n, -1n, -3n].map(n => roundHalfEven({ n, d: 2n }))).toEqual([0n, 2n, 2n, 0n, -2n]);
});
test('the nearest name is one that could be meant', () => {
    expect([nearestName('bnech', ['bench', 'vent']), nearestName('topp', ['top']), nearestName('zzzz', ['bench'])]).toEqual(['bench', 'top', undefined]);
    expect([editDistance('bnech', 'bench'), editDistance('', 'abc'), editDistance('kitten', 'sitting')]).toEqual([1, 3, 3]);
});
