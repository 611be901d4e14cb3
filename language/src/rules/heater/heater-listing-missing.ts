import { inWords } from '../../core/finding.js';
import { defineRule } from '../rule.js';
import { heaterFindings, inCatalogue, lacks, modelSpan } from './heater-findings.js';

export const heaterListingMissing = defineRule({
    id: 'heater-listing-missing',
    family: 'heater',
    title: 'Nothing says which rooms the heater is listed with',
    severity: 'info',
    why: 'A heater is listed for rooms built on site or with named prefabricated rooms; without that word nobody can tell whether the listing covers this one.',
    bad: `heater_model Plain { manual "Plain sheet (fictional)"; power 6 kW; supply 240 V single_phase; body 16" x 22"; depth 11" }
heater stove on right { model Plain; from front 8"; guard yes; backing 1 1/2" }`,
    good: 'heater stove on right { model Tarn60; from front 8"; guard yes; backing 1 1/2" }',
    sources: [{ kind: 'manual', text: 'the rooms the heater is listed with' }],
    isWaivable: true,
    fixes: 'none',
    check: input => heaterFindings(input, judged => lacks(judged.model, 'listed_with') ? {
        at: modelSpan(judged),
        message: `${judged.manual.title} does not name a panel system heater ${judged.name} is listed with. Ask the maker of the heater whether its listing covers a prefabricated room, and write listed_with in its entry.`,
        citation: { kind: 'manual', text: judged.manual.title }, measured: inWords('not stated'), required: inWords('listed_with'), subject: judged.name, related: inCatalogue(judged, judged.model.head, 'The entry is here.'),
    } : undefined),
});
