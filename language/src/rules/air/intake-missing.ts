import { inWords, type Finding } from '../../core/finding.js';
import type { Citation } from '../../core/citation.js';
import { showCitation } from '../../core/citation.js';
import { defineRule } from '../rule.js';
import { governs, roleOf, showArea } from './air-findings.js';

const practice: Citation = { kind: 'practice', text: 'an intake low by the heater' };

export const intakeMissing = defineRule({
    id: 'intake-missing',
    family: 'air',
    title: 'The room has no intake',
    severity: 'warning',
    why: 'Bathers use up the air, and the heater heats the room with the air that passes it. Without an intake both depend on what leaks in.',
    bad: '// without vent intake',
    good: 'vent intake on right { size 8" x 4"; behind stove; bottom 4"; air outdoors }',
    sources: [practice],
    isWaivable: true,
    fixes: 'none',
    *check(input): Generator<Finding> {
        const { job, results } = input;
        const isKnown = job.isWhole && job.vents.every(vent => vent.isWhole && roleOf(vent) !== undefined);
        if (!job.room || !isKnown || job.vents.some(vent => roleOf(vent) === 'intake')) return;
        const citation = governs(input, 'vent.intake-place')?.clause.citation ?? practice;
        const heater = results.heaters.find(({ heater: placed }) => placed);
        const [wall, place] = heater?.heater ? [heater.heater.wall, `behind ${heater.name}`] : ['right', 'from front …'];
        const under = results.air?.paths.underDoorsTotal;
        yield {
            at: job.room.head,
            message: `The room has no intake; fresh air from a clean source is needed near the heater (${showCitation(citation)}). ${under === undefined ? '' : under > 0n ? `Under the doors ${showArea(under, input)} are open. ` : 'Nothing is open under the doors either. '}Write a block such as vent intake on ${wall} { size …; ${place}; bottom …; air … }, low by the heater.`,
            citation, subject: 'air.intake', measured: inWords('none'), required: inWords('an intake near the heater'),
        };
    },
});
