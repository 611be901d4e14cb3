/** Properties of a rectangular section in bending about the axis across its depth, in inches and their powers. */
export interface SectionProperties { readonly area: number; readonly modulus: number; readonly inertia: number }

/** A = bd, S = bd²/6, I = bd³/12. @param breadth across the load, @param depth along it, in inches */
export const rectangle = (breadth: number, depth: number): SectionProperties =>
    ({ area: breadth * depth, modulus: breadth * depth ** 2 / 6, inertia: breadth * depth ** 3 / 12 });

/** fb = M/S, psi. */
export const bendingStress = (moment: number, { modulus }: SectionProperties): number => moment / modulus;
/** fv = 3V/2A for a rectangle, psi. NDS 3.4.2. */
export const shearStress = (shear: number, { area }: SectionProperties): number => 1.5 * shear / area;
