import type { Citation } from '../../core/citation.js';
import type { InsideSize } from '../../core/geometry.js';
import { inCubicMetres, mm, minus, volume, type Area, type Length, type Volume } from '../../core/length.js';
import type { NumberRange } from '../../vocabulary/values.js';

/** An uninsulated surface inside that takes heat like so much more room. */
export interface ColdSurface {
    readonly name: string;
    readonly kind: 'glass' | 'stone_or_tile';
    readonly area: Area;
}

/** 1.2 m3 of volume for each m2: a length of 1.2 m, so that the product with an exact area is exact. Common practice, no source. */
export const usualAllowance: { readonly depth: Length; readonly citation: Citation } = {
    depth: mm(1200),
    citation: { kind: 'practice', text: 'about 1.2 m3 of effective volume for each m2 of uninsulated glass, stone, tile or log' },
};

export interface VolumeContribution {
    readonly name: string;
    readonly kind: 'room' | ColdSurface['kind'];
    readonly volume: Volume;
    /** Of an uninsulated surface. */
    readonly area?: Area;
}

export interface VolumeSizing {
    /** The room first, then every surface in the order given. */
    readonly contributions: readonly VolumeContribution[];
    readonly insideVolume: Volume;
    readonly effectiveVolume: Volume;
    readonly allowance: Citation;
    /** In m3, as the manual states it; absent when it does not. */
    readonly declared?: NumberRange;
    readonly status: 'within' | 'room_too_small' | 'room_too_large' | 'missing';
}

/**
 * The volume method: inside volume and an allowance for uninsulated surfaces, against the range the manual declares. Both ends of the range pass; the declared
 * figures are decimal, so a difference under 1e-9 of the range's end is no difference.
 */
export function sizeByVolume(inside: InsideSize, surfaces: readonly ColdSurface[], declared: NumberRange | undefined, allowance = usualAllowance): VolumeSizing {
    const insideVolume = volume(inside.width, inside.depth, inside.height);
    const contributions: VolumeContribution[] = [
        { name: 'room', kind: 'room', volume: insideVolume },
        ...surfaces.map(({ name, kind, area }) => ({ name, kind, area, volume: (area * BigInt(allowance.depth)) as Volume })),
    ];
    const effectiveVolume = contributions.reduce((total, one) => total + one.volume, 0n) as Volume;
    const cubicMetres = inCubicMetres(effectiveVolume);
    const status = !declared ? 'missing'
        : cubicMetres < declared.from * (1 - 1e-9) ? 'room_too_small'
            : cubicMetres > declared.to * (1 + 1e-9) ? 'room_too_large' : 'within';
    return { contributions, insideVolume, effectiveVolume, allowance: allowance.citation, status, ...(declared && { declared }) };
}

/** How far the feet are above the top of the stones; below zero when they are under it. A wish of practice, not a requirement. */
export const feetOverStones = (feet: Length, stoneTop: Length): Length => minus(feet, stoneTop);
