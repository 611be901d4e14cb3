import { defineRule } from '../rule.js';
import { heaterFindings } from './heater-findings.js';
import { clearanceFinding, isBenchLike, shortClearances } from './thing-findings.js';

export const clearanceBesideTooSmall = defineRule({
    id: 'clearance-beside-too-small',
    family: 'heater',
    title: 'Too little room beside the heater',
    severity: 'error',
    why: 'Wood and other things beside a heater grow hot; its manual states how far they have to stay off.',
    bad: 'heater stove on right { model Tarn60; from front 2"; guard yes; backing 1 1/2" }',
    good: 'heater stove on right { model Tarn60; from front 8"; guard yes; backing 1 1/2" }',
    sources: [{ kind: 'manual', text: 'the clearance to the sides of the heater' }],
    isWaivable: false,
    fixes: 'review',
    check: input => heaterFindings(input, judged => shortClearances(input, judged)
        .filter(({ thing, direction, collides }) => !collides && direction === 'side' && !isBenchLike(thing))
        .map(found => clearanceFinding(input, judged, found))),
});
