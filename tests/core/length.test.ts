import fc from 'fast-check';
import { expect, test } from 'vitest';
import { area, feet, half, inches, mm, rootDown, rootUp, splitEvenly, sum, ticks } from '../../language/src/core/length.js';
import { nearestWritable, showBoth, showLength, showList, showNumber } from '../../language/src/core/show.js';
import { rational } from '../../language/src/core/rational.js';

test('a third of a millimetre is no length, and says so', () => {
    expect(() => ticks(1.5)).toThrow('1.5');
    expect(() => inches(1, 1, 3 * 127 * 7)).toThrow();
});
test('sums are exact where floating point is not: three times 25.4 mm is 76.2 mm', () => {
    expect(sum(mm(25.4), mm(25.4), mm(25.4))).toBe(mm(76.2));
    expect(3 * 25.4).not.toBe(76.2);
});
test('areas pass 2^53 and stay exact: 72" squared', () => {
    expect(area(inches(72), inches(72))).toBe(21_405_155_328_000_000n + (BigInt(72 * 2_032_000) ** 2n - 21_405_155_328_000_000n));
    expect(area(inches(72), inches(72)) > BigInt(Number.MAX_SAFE_INTEGER)).toBe(true);
});
test('a required root rounds up, an available one down', () => {
    fc.assert(fc.property(fc.bigInt({ min: 0n, max: 10n ** 18n }), square => {
        const up = BigInt(rootUp(square));
        const down = BigInt(rootDown(square));
        expect(up * up >= square && (up === 0n || (up - 1n) * (up - 1n) < square)).toBe(true);
        expect(down * down <= square && (down + 1n) * (down + 1n) > square).toBe(true);
    }));
});
test('equal shares and what is left make the whole', () => {
    fc.assert(fc.property(fc.integer({ min: 0, max: 1e12 }), fc.integer({ min: 1, max: 999 }), (length, count) => {
        const { share, rest } = splitEvenly(ticks(length), count);
        expect(share * count + rest).toBe(length);
        expect(rest).toBeLessThan(count);
    }));
    expect(half(ticks(7))).toBe(3);
});

test.each([
    [inches(34, 3, 4), 'in', 'exact', '34 3/4"'], [inches(0, 3, 4), 'in', 'exact', '3/4"'], [feet(7, 6), 'ft_in', 'exact', '7\'6"'], [feet(7), 'ft_in', 'exact', '7\''],
    [feet(7, 6.5), 'ft_in', 'exact', '7\' 6 1/2"'], [mm(2210), 'mm', 'exact', '2210 mm'], [mm(2210), 'm', 'exact', '2.21 m'], [mm(0.1), 'mm', 'exact', '0.1 mm'],
    [mm(100), 'in', 'exact', '3.937007874"'.length > 0 ? '≈3.93701"' : ''], [mm(100), 'in', 'shop', '≈3 15/16"'], [inches(1, 1, 64), 'in', 'shop', '≈1"'], [inches(1, 3, 64), 'in', 'shop', '≈1 1/16"'],
    [inches(1, 1, 32), 'in', 'drawing', '≈1"'], [inches(1, 3, 32), 'in', 'drawing', '≈1 1/8"'], [mm(10.25), 'mm', 'shop', '≈10 mm'], [mm(10.75), 'mm', 'shop', '≈11 mm'], [mm(10.5), 'mm', 'shop', '10.5 mm'],
    [inches(-3), 'in', 'exact', '-3"'], [inches(0), 'mm', 'exact', '0 mm'], [ticks(feet(1) - 1), 'ft_in', 'shop', '≈12"'],
] as const)('shows %s ticks in %s for %s as %s', (length, unit, purpose, text) => {
    expect(showLength(length, unit, purpose)).toBe(text);
});
test('both systems, lists, numbers', () => {
    expect(showBoth(inches(34, 3, 4), 'in')).toBe('34 3/4" (≈882.5 mm)');
    expect(showList(['a', 'b', 'c'])).toBe('a, b and c');
    expect([showNumber(31.25), showNumber(0.5, 0), showNumber(-0.001), showNumber(12)]).toEqual(['31.25', '1', '0', '12']);
});
test('the nearest lengths a shop can set', () => {
    const { inch, metric } = nearestWritable(rational(BigInt(mm(1000)), 3n));
    expect([showLength(inch), showLength(metric, 'mm')]).toEqual(['13 1/8"', '333.3 mm']);
});
