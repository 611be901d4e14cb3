import { lengthFigure } from '../../core/finding.js';
import { showCitation } from '../../core/citation.js';
import { showRequired } from '../governing.js';
import { defineRule } from '../rule.js';
import { addFact, lacks, reviewFix, writable } from './heater-findings.js';
import { letterDemand } from './sign-findings.js';

export const warningSignLettersTooSmall = defineRule({
    id: 'warning-sign-letters-too-small',
    family: 'heater',
    title: 'The letters of the warning notice are too small, or their height is not stated',
    severity: 'error',
    why: 'A warning that cannot be read at the door warns nobody.',
    bad: 'rules us_commercial\nsign caution { says warning; stands outside; letters 3/16" }',
    good: 'rules us_commercial\nsign caution { says warning; stands outside; letters 1/4" }',
    sources: [{ kind: 'standard', document: 'IMC', edition: '2018', clause: '914.5.1', text: 'Letters at least 1/4 in (6.4 mm) high in a contrasting color.', fromMemory: true }],
    isWaivable: true,
    fixes: 'review',
    check: function* (input) {
        const demand = letterDemand(input);
        if (!demand) return;
        const least = demand.figure.value;
        const needed = `${showRequired(least, input.job.unit)} is needed (${showCitation(demand.citation)})`;
        for (const block of input.job.signs) {
            const { says, stands, letters } = block.values;
            if (says?.value !== 'warning' || stands?.value === 'inside' || (letters ? letters.value >= least : !lacks(block, 'letters'))) continue;
            const edits = letters ? [{ span: letters.span, newText: writable(least, input.job.unit) }] : addFact(block, 'letters', writable(least, input.job.unit));
            yield {
                at: letters?.span ?? block.head, severity: letters ? 'error' : 'warning',
                message: letters ? `The letters of the warning sign are ${input.show(letters.value)} high; ${needed}.` : `The height of the letters of the warning sign is not stated; ${needed}.`,
                citation: demand.citation, required: lengthFigure(least), subject: 'signs', ...(letters && { measured: lengthFigure(letters.value) }),
                fixes: reviewFix(`Set the letters to ${writable(least, input.job.unit)}`, edits),
            };
        }
    },
});
