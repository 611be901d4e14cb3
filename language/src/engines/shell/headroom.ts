import type { Wall } from '../../core/geometry.js';
import { area, inches, minus, plus, rootUp, shortest, sum, ticks, zero, type Length } from '../../core/length.js';
import type { CeilingShell } from './ceiling.js';
import type { ShellInput } from './shell-input.js';
import type { WallThickness } from './wall-run.js';

/** How far a panel is lifted to drop over its pins or to clear what it slides on. Common practice, no source. */
export const liftHeight: Length = inches(1);
/** Room between a closed side and the building where nothing else is stated. Common practice, no source. */
export const defaultSideGap: Length = inches(1);
/** A shortfall below this is called tight: a crew finds a sixteenth in shims. Common practice, no source. */
export const tightShortfall: Length = inches(0, 1, 16);

/** One thing that needs height over the finished floor while the room is put up. */
export interface HeadroomTerm {
    readonly kind: 'ceiling-joint' | 'tilt-up' | 'lift-over-plate' | 'ceiling-run-in' | 'ceiling-way-up';
    readonly height: Length;
    /** The ceiling joint that rises most, for `ceiling-joint`. */
    readonly joint?: readonly [string, string];
    /** What stands above the outside height, for the ceiling terms. */
    readonly above?: Length;
}

export interface AssemblyHeadroom {
    /** In the order of the work: tilt up, lift over the plate, bring the ceiling up, interlock it. */
    readonly terms: readonly HeadroomTerm[];
    readonly governing: HeadroomTerm;
    readonly required: Length;
    /** Lowest measured height of the building's ceiling. */
    readonly available?: Length;
    /** How much is missing; zero or absent when it fits or nothing was measured. */
    readonly shortfall?: Length;
    readonly verdict: 'fits' | 'tight' | 'short' | 'not-measured';
}

/**
 * Height the crew needs over the finished floor to put the room up, and what decides it. The diagonal of a wall panel on its foot is
 * sqrt(panel height squared + T squared), rounded up; the rest are sums.
 */
export function assemblyHeadroom(input: ShellInput, panelHeight: Length, thickness: WallThickness, ceilingThickness: Length, ceiling: CeilingShell | undefined): AssemblyHeadroom {
    const plate = input.system.plate.section.thickness;
    const thickest = ticks(Math.max(...Object.values(thickness)));
    const wallTop = plus(plate, panelHeight);
    const tilt: HeadroomTerm = { kind: 'tilt-up', height: rootUp(area(panelHeight, panelHeight) + area(thickest, thickest)) };
    const lift: HeadroomTerm = { kind: 'lift-over-plate', height: sum(plate, liftHeight, panelHeight) };
    const wayUp = wayUpOfCeiling(input, thickness, ceilingThickness, wallTop, ceiling);
    const highest = ceiling?.joints.reduce((best, joint) => joint.rise > best.rise ? joint : best, ceiling.joints[0] ?? noJoint);
    const joint: HeadroomTerm[] = highest && highest.rise > 0
        ? [{ kind: 'ceiling-joint', height: plus(input.height, highest.rise), joint: highest.between, above: highest.rise }] : [];
    const terms = [tilt, lift, wayUp, ...joint];
    const governing = terms.reduce((best, term) => term.height > best.height ? term : best, tilt);
    const [first, ...others] = input.siteCeiling ?? [];
    if (first === undefined) return { terms, governing, required: governing.height, verdict: 'not-measured' };
    const available = shortest(first, ...others);
    const missing = minus(governing.height, available);
    return {
        terms, governing, required: governing.height, available, shortfall: missing > 0 ? missing : zero,
        verdict: missing <= 0 ? 'fits' : missing < tightShortfall ? 'tight' : 'short',
    };
}

const noJoint = { rise: zero, between: ['', ''] as const };

/**
 * Beside a free side a ceiling panel is raised flat and run in over the wall tops, lifted clear of them. With no free side it has to come up
 * through the open top, tilted so that it passes between the far wall's lining and the building beyond the near wall: a panel of length l and
 * thickness t in a gap a reaches ((l^2 - t^2) sqrt(l^2 + t^2 - a^2) + 2 l t a) / (l^2 + t^2) above the wall tops.
 */
function wayUpOfCeiling(input: ShellInput, thickness: WallThickness, ceilingThickness: Length, wallTop: Length, ceiling: CeilingShell | undefined): HeadroomTerm {
    const runIn = sum(wallTop, ceilingThickness, liftHeight);
    if (input.freeSides.length > 0 || !ceiling) return { kind: 'ceiling-run-in', height: runIn, above: liftHeight };
    const ends: readonly [Wall, Wall] = ceiling.span === 'front_to_back' ? ['front', 'back'] : ['left', 'right'];
    const length = BigInt(ceiling.span === 'front_to_back' ? input.depth : input.width);
    const thick = BigInt(ceilingThickness);
    const thinnerEnd = Math.min(thickness[ends[0]], thickness[ends[1]]);
    const gap = length + BigInt(input.closedSideGap ?? defaultSideGap) - BigInt(thinnerEnd);
    const square = length * length + thick * thick;
    if (gap >= length || square <= 0n || gap <= 0n) return { kind: 'ceiling-run-in', height: runIn, above: liftHeight };
    const root = BigInt(rootUp(square - gap * gap));
    const reach = ((length * length - thick * thick) * root + 2n * length * thick * gap + square - 1n) / square;
    const height = ticks(wallTop + Number(reach));
    return { kind: 'ceiling-way-up', height, above: minus(height, input.height) };
}
