import type { Citation } from '../../core/citation.js';

export interface HingeInput {
    /** Mass of the leaf with its glass. */
    readonly leafMassKg?: number;
    /** Leaf mass one pair of hinges carries, as the catalogue states it. */
    readonly pairCarriesKg?: number;
    /** Number of hinges the door model states. */
    readonly stated?: number;
}

export interface Hinges {
    /** Absent when the mass of the leaf is not known. */
    readonly needed?: number;
    readonly stated?: number;
    readonly citation: Citation;
    /** Absent when one of the two is not known. */
    readonly isEnough?: boolean;
}

/** Leaf mass up to which so many hinges are usual. Common practice, no source. */
export const usualHinges: readonly { readonly upToKg: number; readonly hinges: number }[] = [
    { upToKg: 25, hinges: 2 }, { upToKg: 40, hinges: 3 }, { upToKg: 60, hinges: 4 },
];
const furtherHingePerKg = 20;

/**
 * How many hinges the leaf needs: from the mass a pair carries, each hinge taking half of it and never fewer than two, or from common practice when the
 * catalogue does not say. A leaf of exactly the mass carried passes. Figures that are not above zero count as not stated.
 */
export function hinges({ leafMassKg, pairCarriesKg, stated }: HingeInput): Hinges {
    const byCatalogue = pairCarriesKg !== undefined && pairCarriesKg > 0;
    const citation: Citation = byCatalogue
        ? { kind: 'catalogue', text: 'the mass one pair of hinges carries' }
        : { kind: 'practice', text: 'two hinges up to 25 kg, three up to 40 kg, four up to 60 kg' };
    const isKnown = leafMassKg !== undefined && leafMassKg > 0;
    const needed = !isKnown ? undefined : byCatalogue ? Math.max(2, roundUp(2 * leafMassKg / pairCarriesKg)) : usual(leafMassKg);
    return {
        citation,
        ...(needed !== undefined && { needed }),
        ...(stated !== undefined && { stated }),
        ...(needed !== undefined && stated !== undefined && { isEnough: stated >= needed }),
    };
}

function usual(leafMassKg: number): number {
    const row = usualHinges.find(({ upToKg }) => leafMassKg <= upToKg + 1e-9);
    const last = usualHinges.at(-1);
    if (row) return row.hinges;
    return last ? last.hinges + roundUp((leafMassKg - last.upToKg) / furtherHingePerKg) : 2;
}

/** Masses come from pounds, so a quotient that is a whole number but for the last bits of its binary fraction is that number. */
const roundUp = (value: number): number => Math.ceil(value - 1e-9);
