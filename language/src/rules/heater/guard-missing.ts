import { inWords } from '../../core/finding.js';
import { manualCitation } from '../../engines/heater/casing.js';
import { defineRule } from '../rule.js';
import { addFact, heaterFindings, inCatalogue, reviewFix } from './heater-findings.js';

export const guardMissing = defineRule({
    id: 'guard-missing',
    family: 'heater',
    title: 'The heater has no guard',
    severity: 'error',
    why: 'Casing and stones burn at a touch; where its manual asks for a guard the heater may not run without one.',
    bad: 'heater stove on right { model Tarn60; from front 8"; backing 1 1/2" }',
    good: 'heater stove on right { model Tarn60; from front 8"; guard yes; backing 1 1/2" }',
    sources: [{ kind: 'manual', text: 'what the manual says of a guard' }],
    isWaivable: false,
    fixes: 'review',
    check: input => heaterFindings(input, judged => judged.guardProblems.flatMap(({ kind }) => {
        const { block, name, manual, model } = judged;
        const isRequired = kind === 'guard-required-and-not-built';
        // A guard that is half typed is no decision yet.
        const isUndecided = !block.values.guard && (block.written.has('guard') || !block.isWhole);
        if (!(isRequired || kind === 'guard-recommended-and-not-built') || isUndecided) return [];
        const edits = block.values.guard ? [{ span: block.values.guard.span, newText: 'yes' }] : addFact(block, 'guard', 'yes');
        return [{
            at: block.values.guard?.span ?? block.head, severity: isRequired ? 'error' as const : 'info' as const,
            message: `Heater ${name} has no guard; its manual ${isRequired ? 'requires' : 'recommends'} one (${manual.title}). Write guard yes.`,
            citation: manualCitation(manual), measured: inWords('no guard'), required: inWords(isRequired ? 'a guard' : 'a guard, recommended'), subject: `${name}.guard`, related: inCatalogue(judged, model.values.guard?.span), fixes: reviewFix(`Build a guard round heater ${name}`, edits),
        }];
    })),
});
