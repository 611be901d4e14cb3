import { inches, type Length } from '../../core/length.js';
import type { NominalSize, Section } from './part.js';

/**
 * Dressed (dry, 19 % moisture or less) sizes of softwood lumber by nominal size. Nominal sizes are names; these are the dimensions.
 * Source: American Softwood Lumber Standard, DOC PS 20, Table 3 (edition PS 20-20), dry schedule. The rows 2 wide and the green schedule
 * are from memory; 1 and 2 thick, 3 to 12 wide were compared with published lists.
 */
export const lumberStandard = 'DOC PS 20-20, Table 3, dry schedule';

const dressedThickness: Readonly<Record<number, Length>> = { 1: inches(0, 3, 4), 2: inches(1, 1, 2) };
const dressedWidth: Readonly<Record<number, Length>> = {
    2: inches(1, 1, 2), 3: inches(2, 1, 2), 4: inches(3, 1, 2), 6: inches(5, 1, 2), 8: inches(7, 1, 4), 10: inches(9, 1, 4), 12: inches(11, 1, 4),
};

/** Every nominal size of the table, smallest first. */
export const nominalSizes: readonly NominalSize[] = Object.keys(dressedThickness).flatMap(thickness =>
    Object.keys(dressedWidth).map((width): NominalSize => `${Number(thickness)}x${Number(width)}`));

/**
 * Dressed section of a nominal size: `dressedSection('2x4')` is 1 1/2" x 3 1/2".
 * @returns `undefined` for a size that is not in the table
 */
export function dressedSection(nominal: NominalSize): Section | undefined {
    const [thick, wide] = nominal.split('x').map(Number);
    const thickness = thick === undefined ? undefined : dressedThickness[thick];
    const width = wide === undefined ? undefined : dressedWidth[wide];
    return thickness === undefined || width === undefined ? undefined : { thickness, width };
}

/** Nominal name of a dressed section, either way round; `undefined` when the section is not a dressed size of the table. */
export function nominalFor(section: Section): NominalSize | undefined {
    const thin = Math.min(section.thickness, section.width);
    const wide = Math.max(section.thickness, section.width);
    return nominalSizes.find(nominal => {
        const dressed = dressedSection(nominal);
        return dressed !== undefined && dressed.thickness === thin && dressed.width === wide;
    });
}
