import fc from 'fast-check';
import { expect, test } from 'vitest';
import { sittersOf, type Governing } from '../../../language/src/engines/access/ergonomics.js';
import { bodyMeasure, bodyMeasures, persons, type BodyMeasure, type Person } from '../../../language/src/rule-sets/anthropometry.js';
import { personWords } from '../../../language/src/vocabulary/blocks/job.js';
import '../../support/seed.js';

const people = fc.uniqueArray(fc.constantFrom(...persons), { minLength: 1 }).map(found => found as [Person, ...Person[]]);
const measures = Object.keys(bodyMeasures) as BodyMeasure[];

test('the words of the language are the persons of the survey', () => { expect(personWords).toEqual(persons); });

test('a higher percentile of one sex is never smaller in any measure', () => {
    for (const measure of measures) for (const sex of ['woman', 'man'] as const) {
        const [low, middle, high] = (['p5', 'p50', 'p95'] as const).map(percentile => bodyMeasure(measure, `${percentile}_${sex}`));
        expect(low).toBeLessThan(middle ?? 0);
        expect(middle).toBeLessThan(high ?? 0);
    }
});

test('naming more people never asks for less: heads, knees and elbows want more room, feet and thighs reach less far', () => {
    fc.assert(fc.property(people, fc.constantFrom(...persons), (some, one) => {
        const [few, more] = [sittersOf(some), sittersOf([...some, one])];
        for (const key of ['height', 'knees', 'thighHeight', 'elbows'] as const) expect(more[key].length).toBeGreaterThanOrEqual(few[key].length);
        for (const key of ['lowerLeg', 'thigh'] as const) expect(more[key].length).toBeLessThanOrEqual(few[key].length);
    }), { numRuns: 200 });
});

test('each measure that governs is the one of the person it names', () => {
    fc.assert(fc.property(people, some => {
        for (const { measure, person, length } of Object.values(sittersOf(some)) as readonly Governing[]) { expect(some).toContain(person); expect(length).toBe(bodyMeasure(measure, person)); }
    }), { numRuns: 100 });
});
