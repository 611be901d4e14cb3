import { extent, intervalsOverlap } from '../../core/geometry.js';
import { inInches } from '../../core/length.js';
import type { BenchLayout, BenchLeg } from '../benches/bench-result.js';
import { checkBeam, checkBearing, WorstChecks, type BeamPiece } from './beam-checks.js';
import { across, along, bearerBeam, overlapOf, slatLine } from './bench-beams.js';
import type { Conditions } from './capacity.js';
import { scaled, shareOfOneSlat, together, unitEffects, type UnitEffects } from './effects.js';
import { checkLedgers } from './ledger-loads.js';
import { bearersOf, evenOn, loadedRails, type LoadedRail } from './loaded-rails.js';
import { columnsOf } from './leg-columns.js';
import type { BenchStrengthInput, StrengthInput, StrengthLoad, TimberValues } from './strength-input.js';
import type { BenchStrength, MemberStrength, StrengthMember, StrengthResult } from './strength-result.js';
import { checkColumn } from './support-checks.js';

/** How a load reaches a cross-bearer and a rail of one run, as shares of it. */
interface RunShares {
    /** Inches of slat one bearer carries, and its share of a load on the slats over it. */
    readonly tributary: number;
    readonly share: number;
}

/**
 * Strength of every bench: what each slat, cross-bearer, rail, leg, ledger and ledger screw can carry beside what the loads ask of it. The spans and
 * supports are those of the solved benches and their load path. The worst of every arrangement counts, and what one member passes on is the most it ever
 * gives to one support. Inches, pounds-force and psi.
 * @returns a bench for each input, in their order; equal inputs give equal results
 */
export function computeStrength(input: StrengthInput): StrengthResult {
    const layouts = input.benches.map(({ layout }) => layout);
    const rails = new Map(input.benches.map(bench => [bench.layout.name, loadedRails(bench, layouts, input)]));
    const loaded = [...rails.values()].flat();
    return { benches: input.benches.map(bench => checkBench(bench, rails.get(bench.layout.name) ?? [], loaded, input)) };
}

/** The most one bearer carries of a load on the slats. */
function sharesOf(line: UnitEffects, load: StrengthLoad): RunShares {
    const tributary = Math.max(...line.even.reactions);
    switch (load.shape.kind) {
        case 'even': return { tributary, share: 0 };
        case 'moving': return { tributary, share: Math.max(...line.moving(load.shape.along).reactions) };
        case 'row': return { tributary, share: Math.max(...line.row(load.shape.along, load.shape.pitch).reactions) };
    }
}

function checkBench(bench: BenchStrengthInput, rails: readonly LoadedRail[], all: readonly LoadedRail[], input: StrengthInput): BenchStrength {
    const { layout, loads } = bench;
    const conditions: Conditions = { serviceC: input.serviceC, isWet: bench.isWet };
    const worst = new WorstChecks();
    for (const index of layout.runs.keys()) checkSeat(worst, bench, index, input, conditions);
    const rail = bench.timbers.rail;
    if (rail) for (const one of rails) checkRail(worst, bench, one, rail, input, conditions);
    const leg = bench.timbers.leg;
    if (leg) for (const load of loads) for (const { column, force } of columnsOf(layout, leg, all.filter(one => one.load.id === load.id), input.inside)) checkColumn(worst, column, force, load, conditions);
    checkLedgers(worst, bench, rails, input, conditions);
    return { bench: layout.name, members: membersOf(layout).map((member): MemberStrength => ({ member, ...withTimber(worst.of(member), member, bench) })) };
}

/** A member whose stock names no wood lacks everything at once. */
function withTimber(found: Omit<MemberStrength, 'member'>, member: StrengthMember, { timbers }: BenchStrengthInput): Omit<MemberStrength, 'member'> {
    return member === 'ledger screw' || timbers[member] ? found : { checks: [], lacks: ['timber'] };
}

const membersOf = (layout: BenchLayout): readonly StrengthMember[] => [
    ...layout.slats ? ['slat'] as const : [], 'bearer', 'rail', ...layout.ledgers.length > 0 ? ['ledger', 'ledger screw'] as const : [], ...layout.legs.length > 0 ? ['leg'] as const : [],
];

/** Slats and cross-bearers of one run. */
function checkSeat(worst: WorstChecks, bench: BenchStrengthInput, index: number, input: StrengthInput, conditions: Conditions): void {
    const { layout, build, timbers, loads } = bench;
    const run = layout.runs[index];
    const bearers = bearersOf(layout, index);
    const [bearer] = bearers;
    const member = run && slatLine(run, bearers);
    if (!run || !bearer || !member) return;
    const line = unitEffects(member);
    const mark = layout.pieces.find(piece => piece.kind === 'slat' && piece.run === index)?.mark;
    const { slats } = layout;
    if (slats && mark !== undefined && timbers.slat) {
        const [depth, breadth] = [inInches(build.slat.section.thickness), inInches(build.slat.section.width)];
        const pitch = slats.count > 1 ? (inInches(layout.depth) - breadth) / (slats.count - 1) : breadth;
        const piece: BeamPiece = { member: 'slat', mark, breadth, depth, timber: timbers.slat };
        for (const load of loads) {
            const even = scaled(line.even, evenOn(load, pitch));
            const { shape } = load;
            const own = shape.kind === 'even' ? even : together(even, scaled(
                shape.kind === 'moving' ? line.moving(shape.along) : line.row(shape.along, shape.pitch), shape.poundsForce * shareOfOneSlat(shape.across, breadth, pitch, slats.count)));
            checkBeam(worst, piece, own, load, conditions, shape.kind !== 'moving');
            checkBearing(worst, piece, Math.max(...own.reactions), { length: inInches(build.bearer.section.width), width: breadth, fromEnd: 0 }, load, conditions);
        }
    }
    const cross = bearerBeam(layout, index, bearer, input.inside);
    if (cross && timbers.bearer) checkBearer(worst, bench, { mark: bearer.mark, cross, line, spacing: spacingOf(member.supports), count: bearers.length, timber: timbers.bearer }, conditions);
}

const spacingOf = (places: readonly number[]): number => Math.max(0, ...places.slice(1).map((place, i) => place - (places[i] ?? 0)));

interface LoadedBearer {
    readonly mark: string;
    readonly cross: NonNullable<ReturnType<typeof bearerBeam>>;
    readonly line: UnitEffects;
    readonly spacing: number;
    readonly count: number;
    readonly timber: TimberValues;
}
function checkBearer(worst: WorstChecks, { build, loads }: BenchStrengthInput, { mark, cross, line, spacing, count, timber }: LoadedBearer, conditions: Conditions): void {
    const onBearer = unitEffects(cross.member);
    const width = inInches(build.bearer.section.width);
    const piece: BeamPiece = { member: 'bearer', mark, breadth: width, depth: inInches(build.bearer.section.thickness), timber, repeated: { count, spacing } };
    for (const load of loads) {
        const { tributary, share } = sharesOf(line, load);
        const even = scaled(onBearer.even, evenOn(load, tributary));
        const effects = load.shape.kind === 'even' ? even : together(even, scaled(load.shape.kind === 'moving' ? onBearer.moving(load.shape.across) : onBearer.row(load.shape.across, Infinity), load.shape.poundsForce * share));
        checkBeam(worst, piece, effects, load, conditions, load.shape.kind !== 'moving');
        cross.bearings.forEach((length, end) => {
            const middle = cross.member.supports[end] ?? 0;
            const fromEnd = Math.min(middle, cross.member.length - middle) - length / 2;
            checkBearing(worst, piece, effects.reactions[end] ?? 0, { length, width, fromEnd }, load, conditions);
        });
    }
}

/** A rail in bending, and where it bears on its legs. How its end is held at a ledger is not known and is not checked. */
function checkRail(worst: WorstChecks, { layout, build }: BenchStrengthInput, { beam, load, effects }: LoadedRail, timber: TimberValues, { inside }: StrengthInput, conditions: Conditions): void {
    const wall = layout.runs[beam.run]?.wall;
    if (!wall) return;
    const piece: BeamPiece = { member: 'rail', mark: beam.mark, breadth: inInches(build.rail.section.thickness), depth: inInches(build.rail.section.width), timber };
    checkBeam(worst, piece, effects, load, conditions, load.shape.kind !== 'moving');
    beam.on.forEach((support, i) => {
        const leg: BenchLeg | undefined = 'leg' in support ? support.leg : undefined;
        if (!leg) return;
        const [onLeg, onRail] = [across(leg.box, wall, inside), across(beam.piece.box, wall, inside)];
        if (!intervalsOverlap(onLeg, onRail)) return;
        const length = inInches(extent(overlapOf(along(leg.box, wall), along(beam.piece.box, wall))));
        const middle = beam.member.supports[i] ?? 0;
        const fromEnd = Math.min(middle, beam.member.length - middle) - length / 2;
        checkBearing(worst, piece, effects.reactions[i] ?? 0, { length, width: inInches(extent(overlapOf(onLeg, onRail))), fromEnd }, load, conditions);
    });
}
