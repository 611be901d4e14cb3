import { inWords, lengthFigure } from '../../core/finding.js';
import { neighbours } from '../../core/geometry.js';
import { zero } from '../../core/length.js';
import { addFact } from '../fixes.js';
import { defineRule } from '../rule.js';
import { benchFindings } from './bench-findings.js';

const citation = { kind: 'geometry', text: 'a bench shorter than its wall can stand anywhere along it' } as const;

export const benchPlaceMissing = defineRule({
    id: 'bench-place-missing',
    family: 'bench',
    title: 'A bench shorter than its wall without its place',
    severity: 'error',
    why: 'Where its ledgers, legs and blocking go is not known, so the bench is left out of everything that is worked out.',
    bad: 'bench upper on back { build Slatted; top 37"; depth 20"; length 60" }',
    good: 'bench upper on back { build Slatted; top 37"; depth 20"; length 60"; from left 0" }',
    sources: [citation],
    isWaivable: true,
    fixes: 'review',
    check: input => benchFindings(input, 'place-missing', ({ problem: { wall, length, free }, block, name }) => {
        const { show } = input;
        const stated = block.values.length;
        // Half-typed facts are not missing.
        if (!stated || !block.isWhole) return undefined;
        const { left, right } = neighbours[wall];
        return {
            at: stated.span,
            message: `Bench ${name} is ${show(length)} long and leaves ${show(free)} of the ${wall} wall over, but nothing says on which side. Add from ${left} ${show(zero)} or from ${right} ${show(zero)}.`,
            citation, measured: lengthFigure(length), required: inWords('from'), subject: name,
            fixes: [left, right].map(side => addFact(`Start at the ${side} wall`, stated.fact, `from ${side} ${show(zero)}`)),
        };
    }),
});
