import { extent, intervalsOverlap } from '../../core/geometry.js';
import { inInches } from '../../core/length.js';
import { ledgerScrewPlaces } from '../benches/bench-fastenings.js';
import type { BenchLedger } from '../benches/bench-result.js';
import type { Carried } from './arrangements.js';
import { checkBeam, type BeamPiece, type WorstChecks } from './beam-checks.js';
import { along, bearerBeam, middleFrom, slatLine } from './bench-beams.js';
import type { Conditions } from './capacity.js';
import { effectsOf, scaled, together, unitEffects, type Effects } from './effects.js';
import { evenOn, type LoadedRail } from './loaded-rails.js';
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
        const member = betweenScrews(inInches(extent(ledger.u)), ledgerScrewPlaces(build, extent(ledger.u)));
        const piece: BeamPiece = { member: 'ledger', mark: ledger.mark, breadth: thickness, depth: height, timber };
        for (const load of bench.loads) {
            const effects = ledger.holds === 'back' ? alongBack(bench, ledger, member, load, input) : atEnd(bench, ledger, member, load, rails);
            if (!effects) continue;
            checkBeam(worst, piece, effects, load, conditions, false);
            const onOne = Math.max(...effects.reactions) / (build.ledgerScrewRows ?? 1);
            if (screw) checkLedgerScrew(worst, { mark: ledger.mark, screw, ledger: timber, thickness, height }, onOne, load, conditions);
            else worst.lacks('ledger screw', 'screw');
        }
    }
}

function betweenScrews(length: number, places: number): Carried {
    const first = Math.min(screwFromEnd, length / 4);
    return { length, supports: Array.from({ length: places }, (_, i) => first + (length - 2 * first) * i / (places - 1)) };
}

/** An end ledger holds the ends of the rails, and the cross-bearer that lies on it. One load that moves stands on the one or on the other. */
function atEnd(bench: BenchStrengthInput, ledger: BenchLedger, member: Carried, load: StrengthLoad, rails: readonly LoadedRail[]): Effects {
    const { layout } = bench;
    const own = along(ledger.box, ledger.wall);
    const ends = rails.filter(rail => rail.load.id === load.id).flatMap(({ beam, effects }) => beam.on.flatMap((support, i) => {
        if (!('held' in support) || support.held !== ledger.mark) return [];
        const at = Math.min(member.length, Math.max(0, middleFrom(own.from, along(beam.piece.box, ledger.wall))));
        return [{ from: at, to: at, total: effects.reactions[i] ?? 0 }];
    }));
    const fromRails = effectsOf(member, [ends], false);
    const run = layout.runs[ledger.run];
    const bearers = layout.pieces.filter(({ kind, run: of }) => kind === 'bearer' && of === ledger.run);
    const over = run && bearers.find(({ box }) => intervalsOverlap(along(box, run.wall), along(ledger.box, run.wall)));
    const line = run && slatLine(run, bearers);
    if (!run || !over || !line) return fromRails;
    const end = middleFrom(along(run.box, run.wall).from, along(over.box, run.wall)) < line.length / 2 ? 0 : line.supports.length - 1;
    const [onSlats, onLedger] = [unitEffects(line), unitEffects(member)];
    const even = scaled(onLedger.even, evenOn(load, onSlats.even.reactions[end] ?? 0));
    const { shape } = load;
    // What lies on the whole bench is on the rails over their whole length, the share of this bearer with it.
    return shape.kind === 'moving' ? greater(fromRails, together(even, scaled(onLedger.moving(shape.across), shape.poundsForce * (onSlats.moving(shape.along).reactions[end] ?? 0)))) : fromRails;
}

const greater = (a: Effects, b: Effects): Effects => ({
    moment: Math.max(a.moment, b.moment), shear: Math.max(a.shear, b.shear), deflection: Math.max(a.deflection, b.deflection), deflectionShare: Math.max(a.deflectionShare, b.deflectionShare),
    reactions: a.reactions.map((reaction, i) => Math.max(reaction, b.reactions[i] ?? 0)),
});

/** A back ledger holds the back ends of the bearers. */
function alongBack({ layout, build }: BenchStrengthInput, ledger: BenchLedger, member: Carried, load: StrengthLoad, { inside }: StrengthInput): Effects | undefined {
    const bearer = layout.pieces.find(({ kind, run }) => kind === 'bearer' && run === ledger.run);
    const cross = bearer && bearerBeam(layout, ledger.run, bearer, inside);
    if (!cross) return undefined;
    const [onBearer, onLedger] = [unitEffects(cross.member), unitEffects(member)];
    const { shape } = load;
    const even = scaled(onLedger.even, evenOn(load, onBearer.even.reactions[0] ?? 0));
    if (shape.kind === 'even') return even;
    const width = inInches(build.bearer.section.width);
    const force = shape.poundsForce * (onBearer.moving(shape.across).reactions[0] ?? 0);
    return together(even, scaled(shape.kind === 'moving' ? onLedger.moving(width) : onLedger.row(width, shape.pitch), force));
}
