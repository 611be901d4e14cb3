import type { Citation } from '../core/citation.js';
import { mm, type Length } from '../core/length.js';

/** Body measures a bench answers to, as the survey defines them. */
export const bodyMeasures = {
    sitting_height: 'sitting height', popliteal_height: 'popliteal height', buttock_popliteal_length: 'buttock–popliteal length', buttock_knee_length: 'buttock–knee length',
    thigh_clearance: 'thigh clearance', hip_breadth: 'hip breadth, sitting', shoulder_breadth: 'bideltoid breadth', elbow_breadth: 'forearm–forearm breadth',
} as const;
export type BodyMeasure = keyof typeof bodyMeasures;

/** Persons by percentile of their sex: one in twenty is smaller than the 5th, one in twenty larger than the 95th. */
export const persons = ['p5_woman', 'p50_woman', 'p95_woman', 'p5_man', 'p50_man', 'p95_man'] as const;
export type Person = typeof persons[number];

/** In millimetres, undressed and barefoot, in the order of `persons`. */
const survey: Readonly<Record<BodyMeasure, readonly [number, number, number, number, number, number]>> = {
    sitting_height: [803, 857, 912, 860, 918, 977],
    popliteal_height: [350, 387, 428, 390, 430, 471],
    buttock_popliteal_length: [441, 483, 535, 459, 502, 548],
    buttock_knee_length: [541, 589, 646, 569, 617, 669],
    thigh_clearance: [145, 167, 191, 157, 180, 207],
    hip_breadth: [348, 397, 456, 333, 378, 431],
    shoulder_breadth: [406, 450, 499, 459, 509, 567],
    elbow_breadth: [432, 492, 563.75, 497.05, 579, 666.95],
};

/**
 * A body measure of a person.
 * Source: ANSUR II, the public data set of the 2012 survey of 4082 men and 1986 women of the US Army (NATICK/TR-15/007); percentiles by linear interpolation. The people are young
 * and fit: a room for others is judged with care.
 */
export const bodyMeasure = (measure: BodyMeasure, person: Person): Length => mm(survey[measure][persons.indexOf(person)] ?? Number.NaN);

const ordinals: Readonly<Record<Person, string>> = { p5_woman: '5th percentile woman', p50_woman: 'median woman', p95_woman: '95th percentile woman', p5_man: '5th percentile man', p50_man: 'median man', p95_man: '95th percentile man' };
export const showPerson = (person: Person): string => ordinals[person];
export const bodyCitation = (measure: BodyMeasure, person: Person): Citation =>
    ({ kind: 'standard', document: 'ANSUR II', edition: '2012', clause: `${bodyMeasures[measure]}, ${ordinals[person]}`, text: 'Public data of the 2012 survey of US Army personnel, undressed and barefoot.' });
