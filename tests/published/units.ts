import {
    area, feet, inches, inCubicFeet, inCubicMetres, inMm, inSquareInches, inSquareMetres, mm, TICKS_PER_FOOT, TICKS_PER_INCH, TICKS_PER_METRE, TICKS_PER_MM, ticks, volume,
} from '../../language/src/core/length.js';
import { rational, roundHalfEven } from '../../language/src/core/rational.js';
import { showLength } from '../../language/src/core/show.js';
import { fahrenheit, poundsForce, rValue } from '../../language/src/rule-sets/figure.js';
import type { PublishedRow } from './table.js';

const definition = { source: 'international yard and pound, 1959', tolerance: 0, toleranceReason: 'exact by definition' } as const;
const rounding = { source: 'ISO 80000-1', clause: 'annex B, rule B', tolerance: 0, toleranceReason: 'a rule, not a figure', fromMemory: true, checks: 'roundHalfEven' } as const;
export const unitRows: readonly PublishedRow[] = [
    { ...definition, clause: 'inch', what: 'mm in an inch', published: 25.4, ours: () => TICKS_PER_INCH / TICKS_PER_MM, checks: 'inMm' },
    { ...definition, clause: 'foot', what: 'm in a foot', published: 0.3048, ours: () => TICKS_PER_FOOT / TICKS_PER_METRE, checks: 'inMetres' },
    { ...definition, clause: 'inch', what: 'mm in 7 ft 6 in', published: 2286, ours: () => inMm(feet(7, 6)), checks: 'feet' },
    { ...definition, clause: 'cubic foot', what: 'm3 in a cubic foot', published: 0.028316846592, ours: () => inCubicMetres(volume(feet(1), feet(1), feet(1))), tolerance: 1e-15, toleranceReason: 'last bits of a floating-point quotient', checks: 'volume' },
    { ...definition, clause: 'square foot', what: 'm2 in a square foot', published: 0.09290304, ours: () => inSquareMetres(area(feet(1), feet(1))), tolerance: 1e-15, toleranceReason: 'last bits of a floating-point quotient', checks: 'area' },
    { ...definition, clause: 'board foot', what: 'litres in 144 cubic inches', published: 2.359737, ours: () => 1000 * inCubicMetres(volume(inches(12), inches(12), inches(1))), tolerance: 5e-7, toleranceReason: 'worked to six decimals', checks: 'inCubicMetres' },
    { ...definition, clause: 'board foot', what: 'cubic feet in 144 cubic inches', published: 1 / 12, ours: () => inCubicFeet(volume(inches(12), inches(12), inches(1))), tolerance: 1e-15, toleranceReason: 'last bits of a floating-point quotient', checks: 'inCubicFeet' },
    { ...definition, clause: 'pound-force', what: 'N in 1 lbf', published: 0.45359237 * 9.80665, ours: () => poundsForce(1).newtons, tolerance: 1e-12, toleranceReason: 'last bits of the product', checks: 'poundsForce' },
    { source: 'ASHRAE Fundamentals', clause: 'unit conversions', what: 'm2K/W in R-1', published: 0.1761102, ours: () => rValue(1).squareMetreKelvinPerWatt, tolerance: 5e-8, toleranceReason: 'seven printed decimals', fromMemory: true, checks: 'rValue' },
    { source: 'definition of the Fahrenheit scale', clause: '(F − 32) × 5/9', what: '194 °F', published: 90, ours: () => fahrenheit(194).celsius, tolerance: 0, toleranceReason: 'exact by definition', checks: 'fahrenheit' },
    { source: 'IMC', clause: '914.5', what: 'gross area of a 4 by 8 in opening, cm2', published: 206.5, ours: () => 1e4 * inSquareMetres(area(inches(4), inches(8))), tolerance: 0.06, toleranceReason: 'worked to one decimal', checks: 'inSquareMetres' },
    { source: 'IMC', clause: '914.5', what: 'gross area of a 4 by 8 in opening, in2', published: 32, ours: () => inSquareInches(area(inches(4), inches(8))), tolerance: 0, toleranceReason: 'exact', checks: 'inSquareInches' },
    { source: 'arithmetic', clause: 'half of 1/16 in', what: 'largest error of a figure rounded to 1/16 in, mm', published: 0.79375, ours: () => inMm(inches(0, 1, 32)), tolerance: 0, toleranceReason: 'exact', checks: 'inMm' },
    { ...rounding, what: '0.5', published: 0, ours: () => Number(roundHalfEven(rational(1n, 2n))) },
    { ...rounding, what: '1.5', published: 2, ours: () => Number(roundHalfEven(rational(3n, 2n))) },
    { ...rounding, what: '2.5', published: 2, ours: () => Number(roundHalfEven(rational(5n, 2n))) },
    { ...rounding, what: '-1.5', published: -2, ours: () => Number(roundHalfEven(rational(-3n, 2n))) },
    { ...rounding, what: '1/32 in on a drawing, to 1/16 in', published: '≈0"', ours: () => showLength(inches(0, 1, 32), 'in', 'drawing'), checks: 'showLength' },
    { ...rounding, what: '3/32 in on a drawing, to 1/16 in', published: '≈1/8"', ours: () => showLength(inches(0, 3, 32), 'in', 'drawing'), checks: 'showLength' },
    { ...rounding, what: '0.25 mm, to 0.5 mm', published: '≈0 mm', ours: () => showLength(ticks(TICKS_PER_MM / 4), 'mm', 'drawing'), checks: 'showLength' },
    { ...rounding, what: '0.75 mm, to 0.5 mm', published: '≈1 mm', ours: () => showLength(ticks(TICKS_PER_MM * 3 / 4), 'mm', 'drawing'), checks: 'showLength' },
    { ...definition, clause: 'inch', what: '2210 mm in inches, shown to 1/16', published: '≈87"', ours: () => showLength(mm(2210), 'in', 'drawing'), checks: 'showLength' },
];
