import { inWords, lengthFigure } from '../../core/finding.js';
import { manualCitation, usualStoneFall } from '../../engines/heater/casing.js';
import { showCitation, type Citation } from '../../core/citation.js';
import { showRequired } from '../governing.js';
import { defineRule } from '../rule.js';
import { heaterFindings } from './heater-findings.js';
import { blockOfThing, capital, thingWords } from './thing-findings.js';

export const duckboardUnderHeater = defineRule({
    id: 'duckboard-under-heater',
    family: 'heater',
    title: 'A duckboard lies where hot stones can fall',
    severity: 'error',
    why: 'A stone that splits and rolls off the heater sets the wood it lies on afire.',
    bad: 'duckboard mat { from_left 50"; from_front 4"; width 24"; depth 24"; slat alder_1x4 }',
    good: 'duckboard mat { from_left 30"; from_front 4"; width 24"; depth 24"; slat alder_1x4 }',
    sources: [{ kind: 'manual', text: 'the clearance before the heater' }, { kind: 'practice', text: 'no duckboard under or before the heater' }],
    isWaivable: false,
    fixes: 'none',
    check: input => heaterFindings(input, ({ duckboardsUnderStones, name, manual }) => duckboardsUnderStones.flatMap(thing => {
        const block = blockOfThing(input, thing);
        if (!block) return [];
        const reach = manual.clearFront ?? usualStoneFall;
        const citation: Citation = manual.clearFront === undefined ? { kind: 'practice', text: 'no duckboard under or before the heater' } : manualCitation(manual);
        return [{
            at: block.head,
            message: `${capital(thingWords(thing))} lies under heater ${name} or less than ${showRequired(reach, input.job.unit)} before it, where stones can fall; a bare floor is needed there (${showCitation(citation)}). Move or shorten it.`,
            citation, measured: inWords('under or before the heater'), required: lengthFigure(reach), subject: name,
        }];
    })),
});
