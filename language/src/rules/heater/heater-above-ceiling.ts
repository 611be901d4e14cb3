import { lengthFigure } from '../../core/finding.js';
import { isRoomTooLow } from '../room-height.js';
import { defineRule } from '../rule.js';
import { heaterFindings, inCatalogue, modelSpan } from './heater-findings.js';

export const heaterAboveCeiling = defineRule({
    id: 'heater-above-ceiling',
    family: 'heater',
    title: 'The heater reaches into the ceiling',
    severity: 'error',
    why: 'At the height its manual hangs it the casing does not fit under the ceiling at all.',
    bad: `heater_model Tower { manual "Tower sheet (fictional)"; power 6 kW; supply 240 V single_phase; body 16" x 76"; depth 11"; off_wall 2"; off_floor 8" }
heater stove on right { model Tower; from front 8"; guard yes; backing 1 1/2" }`,
    good: 'heater stove on right { model Tarn60; from front 8"; guard yes; backing 1 1/2" }',
    sources: [{ kind: 'geometry', text: 'the casing stands between floor and ceiling' }],
    isWaivable: false,
    fixes: 'none',
    check: input => heaterFindings(input, judged => judged.problems.flatMap(problem => {
        const { heater, manual, name, model } = judged;
        if (problem.kind !== 'above-the-ceiling' || !heater || !input.results.inside || isRoomTooLow(input)) return [];
        const { height } = input.results.inside;
        return [{
            at: modelSpan(judged),
            message: `Heater ${name} reaches up to ${input.show(heater.onWall.v.to)}; the ceiling lining is at ${input.show(height)}, ${input.show(problem.over)} lower (${manual.title}). Choose a lower heater or raise the room.`,
            citation: { kind: 'manual', text: manual.title }, measured: lengthFigure(heater.onWall.v.to), required: lengthFigure(height), subject: name,
            related: inCatalogue(judged, model.values.body?.span),
        }];
    })),
});
