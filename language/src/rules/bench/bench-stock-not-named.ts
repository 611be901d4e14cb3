import { inWords } from '../../core/finding.js';
import { defineRule } from '../rule.js';
import { benchFindings, buildOf } from './bench-findings.js';

const citation = { kind: 'catalogue', text: 'what the bench build is made of' } as const;

export const benchStockNotNamed = defineRule({
    id: 'bench-stock-not-named',
    family: 'bench',
    title: 'A fascia or back rest the bench build has no stock for',
    severity: 'error',
    why: 'The part is asked for and nobody knows what to cut it from, so it would be missing from the cut list.',
    bad: `bench_build Plain { slat alder_1x4; slat_gap 1/4" to 3/4"; bearer alder_2x4; bearer_spacing 24"; rail alder_2x4; ledger alder_2x4; leg alder_2x4 }
bench upper on back { build Plain; top 37"; depth 20"; fascia yes }`,
    good: 'bench upper on back { build Slatted; top 37"; depth 20"; fascia yes }',
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    check: input => benchFindings(input, 'no-stock-for', ({ problem: { what }, block, name }) => {
        const { fascia, back_rest: backRest } = block.values;
        const build = buildOf(block);
        // Half-typed facts of the bench build are not missing.
        if (!build || !build.isWhole || build.written.has(what.replace(' ', '_'))) return undefined;
        return {
            at: (what === 'fascia' ? fascia : backRest)?.span ?? block.head,
            message: `Bench ${name} has a ${what}, and its bench build ${build.name?.value ?? ''} names no stock for one. Choose a bench build that does, or leave the ${what} out.`,
            citation, measured: inWords('no stock'), required: inWords(`a stock for the ${what}`), subject: name,
            related: [{ at: build.head, message: 'The bench build stands here.' }],
        };
    }),
});
