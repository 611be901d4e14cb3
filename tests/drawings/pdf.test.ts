import { extractText, getDocumentProxy } from 'unpdf';
import { beforeAll, describe, expect, test } from 'vitest';
import type { Analysis } from '../../language/src/analyze.js';
import { drawSheets } from '../../language/src/drawings/drawing-set.js';
import { papers, paperNames } from '../../language/src/drawings/paper.js';
import { sheetsPdf } from '../../language/src/drawings/pdf.js';
import type { Sheet } from '../../language/src/drawings/sheet.js';
import { viewNames } from '../../language/src/drawings/views/view.js';
import { openExamples } from '../baselines/examples.js';

let analysisOf: (path: string) => Analysis;
beforeAll(async () => { analysisOf = await openExamples(); });
const pointsPerMm = 72 / 25.4;

describe.each(['birch-point.hotroom', 'fulmar-ferry.hotroom'])('%s', path => {
    let drawn: readonly Sheet[];
    const sheets = (): readonly Sheet[] => drawn ??= drawSheets(analysisOf(path).jobs[0]!);
    test('a sheet a page, each as large as its paper', async () => {
        const pdf = await getDocumentProxy(await sheetsPdf(sheets(), 'A job'));
        expect(pdf.numPages).toBe(viewNames.length);
        for (const [i, { widthMm, heightMm }] of sheets().entries()) {
            const [left = 0, bottom = 0, right = 0, top = 0] = (await pdf.getPage(i + 1)).view;
            // a printer's point has no part smaller than a thousandth that anyone sees
            expect([left, bottom]).toEqual([0, 0]);
            expect(Math.abs(right - widthMm * pointsPerMm)).toBeLessThan(0.001);
            expect(Math.abs(top - heightMm * pointsPerMm)).toBeLessThan(0.001);
        }
    });
    test('what a page says can be read: title, job, figures, cautions', async () => {
        const { text } = await extractText(await getDocumentProxy(await sheetsPdf(sheets(), 'A job')));
        for (const [i, { title, figures }] of sheets().entries()) {
            expect(text[i]).toContain(title);
            expect(text[i]).toContain('No approval of any kind');
            for (const item of figures.flatMap(({ items }) => items)) if (item.kind === 'dimension') {
                const squeezed = (words: string): string => words.replaceAll(/\s+/g, '');
                expect(squeezed(text[i] ?? '')).toContain(squeezed(item.lettering.text));
            }
        }
    });
    test('is true to scale: the overall width of the plan as a line of the page', async () => {
        const [plan] = drawSheets(analysisOf(path).jobs[0]!, ['plan']);
        const pdf = await getDocumentProxy(await sheetsPdf([plan!], 'A job'));
        const { argsArray } = await (await pdf.getPage(1)).getOperatorList();
        const segments = argsArray.flatMap(args => lines(args));
        const width = analysisOf(path).jobs[0]!.results.room!.base.width / 80_000 / plan!.scale.ratio * pointsPerMm;
        // coordinates are written to 1/10 000 of a point, and the reader keeps single-precision numbers: 1200 points to 0.0001
        expect(segments.some(length => Math.abs(length - width) < 0.002)).toBe(true);
        expect(segments.some(length => Math.abs(length - width * 1.01) < 0.002)).toBe(false);
    });
    test('equal sheets give equal bytes', async () => { expect(await sheetsPdf(drawSheets(analysisOf(path).jobs[0]!), 'A job')).toEqual(await sheetsPdf(sheets(), 'A job')); });
});

test.each(paperNames)('%s is its standard size', async name => {
    const [sheet] = drawSheets(analysisOf('birch-point.hotroom').jobs[0]!, ['plan'], name);
    // ISO 216: A3 297 x 420, A4 210 x 297 mm; ANSI/ASME Y14.1: A 8 1/2 x 11, B 11 x 17 inches, from memory
    const published = { a3: [420, 297], a4: [297, 210], tabloid: [17 * 25.4, 11 * 25.4], letter: [11 * 25.4, 8.5 * 25.4] }[name];
    const [, , right = 0, top = 0] = (await (await getDocumentProxy(await sheetsPdf([sheet!], 'A job'))).getPage(1)).view;
    expect(right / pointsPerMm).toBeCloseTo(published[0]!, 3);
    expect(top / pointsPerMm).toBeCloseTo(published[1]!, 3);
    expect(papers[name].widthMm).toBeGreaterThan(papers[name].heightMm);
});

/** Lengths of the straight pieces of a path the reader found: moves are 0, lines 1 in its list of numbers. */
function lines(args: unknown): readonly number[] {
    const found: number[] = [];
    const data = Array.isArray(args) && Array.isArray(args[1]) ? args[1] as readonly unknown[] : [];
    for (const part of data) {
        if (!(part instanceof Float32Array)) continue;
        let [x, y] = [0, 0];
        for (let i = 0; i < part.length;) {
            const kind = part[i];
            if (kind === 0 || kind === 1) {
                const [nx, ny] = [part[i + 1]!, part[i + 2]!];
                if (kind === 1) found.push(Math.hypot(nx - x, ny - y));
                [x, y] = [nx, ny];
                i += 3;
            } else if (kind === 2) { [x, y] = [part[i + 5]!, part[i + 6]!]; i += 7; } else i += 1;
        }
    }
    return found;
}
