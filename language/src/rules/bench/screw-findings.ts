import type { Citation } from '../../core/citation.js';
import { inches, plus, sum, type Length } from '../../core/length.js';
import type { Span } from '../../core/span.js';
import type { BenchFastening } from '../../engines/benches/bench-result.js';
import type { Block } from '../../model/block.js';
import type { RuleInput } from '../rule.js';
import { buildOf, placedBenches } from './bench-findings.js';

/** Penetration of a screw whose catalogue entry states none: 1". Common practice, no source. */
const usualPenetration: Length = inches(1);
const practice: Citation = { kind: 'practice', text: '1 in of penetration in the member that holds the screw' };
const catalogue: Citation = { kind: 'catalogue', text: 'the least penetration of the screw' };

export interface LedgerScrew {
    /** Benches whose ledgers it fastens, in the order written. */
    readonly benches: readonly string[];
    readonly at: Span;
    readonly screw: string;
    readonly screwBlock: Block<'screw'> | undefined;
    readonly length: Length;
    readonly ledger: Length;
    /** What lies between ledger and frame, in words. */
    readonly between: string;
    /** Ledger, lining and air gap. */
    readonly before: Length;
    readonly penetration: Length;
    readonly citation: Citation;
    /** Shortest that holds. */
    readonly least: Length;
    /** Longest that stays behind the facing. */
    readonly most: Length;
}

/** The screws of the ledgers, each once for a bench build and a make-up of wall, however many benches use it. */
export function ledgerScrews(input: RuleInput): readonly LedgerScrew[] {
    const found = new Map<string, LedgerScrew & { benches: string[] }>();
    for (const { layout, block, name } of placedBenches(input)) {
        const stated = buildOf(block)?.values.ledger_screw;
        const at = block.values.build?.span;
        for (const fastening of layout.fastenings) {
            if (!stated || !at) continue;
            const screw = ledgerScrew(fastening, layout.ledgers.find(ledger => fastening.marks.includes(ledger.mark))?.wall, stated.value.block, input);
            if (!screw) continue;
            const key = [screw.screw, screw.length, screw.least, screw.most].join('\n');
            const known = found.get(key);
            if (!known) found.set(key, { ...screw, benches: [name], at });
            else if (!known.benches.includes(name)) known.benches.push(name);
        }
    }
    return [...found.values()];
}

function ledgerScrew({ joint, screw, screwLength, sideMember }: BenchFastening, wall: 'front' | 'left' | 'back' | 'right' | undefined, screwBlock: Block<'screw'> | undefined, { results: { room } }: RuleInput): Omit<LedgerScrew, 'benches' | 'at'> | undefined {
    if (joint !== 'ledger to wall' || !wall || !room || screw === undefined || screwLength === undefined) return undefined;
    const layers = room.base.wallLayers[wall];
    const thicknessOf = (...roles: readonly string[]): Length => sum(...layers.filter(layer => roles.includes(layer.role)).map(layer => layer.thickness));
    const before = plus(sideMember, thicknessOf('lining', 'air_gap'));
    const stated = screwBlock?.values.penetration?.value;
    const penetration = stated ?? usualPenetration;
    return {
        screw, screwBlock, length: screwLength, ledger: sideMember, before, penetration, between: layers.some(layer => layer.role === 'air_gap') ? 'lining and air gap' : 'lining', citation: stated === undefined ? practice : catalogue,
        least: plus(before, penetration), most: plus(sideMember, sum(...layers.filter(layer => layer.role !== 'facing').map(layer => layer.thickness))),
    };
}
