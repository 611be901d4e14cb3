import type { BenchMember } from './strength-input.js';

export type StrengthMember = BenchMember | 'ledger screw';
export type StrengthAction = 'bending' | 'shear' | 'bearing' | 'deflection' | 'column' | 'screw';

/** A figure a check was worked out with. */
export interface CheckFigure { readonly name: string; readonly value: number; readonly unit: 'psi' | 'lbf' | 'in' | 'in·lbf' | 'in²' | 'in³' | 'in⁴' | '' }

/** One check of one member: how much of what it can carry is taken by the load that asks most of it. */
export interface StrengthCheck {
    readonly action: StrengthAction;
    /** Id of the load. */
    readonly load: string;
    readonly demand: number;
    readonly capacity: number;
    readonly unit: 'psi' | 'lbf' | 'in' | '';
    /** Demand over capacity; 1 is just enough. */
    readonly utilisation: number;
    readonly mark: string;
    readonly formula: string;
    readonly figures: readonly CheckFigure[];
}

/** Members of one kind in one bench: the worst check of each action, the worst of all first. */
export interface MemberStrength {
    readonly member: StrengthMember;
    readonly checks: readonly StrengthCheck[];
    /** Design values its checks lack, in words; those checks are left out. */
    readonly lacks: readonly string[];
}

export interface BenchStrength { readonly bench: string; readonly members: readonly MemberStrength[] }
export interface StrengthResult { readonly benches: readonly BenchStrength[] }

/** The check that governs a member; absent when nothing could be checked. */
export const governingCheck = ({ checks }: MemberStrength): StrengthCheck | undefined => checks[0];
