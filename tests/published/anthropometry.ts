import { inMm } from '../../language/src/core/length.js';
import { bodyMeasure, persons, type BodyMeasure, type Person } from '../../language/src/rule-sets/anthropometry.js';
import type { PublishedRow } from './table.js';

/** Percentiles worked out from the public data set by linear interpolation, mm: women 5, 50, 95, then men. */
const published: Readonly<Record<BodyMeasure, readonly number[]>> = {
    sitting_height: [803, 857, 912, 860, 918, 977], popliteal_height: [350, 387, 428, 390, 430, 471], buttock_popliteal_length: [441, 483, 535, 459, 502, 548],
    buttock_knee_length: [541, 589, 646, 569, 617, 669], thigh_clearance: [145, 167, 191, 157, 180, 207], hip_breadth: [348, 397, 456, 333, 378, 431],
    shoulder_breadth: [406, 450, 499, 459, 509, 567], elbow_breadth: [432, 492, 563.75, 497.05, 579, 666.95],
};
const percentileRows: readonly PublishedRow[] = (Object.keys(published) as BodyMeasure[]).flatMap(measure => persons.map((person, i): PublishedRow => ({
    source: 'ANSUR II, public data set (2012)', clause: measure.replaceAll('_', ' '), what: `${person}, mm`, published: published[measure][i] ?? Number.NaN, ours: () => inMm(bodyMeasure(measure, person)),
    tolerance: 1e-9, toleranceReason: 'a printed figure in millimetres', checks: 'bodyMeasure',
})));

/** Means and standard deviations, mm; a percentile of a normal distribution is the mean and z of the deviation. */
const moments: readonly (readonly [measure: BodyMeasure, sex: 'man' | 'woman', mean: number, deviation: number])[] = [
    ['sitting_height', 'man', 918.3, 35.7], ['sitting_height', 'woman', 856.6, 33.1], ['popliteal_height', 'man', 429.8, 24.8], ['popliteal_height', 'woman', 388.2, 23.6],
];
const normalRows: readonly PublishedRow[] = moments.flatMap(([measure, sex, mean, deviation]) => ([['p5', -1.6449], ['p50', 0], ['p95', 1.6449]] as const).map(([percentile, z]): PublishedRow => ({
    source: 'NATICK/TR-15/007, means and standard deviations', clause: measure.replaceAll('_', ' '), what: `${percentile}_${sex} of a normal distribution, mm`, published: mean + z * deviation,
    ours: () => inMm(bodyMeasure(measure, `${percentile}_${sex}` as Person)), tolerance: 1.5, toleranceReason: 'the sample is not quite normal: its median and tails lie up to 1.2 mm off', checks: 'bodyMeasure',
})));

export const anthropometryRows: readonly PublishedRow[] = [...percentileRows, ...normalRows];
