import type { Citation } from '../../core/citation.js';
import { insideSurface, outsideSurface } from './resistance.js';
import { en673 } from './sources.js';

/** W/(m K) of soda-lime glass, and what it holds. EN 673; ISO 10456. */
export const glassConductivity = 1;
export const glassHeat = { densityKgPerM3: 2500, specificHeat: 750 } as const;
export const glassCitation: Citation = en673('5', 'Glass of 1 W/(m K) between surface resistances of 0.13 and 0.04 m2 K/W; a space of still air between uncoated panes at 10 degC and 15 K.');

/** Panes of one thickness with layers of air of one thickness between them. */
export interface Glazing {
    readonly panes: number;
    readonly paneM: number;
    readonly gapM: number;
}

/** Air at 10 degC as EN 673 has it: W/(m K), kg/m3, Pa s, and its Prandtl number. The panes differ by 15 K, and uncoated glass has an emissivity of 0.837. */
const air = { conductivity: 0.02496, density: 1.232, viscosity: 1.761e-5, prandtl: 0.711, kelvin: 283 } as const;
const emissivity = 0.837;

/** Resistance in m2 K/W of an upright space of air between two uncoated panes. Source: EN 673, 5.3: radiation between the panes, and conduction or convection through the air. */
export function gapResistance(gapM: number): number {
    const radiation = 4 * 5.670374419e-8 * air.kelvin ** 3 / (2 / emissivity - 1);
    const grashof = 9.80665 * gapM ** 3 * 15 * air.density ** 2 / (air.kelvin * air.viscosity ** 2);
    const nusselt = Math.max(1, 0.035 * (grashof * air.prandtl) ** 0.38);
    return 1 / (radiation + nusselt * air.conductivity / gapM);
}

/** Resistance in m2 K/W of uncoated upright glazing without its surfaces. */
export const glazingResistance = ({ panes, paneM, gapM }: Glazing): number => panes * paneM / glassConductivity + (panes > 1 ? (panes - 1) * gapResistance(gapM) : 0);
/** U in W/(m2 K) of the middle of an upright pane, as EN 673 states it for still air inside and wind outside. */
export const glassU = (glazing: Glazing): number => 1 / (insideSurface.horizontal + outsideSurface + glazingResistance(glazing));
