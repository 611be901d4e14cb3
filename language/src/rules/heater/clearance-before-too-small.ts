import { defineRule } from '../rule.js';
import { heaterFindings } from './heater-findings.js';
import { clearanceFinding, isBenchLike, shortClearances } from './thing-findings.js';

export const clearanceBeforeTooSmall = defineRule({
    id: 'clearance-before-too-small',
    family: 'heater',
    title: 'Too little room before the heater',
    severity: 'error',
    why: 'What stands before a heater takes its heat and the hand that reaches for it; its manual states how far it has to stay off.',
    bad: 'fitting screen on left { what shelf; size 20" x 40"; depth 62"; from front 4"; bottom 4" }',
    good: 'fitting screen on left { what shelf; size 20" x 40"; depth 12"; from front 4"; bottom 4" }',
    sources: [{ kind: 'manual', text: 'the clearance before the heater' }],
    isWaivable: false,
    fixes: 'review',
    check: input => heaterFindings(input, judged => shortClearances(input, judged)
        .filter(({ thing, direction, collides }) => !collides && direction === 'front' && !isBenchLike(thing))
        .map(found => clearanceFinding(input, judged, found))),
});
