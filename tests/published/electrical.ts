import { awgSizes, heaterCurrent, powerAtVoltage, usCircuit, type Awg } from '../../language/src/engines/electrical/index.js';
import {
    ambientCorrection, ampacityAt30C, equipmentGround, circularMilsOf, largestDeviceFor, nextStandardDevice, ohmsPer1000Feet, olderAmpacity, type Column,
} from '../../language/src/engines/electrical/us-tables.js';
import type { PublishedRow } from './table.js';

const exact = { tolerance: 0, toleranceReason: 'a printed figure' } as const;
const cents = { tolerance: 0.005, toleranceReason: 'worked to two decimals' } as const;
const none = Number.NaN;

/** Worked from P = V·I and P = √3·V·I: kW, then A and 125 % of it at 240 V single-phase, 208 V single-phase and 208 V three-phase, and A at 400 V three-phase. */
const worked: readonly (readonly [kw: number, ...rest: number[]])[] = [
    [4.5, 18.75, 23.44, 21.63, 27.04, 12.49, 15.61, 6.50],
    [6, 25.00, 31.25, 28.85, 36.06, 16.65, 20.82, 8.66],
    [8, 33.33, 41.67, 38.46, 48.08, 22.21, 27.76, 11.55],
    [10.5, 43.75, 54.69, none, none, none, none, none],
    [12, none, none, none, none, 33.31, 41.64, 17.32],
    [15, none, none, none, none, 41.64, 52.04, 21.65],
];
const supplies = [
    { volts: 240, phases: 'single', current: 1, continuous: 2 }, { volts: 208, phases: 'single', current: 3, continuous: 4 },
    { volts: 208, phases: 'three', current: 5, continuous: 6 }, { volts: 400, phases: 'three', current: 7, continuous: 8 },
] as const;
export const currentRows: readonly PublishedRow[] = worked.flatMap(row => supplies.flatMap(({ volts, phases, current, continuous }): PublishedRow[] => {
    const watts = row[0] * 1000;
    const what = `${row[0]} kW at ${volts} V ${phases}-phase`;
    const rows: PublishedRow[] = [
        { source: 'Ohm\'s law', clause: 'P = V·I, P = √3·V·I', what, published: row[current] ?? none, ours: () => heaterCurrent({ watts, volts, phases }), ...cents, checks: 'heaterCurrent' },
        {
            source: 'NEC 2020 and later', clause: '424.4(B)', what: `${what}, 125 %`, published: row[continuous] ?? none, ...cents, fromMemory: true, checks: 'usCircuit',
            ours: () => usCircuit({ heater: { manual: 'test manual', ratings: [{ watts, volts, phases }] }, supply: { volts, phases }, run: [] }).designCurrentA ?? none,
        },
    ];
    return rows.filter(({ published }) => !Number.isNaN(published));
}));

export const derateRow: PublishedRow = {
    source: 'Ohm\'s law', clause: 'P = V²/R', what: '1 W element of 240 V at 208 V', published: 0.7511, ours: () => powerAtVoltage(1, 240, 208),
    tolerance: 0.00005, toleranceReason: 'worked to four decimals', checks: 'powerAtVoltage',
};

const columns: readonly Column[] = [60, 75, 90];
const ampacities: Readonly<Record<Awg, readonly [number, number, number]>> = {
    '14': [15, 20, 25], '12': [20, 25, 30], '10': [30, 35, 40], '8': [40, 50, 55], '6': [55, 65, 75], '4': [70, 85, 95], '3': [85, 100, 115], '2': [95, 115, 130],
    '1': [110, 130, 145], '1/0': [125, 150, 170], '2/0': [145, 175, 195], '3/0': [165, 200, 225], '4/0': [195, 230, 260],
};
export const ampacityRows: readonly PublishedRow[] = [
    ...awgSizes.flatMap(size => columns.map((column, i): PublishedRow => ({
        source: 'NEC 2011 to 2023', clause: 'Table 310.16', what: `${size} AWG copper, ${column} °C`, published: ampacities[size][i] ?? none,
        ours: () => ampacityAt30C(size, column), ...exact, checks: 'ampacityAt30C',
    }))),
    ...([['14', 60, 20], ['12', 60, 25], ['3', 90, 110], ['1', 90, 150]] as const).map(([size, column, published]): PublishedRow => ({
        source: 'NEC before 2011', clause: 'Table 310-16', what: `${size} AWG copper, ${column} °C, the older figure`, published, ours: () => olderAmpacity(size, column) ?? none, ...exact, checks: 'olderAmpacity',
    })),
];

const bands = [10, 15, 20, 25, 30, 35, 40, 45, 50, 55, 60, 65, 70, 75, 80, 85];
const corrections: Readonly<Record<Column, readonly number[]>> = {
    60: [1.29, 1.22, 1.15, 1.08, 1.00, 0.91, 0.82, 0.71, 0.58, 0.41],
    75: [1.20, 1.15, 1.11, 1.05, 1.00, 0.94, 0.88, 0.82, 0.75, 0.67, 0.58, 0.47, 0.33],
    90: [1.15, 1.12, 1.08, 1.04, 1.00, 0.96, 0.91, 0.87, 0.82, 0.76, 0.71, 0.65, 0.58, 0.50, 0.41, 0.29],
};
export const correctionRows: readonly PublishedRow[] = columns.flatMap(column => bands.flatMap((upTo, i): PublishedRow[] => {
    const published = corrections[column][i];
    const ours = (): number | string => ambientCorrection(upTo, column) ?? 'none';
    const common = { source: 'NEC 2023', clause: 'Table 310.15(B)(1)', what: `${upTo} °C, ${column} °C column`, ours, checks: 'ambientCorrection' };
    if (published === undefined) return [{ ...common, published: 'none', ...exact }];
    return [{ ...common, published, ...exact }, {
        ...common, source: 'NEC 2023, equation 310.15(B)(1)', clause: '√((Tc − Ta) / (Tc − 30))', published: Math.sqrt((column - upTo) / (column - 30)),
        tolerance: 0.0051, toleranceReason: 'the table prints two decimals',
    }];
}));

export const deviceRows: readonly PublishedRow[] = [
    ...[15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250, 300, 350, 400, 450, 500, 600, 700, 800, 1000, 1200, 1600, 2000, 2500, 3000, 4000, 5000, 6000]
        .flatMap((rating, i, all): PublishedRow[] => [rating, (all[i - 1] ?? 0) + 0.5].map(load => ({
            source: 'NEC 2023', clause: '240.6(A)', what: `next standard rating for ${load} A`, published: rating, ours: () => nextStandardDevice(load) ?? none, ...exact, checks: 'nextStandardDevice',
        }))),
    ...([['14', 15], ['12', 20], ['10', 30]] as const).map(([size, published]): PublishedRow => ({
        source: 'NEC 2023', clause: '240.4(D)', what: `largest device on ${size} AWG copper`, published, ours: () => largestDeviceFor(size, ampacityAt30C(size, 90)), ...exact, checks: 'largestDeviceFor',
    })),
    {
        source: 'NEC 2023', clause: '240.4(B)', what: 'next size up for 6 AWG at 65 A', published: 70, ours: () => largestDeviceFor('6', 65), ...exact, checks: 'largestDeviceFor',
    },
    ...([[15, '14'], [20, '12'], [30, '10'], [40, '10'], [60, '10'], [100, '8'], [200, '6'], [300, '4'], [400, '3']] as const).map(([deviceA, published]): PublishedRow => ({
        source: 'NEC', clause: 'Table 250.122', what: `copper equipment ground for ${deviceA} A`, published, ours: () => equipmentGround(deviceA) ?? 'none', ...exact, checks: 'equipmentGround',
    })),
];

const stranded: readonly number[] = [3.14, 1.98, 1.24, 0.778, 0.491, 0.308, 0.245, 0.194, 0.154, 0.122, 0.0967, 0.0766, 0.0608];
const mils: readonly number[] = [4110, 6530, 10380, 16510, 26240, 41740, 52620, 66360, 83690, 105600, 133100, 167800, 211600];
export const resistanceRows: readonly PublishedRow[] = [
    ...awgSizes.map((size, i): PublishedRow => ({
        source: 'NEC 2023', clause: 'chapter 9, Table 8', what: `${size} AWG stranded copper at 75 °C, Ω/1000 ft`, published: stranded[i] ?? none,
        ours: () => ohmsPer1000Feet(size, 'stranded', 75), ...exact, ...(i < 4 ? { fromMemory: true } as const : {}), checks: 'ohmsPer1000Feet',
    })),
    ...([['14', 3.07], ['12', 1.93], ['10', 1.21], ['8', 0.764]] as const).map(([size, published]): PublishedRow => ({
        source: 'NEC 2023', clause: 'chapter 9, Table 8', what: `${size} AWG solid copper at 75 °C, Ω/1000 ft`, published, ours: () => ohmsPer1000Feet(size, 'solid', 75), ...exact, checks: 'ohmsPer1000Feet',
    })),
    ...awgSizes.map((size, i): PublishedRow => ({
        source: 'NEC 2023', clause: 'chapter 9, Table 8', what: `${size} AWG, circular mils`, published: mils[i] ?? none, ours: () => circularMilsOf(size), ...exact, checks: 'grownGround',
    })),
    ...[60, 90].map((conductorC): PublishedRow => ({
        source: 'NEC 2023', clause: 'chapter 9, Table 8, note 2', what: `6 AWG at ${conductorC} °C, R2 = R1·[1 + 0.00323·(T2 − 75)]`, published: 0.491 + 0.491 * 0.00323 * (conductorC - 75),
        ours: () => ohmsPer1000Feet('6', 'stranded', conductorC), tolerance: 1e-9, toleranceReason: 'last bits of the arithmetic', checks: 'ohmsPer1000Feet',
    })),
];
