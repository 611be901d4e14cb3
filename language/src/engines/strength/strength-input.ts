import type { InsideSize } from '../../core/geometry.js';
import type { BenchBuild } from '../benches/bench-input.js';
import type { BenchLayout } from '../benches/bench-result.js';
import type { LoadDuration, SizeRule } from './adjustment.js';

/** Reference design values of one species and grade, psi, as its catalogue entry states them; what it does not state is absent and never guessed. */
export interface TimberValues {
    readonly name: string;
    readonly bendingPsi?: number;
    readonly shearPsi?: number;
    readonly compressionPerpendicularPsi?: number;
    readonly compressionParallelPsi?: number;
    readonly elasticityPsi?: number;
    /** From the modulus of elasticity where it is not stated. */
    readonly stabilityModulusPsi?: number;
    readonly specificGravity?: number;
    readonly sizeRule: SizeRule;
}

/** A load the bench must carry. Even loads lie on the whole seat; a moving one stands anywhere; a row is one sitter to each place, any of them empty. */
export interface StrengthLoad {
    readonly id: string;
    readonly title: string;
    readonly shape:
        | { readonly kind: 'even'; readonly poundsPerSquareFoot: number }
        | { readonly kind: 'moving'; readonly poundsForce: number; readonly along: number; readonly across: number }
        | { readonly kind: 'row'; readonly poundsForce: number; readonly along: number; readonly across: number; readonly pitch: number };
    readonly duration: LoadDuration;
}

/** The screw of a ledger and what it is driven into. Inches. */
export interface LedgerScrewValues {
    readonly name: string;
    readonly shank?: number;
    readonly root?: number;
    readonly length: number;
    /** What lies between ledger and frame. A lining that lies on the frame is fastened to it and holds the screw with it; one before an air gap, or of unknown wood, holds nothing. */
    readonly lining: number;
    readonly liningGravity?: number;
    readonly gap: number;
    /** Of the frame it is driven into; absent where the panel system says nothing of it. */
    readonly frameGravity?: number;
}

export type BenchMember = 'slat' | 'bearer' | 'rail' | 'ledger' | 'leg';

export interface BenchStrengthInput {
    readonly layout: BenchLayout;
    readonly build: Pick<BenchBuild, BenchMember | 'ledgerScrewSpacing' | 'ledgerScrewRows'>;
    readonly timbers: Readonly<Partial<Record<BenchMember, TimberValues>>>;
    readonly screw?: LedgerScrewValues;
    readonly loads: readonly StrengthLoad[];
    readonly isWet: boolean;
}

export interface StrengthInput {
    readonly inside: InsideSize;
    readonly benches: readonly BenchStrengthInput[];
    /** Temperature of the wood in use. */
    readonly serviceC: number;
}
