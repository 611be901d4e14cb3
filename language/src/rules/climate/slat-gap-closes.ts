import { slatMovements } from '../../assembly/climate-service.js';
import { amount, type Finding } from '../../core/finding.js';
import { showNumber } from '../../core/show.js';
import { showCitation } from '../../core/citation.js';
import { woodShrinkage } from '../../engines/climate/wood.js';
import { defineRule } from '../rule.js';
import { wholeClimate } from './climate-findings.js';

export const slatGapCloses = defineRule({
    id: 'slat-gap-closes',
    family: 'climate',
    title: 'The gaps between slats close when the bench is washed down',
    severity: 'warning',
    why: 'Slats that swell against each other push their screws and hold water between them.',
    bad: 'bench_build Tight { slat alder_1x4; slat_gap 1/32" to 1/4"; bearer alder_2x4; bearer_spacing 24"; rail alder_2x4; ledger alder_2x4; leg alder_2x4 }\nbench upper on back { build Tight; top 37"; depth 17 3/4" }',
    good: 'bench_build Tight { slat alder_1x4; slat_gap 1/32" to 1/4"; bearer alder_2x4; bearer_spacing 24"; rail alder_2x4; ledger alder_2x4; leg alder_2x4 }\nbench upper on back { build Tight; top 37"; depth 18 1/2" }',
    sources: [woodShrinkage],
    isWaivable: true,
    fixes: 'none',
    *check(input): Generator<Finding> {
        const climate = wholeClimate(input);
        if (!climate) return;
        for (const { bench, gapM, wetM } of slatMovements(climate, input.results.benches)) {
            const block = input.results.benches?.blocks.get(bench);
            if (wetM > 0 || !block) continue;
            yield {
                at: block.values.depth?.span ?? block.head,
                message: `Bench ${bench} has gaps of ${showNumber(gapM * 1000, 2)} mm; washed down its slats swell by ${showNumber((gapM - wetM) * 1000, 2)} mm, from ${showNumber(climate.moisture.shop, 1)} to ${showNumber(climate.moisture.wet, 1)} % (${showCitation(woodShrinkage)}). Choose a depth with wider gaps, or narrower slats.`,
                citation: woodShrinkage, measured: amount(gapM * 1000, 'mm'), required: amount((gapM - wetM) * 1000, 'mm'), subject: `${bench}.slat_gap_wet`,
            };
        }
    },
});
