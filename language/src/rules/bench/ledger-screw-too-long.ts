import { lengthFigure } from '../../core/finding.js';
import { showList } from '../../core/show.js';
import { defineRule } from '../rule.js';
import { ledgerScrews } from './screw-findings.js';

const build = (screw: string): string => `bench_build Screwed { slat alder_1x4; slat_gap 1/4" to 3/4"; bearer alder_2x4; bearer_spacing 24"; rail alder_2x4; ledger alder_2x4; leg alder_2x4; ledger_screw ${screw} }
bench upper on back { build Screwed; top 37"; depth 20" }`;
const citation = { kind: 'geometry', text: 'a screw ends behind the facing' } as const;

export const ledgerScrewTooLong = defineRule({
    id: 'ledger-screw-too-long',
    family: 'bench',
    title: 'The ledger screw meets the facing',
    severity: 'error',
    why: 'The point splits or pierces the outside of the wall, and what stands behind it may be a cable.',
    bad: `screw long_screw { length 5"; penetration 1 1/4" }\n${build('long_screw')}`,
    good: `screw right_screw { length 4 3/4"; penetration 1 1/4" }\n${build('right_screw')}`,
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    *check(input) {
        const { show } = input;
        for (const { benches, at, screw, screwBlock, length, least, most } of ledgerScrews(input)) {
            // Where no length does both, the screw that does not hold is the one to speak of.
            if (length <= most || length < least) continue;
            yield {
                at,
                message: `Screw ${screw} in the ledgers of ${benches.length === 1 ? 'bench' : 'benches'} ${showList(benches)} is ${show(length)} long; ${show(most)} at most is needed to stay behind the facing. ` +
                    (least <= most ? `Name a screw of ${show(least)} to ${show(most)} in the bench build.` : 'No length holds in this wall and stays behind its facing: carry the bench on legs, or build it on another wall.'),
                citation, measured: lengthFigure(length), required: lengthFigure(most), subject: benches[0] ?? '',
                related: screwBlock ? [{ at: screwBlock.head, message: 'The screw stands here.' }] : [],
            };
        }
    },
});
