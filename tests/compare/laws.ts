import fc from 'fast-check';
import { expect } from 'vitest';
import { applyChanges, compare, inverse } from '../../language/src/compare/compare.js';
import type { JobModel } from '../../language/src/exports/model-schema.js';
import { ModelReader } from '../exports/model-reader.js';
import { writeFile } from '../properties/job-text.js';
import { fileOf, randomJob } from '../properties/random-job.js';

/** What holds for any two jobs: a comparison of equals is empty, the way back is the inverse, and the changes made to one give the other, byte for byte. */
export function checkLaws(a: JobModel, b: JobModel): void {
    const [there, back] = [compare(a, b), compare(b, a)];
    expect(compare(a, a)).toEqual([]);
    expect(inverse(there)).toEqual(back);
    expect(JSON.stringify(applyChanges(a, there))).toBe(JSON.stringify(b));
    expect(JSON.stringify(applyChanges(b, back))).toBe(JSON.stringify(a));
}

/** Any two random jobs, and a job and its mirror image. */
export async function checkPairs(numRuns: number, seed?: number): Promise<void> {
    const reader = new ModelReader();
    await fc.assert(fc.asyncProperty(randomJob, randomJob, async ({ job, mirrored }, { job: other }) => {
        const [[a], [b], [c]] = [await reader.models(writeFile(fileOf(job))), await reader.models(writeFile(fileOf(other))), await reader.models(writeFile(fileOf(mirrored)))];
        checkLaws(a!, b!);
        checkLaws(a!, c!);
    }), { numRuns, ...(seed === undefined ? {} : { seed }) });
}

/** A job some of whose blocks have other names: nothing is cut or ordered again. */
export async function checkRenames(numRuns: number, seed?: number): Promise<void> {
    const reader = new ModelReader();
    await fc.assert(fc.asyncProperty(randomJob, fc.shuffledSubarray(['upper', 'lower', 'entry', 'stove', 'lamp']), async ({ job }, names) => {
        const text = writeFile(fileOf(job));
        const renamed = names.reduce((changed, name) => changed.replaceAll(new RegExp(`\\b${name}\\b`, 'g'), `${name}_2b`), text);
        const [[a], [b]] = [await reader.models(text), await reader.models(renamed)];
        checkLaws(a!, b!);
        const changes = compare(a!, b!);
        expect(changes.filter(({ what, says }) => what === 'given' && !says.includes('renamed'))).toEqual([]);
        expect(changes.filter(({ consequence }) => consequence === 'cut' || consequence === 'order')).toEqual([]);
    }), { numRuns, ...(seed === undefined ? {} : { seed }) });
}
