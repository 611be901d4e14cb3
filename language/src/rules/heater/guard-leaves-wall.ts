import { lengthFigure } from '../../core/finding.js';
import { zero } from '../../core/length.js';
import { manualCitation } from '../../engines/heater/casing.js';
import { showRequired } from '../governing.js';
import { defineRule } from '../rule.js';
import { heaterFindings, placeSpan, writable } from './heater-findings.js';

export const guardLeavesWall = defineRule({
    id: 'guard-leaves-wall',
    family: 'heater',
    title: 'The guard of the heater reaches into the neighbouring wall',
    severity: 'error',
    why: 'Between the casing and the corner there is less room than the guard needs, so it cannot be built as the manual states.',
    bad: `heater_model Broad { manual "Broad sheet (fictional)"; power 6 kW; supply 240 V single_phase; body 16" x 22"; depth 11"; off_wall 2"; off_floor 8"; clear_side 4"; clear_front 4"; clear_above 45"; guard required; guard_offset 6" }
heater stove on right { model Broad; from front 5"; guard yes; backing 1 1/2" }`,
    good: 'heater stove on right { model Tarn60; from front 5"; guard yes; backing 1 1/2" }',
    sources: [{ kind: 'geometry', text: 'the guard stands between the two neighbouring walls' }, { kind: 'manual', text: 'the distance of the guard from the casing' }],
    isWaivable: false,
    fixes: 'none',
    check: input => heaterFindings(input, judged => judged.guardProblems.flatMap(problem => {
        const isTooNear = judged.clearances.some(({ status, thing, direction }) => status === 'short' && thing.kind === 'wall' && direction === 'side');
        if (problem.kind !== 'guard-leaves-the-wall' || isTooNear || !judged.guard || judged.problems.some(({ kind }) => kind === 'runs-off-the-wall')) return [];
        return [{
            at: placeSpan(judged.block),
            message: `The guard of heater ${judged.name} reaches ${input.show(problem.over)} past the corner; it stays ${showRequired(judged.guard.offset, input.job.unit)} off the casing (${judged.manual.title}). Move the heater ${writable(problem.over, input.job.unit)} away from the corner.`,
            citation: manualCitation(judged.manual), measured: lengthFigure(problem.over), required: lengthFigure(zero), subject: `${judged.name}.guard`,
        }];
    })),
});
