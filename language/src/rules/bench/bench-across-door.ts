import { defineRule } from '../rule.js';
import { acrossOpening } from './across-findings.js';

export const benchAcrossDoor = defineRule({
    id: 'bench-across-door',
    family: 'bench',
    title: 'A bench stands across the door',
    severity: 'error',
    why: 'Nobody gets in or out past it, and leaving quickly is what the door is for.',
    bad: 'bench lower on left { build Slatted; top 18"; depth 27" }',
    good: 'bench lower on left { build Slatted; top 18"; depth 16" }',
    sources: [{ kind: 'geometry', text: 'the clear opening of a door stays free' }],
    isWaivable: false,
    fixes: 'none',
    check: input => acrossOpening(input, 'door', { text: 'the clear opening of a door stays free', cure: 'make the bench shallower or shorter' }),
});
