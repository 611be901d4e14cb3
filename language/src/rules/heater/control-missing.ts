import { inWords } from '../../core/finding.js';
import { manualCitation } from '../../engines/heater/casing.js';
import { defineRule } from '../rule.js';
import { addBlockAfter, heaterFindings, inCatalogue, reviewFix } from './heater-findings.js';

export const controlMissing = defineRule({
    id: 'control-missing',
    family: 'heater',
    title: 'Nothing switches the heater',
    severity: 'error',
    why: 'A heater whose manual puts the control outside the room cannot be switched, timed or set without one, and its wiring cannot be drawn.',
    bad: '// without control',
    good: 'control on front { stands outside; height 54"; timer 60 min }',
    sources: [{ kind: 'manual', text: 'the place of the control' }],
    isWaivable: true,
    fixes: 'review',
    check: input => heaterFindings(input, judged => {
        const { controls, manual, name, block, model } = judged;
        if (!input.job.isWhole || input.job.controls.length > 0 || !controls.problems.some(({ kind }) => kind === 'control-missing')) return undefined;
        const wall = input.results.doors.find(({ door }) => door)?.door?.wall ?? 'front';
        return {
            at: block.head,
            message: `Heater ${name} has no control; its manual puts one outside the room (${manual.title}). Write a block such as control on ${wall} { stands outside; height …; timer … }.`,
            citation: manualCitation(manual), measured: inWords('none'), required: inWords('one control outside the room'), subject: name, related: inCatalogue(judged, model.values.control?.span),
            fixes: reviewFix('Add a control outside the room', addBlockAfter(block, `control on ${wall} { stands outside }`)),
        };
    }),
});
