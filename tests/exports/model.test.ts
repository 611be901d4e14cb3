import fc from 'fast-check';
import { expect, test } from 'vitest';
import { modelExport, modelJsonSchema, readModel, type JobModel } from '../../language/src/exports/model-schema.js';
import { shuffleBlock, writeFile } from '../properties/job-text.js';
import { fileOf, randomJob } from '../properties/random-job.js';
import { inMillimetres } from '../properties/units-and-order.js';
import { exampleText } from '../support/workspace.js';
import { ModelReader } from './model-reader.js';

const asText = (jobs: readonly JobModel[]): string => JSON.stringify(modelExport(jobs), undefined, 1);

test('the model of the standard job holds what it says, what was computed, and what was found', async () => {
    const [job] = await new ModelReader().models(exampleText('birch-point.hotroom'));
    expect(job!.job).toEqual({ name: 'birch_point', title: 'Birch Point bathhouse', number: '2417', revision: 'B', isWhole: true });
    expect(job!.given).toMatchObject({
        upper: { kind: 'block', block: 'bench', walls: ['back'] }, 'upper.top': { kind: 'length', ticks: 75_184_000, text: '37"' }, 'entry.from.wall': { kind: 'word', word: 'left' },
        'stove.model': { kind: 'reference', name: 'Tarn60' }, 'job.rules': { kind: 'list', items: [{ kind: 'word', word: 'good_practice' }, { kind: 'word', word: 'us_dwelling' }] },
        'stove_feed.cellar.length': { kind: 'length', text: '264"' },
    });
    expect(job!.catalogue).toMatchObject({ Tarn60: { kind: 'block', block: 'heater_model' }, 'Tarn60.power': { kind: 'amount', value: 6000, unit: 'W' } });
    expect(job!.computed['upper.ledger.top']).toEqual({ title: 'ledger top', value: { kind: 'length', ticks: 34.75 * 2_032_000, text: '34 3/4"' } });
    expect(job!.panels).toHaveLength(18);
    expect(job!.parts.map(({ mark }) => mark)).toContain('UPPER-SLAT-1');
    expect(job!.findings.map(({ key }) => key)).toEqual(['door-clear-width-too-small on entry.clear_width', 'feet-below-stones on stove.stone_top']);
});

test('a model is read back as it was written, and what is none is refused with the reason', async () => {
    const models = await new ModelReader().models(exampleText('birch-point.hotroom'));
    const read = readModel(asText(models));
    expect(read).toEqual({ ok: true, model: modelExport(models) });
    expect(readModel('{')).toEqual({ ok: false, why: 'This is not JSON.' });
    expect(readModel('{"format":"hotroom-model","version":2,"jobs":[]}')).toMatchObject({ ok: false });
    expect(JSON.stringify(modelJsonSchema())).toContain('draft/2020-12');
});

test('variants and jobs of a series stand as models of their own', async () => {
    const models = await new ModelReader().models(exampleText('line/skua.hotroom'), 'line/skua.hotroom');
    expect(models).toHaveLength(48);
    expect(new Set(models.map(({ job }) => job.name)).size).toBe(48);
});

test('equal jobs are equal bytes, in inches and millimetres, in any order and layout', async () => {
    const [inch, metric] = [new ModelReader(), new ModelReader(inMillimetres)];
    await fc.assert(fc.asyncProperty(randomJob, fc.infiniteStream(fc.nat({ max: 1_000_000 })), async ({ job }, numbers) => {
        const here = asText(await inch.models(writeFile(fileOf(job), 'in', 'open')));
        const shuffled = { ...fileOf(shuffleBlock(job, count => (numbers.next().value ?? 0) % count)), uses: [...fileOf(job).uses].reverse() };
        expect(asText(await metric.models(writeFile(shuffled, 'mm', 'compact')))).toBe(here);
    }), { numRuns: 30, seed: 21 });
});
