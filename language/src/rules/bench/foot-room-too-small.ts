import { showCitation } from '../../core/citation.js';
import { lengthFigure } from '../../core/finding.js';
import { practised, showRequired } from '../governing.js';
import { defineRule } from '../rule.js';
import { placedBenches } from './bench-findings.js';

export const footRoomTooSmall = defineRule({
    id: 'foot-room-too-small',
    family: 'bench',
    title: 'Too little bench in front to put the feet on',
    severity: 'warning',
    why: 'Who sits on the upper tier rests the feet on the lower one and climbs by it; a narrow one is a ladder.',
    bad: 'bench lower on back { build Slatted; top 18"; depth 16"; in_front_of upper; overlap 6" }',
    good: 'bench lower on back { build Slatted; top 18"; depth 16"; in_front_of upper; overlap 2" }',
    sources: [{ kind: 'practice', text: 'a lower bench is 300 to 450 mm deep' }],
    isWaivable: true,
    fixes: 'none',
    *check(input) {
        const { show, job: { unit } } = input;
        const rule = practised('bench.lower-depth-minimum');
        if (!rule) return;
        for (const { layout, name } of placedBenches(input)) {
            const { footDepth } = layout.comfort;
            if (footDepth === undefined || footDepth >= rule.figure.value) continue;
            const front = placedBenches(input).find(other => other.layout.runs.some(run => run.inFrontOf?.bench === name && run.w.to - (layout.runs[run.inFrontOf.run]?.w.to ?? 0) === footDepth));
            if (!front) continue;
            const { overlap, depth } = front.block.values;
            const isUnder = overlap !== undefined && overlap.value > 0;
            yield {
                at: (isUnder ? overlap : depth)?.span ?? front.block.head,
                message: `Bench ${front.name} leaves ${show(footDepth)} before bench ${name} for feet; ${showRequired(rule.figure.value, unit)} is needed (${showCitation(rule.clause.citation)}). ${isUnder ? 'Let it reach less far under the tier behind, or make it deeper.' : 'Make it deeper.'}`,
                citation: rule.clause.citation, measured: lengthFigure(footDepth), required: lengthFigure(rule.figure.value), subject: front.name,
            };
        }
    },
});
