import type { InsideSize, Wall } from '../../../language/src/core/geometry.js';
import { feet, inches, zero, type Length } from '../../../language/src/core/length.js';
import type { BenchBuild, BenchesInput, BenchInput, BenchStock } from '../../../language/src/engines/benches/bench-input.js';
import { dressedSection } from '../../../language/src/engines/parts/lumber.js';
import type { NominalSize } from '../../../language/src/engines/parts/part.js';

export const stock = (nominal: NominalSize): BenchStock => ({ stock: `cedar_${nominal}`, nominal, section: dressedSection(nominal)! });

/** A fictional build: 3/4" slats on 1 1/2" bearers, the common 2 1/4" build-up. */
export const slatted: BenchBuild = {
    name: 'Slatted', slat: stock('1x4'), slatGap: { from: inches(0, 1, 4), to: inches(0, 3, 4) }, bearer: stock('2x4'), bearerSpacing: inches(18),
    rail: stock('2x4'), ledger: stock('2x4'), leg: stock('2x4'), fascia: stock('1x6'), backRest: stock('1x4'), wallGap: zero,
    ledgerScrew: { name: 'ledger_3', length: inches(3) }, slatScrew: { name: 'slat_2', length: inches(2) },
};

export function bench(name: string, walls: readonly [Wall, ...Wall[]], top: Length, depth: Length, more: Partial<BenchInput> = {}): BenchInput {
    return {
        name, walls, top, depth, overlap: zero, loadPath: 'end_ledgers', hasFascia: false, hasHeadRest: false, isAccessible: false, build: slatted, ...more,
    };
}

export const inside: InsideSize = { width: inches(76, 1, 2), depth: inches(64, 1, 2), height: feet(6, 8) };

export const room = (benches: readonly BenchInput[], more: Partial<BenchesInput> = {}): BenchesInput => ({
    inside, benches, openings: [], keepClear: [], floorObstacles: [], floor: { kind: 'level' }, ...more,
});

/** The room of the sketch: an upper bench on the back wall and an L in front of it. */
export const twoTiers = (more: Partial<BenchesInput> = {}): BenchesInput => room([
    bench('upper', ['back'], inches(37), inches(20)),
    bench('lower', ['back', 'left'], inches(18), inches(20), { inFrontOf: 'upper' }),
], more);
