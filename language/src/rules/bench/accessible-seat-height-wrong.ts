import { ada } from '../../rule-sets/documents.js';
import { defineRule } from '../rule.js';
import { outsideLimits } from './accessible-limits.js';

export const accessibleSeatHeightWrong = defineRule({
    id: 'accessible-seat-height-wrong',
    family: 'bench',
    title: 'The seat of the accessible bench is too low or too high',
    severity: 'error',
    why: 'Seat and wheelchair have to be nearly level for someone to move from one to the other.',
    bad: 'rules us_accessible\nbench lower on left { build Slatted; top 20"; depth 20"; is_accessible yes }',
    good: 'rules us_accessible\nbench lower on left { build Slatted; top 18"; depth 20"; is_accessible yes }',
    sources: [ada('903.5', 'The seat is at least 17 in and at most 19 in above the floor.')],
    isWaivable: true,
    fixes: 'review',
    check: input => outsideLimits(input, { fact: 'top', least: 'bench.seat-height-minimum', most: 'bench.seat-height-maximum', says: (name, figure) => `The seat of accessible bench ${name} is ${figure} over the floor` }),
});
