import { inWords } from '../../core/finding.js';
import { showList } from '../../core/show.js';
import { defineRule } from '../rule.js';
import { benchFindings } from './bench-findings.js';

const citation = { kind: 'geometry', text: 'a tier stands in front of a higher one' } as const;

export const tiersInACircle = defineRule({
    id: 'tiers-in-a-circle',
    family: 'bench',
    title: 'Benches stand in front of each other in a circle',
    severity: 'error',
    why: 'Which tier is behind the other is not known; they are placed by their heights until it is.',
    bad: 'bench upper on back { build Slatted; top 37"; depth 20"; in_front_of lower }',
    good: 'bench upper on back { build Slatted; top 37"; depth 20" }',
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    check: input => benchFindings(input, 'in-front-of-cycle', ({ problem: { chain }, block, name }) => {
        const stated = block.values.in_front_of;
        if (!stated) return undefined;
        const said = chain.map((bench, i) => `${bench} in front of ${chain[(i + 1) % chain.length] ?? bench}`).join(', ');
        return {
            at: stated.span,
            message: chain.length === 1
                ? `Bench ${name} is said to stand in front of itself. Name the higher tier behind it, or leave in_front_of out.`
                : `Benches ${showList(chain)} stand in front of each other in a circle: ${said}. Leave in_front_of out at the highest of them.`,
            citation, measured: inWords(said), required: inWords('each in front of a higher one'), subject: name,
            related: chain.slice(1).flatMap(bench => {
                const other = input.results.benches?.blocks.get(bench);
                return other ? [{ at: other.values.in_front_of?.span ?? other.head, message: 'The circle goes on here.' }] : [];
            }),
        };
    }),
});
