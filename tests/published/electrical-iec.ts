import { iecCircuit, installationMethods, mm2Sizes, type InstallationMethod } from '../../language/src/engines/electrical/index.js';
import { ambientFactor, capacityAt30C, nextPreferredDevice, protectiveEarth } from '../../language/src/engines/electrical/iec-tables.js';
import type { PublishedRow } from './table.js';

const none = Number.NaN;
const exact = { tolerance: 0, toleranceReason: 'a printed figure' } as const;
const source = 'IEC 60364-5-52 ed. 3.0 (2009)';

/** 1.5 to 25 mm2, PVC, 30 °C. */
const published: Readonly<Record<2 | 3, Readonly<Record<InstallationMethod, readonly number[]>>>> = {
    3: {
        A1: [13.5, 18, 24, 31, 42, 56, 73], A2: [13, 17.5, 23, 29, 39, 52, 68], B1: [15.5, 21, 28, 36, 50, 68, 89],
        B2: [15, 20, 27, 34, 46, 62, 80, 99, 118, 149, 179], C: [17.5, 24, 32, 41, 57, 76, 96],
    },
    2: {
        A1: [14.5, 19.5, 26, 34, 46, 61, 80], A2: [14, 18.5, 25, 32, 43, 57, 75], B1: [17.5, 24, 32, 41, 57, 76, 101],
        B2: [16.5, 23, 30, 38, 52, 69, 90], C: [19.5, 27, 36, 46, 63, 85, 112],
    },
};
export const capacityRows: readonly PublishedRow[] = ([2, 3] as const).flatMap(loaded => installationMethods.flatMap(method => mm2Sizes.flatMap((size, i): PublishedRow[] => {
    const figure = published[loaded][method][i];
    if (figure === undefined) return [];
    // The row of method B2 with three loaded conductors was compared with a document that quotes it, from 4 mm2 up.
    const isCompared = loaded === 3 && method === 'B2' && size >= 4;
    return [{
        source, clause: loaded === 2 ? 'Table B.52.2' : 'Table B.52.4', what: `${size} mm2 PVC, method ${method}, ${loaded} loaded`, published: figure,
        ours: () => capacityAt30C(size, method, loaded, 'pvc'), ...exact, ...(isCompared ? {} : { fromMemory: true } as const), checks: 'capacityAt30C',
    }];
})));

const factors = {
    pvc: [[10, 1.22], [15, 1.17], [20, 1.12], [25, 1.06], [30, 1.00], [35, 0.94], [40, 0.87], [45, 0.79], [50, 0.71], [55, 0.61], [60, 0.50]],
    xlpe: [[10, 1.15], [15, 1.12], [20, 1.08], [25, 1.04], [30, 1.00], [35, 0.96], [40, 0.91], [45, 0.87], [50, 0.82], [55, 0.76], [60, 0.71]],
} as const;
export const factorRows: readonly PublishedRow[] = (['pvc', 'xlpe'] as const).flatMap(insulation => factors[insulation].flatMap(([ambientC, factor]): PublishedRow[] => [
    {
        source, clause: 'Table B.52.14', what: `${ambientC} °C, ${insulation}`, published: factor, ours: () => ambientFactor(ambientC, insulation) ?? none, ...exact, fromMemory: true, checks: 'ambientFactor',
    },
    {
        source: 'steady heat balance of a conductor', clause: '√((Tc − Ta) / (Tc − 30))', what: `${ambientC} °C, ${insulation}`,
        published: Math.sqrt(((insulation === 'pvc' ? 70 : 90) - ambientC) / ((insulation === 'pvc' ? 70 : 90) - 30)), ours: () => ambientFactor(ambientC, insulation) ?? none,
        tolerance: 0.0051, toleranceReason: 'the table prints two decimals', checks: 'ambientFactor',
    },
]));

/** Truncated products of 4 mm2, method B2, three loaded conductors, printed beside the factors in a document that quotes the standard. */
export const productRows: readonly PublishedRow[] = ([[40, 23], [45, 21], [50, 19], [55, 16]] as const).map(([ambientC, amperes]) => ({
    source, clause: 'Tables B.52.4 and B.52.14', what: `4 mm2 PVC, B2, three loaded, at ${ambientC} °C, whole amperes`, published: amperes,
    ours: () => Math.floor(capacityAt30C(4, 'B2', 3, 'pvc') * (ambientFactor(ambientC, 'pvc') ?? none)), ...exact, checks: 'ambientFactor',
}));

export const deviceRows: readonly PublishedRow[] = [
    ...[6, 10, 13, 16, 20, 25, 32, 40, 50, 63, 80, 100].map((rating): PublishedRow => ({
        source: 'IEC 60898-1', clause: 'preferred rated currents', what: `${rating} A`, published: rating, ours: () => nextPreferredDevice(rating - 0.5) ?? none, ...exact, fromMemory: true,
        checks: 'nextPreferredDevice',
    })),
    ...([[1.5, 1.5], [16, 16], [25, 16], [35, 16], [50, 25], [70, 35], [95, 50]] as const).map(([line, earth]): PublishedRow => ({
        source: 'IEC 60364-5-54', clause: 'Table 54.2', what: `protective conductor of a ${line} mm2 line`, published: earth, ours: () => protectiveEarth(line), ...exact, fromMemory: true, checks: 'protectiveEarth',
    })),
    ...([[4.5, 6.50], [6, 8.66], [8, 11.55], [12, 17.32], [15, 21.65]] as const).map(([kw, amperes]): PublishedRow => ({
        source: 'Ohm\'s law', clause: 'P = √3·V·I', what: `design current of ${kw} kW at 400 V three-phase`, published: amperes, tolerance: 0.005, toleranceReason: 'worked to two decimals', checks: 'iecCircuit',
        ours: () => iecCircuit({
            heater: { manual: 'test manual', ratings: [{ watts: kw * 1000, volts: 400, phases: 'three' }] }, supply: { volts: 400, phases: 'three' }, run: [],
        }).designCurrentA ?? none,
    })),
];
