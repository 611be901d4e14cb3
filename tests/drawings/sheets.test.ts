import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import type { Analysis } from '../../language/src/analyze.js';
import { drawSheets } from '../../language/src/drawings/drawing-set.js';
import { paperNames } from '../../language/src/drawings/paper.js';
import { sheetSvg } from '../../language/src/drawings/svg.js';
import { viewNames } from '../../language/src/drawings/views/view.js';
import { openExamples } from '../baselines/examples.js';
import { JobReader } from '../properties/analysed.js';
import { fileOf, randomJob } from '../properties/random-job.js';
import { examplePaths, exampleText } from '../support/workspace.js';
import { collisions, outside, readSvg, wrongChains, wrongFigures, type ReadSvg } from './read-svg.js';

const drawn = examplePaths().filter(path => !path.startsWith('mistakes/') && !path.startsWith('line/') && /^job /m.test(exampleText(path)));
let analysisOf: (path: string) => Analysis;
beforeAll(async () => { analysisOf = await openExamples(); });

describe.each(drawn)('%s', path => {
    let read: readonly ReadSvg[];
    const sheets = (): readonly ReadSvg[] => read ??= analysisOf(path).jobs.flatMap(job => drawSheets(job)).map(sheet => readSvg(sheetSvg(sheet)));
    test('is drawn in every view', () => { expect(sheets().map(({ view }) => view)).toEqual(analysisOf(path).jobs.flatMap(() => viewNames)); });
    test('no text lies on another or leaves the paper', () => { expect(sheets().flatMap(sheet => [...collisions(sheet), ...outside(sheet)].map(text => `${sheet.view}: ${text}`))).toEqual([]); });
    test('every figure is the distance of its points on the paper', () => {
        expect(sheets().flatMap(sheet => wrongFigures(sheet).map(text => `${sheet.view}: ${text}`))).toEqual([]);
        expect(sheets().reduce((count, { dimensions }) => count + dimensions.length, 0)).toBeGreaterThan(100);
    });
    test('chains make their overall dimension', () => {
        const chains = sheets().map(wrongChains);
        expect(chains.flatMap(({ wrong }) => wrong)).toEqual([]);
        expect(chains.reduce((count, { checked }) => count + checked, 0)).toBeGreaterThan(8);
    });
    test('ids are told apart', () => { for (const { ids } of sheets()) expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]); });
});

test.each(paperNames)('on %s no text lies on another, and every figure is true', paper => {
    const sheets = ['birch-point.hotroom', 'cormorant-club.hotroom'].flatMap(path => analysisOf(path).jobs).flatMap(job => drawSheets(job, viewNames, paper)).map(sheet => readSvg(sheetSvg(sheet)));
    expect(sheets.flatMap(sheet => [...collisions(sheet), ...outside(sheet), ...wrongFigures(sheet)].map(text => `${sheet.view}: ${text}`))).toEqual([]);
    for (const { texts } of sheets) expect(texts.some(({ text }) => text.startsWith('Heat: the manual'))).toBe(true);
});

test('random jobs: no text on another, true figures, equal bytes', async () => {
    const reader = new JobReader();
    const mirrored = new JobReader();
    await fc.assert(fc.asyncProperty(randomJob, async ({ job }) => {
        const sheets = drawSheets(await reader.job(fileOf(job)));
        const texts = sheets.map(sheet => sheetSvg(sheet));
        const read = texts.map(readSvg);
        expect(read.flatMap(sheet => [...collisions(sheet), ...outside(sheet), ...wrongFigures(sheet), ...wrongChains(sheet).wrong].map(text => `${sheet.view}: ${text}`))).toEqual([]);
        expect(drawSheets(await mirrored.job(fileOf(job))).map(sheet => sheetSvg(sheet))).toEqual(texts);
    }), { numRuns: 5 });
});
