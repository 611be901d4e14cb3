import { lengthFigure } from '../../core/finding.js';
import { defineRule } from '../rule.js';
import { benchFindings, buildOf } from './bench-findings.js';

const citation = { kind: 'geometry', text: 'cross-bearers lie beside each other' } as const;

export const bearersCloserThanWide = defineRule({
    id: 'bearers-closer-than-wide',
    family: 'bench',
    title: 'Cross-bearers closer than they are wide',
    severity: 'error',
    why: 'The spacing is from centre to centre; below the width of a bearer one would lie in the next.',
    bad: `bench_build Dense { slat alder_1x4; slat_gap 1/4" to 3/4"; bearer alder_2x4; bearer_spacing 3"; rail alder_2x4; ledger alder_2x4; leg alder_2x4 }
bench upper on back { build Dense; top 37"; depth 20" }`,
    good: `bench_build Dense { slat alder_1x4; slat_gap 1/4" to 3/4"; bearer alder_2x4; bearer_spacing 12"; rail alder_2x4; ledger alder_2x4; leg alder_2x4 }
bench upper on back { build Dense; top 37"; depth 20" }`,
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    check: input => benchFindings(input, 'bearers-closer-than-wide', ({ problem: { spacing, bearerWidth }, block, name }) => {
        const { show } = input;
        const stated = buildOf(block)?.values.bearer_spacing;
        return {
            at: block.values.build?.span ?? block.head,
            message: `The cross-bearers of bench ${name} stand ${show(spacing)} apart between centres and are ${show(bearerWidth)} wide; ${show(bearerWidth)} at least is needed. Choose another bench build, or mend its bearer_spacing.`,
            citation, measured: lengthFigure(spacing), required: lengthFigure(bearerWidth), subject: name,
            related: stated ? [{ at: stated.span, message: 'The spacing stands here.' }] : [],
        };
    }),
});
