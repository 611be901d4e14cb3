import { extent } from '../../core/geometry.js';
import { inInches, TICKS_PER_INCH } from '../../core/length.js';
import type { BenchLedger } from '../benches/bench-result.js';
import type { Carried } from './arrangements.js';
import { checkBeam, type BeamPiece, type WorstChecks } from './beam-checks.js';
import { along, bearerBeam, middleFrom } from './bench-beams.js';
import type { Conditions } from './capacity.js';
import { ownWeightPsf, type LoadedRail } from './compute-strength.js';
import { effectsOf, scaled, together, unitEffects, type Effects } from './effects.js';
import type { BenchStrengthInput, StrengthInput, StrengthLoad } from './strength-input.js';
import { checkLedgerScrew } from './support-checks.js';

/** From the end of a ledger to its first screw: 1 1/2". Common practice, no source. */
const screwFromEnd = 1.5;

/** Ledgers as beams between their screws, and the screws. */
export function checkLedgers(worst: WorstChecks, bench: BenchStrengthInput, rails: readonly LoadedRail[], input: StrengthInput, conditions: Conditions): void {
    const { layout, build, timbers, screw } = bench;
    const timber = timbers.ledger;
    if (!timber) return;
    const [thickness, height] = [inInches(build.ledger.section.thickness), inInches(build.ledger.section.width)];
    for (const ledger of layout.ledgers) {
        const count = layout.fastenings.find(({ joint, marks }) => joint === 'ledger to wall' && marks.includes(ledger.mark))?.count ?? 2;
        const member = betweenScrews(inInches(extent(ledger.u)), count);
        const piece: BeamPiece = { member: 'ledger', mark: ledger.mark, breadth: thickness, depth: height, timber };
        for (const load of bench.loads) {
            const effects = ledger.holds === 'back' ? alongBack(bench, ledger, member, load, input) : atRailEnds(bench, ledger, member, load, rails);
            if (!effects) continue;
            checkBeam(worst, piece, effects, load, conditions, false);
            if (screw) checkLedgerScrew(worst, { mark: ledger.mark, screw, ledger: timber, thickness, height }, Math.max(...effects.reactions), load, conditions);
            else worst.lacks('ledger screw', 'screw');
        }
    }
}

function betweenScrews(length: number, count: number): Carried {
    const first = Math.min(screwFromEnd, length / 4);
    return { length, supports: Array.from({ length: count }, (_, i) => first + (length - 2 * first) * i / (count - 1)) };
}

/** An end ledger holds the ends of the rails. */
function atRailEnds({ layout }: BenchStrengthInput, ledger: BenchLedger, member: Carried, load: StrengthLoad, rails: readonly LoadedRail[]): Effects | undefined {
    const loads = rails.filter(rail => rail.load.id === load.id).flatMap(({ beam, effects }) => beam.on.flatMap((support, i) => {
        const wall = layout.runs[beam.run]?.wall;
        if (!('held' in support) || support.held !== ledger.mark || !wall) return [];
        // A ledger on an end wall runs across the run, so its own length lies along that wall.
        const own = along(ledger.box, ledger.wall);
        const place = middleFrom(own.from, along(beam.piece.box, ledger.wall));
        const at = Math.min(member.length, Math.max(0, place));
        return [{ from: at, to: at, total: effects.reactions[i] ?? 0 }];
    }));
    return loads.length === 0 ? undefined : effectsOf(member, [loads]);
}

/** A back ledger holds the back ends of the bearers. */
function alongBack({ layout, build }: BenchStrengthInput, ledger: BenchLedger, member: Carried, load: StrengthLoad, { inside }: StrengthInput): Effects | undefined {
    const bearer = layout.pieces.find(({ kind, run }) => kind === 'bearer' && run === ledger.run);
    const cross = bearer && bearerBeam(layout, ledger.run, bearer, inside);
    if (!cross) return undefined;
    const [onBearer, onLedger] = [unitEffects(cross.member), unitEffects(member)];
    const { shape } = load;
    const even = scaled(onLedger.even, (ownWeightPsf + (shape.kind === 'even' ? shape.poundsPerSquareFoot : 0)) * (onBearer.even.reactions[0] ?? 0) / 144);
    if (shape.kind === 'even') return even;
    const width = build.bearer.section.width / TICKS_PER_INCH;
    const force = shape.poundsForce * (onBearer.moving(shape.across).reactions[0] ?? 0);
    return together(even, scaled(shape.kind === 'moving' ? onLedger.moving(width) : onLedger.row(width, shape.pitch), force));
}
