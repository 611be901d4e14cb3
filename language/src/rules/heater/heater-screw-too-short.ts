import { lengthFigure } from '../../core/finding.js';
import { showCitation } from '../../core/citation.js';
import { showRequired } from '../governing.js';
import { defineRule } from '../rule.js';
import { heaterFindings, inCatalogue, modelSpan, reviewFix, writable } from './heater-findings.js';

export const heaterScrewTooShort = defineRule({
    id: 'heater-screw-too-short',
    family: 'heater',
    title: 'The screws of the heater hold in too little wood',
    severity: 'error',
    why: 'The heater and its stones hang on the part of the screw that is in the blocking; too little of it pulls out.',
    bad: 'heater stove on right { model Tarn60; from front 8"; guard yes; backing 1" }',
    good: 'heater stove on right { model Tarn60; from front 8"; guard yes; backing 1 1/4" }',
    sources: [{ kind: 'catalogue', text: 'the least penetration of the screw' }, { kind: 'practice', text: 'penetration of a screw in solid wood' }],
    isWaivable: true,
    fixes: 'review',
    check: input => heaterFindings(input, judged => {
        const { screw, block, name, model } = judged;
        const problem = screw?.problems.find(({ kind }) => kind === 'screw-too-short');
        const backing = block.values.backing;
        if (problem?.kind !== 'screw-too-short' || !screw || !backing || backing.value <= 0) return undefined;
        const needed = problem.required.value;
        const isThin = backing.value < needed;
        const lengths = screw.lengths ? ` Screws ${writable(screw.lengths.from, input.job.unit)} to ${writable(screw.lengths.to, input.job.unit)} long hold in this wall.` : '';
        return {
            at: isThin ? backing.span : modelSpan(judged),
            message: `The screws of heater ${name} hold in ${input.show(problem.measured)} of blocking; ${showRequired(needed, input.job.unit)} is needed (${showCitation(problem.required.citation)}).${isThin ? ` Make the blocking at least ${writable(needed, input.job.unit)} thick.` : lengths}`,
            citation: problem.required.citation, measured: lengthFigure(problem.measured), required: lengthFigure(needed), subject: `${name}.fastening_height`,
            related: inCatalogue(judged, model.values.fasten_screw?.span, 'The screw is named here.'),
            fixes: isThin ? reviewFix(`Set the blocking to ${writable(needed, input.job.unit)}`, [{ span: backing.span, newText: writable(needed, input.job.unit) }]) : [],
        };
    }),
});
