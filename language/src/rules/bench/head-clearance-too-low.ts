import { showCitation } from '../../core/citation.js';
import { lengthFigure } from '../../core/finding.js';
import { minus, plus, zero } from '../../core/length.js';
import { governing, showRequired } from '../governing.js';
import { replaceLength } from '../fixes.js';
import { isRoomTooLow, neededRoomHeight } from '../room-height.js';
import { showAtLeast, showAtMost } from '../rounding.js';
import { defineRule } from '../rule.js';
import { placedBenches } from './bench-findings.js';

export const headClearanceTooLow = defineRule({
    id: 'head-clearance-too-low',
    family: 'bench',
    title: 'Too little head clearance over the highest bench',
    severity: 'warning',
    why: 'A tall bather cannot sit upright, and the head is in the hottest air under the ceiling.',
    bad: 'bench upper on back { build Slatted; top 39"; depth 20" }',
    good: 'bench upper on back { build Slatted; top 38"; depth 20" }',
    sources: [{ kind: 'practice', text: '42 to 47 in from the upper bench to the ceiling' }],
    isWaivable: true,
    fixes: 'review',
    *check(input) {
        const { ruleSets, results, job } = input;
        const rule = governing(ruleSets, 'bench.head-clearance');
        const inside = results.inside;
        if (!rule || !inside || isRoomTooLow(input)) return;
        for (const { layout: { isHighest, comfort: { headClearance } }, block: { values: { top } }, name } of placedBenches(input)) {
            // A top above the ceiling is said by another rule.
            if (!isHighest || !top || headClearance < 0 || headClearance >= rule.figure.value) continue;
            const highest = minus(inside.height, rule.figure.value);
            const room = job.room?.values.height;
            // Heads may be clear at a top the bathers still cannot climb to: both are served, or both are said.
            const climb = results.benches?.result.problems.find(problem => problem.kind === 'climb-too-high' && problem.bench === name);
            const climbs = climb?.kind === 'climb-too-high' ? { from: climb.from, base: minus(top.value, climb.rise), limit: climb.limit } : undefined;
            const reach = climbs && plus(climbs.base, climbs.limit);
            const isTooHighStill = reach !== undefined && reach < highest;
            const isFromBench = climbs?.from !== undefined;
            const target = isTooHighStill && isFromBench ? reach : highest;
            const also = !isTooHighStill ? '' : isFromBench ? ' for the heads and the climb together' : ` and put a step before it, as the climb may be ${showRequired(climbs?.limit ?? zero, job.unit, 'most')} at most`;
            // What a higher room would need besides is of no use to a bench that has to come down for its climb.
            const height = climbs ? undefined : neededRoomHeight(input);
            yield {
                at: top.span,
                message: `Head clearance over bench ${name} is ${showAtMost(headClearance, job.unit)}; ${showRequired(rule.figure.value, job.unit)} is needed (${showCitation(rule.clause.citation)}). ` +
                    `Set the top to ${showAtMost(target, job.unit)} or lower${also}${height === undefined ? '' : `, or the height of the room to ${showAtLeast(height, job.unit)} or more`}.`,
                citation: rule.clause.citation, measured: lengthFigure(headClearance), required: lengthFigure(rule.figure.value), subject: `${name}.head_clearance`,
                related: room ? [{ at: room.span, message: 'The height of the room stands here.' }] : [],
                fixes: target > 0 ? replaceLength('top', top.span, target, job.unit).map(fix => isTooHighStill && !isFromBench ? { ...fix, title: `${fix.title}; the climb to it still needs a step` } : fix) : [],
            };
        }
    },
});
