import { inches } from '../core/length.js';
import { ada, cbc, documents } from './documents.js';
import { count, length, no, poundsForce, ratio, size, word, yes } from './figure.js';
import { clause, type RuleSet } from './rule-set.js';

const notChecked = [
    'accessible route to the room',
    'operating force of controls, and reach over something that stands before them',
    'hardware and maneuvering clearance of the door',
    'which rooms of a building have to be accessible beyond the share stated',
] as const;

export const usAccessible: RuleSet<'us_accessible'> = {
    id: 'us_accessible',
    title: 'United States, accessible room',
    family: 'us',
    scope: 'A room that has to be accessible under the 2010 ADA Standards.',
    documents: [documents.ada],
    clauses: [
        clause('bench.length', length(inches(42)), ada('903.3', 'Bench seats are at least 42 in long.')),
        clause('bench.depth-minimum', length(inches(20)), ada('903.3', 'Bench seats are at least 20 in deep.')),
        clause('bench.depth-maximum', length(inches(24)), ada('903.3', 'Bench seats are at most 24 in deep.')),
        clause('bench.seat-height-minimum', length(inches(17)), ada('903.5', 'The seat is at least 17 in above the floor.')),
        clause('bench.seat-height-maximum', length(inches(19)), ada('903.5', 'The seat is at most 19 in above the floor.')),
        clause('bench.back-length', length(inches(42)), ada('903.4', 'Back support at least 42 in long.'), { when: 'bench_off_wall' }),
        clause('bench.back-from', length(inches(2)), ada('903.4', 'Back support begins 2 in above the seat or lower.'), { when: 'bench_off_wall' }),
        clause('bench.back-to', length(inches(18)), ada('903.4', 'Back support reaches 18 in above the seat or higher.'), { when: 'bench_off_wall' }),
        clause('bench.back-from-rear-edge', length(inches(2, 1, 2)), ada('903.4', 'Back support is within 2 1/2 in of the rear edge of the seat.')),
        clause('bench.load', poundsForce(250), ada('903.6', '250 lbf (1112 N), vertical or horizontal, at any point of seat, fastener, mounting or structure.')),
        clause('bench.slip-resistant', yes, ada('903.7', 'Slip-resistant seats on which no water stands.'), { when: 'wet_place' }),
        clause('bench.removable-may-obstruct', yes, ada('612.2, exception', 'A readily removable bench may stand in the turning space and the clear floor space.')),
        clause('floor.clear-space', size(inches(30), inches(48)), ada('305.3', 'Clear floor space of 30 in by 48 in.')),
        clause('floor.clear-space-place', word('at_bench_end_along_short_axis'), ada('903.2', 'The clear floor space is at the end of the bench, parallel to its short axis.')),
        clause('floor.turning-circle', length(inches(60)), ada.fromMemory('304.3 by 612.3', 'Turning space of 60 in within the room.')),
        clause('floor.turning-square', length(inches(60)), ada.fromMemory('304.3.2', 'A T-shaped turning space lies within a square of 60 in.')),
        clause('floor.turning-arm', length(inches(36)), ada.fromMemory('304.3.2', 'Arms and base of the T are 36 in wide, the arms 12 in clear on each side and the base 24 in.')),
        clause('control.reach-low', length(inches(15)), ada.fromMemory('308.2.1 by 309.3', 'Operable parts are at least 15 in above the floor.')),
        clause('control.reach-high', length(inches(48)), ada.fromMemory('308.2.1 by 309.3', 'Operable parts are at most 48 in above the floor, reached from before them without an obstruction.')),
        clause('door.into-bench-floor-space', no, ada('612.2', 'The door does not swing into the clear floor space of the bench.')),
        clause('door.clear-width', length(inches(32)), ada.fromMemory('404.2.3', 'A clear doorway of 32 in with the leaf open at 90°.')),
        clause('door.threshold', length(inches(0, 1, 2)), ada.fromMemory('404.2.5', 'A threshold of 1/2 in at most.')),
        clause('scoping.share', ratio(0.05), ada('241', 'Where rooms are clustered, 5 % of them.')),
        clause('scoping.each-type', count(1), ada('241', 'At least one room of each type in the cluster.')),
    ],
    notChecked,
};

export const californiaAccessible: RuleSet<'california_accessible'> = {
    id: 'california_accessible',
    title: 'California, accessible room',
    family: 'us',
    scope: 'What California asks of an accessible bench beyond the ADA Standards; name it beside us_accessible.',
    documents: [documents.cbc],
    clauses: [
        clause('bench.length', length(inches(48)), cbc('11B-903.3', 'Bench seats are at least 48 in long.')),
    ],
    notChecked: [...notChecked, 'every other section of chapter 11B'],
};
