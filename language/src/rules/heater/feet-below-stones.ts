import { lengthFigure } from '../../core/finding.js';
import { minus } from '../../core/length.js';
import { feetOverStones } from '../../engines/heater/sizing.js';
import { benchesAstray } from '../astray.js';
import { defineRule } from '../rule.js';
import { heaterFindings } from './heater-findings.js';

export const feetBelowStones = defineRule({
    id: 'feet-below-stones',
    family: 'heater',
    title: 'Feet on the highest bench are lower than the stones',
    severity: 'info',
    why: 'Under the top of the stones the air stays cool; who sits with warm head and cold feet sits badly.',
    bad: 'bench lower on back { build Slatted; top 18"; depth 16"; in_front_of upper }',
    good: `heater_model Low { manual "Low sheet (fictional)"; power 6 kW; supply 240 V single_phase; body 16" x 12"; depth 11"; off_wall 2"; off_floor 4" }
heater stove on right { model Low; from front 8"; guard yes; backing 1 1/2" }`,
    sources: [{ kind: 'practice', text: 'feet at or above the top of the stones' }],
    isWaivable: true,
    fixes: 'none',
    check: input => heaterFindings(input, ({ heater, name }) => {
        const benches = input.results.benches;
        if (benchesAstray(input).size > 0) return undefined;
        // A bench that is still being written may be the step.
        if (!input.job.benches.every(({ isWhole }) => isWhole)) return undefined;
        const [highest] = [...benches?.result.benches ?? []].sort((a, b) => b.top - a.top);
        const block = highest && benches?.blocks.get(highest.name);
        // Where its manual does not say how high it hangs, nobody knows where the stones end.
        if (!heater || heater.missing.includes('offFloor') || !highest || !block) return undefined;
        // Without a tier to step on there is nothing to raise the feet with, and an accessible bench is meant to be low.
        if (highest.comfort.climbFrom === undefined || highest.isAccessible) return undefined;
        const feet = minus(highest.top, highest.comfort.rise);
        if (feetOverStones(feet, heater.stoneTop) >= 0) return undefined;
        const step = benches?.blocks.get(highest.comfort.climbFrom);
        const at = (step ?? block).values.top?.span ?? block.head;
        return {
            at,
            message: `Feet on bench ${highest.name} are ${input.show(feet)} over the floor and the stones of heater ${name} end at ${input.show(heater.stoneTop)}; feet no lower than the stones sit warmer (common practice, no source).`,
            citation: { kind: 'practice', text: 'feet at or above the top of the stones' }, measured: lengthFigure(feet), required: lengthFigure(heater.stoneTop), subject: `${name}.stone_top`,
        };
    }),
});
