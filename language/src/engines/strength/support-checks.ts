import { sizeInCompression, temperatureFactor, loadDuration } from './adjustment.js';
import type { WorstChecks } from './beam-checks.js';
import { bendingCapacity, compressionBeforeStability, stabilityModulusOf, type Conditions } from './capacity.js';
import { bucklingStress, columnStability, eccentricColumn, greatestSlenderness } from './column.js';
import { combinedValue, dowelBearing, dowelYield, lateralValue, rootDiameter, shankDiameter, withdrawalValue } from './screw.js';
import type { LedgerScrewValues, StrengthLoad, TimberValues } from './strength-input.js';

/** A leg, or the part of it at a notch, as a column. Inches; the width stands along the eccentricity. */
export interface ColumnPiece {
    readonly mark: string;
    readonly timber: TimberValues;
    readonly thickness: number;
    readonly width: number;
    readonly length: number;
    /** From the middle of the section to where the load stands. */
    readonly eccentricity: number;
}

/** A leg under one load: compression with buckling either way (le = the whole length, both ends held in place), and with its eccentricity. */
export function checkColumn(worst: WorstChecks, column: ColumnPiece, force: number, load: StrengthLoad, conditions: Conditions): void {
    const { mark, timber, thickness, width, length, eccentricity } = column;
    const compression = compressionBeforeStability(timber, load.duration, conditions, sizeInCompression(timber.sizeRule, thickness, width));
    const stability = stabilityModulusOf(timber, conditions);
    const bending = bendingCapacity(timber, load.duration, conditions, { breadth: thickness, depth: width });
    if (!compression) worst.lacks('leg', 'compression_parallel');
    if (stability === undefined) worst.lacks('leg', 'elasticity');
    if (!bending) worst.lacks('leg', 'bending');
    if (!compression || stability === undefined || !bending) return;
    const slenderness = length / Math.min(thickness, width);
    const factor = columnStability({ compressionPsi: compression.psi, stabilityModulusPsi: stability, slenderness });
    const stress = force / (thickness * width);
    const allowed = compression.psi * factor;
    const interaction = eccentricColumn({
        stressPsi: stress, compressionPsi: allowed, bendingPsi: bending.psi, bucklingPsi: bucklingStress(stability, length / width), eccentricity, depth: width,
    });
    const share = Math.max(stress / allowed, interaction, force > 0 ? slenderness / greatestSlenderness : 0);
    worst.consider('leg', 'column', share, 1, () => ({
        load: load.id, mark, unit: '',
        formula: 'the greatest of fc / Fc\', (fc / Fc\')² + fc (6 e / d)(1 + 0.234 fc / FcE) / (Fb\' (1 − fc / FcE)), and slenderness / 50; Fc\' = Fc* · CP',
        figures: [
            { name: 'P', value: force, unit: 'lbf' }, { name: 'b', value: thickness, unit: 'in' }, { name: 'd', value: width, unit: 'in' }, { name: 'le', value: length, unit: 'in' },
            { name: 'e', value: eccentricity, unit: 'in' }, { name: 'fc', value: stress, unit: 'psi' }, { name: 'Fc*', value: compression.psi, unit: 'psi' }, { name: 'CP', value: factor, unit: '' },
            { name: 'Fc\'', value: allowed, unit: 'psi' }, { name: 'FcE', value: bucklingStress(stability, length / width), unit: 'psi' }, { name: 'Fb\'', value: bending.psi, unit: 'psi' },
            { name: 'le/d', value: slenderness, unit: '' },
        ],
    }));
}

/** What a ledger screw holds: shear from the load, and a pull because the load stands off the wall. */
export interface LedgerScrewCase {
    readonly mark: string;
    readonly screw: LedgerScrewValues;
    readonly ledger: TimberValues;
    /** Thickness and height of the ledger, inches. */
    readonly thickness: number;
    readonly height: number;
}

/** Least penetration of a wood screw that has a published value: six diameters. NDS 12.1.5.6, from memory. */
const leastPenetration = 6;

/**
 * One screw of a ledger under a vertical force. The load stands half the ledger's thickness before the lining; the screw at half its height holds the turning
 * about the lower edge.
 */
export function checkLedgerScrew(worst: WorstChecks, { mark, screw, ledger, thickness, height }: LedgerScrewCase, force: number, load: StrengthLoad, { serviceC }: Conditions): void {
    const { shank, root, frameGravity, liningGravity } = screw;
    if (shank === undefined || root === undefined) worst.lacks('ledger screw', 'diameter');
    if (frameGravity === undefined) worst.lacks('ledger screw', 'gravity of the wall frame');
    if (ledger.specificGravity === undefined) worst.lacks('ledger screw', 'gravity of the ledger');
    if (shank === undefined || root === undefined || frameGravity === undefined || ledger.specificGravity === undefined) return;
    const penetration = screw.length - thickness - screw.lining - screw.gap;
    const isLiningHeld = liningGravity !== undefined && screw.gap === 0;
    if (penetration < leastPenetration * shank - 1e-9) { worst.lacks('ledger screw', 'penetration of six diameters'); return; }
    const factor = loadDuration(load.duration, 'bending') * temperatureFactor(serviceC, 'bending');
    const lateral = lateralValue({
        diameter: root, yieldPsi: dowelYield(shank), side: thickness, main: isLiningHeld ? screw.lining + penetration : penetration, gap: isLiningHeld ? 0 : screw.lining + screw.gap,
        sideBearingPsi: dowelBearing(ledger.specificGravity), mainBearingPsi: dowelBearing(isLiningHeld ? Math.min(liningGravity, frameGravity) : frameGravity),
    });
    const thread = Math.min(penetration, screw.length * 2 / 3);
    const withdrawal = withdrawalValue(frameGravity, shank) * thread;
    const pull = force * (thickness / 2) / (height / 2);
    const demand = Math.hypot(force, pull);
    const capacity = combinedValue(withdrawal * factor, lateral.poundsForce * factor, Math.atan2(pull, force));
    worst.consider('ledger screw', 'screw', demand, capacity, () => ({
        load: load.id, mark, unit: 'lbf', formula: `R = √(V² + T²), T = V t / h; Zα' = W'p Z' / (W'p cos²α + Z' sin²α), yield mode ${lateral.mode}`,
        figures: [
            { name: 'V', value: force, unit: 'lbf' }, { name: 'T', value: pull, unit: 'lbf' }, { name: 'Z', value: lateral.poundsForce, unit: 'lbf' }, { name: 'W p', value: withdrawal, unit: 'lbf' },
            { name: 'penetration', value: penetration, unit: 'in' }, { name: 'gap', value: isLiningHeld ? 0 : screw.lining + screw.gap, unit: 'in' }, { name: 'CD · Ct', value: factor, unit: '' },
        ],
    }));
}

/** Shank and root of a screw from its diameter, its root and its gauge, as far as they are stated, inches. */
export function screwDiameters(diameter: number | undefined, root: number | undefined, gauge: number | undefined): { readonly shank?: number; readonly root?: number } {
    const shank = diameter ?? (gauge === undefined ? undefined : shankDiameter(gauge));
    const core = root ?? (gauge === undefined ? undefined : rootDiameter(gauge));
    return { ...(shank !== undefined && { shank }), ...(core !== undefined && { root: core }) };
}
