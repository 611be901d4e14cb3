import { lengthFigure } from '../../core/finding.js';
import { defineRule } from '../rule.js';
import { benchFindings, buildOf, stretchSpan } from './bench-findings.js';

const citation = { kind: 'geometry', text: 'a bearer and a ledger at each end' } as const;

export const benchRunTooShort = defineRule({
    id: 'bench-run-too-short',
    family: 'bench',
    title: 'A bench is too short to be framed',
    severity: 'error',
    why: 'A cross-bearer and a ledger have to fit at each end; shorter than that there is nothing to screw slats to.',
    bad: 'bench upper on back { build Slatted; top 37"; depth 20"; length 8"; from left 0" }',
    good: 'bench upper on back { build Slatted; top 37"; depth 20"; length 48"; from left 0" }',
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    check: input => benchFindings(input, 'run-too-short', ({ problem: { wall, length, least }, block, name }) => {
        const { show } = input;
        const build = buildOf(block);
        return {
            at: stretchSpan(block),
            message: `Bench ${name} is ${show(length)} long on the ${wall} wall; ${show(least)} is needed for a bearer and a ledger at each end. Make it longer, or leave this run out.`,
            citation, measured: lengthFigure(length), required: lengthFigure(least), subject: `${name}.length`,
            related: build ? [{ at: build.head, message: 'The sections of bearer and ledger stand in this bench build.' }] : [],
        };
    }),
});
