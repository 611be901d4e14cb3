import { inCubicMetres, volume, type Length } from '../../core/length.js';
import type { ShellLayer } from './shell-input.js';

/** Mass of a panel, or why it is not known: never a guess. */
export type PanelWeight =
    | { readonly isKnown: true; readonly kg: number }
    | { readonly isKnown: false; readonly missing: readonly string[] };

/**
 * Mass of a flat panel from its layers: the lining at overall width, everything else at cover width, all at full height.
 * @param layers density in kg/m3; an air gap weighs nothing
 * @returns kg, unrounded; the names of the layers whose density is missing otherwise
 */
export function panelWeight(layers: readonly ShellLayer[], cover: Length, overall: Length, height: Length): PanelWeight {
    const heavy = layers.filter(layer => layer.role !== 'air_gap' && layer.thickness > 0);
    const missing = heavy.filter(layer => layer.densityKgPerM3 === undefined).map(layer => layer.name);
    if (missing.length > 0) return { isKnown: false, missing };
    const kg = heavy.reduce((total, layer) => {
        const width = layer.role === 'lining' ? overall : cover;
        return total + inCubicMetres(volume(width, height, layer.thickness)) * (layer.densityKgPerM3 ?? 0);
    }, 0);
    return { isKnown: true, kg };
}
