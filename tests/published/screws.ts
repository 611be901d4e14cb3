import { combinedValue, dowelBearing, dowelReduction, dowelYield, lateralValue, rootDiameter, shankDiameter, withdrawalValue } from '../../language/src/engines/strength/screw.js';
import type { PublishedRow } from './table.js';

const half = { tolerance: 0.5, toleranceReason: 'the table prints whole pounds' } as const;

/** Common nails through a side member of the same wood: the same yield equations as for a wood screw, with the diameter of the nail. */
const nail = (diameter: number, length: number, gravity: number, side: number): number => lateralValue({
    diameter, yieldPsi: dowelYield(diameter), side, main: length - side, gap: 0, sideBearingPsi: dowelBearing(gravity), mainBearingPsi: dowelBearing(gravity),
}).poundsForce;
const nails: readonly (readonly [name: string, diameter: number, length: number, side: number, values: readonly (readonly [gravity: number, pounds: number])[]])[] = [
    ['8d', 0.131, 2.5, 1.5, [[0.55, 106], [0.5, 97], [0.43, 84], [0.42, 82]]],
    ['10d', 0.148, 3, 1.5, [[0.55, 128], [0.5, 118], [0.43, 102], [0.42, 100]]],
    ['16d', 0.162, 3.5, 1.5, [[0.55, 154], [0.5, 141], [0.43, 122], [0.42, 120]]],
    ['20d', 0.192, 4, 1.5, [[0.55, 185], [0.5, 170], [0.43, 147], [0.42, 144]]],
    ['8d', 0.131, 2.5, 0.75, [[0.5, 90]]], ['10d', 0.148, 3, 0.75, [[0.5, 105]]], ['16d', 0.162, 3.5, 0.75, [[0.5, 121]]], ['20d', 0.192, 4, 0.75, [[0.5, 138]]],
];

export const lateralRows: readonly PublishedRow[] = nails.flatMap(([name, diameter, length, side, values]) => values.map(([gravity, published]): PublishedRow => ({
    source: 'NDS 2018', clause: 'Table 12N, common nails, single shear', what: `${name}, side member ${side} in, G ${gravity}, lbf`, published, ours: () => nail(diameter, length, gravity, side),
    ...half, fromMemory: true, checks: 'lateralValue',
})));

export const withdrawalRows: readonly PublishedRow[] = [
    {
        source: 'NDS 2018', clause: 'Eq. 12.2-2, worked', what: 'No. 10 wood screw, G 0.45, lbf for each inch', published: 109, ours: () => withdrawalValue(0.45, 0.19),
        tolerance: 1, toleranceReason: 'the worked figure is cut off at the whole pound, exactly 109.65', checks: 'withdrawalValue',
    },
    ...([[6, 98], [8, 117], [10, 135], [12, 154], [14, 172]] as const).map(([gauge, published]): PublishedRow => ({
        source: 'NDS 2018', clause: 'Table 12.2B', what: `No. ${gauge} wood screw, G 0.50, lbf for each inch`, published, ours: () => withdrawalValue(0.5, shankDiameter(gauge)), ...half, fromMemory: true, checks: 'withdrawalValue',
    })),
];

export const dowelRows: readonly PublishedRow[] = [
    ...([[0.55, 5550], [0.5, 4650], [0.49, 4450], [0.46, 4000], [0.43, 3500], [0.42, 3350], [0.36, 2550]] as const).map(([gravity, published]): PublishedRow => ({
        source: 'NDS 2018', clause: 'Table 12.3.3', what: `dowel bearing strength, D below 1/4 in, G ${gravity}, psi`, published, ours: () => dowelBearing(gravity), tolerance: 0, toleranceReason: 'a printed figure', fromMemory: true, checks: 'dowelBearing',
    })),
    ...([[8, 0.164, 0.131], [10, 0.19, 0.152], [12, 0.216, 0.171]] as const).flatMap(([gauge, shank, root]): PublishedRow[] => [
        { source: 'NDS 2018', clause: 'Appendix L, Table L3', what: `shank of a No. ${gauge} wood screw, in`, published: shank, ours: () => shankDiameter(gauge), tolerance: 1e-12, toleranceReason: 'exact in decimals', fromMemory: true, checks: 'shankDiameter' },
        { source: 'NDS 2018', clause: 'Appendix L, Table L3', what: `root of a No. ${gauge} wood screw, in`, published: root, ours: () => rootDiameter(gauge) ?? NaN, tolerance: 0, toleranceReason: 'a printed figure', fromMemory: true, checks: 'rootDiameter' },
    ]),
    { source: 'NDS 2018', clause: 'Table 12.3.1B', what: 'reduction term of a dowel 0.192 in thick', published: 2.42, ours: () => dowelReduction(0.192), tolerance: 1e-12, toleranceReason: '10 D + 0.5', fromMemory: true, checks: 'dowelReduction' },
    { source: 'NDS 2018', clause: 'Eq. 12.4-1', what: 'a load along the surface is held by the lateral value alone', published: 90, ours: () => combinedValue(200, 90, 0), tolerance: 1e-9, toleranceReason: 'the angle is nothing', fromMemory: true, checks: 'combinedValue' },
    { source: 'NDS 2018', clause: 'Eq. 12.4-1', what: 'a load off the surface is held by withdrawal alone', published: 200, ours: () => combinedValue(200, 90, Math.PI / 2), tolerance: 1e-9, toleranceReason: 'a right angle', fromMemory: true, checks: 'combinedValue' },
];
