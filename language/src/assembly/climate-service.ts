import { inCubicMetres, TICKS_PER_METRE, type Volume } from '../core/length.js';
import { toNumber } from '../core/rational.js';
import { slatGapAt, type FixedBoard } from '../engines/climate/movement.js';
import type { RoomState } from '../engines/climate/room-run.js';
import type { AssembledBenches } from './benches.js';
import type { AssembledClimate } from './climate.js';
import { fixedBoard } from './climate-moisture.js';

/** Common practice: 1 to 1.3 m3 of effective volume for each kW. W, least and most. */
export function powerByVolume(effective: Volume): { readonly least: number; readonly most: number } {
    const cubicMetres = inCubicMetres(effective);
    return { least: cubicMetres / 1.3 * 1000, most: cubicMetres * 1000 };
}

/** Coldest place behind the lining, where the barrier is, of walls and ceiling, degC; nothing while no wall is known. */
export function barrierC({ losses }: Pick<AssembledClimate, 'losses'>, { slabs }: RoomState): { readonly name: string; readonly celsius: number } | undefined {
    const found = losses.flatMap(({ element }) => {
        if (element.kind !== 'wall' && element.kind !== 'ceiling') return [];
        const depth = element.layers.filter(({ role }) => role === 'lining' || role === 'air_gap').reduce((sum, { thicknessM }) => sum + thicknessM, 0);
        return slabs.filter(({ name }) => name === element.name || name === `${element.name}, frame`).flatMap(({ edges }) => edges.filter(edge => Math.abs(edge.depth - depth) < 1e-9).map(({ celsius }) => ({ name: element.name, celsius })));
    });
    return found.reduce<typeof found[number] | undefined>((coldest, one) => coldest && coldest.celsius <= one.celsius ? coldest : one, undefined);
}

/** Coldest lining and warmest facing among walls and ceiling, degC. */
export function surfacesOf({ losses }: Pick<AssembledClimate, 'losses'>, { slabs }: RoomState): { readonly coldestLiningC: number; readonly warmestFacingC: number; readonly warmest: string } | undefined {
    const shell = slabs.filter(({ name }) => losses.some(({ element }) => (element.kind === 'wall' || element.kind === 'ceiling') && (name === element.name || name === `${element.name}, frame`)));
    const [first] = shell;
    if (!first) return undefined;
    const warmest = shell.reduce((best, one) => one.outsideSurfaceC > best.outsideSurfaceC ? one : best, first);
    return { coldestLiningC: Math.min(...shell.map(({ insideSurfaceC }) => insideSurfaceC)), warmestFacingC: warmest.outsideSurfaceC, warmest: warmest.name };
}

export interface SlatMovement {
    readonly bench: string;
    readonly slat: FixedBoard;
    readonly gapM: number;
    /** In hot service and washed down, m; below zero the slats press on each other. */
    readonly dryM: number;
    readonly wetM: number;
}

/** Gaps of every bench whose slats are of a known species. */
export function slatMovements({ moisture }: Pick<AssembledClimate, 'moisture'>, benches: AssembledBenches | undefined): readonly SlatMovement[] {
    return (benches?.result.benches ?? []).flatMap(({ name, slats }): SlatMovement[] => {
        const slat = fixedBoard(benches?.blocks.get(name)?.values.build?.value.block?.values.slat?.value);
        if (!slats || !slat || slats.count < 2) return [];
        const gapM = toNumber(slats.gap) / TICKS_PER_METRE;
        return [{ bench: name, slat, gapM, dryM: slatGapAt(gapM, slat, moisture.shop, moisture.service), wetM: slatGapAt(gapM, slat, moisture.shop, moisture.wet) }];
    });
}
