import { showCitation } from '../../core/citation.js';
import { lengthFigure } from '../../core/finding.js';
import { minus } from '../../core/length.js';
import { practised, showRequired } from '../governing.js';
import { defineRule } from '../rule.js';
import { placedBenches } from './bench-findings.js';

export const riseTooLow = defineRule({
    id: 'rise-too-low',
    family: 'bench',
    title: 'Two tiers lie close in height',
    severity: 'hint',
    why: 'Feet on a tier just below the seat push the knees up, and the lower tier gains little over the upper.',
    bad: 'bench lower on back { build Slatted; top 24"; depth 16"; in_front_of upper }',
    good: 'bench lower on back { build Slatted; top 20"; depth 16"; in_front_of upper }',
    sources: [{ kind: 'practice', text: '400 to 450 mm from tier to tier' }],
    isWaivable: true,
    fixes: 'none',
    *check(input) {
        const { show, job: { unit } } = input;
        const rule = practised('bench.rise-minimum');
        if (!rule) return;
        for (const { layout: { comfort: { rise, climbFrom } }, name } of placedBenches(input)) {
            const step = placedBenches(input).find(other => other.name === climbFrom);
            // One lower than a rise is a step and not a seat.
            if (!step || step.layout.top < rule.figure.value || rise >= rule.figure.value) continue;
            const stated = step.block.values.top;
            yield {
                at: stated?.span ?? step.block.head,
                message: `Bench ${name} rises ${show(rise)} over bench ${step.name}; ${showRequired(rule.figure.value, unit)} at least is usual (${showCitation(rule.clause.citation)}). ` +
                    `Lower the top of ${step.name} or raise that of ${name} by ${showRequired(minus(rule.figure.value, rise), unit)} or more.`,
                citation: rule.clause.citation, measured: lengthFigure(rise), required: lengthFigure(rule.figure.value), subject: `${name}.rise`,
            };
        }
    },
});
