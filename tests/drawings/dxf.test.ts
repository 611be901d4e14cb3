import * as reader from 'dxf-parser';
import type { IDimensionEntity, ILineEntity } from 'dxf-parser';
import { beforeAll, describe, expect, test } from 'vitest';
import type { Analysis } from '../../language/src/analyze.js';
import { inInches, inMm } from '../../language/src/core/length.js';
import { isMetric } from '../../language/src/core/show.js';
import { drawSheets } from '../../language/src/drawings/drawing-set.js';
import { sheetDxf } from '../../language/src/drawings/dxf.js';
import { drawingNotes } from '../../language/src/drawings/title-facts.js';
import { openExamples } from '../baselines/examples.js';
import { readFigure } from './read-svg.js';

/** The package is CommonJS whose whole module is the class, which its types do not say. */
const Reader = (reader as unknown as { readonly default: typeof reader.DxfParser }).default;
const examples = ['birch-point.hotroom', 'fulmar-ferry.hotroom', 'cormorant-club.hotroom', 'otter-cove.hotroom'];
let analysisOf: (path: string) => Analysis;
beforeAll(async () => { analysisOf = await openExamples(); });

/** The files of one job, read by a general reader of DXF. */
const read = (path: string) => analysisOf(path).jobs.flatMap(job => drawSheets(job).map(sheet => {
    const text = sheetDxf(sheet, job.job.unit, drawingNotes(sheet, job));
    const dxf = new Reader().parseSync(text);
    if (!dxf) throw new Error(`${sheet.view} is no DXF`);
    return { job, sheet, text, dxf };
}));
/** How close a number of the file has to come: DXF holds doubles as decimal text, and the reader reads them back. */
const exact = 1e-9;

describe.each(examples)('%s', path => {
    let files: ReturnType<typeof read>;
    beforeAll(() => { files = read(path); });

    test('says what its unit is', () => {
        // $INSUNITS 1 is inches, 4 millimetres: DXF reference, header variables, from memory
        for (const { job, dxf } of files) expect(dxf.header['$INSUNITS']).toBe(isMetric(job.job.unit) ? 4 : 1);
    });
    test('every figure is the distance of the two points of its dimension', () => {
        let count = 0;
        for (const { job, sheet, dxf } of files) for (const entity of dxf.entities) {
            if (entity.type !== 'DIMENSION') continue;
            count++;
            const { text, linearOrAngularPoint1: a, linearOrAngularPoint2: b, angle, dimensionType } = entity as IDimensionEntity;
            const perMm = isMetric(job.job.unit) ? 1 : 1 / 25.4;
            const turn = angle * Math.PI / 180;
            const measured = dimensionType % 32 === 1 ? Math.hypot(b.x - a.x, b.y - a.y) : Math.abs((b.x - a.x) * Math.cos(turn) + (b.y - a.y) * Math.sin(turn));
            const { mm, within } = readFigure(text);
            expect(Math.abs(measured - mm * perMm), `${sheet.view}: ${text}`).toBeLessThanOrEqual(within * perMm + 1e-6);
        }
        expect(count).toBeGreaterThan(100);
    });
    test('the plan measures what the job says', () => {
        const { job, dxf } = files.find(({ sheet }) => sheet.view === 'plan')!;
        const walls = dxf.entities.filter((entity): entity is ILineEntity => entity.type === 'LINE' && entity.layer === 'WALLS-CUT').flatMap(({ vertices }) => vertices);
        const { width, depth } = job.results.room!.base;
        const inUnit = isMetric(job.job.unit) ? inMm : inInches;
        expect(Math.max(...walls.map(({ x }) => x)) - Math.min(...walls.map(({ x }) => x))).toBeCloseTo(inUnit(width), 9);
        expect(Math.abs(Math.max(...walls.map(({ y }) => y)) - Math.min(...walls.map(({ y }) => y)) - inUnit(depth))).toBeLessThan(exact);
    });
    test('layers are named after what is on them', () => {
        const { dxf } = files.find(({ sheet }) => sheet.view === 'plan')!;
        const layers = Object.keys(dxf.tables.layer.layers);
        for (const name of ['WALLS-CUT', 'BENCHES', 'HEATER', 'DIMENSIONS', 'SWING', 'CLEARANCES', 'MARKS', 'HATCH', 'NOTES']) expect(layers).toContain(name);
        for (const { layer } of dxf.entities) expect(layers).toContain(layer);
    });
    test('says whose it is and the cautions', () => {
        for (const { text, job } of files) {
            expect(text).toContain(job.job.block.title!.value);
            expect(text).toContain('No approval of any kind');
        }
    });
    test('equal sheets give equal bytes', () => { expect(read(path).map(({ text }) => text)).toEqual(files.map(({ text }) => text)); });
});
