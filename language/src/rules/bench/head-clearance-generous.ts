import { showCitation } from '../../core/citation.js';
import { lengthFigure } from '../../core/finding.js';
import { minus } from '../../core/length.js';
import { governing, showRequired } from '../governing.js';
import { defineRule } from '../rule.js';
import { areAllPlaced, placedBenches } from './bench-findings.js';

export const headClearanceGenerous = defineRule({
    id: 'head-clearance-generous',
    family: 'bench',
    title: 'More head clearance over the highest bench than is usual',
    severity: 'hint',
    why: 'The warm air lies under the ceiling: bathers sit below it, and the heater warms room nobody uses.',
    bad: 'bench upper on back { build Slatted; top 32"; depth 20" }',
    good: 'bench upper on back { build Slatted; top 34"; depth 20" }',
    sources: [{ kind: 'practice', text: '42 to 47 in from the upper bench to the ceiling' }],
    isWaivable: true,
    fixes: 'none',
    *check(input) {
        const { ruleSets, results: { inside }, show, job } = input;
        const rule = governing(ruleSets, 'bench.head-clearance-maximum');
        if (!rule || !inside || !areAllPlaced(input)) return;
        // A room that is too high for its place gets another height anyway.
        if (input.results.shell?.result.headroom.verdict === 'short') return;
        for (const { layout: { isHighest, isAccessible, comfort: { headClearance } }, block: { values: { top } }, name } of placedBenches(input)) {
            // The height of an accessible bench is not free to choose.
            if (!isHighest || isAccessible || !top || headClearance <= rule.figure.value) continue;
            yield {
                at: top.span,
                message: `Head clearance over bench ${name} is ${show(headClearance)}; ${showRequired(rule.figure.value, job.unit, 'most')} at most is usual (${showCitation(rule.clause.citation)}). ` +
                    `A top at ${show(minus(inside.height, rule.figure.value))} or higher sits in warmer air, and a lower room heats sooner.`,
                citation: rule.clause.citation, measured: lengthFigure(headClearance), required: lengthFigure(rule.figure.value), subject: `${name}.head_clearance`,
            };
        }
    },
});
