import { inWords } from '../../core/finding.js';
import { manualCitation } from '../../engines/heater/casing.js';
import { defineRule } from '../rule.js';
import { heaterFindings, inCatalogue, lacks, modelSpan } from './heater-findings.js';

export const guardOffsetMissing = defineRule({
    id: 'guard-offset-missing',
    family: 'heater',
    title: 'Nothing says how far the guard stands off the heater',
    severity: 'warning',
    why: 'A guard too near the casing chars; how far it stays off is for the manual to say, and without it the guard is neither placed nor checked.',
    bad: `heater_model Plain { manual "Plain sheet (fictional)"; power 6 kW; supply 240 V single_phase; body 16" x 22"; depth 11"; guard required }
heater stove on right { model Plain; from front 8"; guard yes; backing 1 1/2" }`,
    good: 'heater stove on right { model Tarn60; from front 8"; guard yes; backing 1 1/2" }',
    sources: [{ kind: 'manual', text: 'the distance of the guard from the casing' }],
    isWaivable: false,
    fixes: 'none',
    check: input => heaterFindings(input, judged => judged.guardProblems.flatMap(({ kind }) => {
        if (kind !== 'guard-offset-missing' || !lacks(judged.model, 'guard_offset')) return [];
        return [{
            at: judged.block.values.guard?.span ?? modelSpan(judged),
            message: `Heater ${judged.name} has a guard, and ${judged.manual.title} does not state how far it stands off the casing; the guard is not checked. Ask the maker of the heater and write guard_offset in its entry.`,
            citation: manualCitation(judged.manual), measured: inWords('not stated'), required: inWords('guard_offset'), subject: `${judged.name}.guard`, related: inCatalogue(judged, judged.model.head, 'The entry is here.'),
        }];
    })),
});
