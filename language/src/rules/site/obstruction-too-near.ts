import { lengthFigure } from '../../core/finding.js';
import { inches } from '../../core/length.js';
import { showAtMost } from '../rounding.js';
import { defineRule } from '../rule.js';

const citation = { kind: 'practice', text: '1" between the room and the building' } as const;
const wanted = inches(1);

export const obstructionTooNear = defineRule({
    id: 'obstruction-too-near',
    family: 'site',
    title: 'Something of the building stands too close to the room',
    severity: 'warning',
    why: 'Panels are set up within their tolerance and shimmed; what stands closer than that is touched.',
    bad: 'site { width 96"; depth 108"; ceiling 7\'6"; floor tile; free front, right; obstruction pipe { from_left 85 1/2"; from_front 60"; width 4"; depth 4" } }',
    good: 'site { width 96"; depth 108"; ceiling 7\'6"; floor tile; free front, right; obstruction pipe { from_left 86"; from_front 60"; width 4"; depth 4" } }',
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    *check({ job, results, show }) {
        for (const { obstruction, isInRoom, gap, block } of results.site?.obstructions ?? []) {
            if (isInRoom || gap >= wanted) continue;
            yield {
                at: block.head,
                message: `Obstruction ${obstruction.name} is ${showAtMost(gap, job.unit)} from the room; ${show(wanted)} is needed for shims and tolerance (common practice, no source). Move the room, or make it smaller.`,
                citation, measured: lengthFigure(gap), required: lengthFigure(wanted), subject: 'room',
            };
        }
    },
});
