import { bearingArea, loadDuration, repetitiveMember, sizeInBending, stabilityModulus, temperatureFactor, wetService, type LoadDuration, type PieceInBending, type Property } from './adjustment.js';
import type { TimberValues } from './strength-input.js';
import type { CheckFigure } from './strength-result.js';

/** What the design values are adjusted for. */
export interface Conditions { readonly serviceC: number; readonly isWet: boolean }

/** A design value with the factors it was multiplied by, and how that reads. */
export interface Adjusted { readonly psi: number; readonly figures: readonly CheckFigure[]; readonly formula: string }

/** Multiplies a reference value by its factors; those of 1 are left out of what is shown. */
function adjusted(symbol: string, reference: number, factors: Readonly<Record<string, number>>): Adjusted {
    const shown = Object.entries(factors).filter(([, factor]) => factor !== 1);
    return {
        psi: Object.values(factors).reduce((product, factor) => product * factor, reference),
        figures: [{ name: symbol, value: reference, unit: 'psi' }, ...shown.map(([name, value]): CheckFigure => ({ name, value, unit: '' }))],
        formula: `${symbol}' = ${[symbol, ...shown.map(([name]) => name)].join(' · ')}`,
    };
}

const shared = (property: Property, duration: LoadDuration, { serviceC, isWet }: Conditions): Readonly<Record<string, number>> =>
    ({ CD: loadDuration(duration, property), CM: wetService(isWet, property), Ct: temperatureFactor(serviceC, property) });

/** Fb', psi; the piece has its ends held against turning over (NDS 4.4.1), so CL is 1. */
export const bendingCapacity = (timber: TimberValues, duration: LoadDuration, conditions: Conditions, piece: PieceInBending, repeated: { readonly count: number; readonly spacing: number } = { count: 1, spacing: 0 }): Adjusted | undefined =>
    timber.bendingPsi === undefined ? undefined
        : adjusted('Fb', timber.bendingPsi, { ...shared('bending', duration, conditions), CF: sizeInBending(timber.sizeRule, piece), Cr: repetitiveMember(repeated.count, repeated.spacing) });
/** Fv', psi. */
export const shearCapacity = (timber: TimberValues, duration: LoadDuration, conditions: Conditions): Adjusted | undefined =>
    timber.shearPsi === undefined ? undefined : adjusted('Fv', timber.shearPsi, shared('shear', duration, conditions));
/** Fc⊥', psi. @param length of the bearing along the piece, @param fromEnd of the piece to the bearing, inches */
export const bearingCapacity = (timber: TimberValues, conditions: Conditions, length: number, fromEnd: number): Adjusted | undefined =>
    timber.compressionPerpendicularPsi === undefined ? undefined
        : adjusted('Fc⊥', timber.compressionPerpendicularPsi, { ...shared('compression_perpendicular', 'ten_years', conditions), Cb: bearingArea(length, fromEnd) });
/** E', psi. */
export const stiffnessOf = (timber: TimberValues, conditions: Conditions): number | undefined =>
    timber.elasticityPsi === undefined ? undefined : adjusted('E', timber.elasticityPsi, shared('elasticity', 'ten_years', conditions)).psi;
/** Emin', psi. */
export function stabilityModulusOf(timber: TimberValues, conditions: Conditions): number | undefined {
    const reference = timber.stabilityModulusPsi ?? (timber.elasticityPsi === undefined ? undefined : stabilityModulus(timber.elasticityPsi));
    return reference === undefined ? undefined : adjusted('Emin', reference, shared('elasticity', 'ten_years', conditions)).psi;
}
/** Fc*, psi: compression parallel to grain with every factor but that of stability. */
export const compressionBeforeStability = (timber: TimberValues, duration: LoadDuration, conditions: Conditions, sizeFactor: number): Adjusted | undefined =>
    timber.compressionParallelPsi === undefined ? undefined : adjusted('Fc', timber.compressionParallelPsi, { ...shared('compression_parallel', duration, conditions), CF: sizeFactor });
