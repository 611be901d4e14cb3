import { inWords } from '../../core/finding.js';
import { defineRule } from '../rule.js';
import { benchFindings, stretchSpan } from './bench-findings.js';

const citation = { kind: 'geometry', text: 'the runs of one bench meet in corners' } as const;

export const benchRunsDoNotMeet = defineRule({
    id: 'bench-runs-do-not-meet',
    family: 'bench',
    title: 'The runs of an L or U bench do not meet',
    severity: 'error',
    why: 'The second run ends at the first, whose rail carries it; with the first elsewhere that end is carried by nothing.',
    bad: 'bench lower on back, left { build Slatted; top 18"; depth 16"; in_front_of upper; length 40"; from right 0" }',
    good: 'bench lower on back, left { build Slatted; top 18"; depth 16"; in_front_of upper; length 40"; from left 0" }',
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    check: input => benchFindings(input, 'runs-do-not-meet', ({ problem: { first, second }, block, name }) => ({
        at: stretchSpan(block),
        message: `The run of bench ${name} on the ${first} wall stops short of the ${second} wall, where the next run begins. Measure it from ${second}, make it longer, or make two benches of it.`,
        citation, measured: inWords('apart'), required: inWords('meeting in the corner'), subject: name,
        related: [{ at: block.head, message: 'The walls of the bench stand here.' }],
    })),
});
