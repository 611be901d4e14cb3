import { showList } from '../../core/show.js';
import { benchesAstray } from '../astray.js';
import { defineRule } from '../rule.js';
import { areOpeningsKnown, measuredAgainst, shellProblems } from './shell-findings.js';

const citation = { kind: 'practice', text: 'no panel joint nearer than 2" to a ledger end or leg fastening' } as const;

export const jointNearFastening = defineRule({
    id: 'joint-near-fastening',
    family: 'shell',
    title: 'A panel joint falls close to where a bench is fastened',
    severity: 'info',
    why: 'A screw near the edge of a panel splits its frame, and the blocking for a ledger end needs wood on both sides. Joints keep 2" off ledger ends and leg fastenings.',
    bad: 'bench lower on back { build Slatted; top 18"; depth 16"; in_front_of upper }\nbench upper on back { build Slatted; top 37"; depth 25"; load_path end_ledgers }',
    good: 'bench upper on back { build Slatted; top 37"; depth 20" }',
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    *check(input) {
        if (!areOpeningsKnown(input)) return;
        const astray = benchesAstray(input);
        for (const [name, block] of input.results.benches?.blocks ?? []) {
            if (astray.has(name)) continue;
            const marks = new Set(input.results.benches?.result.benches.find(bench => bench.name === name)?.wallFastenings.map(({ mark }) => mark));
            const near = shellProblems(input, 'joint-near-fastening').filter(problem => marks.has(problem.name)).toSorted((a, b) => a.distance - b.distance);
            const [nearest] = near;
            if (!nearest) continue;
            const joints = [...new Set(near.map(({ between }) => between.join('/')))];
            yield {
                at: block.values.depth?.span ?? block.head,
                message: `Bench ${name} is fastened ${input.show(nearest.distance)} from the joint ${joints.length > 1 ? `of ${joints[0] ?? ''} and near that of ${showList(joints.slice(1))}` : `of ${joints[0] ?? ''}`}; ${input.show(nearest.least)} is wanted between a joint and a ledger end or leg (common practice, no source). Another depth or length clears it; otherwise put blocking in both panels.`,
                citation, ...measuredAgainst(nearest.distance, nearest.least), subject: name,
            };
        }
    },
});
