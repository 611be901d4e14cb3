import { inches, inInches, inMm, type Length } from '../../language/src/core/length.js';
import { dressedSection, nominalFor } from '../../language/src/engines/parts/lumber.js';
import type { NominalSize } from '../../language/src/engines/parts/part.js';
import type { PublishedRow } from './table.js';

const source = 'American Softwood Lumber Standard, DOC PS 20-20';
const clause = 'Table 3, minimum dressed dry sizes';

const side = (nominal: NominalSize, of: 'thickness' | 'width'): Length => {
    const section = dressedSection(nominal);
    if (!section) throw new Error(`No dressed size for ${nominal}`);
    return section[of];
};

/** Nominal thickness and width, then the dressed thickness and width in inches. The width of 2 is from memory, the others were compared with published lists. */
const sizes: readonly (readonly [NominalSize, thickness: number, width: number])[] = [
    ['1x2', 0.75, 1.5], ['1x3', 0.75, 2.5], ['1x4', 0.75, 3.5], ['1x6', 0.75, 5.5], ['1x8', 0.75, 7.25], ['1x10', 0.75, 9.25], ['1x12', 0.75, 11.25],
    ['2x2', 1.5, 1.5], ['2x3', 1.5, 2.5], ['2x4', 1.5, 3.5], ['2x6', 1.5, 5.5], ['2x8', 1.5, 7.25], ['2x10', 1.5, 9.25], ['2x12', 1.5, 11.25],
];
/** Widths in mm, converted from the same table. */
const millimetres: readonly (readonly [NominalSize, number])[] = [['2x3', 63.5], ['2x4', 88.9], ['2x6', 139.7], ['2x8', 184.15], ['2x10', 234.95], ['2x12', 285.75]];

export const lumberRows: readonly PublishedRow[] = [
    ...sizes.flatMap(([nominal, thickness, width]): readonly PublishedRow[] => [
        {
            source, clause, what: `thickness of a ${nominal}, in`, published: thickness, ours: () => inInches(side(nominal, 'thickness')),
            tolerance: 0, toleranceReason: 'dressed sizes are exact fractions of an inch', checks: 'dressedSection',
        },
        {
            source, clause, what: `width of a ${nominal}, in`, published: width, ours: () => inInches(side(nominal, 'width')),
            tolerance: 0, toleranceReason: 'dressed sizes are exact fractions of an inch', checks: 'dressedSection', ...(nominal.endsWith('x2') && { fromMemory: true as const }),
        },
        {
            source, clause, what: `nominal name of a dressed ${nominal}`, published: nominal, ours: () => nominalFor({ thickness: inches(0, thickness * 4, 4), width: inches(0, width * 4, 4) }) ?? 'none',
            tolerance: 0, toleranceReason: 'a name', checks: 'nominalFor', ...(nominal.endsWith('x2') && { fromMemory: true as const }),
        },
    ]),
    ...millimetres.map(([nominal, width]): PublishedRow => ({
        source, clause: `${clause}, metric`, what: `width of a ${nominal}, mm`, published: width, ours: () => inMm(side(nominal, 'width')),
        tolerance: 0, toleranceReason: 'an inch is 25.4 mm exactly', checks: 'dressedSection',
    })),
];
