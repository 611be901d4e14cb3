import { showCitation } from '../../core/citation.js';
import { lengthFigure } from '../../core/finding.js';
import { extent } from '../../core/geometry.js';
import type { Length } from '../../core/length.js';
import { practised, showRequired } from '../governing.js';
import { isRoomOverfull } from '../astray.js';
import { defineRule } from '../rule.js';
import { placedBenches, stretchSpan } from './bench-findings.js';

export const benchTooShortToSit = defineRule({
    id: 'bench-too-short-to-sit',
    family: 'bench',
    title: 'A bench too short for one person to sit',
    severity: 'info',
    why: 'It counts as a step; a bench that nobody can sit on is often a slip of the length.',
    bad: 'bench upper on back { build Slatted; top 37"; depth 20"; length 20"; from left 0" }',
    good: 'bench upper on back { build Slatted; top 37"; depth 20"; length 24"; from left 0" }',
    sources: [{ kind: 'practice', text: '24 in of bench for each sitter' }],
    isWaivable: true,
    fixes: 'none',
    *check(input) {
        const { show, job: { unit } } = input;
        const rule = practised('bench.seat-length');
        if (!rule || isRoomOverfull(input)) return;
        for (const { layout: { runs, comfort: { seats } }, block, name } of placedBenches(input)) {
            if (seats > 0) continue;
            const length = Math.max(...runs.map(run => extent(run.u))) as Length;
            yield {
                at: stretchSpan(block),
                message: `Bench ${name} is ${show(length)} long; ${showRequired(rule.figure.value, unit)} is usual for one sitter (${showCitation(rule.clause.citation)}). Make it longer, unless it is a step.`,
                citation: rule.clause.citation, measured: lengthFigure(length), required: lengthFigure(rule.figure.value), subject: `${name}.seats`,
            };
        }
    },
});
