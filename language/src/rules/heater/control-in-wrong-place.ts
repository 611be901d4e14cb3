import { inWords } from '../../core/finding.js';
import { manualCitation } from '../../engines/heater/casing.js';
import { defineRule } from '../rule.js';
import { controlBlock, isWrongPlace, standsWords } from './control-findings.js';
import { heaterFindings, inCatalogue, reviewFix } from './heater-findings.js';

export const controlInWrongPlace = defineRule({
    id: 'control-in-wrong-place',
    family: 'heater',
    title: 'The control is not where the manual of the heater puts it',
    severity: 'error',
    why: 'A control made to stand outside does not withstand the heat inside, and one that belongs to the heater has nothing to be wired to elsewhere.',
    bad: 'control on front { stands inside; height 54"; timer 60 min }',
    good: 'control on front { stands outside; height 54"; timer 60 min }',
    sources: [{ kind: 'manual', text: 'the place of the control' }],
    isWaivable: false,
    fixes: 'review',
    check: input => heaterFindings(input, judged => judged.controls.problems.filter(isWrongPlace).flatMap(({ name, stands, wanted }) => {
        const span = controlBlock(input, name)?.values.stands?.span;
        if (!span) return [];
        const right = wanted === 'either' ? 'outside' : wanted;
        return [{
            at: span,
            message: `The control of heater ${judged.name} stands ${standsWords[stands]}; ${standsWords[wanted]} is needed (${judged.manual.title}).`,
            citation: manualCitation(judged.manual), measured: inWords(stands), required: inWords(wanted), subject: judged.name,
            related: inCatalogue(judged, judged.model.values.control?.span), fixes: reviewFix(`Put the control ${standsWords[right]}`, [{ span, newText: right }]),
        }];
    })),
});
