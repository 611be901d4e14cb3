import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { applyChanges, compare, inverse } from '../../language/src/compare/compare.js';
import { consequenceOfComputed } from '../../language/src/compare/consequences.js';
import { declaredFacts } from '../../language/src/facts/declared.js';
import type { JobModel } from '../../language/src/exports/model-schema.js';
import { ModelReader } from '../exports/model-reader.js';
import { writeFile } from '../properties/job-text.js';
import { fileOf, randomJob } from '../properties/random-job.js';
import { exampleText } from '../support/workspace.js';

function checkLaws(a: JobModel, b: JobModel): void {
    const [there, back] = [compare(a, b), compare(b, a)];
    expect(compare(a, a)).toEqual([]);
    expect(inverse(there)).toEqual(back);
    expect(JSON.stringify(applyChanges(a, there))).toBe(JSON.stringify(b));
    expect(JSON.stringify(applyChanges(b, back))).toBe(JSON.stringify(a));
}

describe('two jobs', () => {
    test('any two: applying the changes to one gives the other, and the changes back are the inverse', async () => {
        const reader = new ModelReader();
        await fc.assert(fc.asyncProperty(randomJob, randomJob, async ({ job, mirrored }, { job: other }) => {
            const [[a], [b], [c]] = [await reader.models(writeFile(fileOf(job))), await reader.models(writeFile(fileOf(other))), await reader.models(writeFile(fileOf(mirrored)))];
            checkLaws(a!, b!);
            checkLaws(a!, c!);
        }), { numRuns: 40, seed: 31 });
    });
    test('the same with blocks that have other names', async () => {
        const reader = new ModelReader();
        await fc.assert(fc.asyncProperty(randomJob, fc.shuffledSubarray(['upper', 'lower', 'entry', 'stove', 'lamp']), async ({ job }, names) => {
            const text = writeFile(fileOf(job));
            const renamed = names.reduce((changed, name) => changed.replaceAll(new RegExp(`\\b${name}\\b`, 'g'), `${name}_2b`), text);
            const [[a], [b]] = [await reader.models(text), await reader.models(renamed)];
            checkLaws(a!, b!);
            const changes = compare(a!, b!);
            expect(changes.filter(({ what, says }) => what === 'given' && !says.includes('renamed'))).toEqual([]);
            expect(changes.filter(({ consequence }) => consequence === 'cut' || consequence === 'order')).toEqual([]);
        }), { numRuns: 20, seed: 32 });
    });
    test('examples among each other', async () => {
        const reader = new ModelReader();
        const models = [];
        for (const name of ['birch-point', 'birch-point-mirrored', 'gull-watch', 'heron-clinic', 'fulmar-ferry']) models.push(...await reader.models(exampleText(`${name}.hotroom`)));
        for (const a of models) for (const b of models) checkLaws(a, b);
    });
});

test('every computed figure has a consequence, and no other', () => {
    const declared = Object.entries(declaredFacts).flatMap(([kind, facts]) => facts.map(({ path }) => `${kind}.${path}`));
    expect(Object.keys(consequenceOfComputed).sort()).toEqual(declared.sort());
});
