import { inInches } from '../../core/length.js';
import type { BenchLayout, BenchPiece } from '../benches/bench-result.js';
import { bearerBeam, railBeams, type RailBeam } from './bench-beams.js';
import { scaled, together, unitEffects, type Effects } from './effects.js';
import type { BenchStrengthInput, StrengthInput, StrengthLoad } from './strength-input.js';

/** What slats, bearers and rails weigh over the seat: 4 lb/ft². Common practice, no source. */
export const ownWeightPsf = 4;

/** One rail under one load. */
export interface LoadedRail { readonly beam: RailBeam; readonly load: StrengthLoad; readonly effects: Effects }

export const bearersOf = (layout: BenchLayout, run: number): readonly BenchPiece[] => layout.pieces.filter(piece => piece.kind === 'bearer' && piece.run === run);

/** Pounds-force on each inch of a strip so wide, from what lies evenly on the seat: the load's own and the weight of the bench. */
export const evenOn = (load: StrengthLoad, width: number): number => (ownWeightPsf + (load.shape.kind === 'even' ? load.shape.poundsPerSquareFoot : 0)) * width / 144;

/**
 * The rails of a bench under each load. One load that moves comes to a rail where a cross-bearer rests on it; sitters in a row are put on it where they sit,
 * which asks a little more of it than the bearers between would.
 */
export function loadedRails(bench: BenchStrengthInput, layouts: readonly BenchLayout[], input: StrengthInput): readonly LoadedRail[] {
    const { layout, build } = bench;
    return railBeams(layout, layouts).flatMap(beam => {
        const [bearer] = bearersOf(layout, beam.run);
        const cross = bearer && bearerBeam(layout, beam.run, bearer, input.inside);
        if (!cross) return [];
        const end = beam.row === 'front' ? 1 : 0;
        const [onBearer, onRail] = [unitEffects(cross.member), unitEffects(beam.member)];
        const evenShare = onBearer.even.reactions[end] ?? 0;
        const width = inInches(build.bearer.section.width);
        return bench.loads.map((load): LoadedRail => {
            const even = scaled(onRail.even, evenOn(load, evenShare));
            const { shape } = load;
            if (shape.kind === 'even') return { beam, load, effects: even };
            const force = shape.poundsForce * (onBearer.moving(shape.across).reactions[end] ?? 0);
            return { beam, load, effects: together(even, scaled(shape.kind === 'moving' ? onRail.at(beam.bearers, width) : onRail.row(width, shape.pitch), force)) };
        });
    });
}
