import { ticks, TICKS_PER_INCH, TICKS_PER_MM, type Length } from '../core/length.js';
import { isMetric, showLength, showWritable, type LengthUnit } from '../core/show.js';

/**
 * A required length as a message has it. One that no mark shows (a root, a share) is rounded up to the shop's grid, 1/32" or 0.5 mm, so that who
 * measures the figure shown has enough.
 */
export const showAtLeast = (length: Length, unit: LengthUnit): string => onGrid(length, unit, Math.ceil);
/** An available length, or the most that is allowed: rounded down, so that nothing is promised that is not there. */
export const showAtMost = (length: Length, unit: LengthUnit): string => onGrid(length, unit, Math.floor);

function onGrid(length: Length, unit: LengthUnit, round: (steps: number) => number): string {
    const text = showWritable(length, unit);
    if (!text.startsWith('≈')) return text;
    const step = isMetric(unit) ? TICKS_PER_MM / 2 : TICKS_PER_INCH / 32;
    return `≈${showLength(ticks(round(length / step) * step), unit)}`;
}
