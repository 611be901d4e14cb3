import { bearingCapacity, bendingCapacity, shearCapacity, stiffnessOf, type Conditions } from './capacity.js';
import type { Effects } from './effects.js';
import { bendingStress, rectangle, shearStress } from './section.js';
import type { StrengthLoad, TimberValues } from './strength-input.js';
import type { StrengthAction, StrengthCheck, StrengthMember } from './strength-result.js';

/** Least share of the span a seat may bend under its load: 1/240. IRC Table R301.7, all other structural members, from memory. */
export const deflectionLimit = 1 / 240;

/** Keeps the worst check of each member and action; what a check needs and the catalogue does not state is kept as lacking. */
export class WorstChecks {
    private readonly worst = new Map<string, StrengthCheck & { readonly member: StrengthMember }>();
    private readonly missing = new Map<StrengthMember, Set<string>>();

    /** @param details made only when the check is the worst so far */
    consider(member: StrengthMember, action: StrengthAction, demand: number, capacity: number, details: () => Omit<StrengthCheck, 'action' | 'demand' | 'capacity' | 'utilisation'>): void {
        const key = `${member} ${action}`;
        // To a thousand-millionth: below that a sum shows in which order it was added up, and a mirrored room would differ.
        const utilisation = Math.round(demand / capacity * 1e9) / 1e9;
        if (utilisation > (this.worst.get(key)?.utilisation ?? -1)) this.worst.set(key, { member, action, demand, capacity, utilisation, ...details() });
    }
    lacks(member: StrengthMember, what: string): void {
        const known = this.missing.get(member) ?? new Set();
        this.missing.set(member, known.add(what));
    }
    of(member: StrengthMember): { readonly checks: readonly StrengthCheck[]; readonly lacks: readonly string[] } {
        const checks = [...this.worst.values()].filter(check => check.member === member).sort((a, b) => b.utilisation - a.utilisation);
        return { checks: checks.map(({ member: _, ...check }) => check), lacks: [...this.missing.get(member) ?? []] };
    }
}

/** A piece as a beam: inches; the wood, and how many of it share the load side by side at which spacing. */
export interface BeamPiece {
    readonly member: StrengthMember;
    readonly mark: string;
    readonly breadth: number;
    readonly depth: number;
    readonly timber: TimberValues;
    readonly repeated?: { readonly count: number; readonly spacing: number };
}

/** Bending, shear and deflection of a beam under one load. `hasDeflection` leaves the last out for what is screwed along its length. */
export function checkBeam(worst: WorstChecks, piece: BeamPiece, effects: Effects, load: StrengthLoad, conditions: Conditions, hasDeflection = true): void {
    const { member, mark, breadth, depth, timber } = piece;
    const section = rectangle(breadth, depth);
    const common = { load: load.id, mark };
    const bending = bendingCapacity(timber, load.duration, conditions, { breadth, depth }, piece.repeated);
    if (!bending) worst.lacks(member, 'bending');
    else worst.consider(member, 'bending', bendingStress(effects.moment, section), bending.psi, () => ({
        ...common, unit: 'psi', formula: `fb = M / S, S = b d² / 6; ${bending.formula}`,
        figures: [{ name: 'M', value: effects.moment, unit: 'in·lbf' }, { name: 'b', value: breadth, unit: 'in' }, { name: 'd', value: depth, unit: 'in' }, { name: 'S', value: section.modulus, unit: 'in³' }, ...bending.figures],
    }));
    const shear = shearCapacity(timber, load.duration, conditions);
    if (!shear) worst.lacks(member, 'shear');
    else worst.consider(member, 'shear', shearStress(effects.shear, section), shear.psi, () => ({
        ...common, unit: 'psi', formula: `fv = 3 V / 2 A, A = b d; ${shear.formula}`,
        figures: [{ name: 'V', value: effects.shear, unit: 'lbf' }, { name: 'A', value: section.area, unit: 'in²' }, ...shear.figures],
    }));
    if (!hasDeflection) return;
    const elasticity = stiffnessOf(timber, conditions);
    if (elasticity === undefined) worst.lacks(member, 'elasticity');
    else worst.consider(member, 'deflection', effects.deflectionShare / (elasticity * section.inertia), deflectionLimit, () => ({
        ...common, unit: '', formula: 'greatest deflection over its span, at most 1/240; I = b d³ / 12; E\' = E · CM · Ct',
        figures: [{ name: 'deflection', value: effects.deflection / (elasticity * section.inertia), unit: 'in' }, { name: 'E\'', value: elasticity, unit: 'psi' }, { name: 'I', value: section.inertia, unit: 'in⁴' }],
    }));
}

/** Compression perpendicular to grain where a piece bears. @param length along the piece, @param width across it, @param fromEnd to the bearing, inches */
export function checkBearing(worst: WorstChecks, piece: Pick<BeamPiece, 'member' | 'mark' | 'timber'>, reaction: number, bearing: { readonly length: number; readonly width: number; readonly fromEnd: number }, load: StrengthLoad, conditions: Conditions): void {
    const capacity = bearingCapacity(piece.timber, conditions, bearing.length, bearing.fromEnd);
    if (!capacity) { worst.lacks(piece.member, 'compression_perpendicular'); return; }
    const area = bearing.length * bearing.width;
    worst.consider(piece.member, 'bearing', reaction / area, capacity.psi, () => ({
        load: load.id, mark: piece.mark, unit: 'psi', formula: `fc⊥ = R / A; ${capacity.formula}`,
        figures: [{ name: 'R', value: reaction, unit: 'lbf' }, { name: 'A', value: area, unit: 'in²' }, ...capacity.figures],
    }));
}
