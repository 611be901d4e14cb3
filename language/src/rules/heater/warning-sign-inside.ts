import { inWords } from '../../core/finding.js';
import { showCitation } from '../../core/citation.js';
import { defineRule } from '../rule.js';
import { reviewFix } from './heater-findings.js';
import { noticeDemand } from './sign-findings.js';

export const warningSignInside = defineRule({
    id: 'warning-sign-inside',
    family: 'heater',
    title: 'The warning notice is inside the room',
    severity: 'error',
    why: 'Who reads the warning inside is already in the heat; the code wants it outside.',
    bad: 'rules us_commercial\nsign caution { says warning; stands inside; letters 1/4" }',
    good: 'rules us_commercial\nsign caution { says warning; stands outside; letters 1/4" }',
    sources: [{ kind: 'standard', document: 'IMC', edition: '2018', clause: '914.5.1', text: 'A permanent warning notice outside the room; its wording is in the code.', fromMemory: true }],
    isWaivable: true,
    fixes: 'review',
    check: function* (input) {
        const demand = noticeDemand(input);
        if (!demand || input.results.signs.warningOutside) return;
        for (const { values: { says, stands } } of input.job.signs) {
            if (says?.value !== 'warning' || stands?.value !== 'inside') continue;
            yield {
                at: stands.span,
                message: `The warning sign stands inside the room; outside is needed (${showCitation(demand.citation)}). Put it beside the door.`,
                citation: demand.citation, measured: inWords('inside'), required: inWords('outside'), subject: 'signs', fixes: reviewFix('Put the sign outside', [{ span: stands.span, newText: 'outside' }]),
            };
        }
    },
});
