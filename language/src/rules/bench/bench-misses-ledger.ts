import { lengthFigure } from '../../core/finding.js';
import { defineRule } from '../rule.js';
import { benchFindings, buildOf } from './bench-findings.js';

const citation = { kind: 'geometry', text: 'bearers and rails lie on the ledger' } as const;

export const benchMissesLedger = defineRule({
    id: 'bench-misses-ledger',
    family: 'bench',
    title: 'The gap to the wall is as wide as the ledger is thick',
    severity: 'error',
    why: 'The bench ends where its ledger ends and rests on nothing.',
    bad: `bench_build Loose { slat alder_1x4; slat_gap 1/4" to 3/4"; bearer alder_2x4; bearer_spacing 24"; rail alder_2x4; ledger alder_2x4; leg alder_2x4; wall_gap 1 1/2" }
bench upper on back { build Loose; top 37"; depth 20" }`,
    good: `bench_build Loose { slat alder_1x4; slat_gap 1/4" to 3/4"; bearer alder_2x4; bearer_spacing 24"; rail alder_2x4; ledger alder_2x4; leg alder_2x4; wall_gap 1/4" }
bench upper on back { build Loose; top 37"; depth 20" }`,
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    check: input => benchFindings(input, 'ledger-missed', ({ problem: { wallGap, ledgerThickness }, block, name }) => {
        const { show } = input;
        const stated = buildOf(block)?.values.wall_gap;
        return {
            at: block.values.build?.span ?? block.head,
            message: `Bench ${name} keeps ${show(wallGap)} off the lining and its ledgers are ${show(ledgerThickness)} thick, so it misses them; a smaller gap is needed. Choose another bench build, or mend its wall_gap.`,
            citation, measured: lengthFigure(wallGap), required: lengthFigure(ledgerThickness), subject: name,
            related: stated ? [{ at: stated.span, message: 'The gap stands here.' }] : [],
        };
    }),
});
