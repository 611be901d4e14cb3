import { box, interval, type Box } from '../../language/src/core/geometry.js';
import { mm, zero } from '../../language/src/core/length.js';
import { checkZones, zoneOf, type ZonedEquipment } from '../../language/src/engines/electrical/index.js';
import { findRuleSet, showFigure, strictest, zoneScopeLine, type ClauseKey } from '../../language/src/rule-sets/index.js';
import type { PublishedRow } from './table.js';

const inside = { width: mm(2400), depth: mm(2000), height: mm(2100) };
const heater: Box = box(interval(mm(1000), mm(1400)), interval(zero, mm(300)), interval(mm(150), mm(800)));
/** A 10 mm cube whose near corner is this far to the right of the heater, to the back of it, and above the floor. */
const probe = (right: number, back: number, height: number): Box =>
    box(interval(mm(1400 + right), mm(1410 + right)), interval(mm(300 + back), mm(310 + back)), interval(mm(height), mm(height + 10)));
const at = (right: number, back: number, height: number) => (): string => zoneOf(probe(right, back, height), heater, inside).join(' and ');

const exact = { tolerance: 0, toleranceReason: 'compared in whole ticks' } as const;
const source = 'IEC 60364-7-703:2004 ed. 2.0';
const placed = { source, clause: '703.32', ...exact, fromMemory: true, checks: 'zoneOf' } as const;
const equipment = (kind: ZonedEquipment['kind'], zones: ZonedEquipment['zones'], ratingC: number, waterDigit = 4) => (): string =>
    checkZones([{ name: 'it', kind, zones, ratingC, waterDigit }], { isHosed: false }).problems.map(problem => problem.kind).join(', ') || 'may stand there';
const demanded = { source, clause: '703.512.2', ...exact, checks: 'checkZones' } as const;
const says = (key: ClauseKey) => (): string => {
    const found = strictest([findRuleSet('iec')].flatMap(set => set ?? []), key);
    return found ? showFigure(found.figure, 'm') : 'nothing';
};

export const zoneRows: readonly PublishedRow[] = [
    { ...placed, what: '0.48 m beside the heater, near the floor', published: '1', ours: at(480, -300, 0) },
    { ...placed, what: '0.48 m beside the heater, under the ceiling', published: '1', ours: at(480, -300, 2080) },
    { ...placed, what: '0.5 m beside the heater, below 1.0 m', published: '2', ours: at(500, -300, 900) },
    { ...placed, what: '0.5 m beside the heater, from 1.0 m up', published: '3', ours: at(500, -300, 1000) },
    { ...placed, what: 'across the plane 1.0 m over the floor', published: '2 and 3', ours: at(600, -300, 995) },
    { ...placed, what: '0.3 m and 0.4 m off the corner: 0.5 m away', published: '2', ours: at(300, 400, 0) },
    { ...placed, what: '0.3 m and 0.39 m off the corner: partly within 0.5 m', published: '1 and 2', ours: at(300, 390, 0) },
    { ...placed, what: '0.45 m and 0.45 m off the corner: outside the rounded corner', published: '2', ours: at(450, 450, 0) },
    { source, clause: '703.32', what: 'reach of zone 1', published: '0.5 m', ours: says('zone.one-offset'), ...exact, fromMemory: true, checks: 'strictest' },
    { source, clause: '703.32', what: 'plane between zones 2 and 3', published: '1 m', ours: says('zone.two-top'), ...exact, fromMemory: true, checks: 'strictest' },
    { ...demanded, what: 'heater in zone 1', published: 'may stand there', ours: equipment('heater', [1], 200) },
    { ...demanded, what: 'light in zone 1', published: 'not-of-the-heater', ours: equipment('light', [1], 200) },
    { ...demanded, what: 'light rated 60 °C in zone 2', published: 'may stand there', ours: equipment('light', [2], 60) },
    { ...demanded, what: 'light rated 125 °C in zone 3', published: 'may stand there', ours: equipment('light', [3], 125) },
    { ...demanded, what: 'light rated 124 °C in zone 3', published: 'rating-too-low', ours: equipment('light', [3], 124) },
    { ...demanded, what: 'cable for 170 °C in zone 3', published: 'may stand there', ours: equipment('cable', [3], 170) },
    { ...demanded, what: 'cable for 169 °C in zone 3', published: 'rating-too-low', ours: equipment('cable', [3], 169) },
    { ...demanded, source: 'BS 7671:2008 and later', what: 'light of IPX3', published: 'water-protection-too-low', ours: equipment('light', [2], 125, 3) },
    { ...demanded, source: 'BS 7671:2008 and later', what: 'degree of protection', published: 'IPX4', ours: says('equipment.ingress'), checks: 'strictest' },
    { ...demanded, source: 'BS 7671:2008 and later', what: 'degree of protection under water jets', published: 'IPX5', ours: says('equipment.ingress-hosed'), checks: 'strictest' },
    { ...demanded, clause: '703.55', what: 'socket-outlet in zone 2', published: 'not-in-the-room', ours: equipment('socket_outlet', [2], 200), fromMemory: true },
    { ...demanded, clause: '703.537.5', what: 'switchgear in zone 3', published: 'not-in-the-room', ours: equipment('switchgear', [3], 200), fromMemory: true },
    {
        source, clause: '1', what: 'the scope line leaves prefabricated cabins with a standard of their own out', published: 'yes', ...exact, checks: 'scheduleLines',
        ours: () => zoneScopeLine.includes('prefabricated cabin') && zoneScopeLine.includes('outside this part') ? 'yes' : 'no',
    },
];
