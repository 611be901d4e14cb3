import { describe, expect, test } from 'vitest';
import type { Analysis } from '../../language/src/analyze.js';
import { inches } from '../../language/src/core/length.js';
import { compare } from '../support/check.js';
import { dedent } from '../support/dedent.js';
import { withStandardJob } from '../support/standard-job.js';
import { analyzeText } from '../support/workspace.js';

/** The standard job as a series with a parameter for its width, and jobs made from it. */
const seriesOf = (jobs: string, more = ''): string => `${withStandardJob(more).replace('job standard "Standard job" {', 'series cottage "Cottage" {\n    parameter w { takes length; least 60"; most 120"; otherwise 84"; doc "Outside width" }').replace('width     84"', 'width     w')}\n${dedent(jobs)}\n`;
const job = (analysis: Analysis, name: string): Analysis['jobs'][number] => {
    const found = analysis.jobs.find(one => one.job.block.name?.value === name);
    if (!found) throw new Error(`no job ${name}`);
    return found;
};
const errors = (analysis: Analysis): readonly string[] => analysis.findings.filter(({ severity }) => severity === 'error').map(({ message }) => message);

describe('a job made from a series', () => {
    test('takes its values by place, by name or from the default', async () => {
        const analysis = await analyzeText(seriesOf('job one is cottage(96")\njob two is cottage(w = 90")\njob three is cottage'));
        expect(['one', 'two', 'three'].map(name => job(analysis, name).job.room?.values.width?.value)).toEqual([96, 90, 84].map(width => inches(width)));
    });
    test('is the same room as one written out', async () => {
        const analysis = await analyzeText(`${seriesOf('job one is cottage(84")')}${withStandardJob('').slice(withStandardJob('').indexOf('job standard'))}`);
        const parts = (name: string): unknown => job(analysis, name).results.parts.map(({ mark, cut, count, section }) => ({ mark, cut, count, section }));
        expect(parts('one')).toEqual(parts('standard'));
    });
    test('overrides single facts and keeps the rest', async () => {
        const analysis = await analyzeText(seriesOf('job one is cottage(84") {\n    bench upper { top 36" }\n    room { height 86" }\n}'));
        const one = job(analysis, 'one').job;
        expect(one.benches.map(({ name, values }) => [name?.value, values.top?.value, values.depth?.value])).toEqual([['upper', inches(36), inches(20)], ['lower', inches(18), inches(16)]]);
        expect([one.room?.values.height?.value, one.room?.values.width?.value]).toEqual([inches(86), inches(84)]);
        expect(one.benches[0]?.values.top?.wonOver).toHaveLength(1);
    });
    test('may add a block of its own', async () => {
        const analysis = await analyzeText(seriesOf('job one is cottage(84") {\n    sign rules on front { says bathing; stands outside }\n}'));
        expect(job(analysis, 'one').job.signs.at(-1)?.name?.value).toBe('rules');
    });
    test('refers to what the series names, and what overrides it', async () => {
        const analysis = await analyzeText(seriesOf('job one is cottage(84") {\n    bench upper { top 36" }\n}'));
        const [upper, lower] = job(analysis, 'one').job.benches;
        expect(lower?.values.in_front_of?.value.block).toBe(upper);
    });
    test('a series may be made from another', async () => {
        const analysis = await analyzeText(seriesOf('series high is cottage(90") {\n    room { height 96" }\n}\njob one is high {\n    bench upper { top 36" }\n}'));
        const one = job(analysis, 'one').job;
        expect([one.room?.values.width?.value, one.room?.values.height?.value, one.benches[0]?.values.top?.value]).toEqual([inches(90), inches(96), inches(36)]);
    });
    test('blocks that hang on a condition', async () => {
        const analysis = await analyzeText(seriesOf('job one is cottage(84")\njob two is cottage(96")', 'sign wide on front { says bathing; stands outside; when room.width > 90" }'));
        expect(['one', 'two'].map(name => job(analysis, name).job.signs.some(sign => sign.name?.value === 'wide'))).toEqual([false, true]);
    });
    test('what a job says of a block that its values leave out has no effect and is told', async () => {
        const text = seriesOf('job one is cottage(84") {\n    sign wide { letters 1" }\n}\njob two is cottage(96") {\n    sign wide { letters 1" }\n}', 'sign wide on front { says bathing; stands outside; when room.width > 90" }');
        const found = (await analyzeText(text)).findings.filter(({ rule }) => rule === 'nothing-to-override');
        expect(found.map(({ message, at }) => [message, text.slice(at.start, at.end)])).toEqual([['Sign wide is left out here: the condition behind its when does not hold, so what is said of it has no effect. Give the values that bring it in, or remove this.', 'sign wide']]);
        expect(found[0]?.at.start).toBeLessThan(text.indexOf('job two'));
    });
    test('a let of the series may be said otherwise', async () => {
        const more = 'let step = 18"\nbench lower on back { build Slatted; top step; depth 16"; in_front_of upper }';
        const analysis = await analyzeText(seriesOf('job one is cottage\njob two is cottage { let step = 17" }', more));
        expect(['one', 'two'].map(name => job(analysis, name).job.benches.find(bench => bench.name?.value === 'lower')?.values.top?.value)).toEqual([inches(18), inches(17)]);
    });
    test('a name of a catalogue as a value', async () => {
        const text = seriesOf('job one is cottage(84", door = Leaf24)\njob two is cottage(84", Leaf99)').replace('most 120"; otherwise 84"; doc "Outside width" }', 'most 120"; otherwise 84" }\n    parameter door { takes door_model }').replace(/model {5}Leaf24/, 'model door');
        const analysis = await analyzeText(text);
        expect(job(analysis, 'one').job.doors[0]?.values.model?.value.block?.name?.value).toBe('Leaf24');
        expect(errors(analysis)).toEqual(['There is no door model called Leaf99; the series takes one for door. Name one of a catalogue this file uses.']);
    });
});

describe('where findings stand', () => {
    test('what is wrong in the series for one job stands at that job', async () => {
        const text = seriesOf('job low is cottage(84")', 'room { system Skerry; width 84"; depth 79 1/2"; height 70" }');
        const [finding] = (await analyzeText(text)).findings.filter(({ rule }) => rule === 'room-too-low');
        expect(finding && text.slice(finding.at.start, finding.at.end)).toBe('cottage(84")');
        expect(finding?.related?.[0]?.message).toBe('It is written here, in cottage.');
        expect(finding?.fixes?.every(({ safety }) => safety === 'review') ?? true).toBe(true);
    });
    test('a series alone raises nothing', async () => {
        const text = seriesOf('');
        compare(text, (await analyzeText(text)).findings.filter(({ rule }) => rule !== 'job-missing'));
    });
    test('a series tells the mistakes of its own text once, however many jobs are made from it', async () => {
        const text = seriesOf('job one is cottage\njob two is cottage', 'sign rules on front { says bathing; stnds outside }');
        expect(errors(await analyzeText(text))).toEqual([expect.stringContaining('‘stnds’ is not known in a sign. Is stands meant?')]);
    });
    test('a misspelt parameter', async () => {
        expect(errors(await analyzeText(seriesOf('job one is cottage(84")').replace('width     w', 'width     ww')))).toEqual(['‘ww’ is not what width takes: a length, such as 34 3/4" or 885 mm. Is w meant?']);
    });
    test.each([
        ['a fact nobody gives', 'bench upper on back { build Slatted; top 37" }', 'Bench upper lacks depth: a length, such as 34 3/4" or 885 mm.'],
        ['a name that means nothing in the job', 'bench lower on back { build Slatted; top uper.top - 19"; depth 16" }', 'Nothing is called ‘uper.top’ here. Is upper.top meant?'],
        ['a misspelt fact of another block', 'let aisle = room.inside.dept - 30"', 'Nothing is called ‘room.inside.dept’ here. Is room.inside.depth meant?'],
    ])('%s is told at the job, with its place in the series', async (_what, more, message) => {
        const text = seriesOf('job one is cottage(84")', more);
        const found = (await analyzeText(text)).findings.filter(({ severity }) => severity === 'error');
        expect(found.map(finding => finding.message)).toEqual([message]);
        expect(found.map(({ at }) => text.slice(at.start, at.end))).toEqual(['cottage(84")']);
        expect(found[0]?.related?.[0]?.message).toBe('It is written here, in series cottage.');
    });
    test('for all jobs made from it at once', async () => {
        const text = seriesOf('job one is cottage(84")\njob two is cottage(90")', 'bench upper on back { build Slatted; top 37" }');
        expect(errors(await analyzeText(text))).toEqual(['Bench upper lacks depth: a length, such as 34 3/4" or 885 mm.']);
    });
    test('what a job gives itself is not missing', async () => {
        expect(errors(await analyzeText(seriesOf('job one is cottage(84") { bench upper { depth 20" } }', 'bench upper on back { build Slatted; top 37" }')))).toEqual([]);
    });
    test('an unknown series is one mistake', async () => {
        const text = seriesOf('job one is cotage(84")');
        expect(errors(await analyzeText(text))).toEqual([expect.stringContaining('There is no series called cotage. Is cottage meant?')]);
    });
    test('a series of another file', async () => {
        const series = seriesOf('');
        const analysis = await analyzeText('use "series.hotroom"\njob one is cottage(84")\n', {}, 'job.hotroom', { 'series.hotroom': series });
        expect(errors(analysis)).toEqual([]);
        expect(job(analysis, 'one').results.parts.length).toBeGreaterThan(20);
        expect(analysis.findings.every(({ at }) => at.uri.endsWith('job.hotroom'))).toBe(true);
    });
});

describe('variants', () => {
    test('a variant is its job with what differs', async () => {
        const analysis = await analyzeText(withStandardJob('variant low "Low benches" {\n    bench upper { top 36" }\n}'));
        expect(analysis.jobs.map(({ job: { block } }) => [block.name?.value, block.title?.value])).toEqual([['standard', 'Standard job'], ['standard-low', 'Standard job, Low benches']]);
        expect(analysis.jobs.map(one => one.job.benches[0]?.values.top?.value)).toEqual([inches(37), inches(36)].slice(0, 2));
        expect(errors(analysis)).toEqual([]);
    });
    test('only what the variant adds is told of it', async () => {
        const text = withStandardJob('variant tall "Tall" {\n    room { height 70" }\n}');
        const findings = (await analyzeText(text)).findings.filter(({ rule }) => rule === 'room-too-low');
        expect(findings.map(({ at }) => text.slice(at.start, at.end))).toEqual(['70"']);
    });
    test('a variant says so where its finding stands in the job', async () => {
        const text = withStandardJob('variant deep "Deep" {\n    bench upper { depth 21" }\n}');
        const messages = (await analyzeText(text)).findings.map(({ message }) => message);
        expect(messages.filter(message => message.startsWith('In variant deep: ')).length + messages.filter(message => message.includes('21"')).length).toBeGreaterThan(0);
    });
    test('what is said of the job as a whole is not said again of its variant', async () => {
        const text = withStandardJob('// without heater stove\n// without circuit\n// without vent exhaust\nvariant low "Low" {\n    bench upper { top 36" }\n}');
        const rules = (await analyzeText(text)).findings.map(({ rule }) => rule);
        for (const rule of ['heater-missing', 'exhaust-missing']) expect(rules.filter(one => one === rule)).toHaveLength(1);
    });
    test('something said of a block that is not there', async () => {
        const text = withStandardJob('variant low "Low" {\n    bench uper { top 36" }\n}');
        expect(errors(await analyzeText(text))).toEqual(['There is no bench uper to say this of. Is upper meant? A bench of its own needs its wall: bench uper on back { … }.']);
    });
});

describe('entries made from others', () => {
    const withHeater = (body: string): string => withStandardJob('heater stove on right { model Tarn61; from front 4 1/2"; guard yes; backing 1 1/2" }').replace('job standard', `catalogue more {\n    heater_model Tarn61 "Tarn 61" is Tarn60 { ${body} }\n}\n\njob standard`);
    test('an entry keeps what it does not say otherwise', async () => {
        const analysis = await analyzeText(withHeater('power 5 kW'));
        const model = analysis.jobs[0]?.job.heaters[0]?.values.model?.value.block;
        expect(model?.values).toMatchObject({ power: { value: 5000 } });
        expect(Object.keys(model?.values ?? {}).length).toBeGreaterThan(10);
        expect(errors(analysis)).toEqual([]);
    });
    test('an entry of no known base', async () => {
        expect(errors(await analyzeText(withHeater('power 5 kW').replace('is Tarn60', 'is Tarn6O')))).toEqual([expect.stringContaining('There is no heater model called Tarn6O. Is Tarn60 meant?')]);
    });
});
