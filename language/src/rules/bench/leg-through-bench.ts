import { inWords, type Finding } from '../../core/finding.js';
import { showList } from '../../core/show.js';
import { benchesAstray } from '../astray.js';
import { defineRule } from '../rule.js';

const citation = { kind: 'geometry', text: 'a leg stands on the floor' } as const;

export const legThroughBench = defineRule({
    id: 'leg-through-bench',
    family: 'bench',
    title: 'A leg would pass through another bench',
    severity: 'error',
    why: 'A leg is notched for the tier in front of its own bench; any other bench in its way would have to be cut through.',
    bad: 'bench upper on back { build Slatted; top 37"; depth 20"; length 60"; from left 0" }\nbench lower on right { build Slatted; top 18"; depth 20" }',
    good: 'bench upper on back { build Slatted; top 37"; depth 20" }\nbench lower on back { build Slatted; top 18"; depth 16"; in_front_of upper }',
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    *check(input): Generator<Finding> {
        const { benches } = input.results;
        if (!benches) return;
        const astray = benchesAstray(input);
        const found = new Map<string, { readonly bench: string; readonly other: string; readonly marks: string[] }>();
        for (const problem of benches.result.problems) {
            if (problem.kind !== 'leg-through-bench' || astray.has(problem.bench)) continue;
            const { bench, other, mark } = problem;
            const seen = found.get(`${bench}\n${other}`) ?? { bench, other, marks: [] };
            if (!seen.marks.includes(mark)) seen.marks.push(mark);
            found.set(`${bench}\n${other}`, seen);
        }
        for (const { bench, other, marks } of found.values()) {
            const [block, below] = [benches.blocks.get(bench), benches.blocks.get(other)];
            // A bench that could not be read whole may not be meant to stand there at all.
            if (!block || !block.isWhole || below?.isWhole === false) continue;
            yield {
                at: block.head,
                message: `${marks.length === 1 ? 'Leg' : 'Legs'} ${showList(marks)} of bench ${bench} would pass through bench ${other}. End one bench at the other, or carry ${bench} to the wall on a ledger.`,
                citation, measured: inWords(marks.join(', ')), required: inWords('free floor under each leg'), subject: bench,
                related: below ? [{ at: below.head, message: `Bench ${other} stands here.` }] : [],
            };
        }
    },
});
