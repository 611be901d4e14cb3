import type { Length } from '../../core/length.js';
import type { WidthOffer } from './stretch.js';

/** Above these a division would take longer than a keystroke allows; the usual offers stay a hundred times below. */
const mostSums = 30_000;
const mostPairs = 300_000;

/**
 * Whether an offer has so many narrow, unrelated widths that the mixtures filling a run can no longer be searched at once. Modules that are
 * multiples of one step, as modules are, reach few different sums and never come near.
 */
export function hasTooManyMixtures(offer: WidthOffer, run: Length): boolean {
    const widths: readonly number[] = [...new Set(offer.modules)].filter(width => width <= run);
    if (widths.length === 0) return false;
    const [least, most] = [Math.min(...widths), Math.max(...widths)];
    const step = widths.reduce((a, b) => greatestCommonDivisor(a, b));
    /** Most different sums of `count` modules: the mixtures there are, or the steps between the smallest and the largest sum. */
    const sumsOf = (count: number): number => Math.min(mixtures(count, widths.length), count * (most - least) / step + 1);
    const panels = Math.ceil(run / most);
    const pairs = panels * sumsOf(Math.ceil(panels / 2)) ** 2;
    let total = 0;
    for (let count = 1; count * least <= run && total <= mostSums; count++) total += sumsOf(count);
    return pairs > mostPairs || total > mostSums;
}

/** Ways to choose `count` things of `kinds` kinds, order not counting: C(count + kinds - 1, kinds - 1). */
function mixtures(count: number, kinds: number): number {
    let ways = 1;
    for (let index = 1; index < kinds; index++) ways = ways * (count + index) / index;
    return ways;
}

function greatestCommonDivisor(a: number, b: number): number {
    return b === 0 ? a : greatestCommonDivisor(b, a % b);
}
