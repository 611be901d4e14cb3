import { inWords } from '../../core/finding.js';
import { manualCitation } from '../../engines/heater/casing.js';
import { defineRule } from '../rule.js';
import { heaterFindings, inCatalogue, lacks, modelSpan, writable } from './heater-findings.js';

export const heaterScrewMissing = defineRule({
    id: 'heater-screw-missing',
    family: 'heater',
    title: 'Nothing says on which screws the heater hangs',
    severity: 'warning',
    why: 'Without the screw neither its hold in the blocking nor its point behind the facing can be checked, and none is packed.',
    bad: `heater_model Plain { manual "Plain sheet (fictional)"; power 6 kW; supply 240 V single_phase; body 16" x 22"; depth 11" }
heater stove on right { model Plain; from front 8"; guard yes; backing 1 1/2" }`,
    good: 'heater stove on right { model Tarn60; from front 8"; guard yes; backing 1 1/2" }',
    sources: [{ kind: 'manual', text: 'the screws of the heater' }],
    isWaivable: true,
    fixes: 'none',
    check: input => heaterFindings(input, judged => {
        const { screw, model, name, manual } = judged;
        if (!screw?.problems.some(({ kind }) => kind === 'screw-missing') || !lacks(model, 'fasten_screw')) return undefined;
        const lengths = screw.lengths ? ` In this wall it may be ${writable(screw.lengths.from, input.job.unit)} to ${writable(screw.lengths.to, input.job.unit)} long.` : '';
        return {
            at: modelSpan(judged),
            message: `The entry of heater ${name} names no screw to hang it on (${manual.title}), so its hold is not checked.${lengths} Write fasten_screw in the entry.`,
            citation: manualCitation(manual), measured: inWords('not stated'), required: inWords('fasten_screw'), subject: `${name}.fastening_height`, related: inCatalogue(judged, model.head, 'The entry is here.'),
        };
    }),
});
