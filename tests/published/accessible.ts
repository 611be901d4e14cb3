import { findRuleSet, showFigure, strictest, type ClauseKey, type RuleSetId } from '../../language/src/rule-sets/index.js';
import type { PublishedRow } from './table.js';

const items: readonly (readonly [clause: string, key: ClauseKey, published: string, fromMemory?: true])[] = [
    ['903.2', 'floor.clear-space-place', 'at bench end along short axis'],
    ['305.3', 'floor.clear-space', '30" x 48"'],
    ['903.3', 'bench.length', '42"'],
    ['903.3', 'bench.depth-minimum', '20"'],
    ['903.3', 'bench.depth-maximum', '24"'],
    ['903.4', 'bench.back-length', '42"'],
    ['903.4', 'bench.back-from', '2"'],
    ['903.4', 'bench.back-to', '18"'],
    ['903.4', 'bench.back-from-rear-edge', '2 1/2"'],
    ['903.5', 'bench.seat-height-minimum', '17"'],
    ['903.5', 'bench.seat-height-maximum', '19"'],
    ['903.6', 'bench.load', '250 lbf (1112 N)'],
    ['903.7', 'bench.slip-resistant', 'yes'],
    ['612.2', 'door.into-bench-floor-space', 'no'],
    ['612.2 exception', 'bench.removable-may-obstruct', 'yes'],
    ['612.3', 'floor.turning-circle', '60"', true],
    ['404.2.3', 'door.clear-width', '32"', true],
    ['404.2.5', 'door.threshold', '1/2"', true],
    ['241', 'scoping.share', '5 %'],
    ['241', 'scoping.each-type', '1'],
];
const governs = (key: ClauseKey, ...ids: readonly RuleSetId[]): string => {
    const found = strictest(ids.flatMap(id => findRuleSet(id) ?? []), key);
    return found ? showFigure(found.figure, 'in') : 'nothing';
};
const common = { tolerance: 0, toleranceReason: 'a printed figure', checks: 'strictest' } as const;
export const accessibleRows: readonly PublishedRow[] = [
    ...items.map(([clause, key, published, fromMemory]): PublishedRow => ({
        source: 'ADA Standards 2010', clause, what: key, published, ours: () => governs(key, 'us_accessible'), ...common, ...(fromMemory ? { fromMemory } : {}),
    })),
    { source: 'California Building Code 2019', clause: '11B-903.3', what: 'bench.length', published: '48"', ours: () => governs('bench.length', 'us_accessible', 'california_accessible'), ...common },
];
