import { showCitation } from '../../core/citation.js';
import { lengthFigure } from '../../core/finding.js';
import { minus } from '../../core/length.js';
import { showList } from '../../core/show.js';
import { defineRule } from '../rule.js';
import { ledgerScrews } from './screw-findings.js';

const build = (screw: string): string => `bench_build Screwed { slat alder_1x4; slat_gap 1/4" to 3/4"; bearer alder_2x4; bearer_spacing 24"; rail alder_2x4; ledger alder_2x4; leg alder_2x4; ledger_screw ${screw} }
bench upper on back { build Screwed; top 37"; depth 20" }`;

export const ledgerScrewTooShort = defineRule({
    id: 'ledger-screw-too-short',
    family: 'bench',
    title: 'The ledger screw does not reach into the wall',
    severity: 'error',
    why: 'The ledger carries a row of sitters; a screw that ends in the lining lets go of it.',
    bad: `screw short_screw { length 2 3/4"; penetration 1 1/4" }\n${build('short_screw')}`,
    good: `screw long_screw { length 3 1/2"; penetration 1 1/4" }\n${build('long_screw')}`,
    sources: [{ kind: 'catalogue', text: 'the least penetration of the screw' }, { kind: 'practice', text: '1 in of penetration in the member that holds the screw' }],
    isWaivable: true,
    fixes: 'none',
    *check(input) {
        const { show } = input;
        for (const { benches, at, screw, screwBlock, length, ledger, between, before, penetration, citation, least, most } of ledgerScrews(input)) {
            if (length >= least) continue;
            yield {
                at,
                message: `Screw ${screw} in the ledgers of ${benches.length === 1 ? 'bench' : 'benches'} ${showList(benches)} is ${show(length)} long; ${show(least)} is needed: ` +
                    `${show(ledger)} of ledger, ${show(minus(before, ledger))} of ${between}, ${show(penetration)} in the frame (${showCitation(citation)}). ` +
                    (least <= most ? `Name a screw of ${show(least)} to ${show(most)} in the bench build.` : 'No length holds in this wall and stays behind its facing: carry the bench on legs, or build it on another wall.'),
                citation, measured: lengthFigure(length), required: lengthFigure(least), subject: benches[0] ?? '',
                related: screwBlock ? [{ at: screwBlock.head, message: 'The screw stands here.' }] : [],
            };
        }
    },
});
