import { showCitation } from '../../core/citation.js';
import { inWords } from '../../core/finding.js';
import { defineRule } from '../rule.js';
import { addBlockAfter, reviewFix, writable } from './heater-findings.js';
import { letterDemand, noticeDemand } from './sign-findings.js';

export const warningSignMissing = defineRule({
    id: 'warning-sign-missing',
    family: 'heater',
    title: 'The warning notice outside the room is missing',
    severity: 'error',
    why: 'People who do not know their own limits come to harm in the heat; where the public bathes the code wants them warned at the door.',
    bad: 'rules us_commercial\n// without sign caution',
    good: 'rules us_commercial',
    sources: [{ kind: 'standard', document: 'IMC', edition: '2018', clause: '914.5.1', text: 'A permanent warning notice outside the room; its wording is in the code.', fromMemory: true }],
    isWaivable: true,
    fixes: 'review',
    check: function* (input) {
        const { job, results: { signs } } = input;
        const demand = noticeDemand(input);
        // A warning on the wrong side of the wall has its own finding; one that does not say what it is is still being written.
        const isSomeWarning = job.signs.some(({ values, written, isWhole }) => values.says?.value === 'warning' || !isWhole || (!values.says && written.has('says')));
        if (!demand || !job.isWhole || signs.warningOutside || isSomeWarning) return;
        const letters = letterDemand(input);
        const after = job.signs.at(-1) ?? job.heaters.at(-1);
        const text = `sign warning { says warning; stands outside${letters ? `; letters ${writable(letters.figure.value, job.unit)}` : ''} }`;
        yield {
            at: job.block.head,
            message: `The warning notice outside the room is missing; it is required (${showCitation(demand.citation)}). Take its wording from the code itself.`,
            citation: demand.citation, subject: 'signs', measured: inWords('none'), required: inWords(`a warning outside${letters ? `, letters ${writable(letters.figure.value, job.unit)} high` : ''}`), fixes: after ? reviewFix('Add the warning sign', addBlockAfter(after, text)) : [],
        };
    },
});
