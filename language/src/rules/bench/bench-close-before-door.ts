import { lengthFigure } from '../../core/finding.js';
import { intervalsOverlap } from '../../core/geometry.js';
import { minus, zero, type Length } from '../../core/length.js';
import { onWall } from '../../engines/fittings/wall-frame.js';
import { defineRule } from '../rule.js';
import { placedBenches, type PlacedBenchBlock } from './bench-findings.js';

const citation = { kind: 'practice', text: 'floor before the door as deep as its clear opening is wide' } as const;

export const benchCloseBeforeDoor = defineRule({
    id: 'bench-close-before-door',
    family: 'bench',
    title: 'A bench stands close before the door',
    severity: 'warning',
    why: 'Who steps in has to turn round and close the door; who feels unwell has to get out without climbing.',
    bad: 'bench lower on back { build Slatted; top 18"; depth 30"; in_front_of upper }',
    good: 'bench lower on back { build Slatted; top 18"; depth 20"; in_front_of upper }',
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    *check(input) {
        const { results: { doors, inside, benches }, show } = input;
        if (!inside || !benches) return;
        for (const { name, block, door } of doors) {
            if (!door) continue;
            const isAcross = (bench: string): boolean => benches.result.problems.some(problem => problem.kind === 'across-opening' && problem.bench === bench && problem.opening === name);
            let nearest: { readonly bench: PlacedBenchBlock; readonly floor: Length; readonly isOpposite: boolean } | undefined;
            for (const bench of placedBenches(input)) {
                if (isAcross(bench.name)) continue;
                for (const run of bench.layout.runs) {
                    const { u, w } = onWall(door.wall, run.box, inside);
                    if (!intervalsOverlap(u, door.clear.u) || w.from < zero || (nearest && nearest.floor <= w.from)) continue;
                    nearest = { bench, floor: w.from, isOpposite: run.w.to >= minus(depthOf(door.wall, inside), w.from) };
                }
            }
            if (!nearest || nearest.floor >= door.clearWidth) continue;
            const { bench: { name: bench, block: { values: { depth }, head } }, floor, isOpposite } = nearest;
            const by = minus(door.clearWidth, floor);
            yield {
                at: depth?.span ?? head,
                message: `Bench ${bench} leaves ${show(floor)} of floor before door ${name}; ${show(door.clearWidth)} is needed, the width of its clear opening (common practice, no source). ` +
                    `${isOpposite ? `Make the benches opposite ${show(by)} shallower` : `Move the bench ${show(by)} away`}, or move the door.`,
                citation, measured: lengthFigure(floor), required: lengthFigure(door.clearWidth), subject: bench,
                related: [{ at: block.head, message: 'The door stands here.' }],
            };
        }
    },
});

const depthOf = (wall: 'front' | 'left' | 'back' | 'right', inside: { readonly width: Length; readonly depth: Length }): Length => wall === 'front' || wall === 'back' ? inside.depth : inside.width;
