import { extent, intervalsOverlap, type InsideSize, type Interval } from '../../core/geometry.js';
import { inInches, TICKS_PER_INCH } from '../../core/length.js';
import type { BenchLayout, BenchLeg } from '../benches/bench-result.js';
import { across } from './bench-beams.js';
import type { LoadedRail } from './loaded-rails.js';
import type { TimberValues } from './strength-input.js';
import type { ColumnPiece } from './support-checks.js';

/** A column with the force on it. */
export interface LoadedColumn { readonly column: ColumnPiece; readonly force: number }

const middle = ({ from, to }: Interval): number => (from + to) / 2 / TICKS_PER_INCH;

/**
 * The legs of a bench as columns under one load. A leg is held at the floor and at its rail, so its whole length counts for buckling. A notched leg is two columns:
 * what the notch leaves, under its own rail, and the whole section below it, which the rail of the tier in front rests on as well.
 * @param rails every rail of the room under that load
 */
export function columnsOf(bench: BenchLayout, timber: TimberValues, rails: readonly LoadedRail[], inside: InsideSize): readonly LoadedColumn[] {
    return bench.legs.flatMap((leg): LoadedColumn[] => {
        const wall = bench.runs[leg.run]?.wall;
        if (!wall) return [];
        const section = across(leg.box, wall, inside);
        const carried = rails.flatMap(rail => {
            const onRail = across(rail.beam.piece.box, wall, inside);
            const force = forceOn(leg, rail, intervalsOverlap(onRail, section));
            return force > 0 ? [{ force, at: middle(onRail), isOwn: rail.beam.mark === leg.under || leg.line === 'box' }] : [];
        });
        const own = carried.filter(({ isOwn }) => isOwn);
        const deepest = Math.max(0, ...leg.notches.map(({ depth }) => depth));
        const whole = columnOf(leg, timber, section, 0, carried);
        if (deepest === 0) return [...whole];
        return [...columnOf(leg, timber, section, deepest / TICKS_PER_INCH, own), ...whole];
    });
}

/** One part of a leg: what is left of its section from the wall side on, and the forces with their places from the wall. */
function columnOf(leg: BenchLeg, timber: TimberValues, section: Interval, notch: number, carried: readonly { readonly force: number; readonly at: number }[]): readonly LoadedColumn[] {
    const force = carried.reduce((total, one) => total + one.force, 0);
    if (force <= 0) return [];
    const from = section.from / TICKS_PER_INCH;
    const width = inInches(extent(section)) - notch;
    const at = carried.reduce((total, one) => total + one.force * one.at, 0) / force;
    return [{
        force,
        column: { mark: leg.mark, timber, thickness: inInches(leg.column.thickness), width, length: inInches(leg.finishedLength), eccentricity: Math.abs(at - (from + width / 2)) },
    }];
}

/** What a rail brings to a leg: its reaction where it stands on it; the end a box leg head holds, over the post it is in line with. */
function forceOn(leg: BenchLeg, { beam, effects }: LoadedRail, isInLine: boolean): number {
    return beam.on.reduce((most, support, i) => {
        const isOn = 'leg' in support ? support.leg.mark === leg.mark : leg.line === 'box' && support.held === leg.under && isInLine;
        return isOn ? Math.max(most, effects.reactions[i] ?? 0) : most;
    }, 0);
}
