import { lengthFigure } from '../../core/finding.js';
import { defineRule } from '../rule.js';
import { heaterFindings, inCatalogue, modelSpan, writable } from './heater-findings.js';

export const heaterScrewMeetsFacing = defineRule({
    id: 'heater-screw-meets-facing',
    family: 'heater',
    title: 'The screws of the heater go into the facing',
    severity: 'error',
    why: 'A point that comes through the facing hurts, splits the board and carries heat and damp outside.',
    bad: `screw long_screw { length 4"; penetration 1 1/4" }
heater_model Long { manual "Long sheet (fictional)"; power 6 kW; supply 240 V single_phase; body 16" x 22"; depth 11"; fasten_screw long_screw }
heater stove on right { model Long; from front 8"; guard yes; backing 1 1/2" }`,
    good: 'heater stove on right { model Tarn60; from front 8"; guard yes; backing 1 1/2" }',
    sources: [{ kind: 'geometry', text: 'the point stays inside the wall' }],
    isWaivable: true,
    fixes: 'none',
    check: input => heaterFindings(input, judged => {
        const { screw, name, model } = judged;
        const problem = screw?.problems.find(({ kind }) => kind === 'screw-meets-facing');
        if (problem?.kind !== 'screw-meets-facing' || !screw) return undefined;
        const cure = screw.lengths ? `Screws ${writable(screw.lengths.from, input.job.unit)} to ${writable(screw.lengths.to, input.job.unit)} long hold and stay inside.` : 'Choose shorter screws.';
        return {
            at: modelSpan(judged),
            message: `The screws of heater ${name} reach ${input.show(problem.measured)} into the wall; the facing begins at ${input.show(problem.required)}. ${cure}`,
            citation: { kind: 'geometry', text: 'the point stays inside the wall' }, measured: lengthFigure(problem.measured), required: lengthFigure(problem.required), subject: `${name}.fastening_height`,
            related: inCatalogue(judged, model.values.fasten_screw?.span, 'The screw is named here.'),
        };
    }),
});
