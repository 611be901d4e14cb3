import { defineRule } from '../rule.js';
import { acrossOpening } from './across-findings.js';

export const benchAcrossWindow = defineRule({
    id: 'bench-across-window',
    family: 'bench',
    title: 'A bench stands across a window',
    severity: 'info',
    why: 'There is no lining to screw a ledger to, so a box leg takes its place, and backs and feet lean against the glass.',
    bad: 'window view on back { model View18; from left 28"; sill 30" }',
    good: 'window view on back { model View18; from left 28"; sill 40" }',
    sources: [{ kind: 'geometry', text: 'a bench beside glass' }],
    isWaivable: true,
    fixes: 'none',
    check: input => acrossOpening(input, 'window', { text: 'a bench beside glass', cure: 'raise the sill of the window over the top of the bench' }),
});
