import { lengthFigure } from '../../core/finding.js';
import { defineRule } from '../rule.js';
import { benchFindings, buildOf } from './bench-findings.js';

const citation = { kind: 'practice', text: 'a bench longer than 6 ft between supports has centre legs' } as const;

export const spanWithoutLeg = defineRule({
    id: 'span-without-leg',
    family: 'bench',
    title: 'A bench spans too far without a leg',
    severity: 'error',
    why: 'The rail carries every sitter between its supports; where the notch for the tier in front takes the whole leg, nothing stands under it.',
    bad: `bench_build Bridged { slat alder_1x4; slat_gap 1/4" to 3/4"; bearer alder_2x4; bearer_spacing 24"; rail alder_2x4; ledger alder_2x4; leg alder_2x4; leg_spacing 4' }
bench upper on back { build Bridged; top 37"; depth 20" }
bench lower on back { build Slatted; top 18"; depth 20"; in_front_of upper; overlap 4" }`,
    good: `bench_build Bridged { slat alder_1x4; slat_gap 1/4" to 3/4"; bearer alder_2x4; bearer_spacing 24"; rail alder_2x4; ledger alder_2x4; leg alder_2x4; leg_spacing 4' }
bench upper on back { build Bridged; top 37"; depth 20" }
bench lower on back { build Slatted; top 18"; depth 16"; in_front_of upper }`,
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    check: input => benchFindings(input, 'span-without-leg', ({ problem: { wall, span, limit, notchFor, notch, legWidth }, block, name }) => {
        const { show, results: { benches } } = input;
        const lower = benches?.blocks.get(notchFor);
        const spacing = buildOf(block)?.values.leg_spacing;
        const source = spacing ? 'the leg spacing of its bench build' : 'common practice, no source';
        return {
            at: lower?.values.overlap?.span ?? block.head,
            message: `The front rail of bench ${name} on the ${wall} wall spans ${show(span)} without a leg; ${show(limit)} at most is needed (${source}). ` +
                `The notch for bench ${notchFor} takes ${show(notch)} of a leg ${show(legWidth)} wide: let ${notchFor} reach less far under it, or choose wider legs.`,
            citation: spacing ? { kind: 'catalogue', text: 'the leg spacing of the bench build' } : citation,
            measured: lengthFigure(span), required: lengthFigure(limit), subject: `${name}.span.rail`,
            related: [{ at: block.head, message: `Bench ${name} stands here.` }, ...lower ? [{ at: lower.head, message: `Bench ${notchFor} stands here.` }] : []],
        };
    }),
});
