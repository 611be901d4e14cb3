import { ada } from '../../rule-sets/documents.js';
import { defineRule } from '../rule.js';
import { outsideLimits } from './accessible-limits.js';

export const accessibleBenchDepthWrong = defineRule({
    id: 'accessible-bench-depth-wrong',
    family: 'bench',
    title: 'The accessible bench is too shallow or too deep',
    severity: 'error',
    why: 'Too shallow it gives no seat to move over to, too deep no back to lean on.',
    bad: 'rules us_accessible\nbench lower on left { build Slatted; top 18"; depth 16"; is_accessible yes }',
    good: 'rules us_accessible\nbench lower on left { build Slatted; top 18"; depth 20"; is_accessible yes }',
    sources: [ada('903.3', 'Bench seats are at least 20 in and at most 24 in deep.')],
    isWaivable: true,
    fixes: 'review',
    check: input => outsideLimits(input, { fact: 'depth', least: 'bench.depth-minimum', most: 'bench.depth-maximum', says: (name, figure) => `Accessible bench ${name} is ${figure} deep` }),
});
