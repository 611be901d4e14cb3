import type { Citation } from '../../core/citation.js';
import { showCitation } from '../../core/citation.js';
import { inWords } from '../../core/finding.js';
import { manualCitation } from '../../engines/heater/casing.js';
import { strictest } from '../../rule-sets/index.js';
import { defineRule } from '../rule.js';
import { heaterFindings, inCatalogue, lacks, modelSpan } from './heater-findings.js';

export const limiterMissing = defineRule({
    id: 'limiter-missing',
    family: 'heater',
    title: 'The heater has no safety limiter, or nothing says it has one',
    severity: 'error',
    why: 'When the thermostat fails, only the limiter that has to be reset by hand keeps the room from burning.',
    bad: `heater_model Bare { manual "Bare sheet (fictional)"; power 6 kW; supply 240 V single_phase; body 16" x 22"; depth 11"; limiter none }
heater stove on right { model Bare; from front 8"; guard yes; backing 1 1/2" }`,
    good: 'heater stove on right { model Tarn60; from front 8"; guard yes; backing 1 1/2" }',
    sources: [{ kind: 'standard', document: 'UL 875', edition: 'ed. 9 (2009)', clause: '§1', text: 'Automatic temperature control, a limit reset by hand, and a timer.' }],
    isWaivable: false,
    fixes: 'none',
    check: input => heaterFindings(input, judged => {
        const { controls, model, name, manual } = judged;
        const hasNone = controls.problems.some(({ kind }) => kind === 'no-limiter');
        const isUnknown = controls.problems.some(({ kind }) => kind === 'limiter-missing-in-manual') && lacks(model, 'limiter');
        if (!hasNone && !isUnknown) return undefined;
        const citation: Citation = strictest(input.ruleSets, 'limiter.manual-reset')?.clause.citation ?? { kind: 'practice', text: 'a high-temperature limit that is reset by hand' };
        const needed = `a limiter that is reset by hand is needed (${showCitation(citation)})`;
        return {
            at: modelSpan(judged),
            message: hasNone
                ? `Heater ${name} has no safety limiter (${manual.title}); ${needed}. Choose a heater that has one.`
                : `${manual.title} does not state a safety limiter for heater ${name}; ${needed}. Ask the maker of the heater and write limiter in its entry, or choose another heater.`,
            citation: citation.kind === 'practice' ? manualCitation(manual) : citation, measured: inWords('no limiter'), required: inWords('a limiter reset by hand'), subject: name, related: inCatalogue(judged, model.values.limiter?.span ?? model.head, hasNone ? undefined : 'The entry is here.'),
        };
    }),
});
