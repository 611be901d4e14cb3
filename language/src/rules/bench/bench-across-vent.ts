import { defineRule } from '../rule.js';
import { acrossOpening } from './across-findings.js';

export const benchAcrossVent = defineRule({
    id: 'bench-across-vent',
    family: 'bench',
    title: 'A bench stands across a vent',
    severity: 'warning',
    why: 'Slats, bearers or a rail close part of the opening, so the air the vent was sized for does not pass.',
    bad: 'vent low on back { role exhaust; size 8" x 4"; from left 12"; bottom 33" }',
    good: 'vent low on back { role exhaust; size 8" x 4"; from left 12"; bottom 4" }',
    sources: [{ kind: 'geometry', text: 'a vent stays free over its whole opening' }],
    isWaivable: true,
    fixes: 'none',
    check: input => acrossOpening(input, 'vent', { text: 'a vent stays free over its whole opening', cure: 'set the vent below or above the slats, bearers and rails of the bench' }),
});
