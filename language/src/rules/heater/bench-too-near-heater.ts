import { defineRule } from '../rule.js';
import { heaterFindings } from './heater-findings.js';
import { clearanceFinding, isBenchLike, shortClearances } from './thing-findings.js';

export const benchTooNearHeater = defineRule({
    id: 'bench-too-near-heater',
    family: 'heater',
    title: 'A bench stands too near the heater',
    severity: 'error',
    why: 'A bather on the bench must not touch the heater, and the bench must not char; the manual states how far benches stay off.',
    bad: 'heater stove on right { model Tarn60; from front 18"; guard yes; backing 1 1/2" }',
    good: 'heater stove on right { model Tarn60; from front 16"; guard yes; backing 1 1/2" }',
    sources: [{ kind: 'manual', text: 'the clearance of the heater to benches' }],
    isWaivable: false,
    fixes: 'review',
    check: input => heaterFindings(input, judged => shortClearances(input, judged)
        .filter(({ thing, direction, collides }) => !collides && isBenchLike(thing) && direction !== 'above' && direction !== 'below')
        .map(found => clearanceFinding(input, judged, found))),
});
