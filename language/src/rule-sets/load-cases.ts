import type { Citation } from '../core/citation.js';
import { inches, type Length } from '../core/length.js';
import { asce7, icc300, practice } from './documents.js';
import { newtonsPerPoundForce } from './figure.js';
import { strictest } from './strictest.js';
import type { RuleSet } from './rule-set.js';

/** How long a load lasts in sum over the life of a bench. */
export type CaseDuration = 'ten_years' | 'seven_days' | 'ten_minutes';

/** What a load lies on, along the bench and from front to back, and who says so. */
export interface Footprint { readonly along: Length; readonly across: Length; readonly citation: Citation }

/**
 * A load a bench has to carry. `even`: on the whole seat; `moving`: one load on its footprint, anywhere; `row`: one sitter to each place of the pitch, each
 * place full or empty.
 */
export interface LoadCase {
    readonly id: string;
    readonly title: string;
    readonly shape:
        | { readonly kind: 'even'; readonly poundsPerSquareFoot: number }
        | { readonly kind: 'moving'; readonly poundsForce: number; readonly footprint: Footprint }
        | { readonly kind: 'row'; readonly poundsForce: number; readonly footprint: Footprint; readonly pitch: Length };
    readonly duration: CaseDuration;
    /** Which benches: every one, or the accessible ones. */
    readonly on: 'every bench' | 'accessible benches';
    readonly citation: Citation;
}

const seat: Footprint = { along: inches(12), across: inches(14), citation: practice('A sitter rests on 12 in along the bench and 14 in from front to back.') };
const foot: Footprint = { along: inches(4), across: inches(10), citation: practice('A foot set on a bench in climbing rests on 4 in along it and 10 in from front to back.') };
const hand: Footprint = { along: inches(4), across: inches(4), citation: practice('The standard names no area; 4 in by 4 in, about a hand, is taken for a point.') };

/** What common practice asks of every bench; no document speaks of a bench in a room of a dwelling. */
const practised: readonly LoadCase[] = [
    {
        id: 'sitters', title: 'several sitters', on: 'every bench', duration: 'ten_years', citation: practice('220 lb (100 kg) on each 24 in of bench.'),
        shape: { kind: 'row', poundsForce: 220, footprint: seat, pitch: inches(24) },
    },
    {
        id: 'foot', title: 'one person standing on one foot', on: 'every bench', duration: 'seven_days', citation: practice('220 lb (100 kg) on one foot, in climbing.'),
        shape: { kind: 'moving', poundsForce: 220, footprint: foot },
    },
];

const commercial: readonly LoadCase[] = [
    {
        id: 'seat_line', title: 'a full row of seats', on: 'every bench', duration: 'ten_years', citation: icc300('Table 303.2', '120 lb on each foot of seat, vertical.'),
        shape: { kind: 'row', poundsForce: 240, footprint: { ...seat, along: inches(24) }, pitch: inches(24) },
    },
    {
        id: 'even', title: 'even load on fixed seats', on: 'every bench', duration: 'ten_years', citation: asce7.fromMemory('Table 4.3-1', '60 lb/ft² on fixed seats.'),
        shape: { kind: 'even', poundsPerSquareFoot: 60 },
    },
];

/** The loads the named rule sets put on a bench, those of common practice with them; the accessible one is their strictest clause on it. */
export function benchLoads(ruleSets: readonly RuleSet[]): readonly LoadCase[] {
    const accessible = strictest(ruleSets, 'bench.load');
    return [
        ...practised,
        ...ruleSets.some(({ id }) => id === 'us_commercial') ? commercial : [],
        ...accessible ? [{
            id: 'any_point', title: 'the accessible bench load at any point', on: 'accessible benches', duration: 'ten_minutes', citation: accessible.clause.citation,
            shape: { kind: 'moving', poundsForce: accessible.figure.newtons / newtonsPerPoundForce, footprint: hand },
        } as const] : [],
    ];
}
