import { TICKS_PER_INCH, TICKS_PER_MM, minus, times, type Length } from '../core/length.js';
import type { Part } from '../engines/parts/part.js';
import { isWhole, multiply, rational, roundHalfEven, toNumber, type Rational } from '../core/rational.js';
import { showNumber } from '../core/show.js';
import type { RenderedJob } from './rendered-job.js';
import { isMetricScale, showCount, showCut, type Scale } from './show-figures.js';

/** Slats side by side under one name: nobody can set them without the gap, which is no length of any piece. */
export interface SlatGap {
    readonly kind: 'bench' | 'head rest' | 'duckboard';
    /** Of the bench or the duckboard. */
    readonly name: string;
    readonly slats: number;
    readonly slatWidth: Length;
    /** First slat's outer edge to the last one's. */
    readonly depth: Length;
    /** One of `slats - 1` equal gaps, in ticks, exactly. */
    readonly gap: Rational;
}

/** Benches in the order written, each with its head rest, then duckboards. One that has no slats, because none fit or no stock is named, is left out. */
export function slatGaps({ results }: Pick<RenderedJob, 'results'>): readonly SlatGap[] {
    const benches = (results.benches?.result.benches ?? []).flatMap(({ name, depth, slats, parts }): SlatGap[] => {
        const slat = parts.find(({ what }) => what === 'bench slat');
        return [...(slats && slat ? [{ kind: 'bench' as const, name, slats: slats.count, slatWidth: slat.section.width, depth, gap: slats.gap }] : []), ...looseSlats('head rest', name, parts)];
    });
    return [...benches, ...results.fittings.flatMap(({ name, parts }) => looseSlats('duckboard', name, parts))];
}

/** Slats on bearers that are as long as the slats and their gaps are deep. */
function looseSlats(kind: 'head rest' | 'duckboard', name: string, parts: readonly Part[]): SlatGap[] {
    const slat = parts.find(({ what }) => what === `${kind} slat`);
    const bearer = parts.find(({ what }) => what === `${kind} bearer`);
    if (!slat || !bearer || slat.count < 2) return [];
    const { count, section: { width } } = slat;
    return [{ kind, name, slats: count, slatWidth: width, depth: bearer.length, gap: rational(BigInt(minus(bearer.length, times(width, count))), BigInt(count - 1)) }];
}

const titles = { bench: 'Bench', 'head rest': 'Head rest of bench', duckboard: 'Duckboard' } as const;

/** `Bench upper: 5 slats 3 1/2" wide make its depth of 20", the first and the last flush with its edges, with 4 equal gaps of 5/8".` */
export function showSlatGap({ kind, name, slats, slatWidth, depth, gap }: SlatGap, unit: Scale): string {
    const made = `${titles[kind]} ${name}: ${showCount(slats, 'slat')} ${showCut(slatWidth, unit)} wide`;
    if (slats < 2) return `${made}, flush with both edges of its depth of ${showCut(depth, unit)}.`;
    return `${made} make its depth of ${showCut(depth, unit)}, the first and the last flush with its edges, with ${slats === 2 ? 'a gap' : `${slats - 1} equal gaps`} of ${showGap(gap, unit)}.`;
}

/**
 * A gap exactly where it is a figure of the tape, else to 1/128" or 0.1 mm with the exact fraction beside it: the error of a rounded gap adds up over the slats.
 * @param gap in ticks
 */
export function showGap(gap: Rational, unit: Scale): string {
    const isMetric = isMetricScale(unit);
    const value = multiply(gap, rational(1n, BigInt(isMetric ? TICKS_PER_MM : TICKS_PER_INCH)));
    const sign = isMetric ? ' mm' : '"';
    const finest = isMetric ? 10n : 128n;
    const parts = multiply(value, rational(finest));
    const shown = rational(roundHalfEven(parts), finest);
    const figure = `${isMetric ? showNumber(toNumber(shown), 1) : mixed(shown)}${sign}`;
    if (isWhole(parts)) return figure;
    return `≈${figure}${value.d < 10_000n ? ` (exactly ${mixed(value)}${sign})` : ''}`;
}

/** `1 5/8`, `5/8`, `2`. */
function mixed({ n, d }: Rational): string {
    const whole = n / d;
    const rest = n % d;
    if (rest === 0n) return String(whole);
    return `${whole === 0n ? '' : `${whole} `}${rest}/${d}`;
}
