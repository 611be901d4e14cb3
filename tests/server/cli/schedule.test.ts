import { describe, expect, test } from 'vitest';
import { toConfirm } from '../../../language/src/engines/electrical/index.js';
import { readElectricalSchedule } from '../../../language/src/renderings/electrical-schedule-data.js';
import { zoneScopeLine } from '../../../language/src/rule-sets/index.js';
import { parseCsv } from '../../renderings/parse-csv.js';
import { exampleText } from '../../support/workspace.js';
import { birchPoint, Folder } from './command-line.js';

const fulmar = (): Folder => new Folder(Object.fromEntries(['fulmar-ferry.hotroom', 'catalogue/skerry.hotroom', 'catalogue/heaters.hotroom'].map(name => [name, exampleText(name)])));

describe('the schedule of a sound job', () => {
    test('as text: every figure with formula, inputs and source, and what stands on every page below every table', async () => {
        const { code, out, err } = await birchPoint().run(['schedule', 'birch-point.hotroom']);
        expect([code, err]).toEqual([0, '']);
        for (const words of ['Birch Point bathhouse: electrical schedule', '1.25 × I', 'I = 25 A', 'NEC 2023, 424.4(B)', '2 × 8 AWG copper', 'Run, cellar', 'Not checked', 'Tarn 60 installation sheet, demo edition 2', 'Catalogue used: Tarn heaters (fictional)']) expect(out).toContain(words);
        const tables = out.split('\n').filter(line => /^-{2,}( {2}-+)*$/.test(line)).length;
        expect(tables).toBeGreaterThanOrEqual(3);
        expect(out.split(toConfirm).length - 1).toBe(tables + 1);
        expect(out).not.toMatch(/\bapproved\b/i);
    });
    test('as markdown and html; nothing of the page comes from elsewhere', async () => {
        const markdown = await birchPoint().run(['schedule', 'birch-point.hotroom', '--format', 'markdown']);
        expect(markdown.out).toMatch(/^# Birch Point bathhouse: electrical schedule\n/);
        const html = await birchPoint().run(['schedule', 'birch-point.hotroom', '--format', 'html']);
        expect(html.out).toMatch(/^<!DOCTYPE html>\n<html lang="en">/);
        expect(html.out).toContain(`<footer class="every-page">${toConfirm}</footer>`);
        expect(html.out).toMatch(/footer\.every-page \{ position: fixed/);
        expect(html.out).not.toMatch(/<script|https?:|<link|<img/);
    });
    test('as json that is read back', async () => {
        const read = readElectricalSchedule((await birchPoint().run(['schedule', 'birch-point.hotroom', '--format', 'json'])).out);
        const lines = read.ok ? read.schedule.jobs[0]?.circuits[0]?.lines ?? [] : [];
        expect(lines.find(({ key }) => key === 'current')).toMatchObject({ value: 25, unit: 'A', formula: 'I = P / V', inputs: [{ name: 'P', text: '6000 W' }, { name: 'V', text: '240 V' }] });
        expect(readElectricalSchedule('{}')).toMatchObject({ ok: false });
    });
    test('as csv: each record says that it is to be confirmed', async () => {
        const [header, ...records] = parseCsv((await birchPoint().run(['schedule', 'birch-point.hotroom', '--format', 'csv'])).out);
        expect(header?.slice(0, 5)).toEqual(['job', 'number', 'revision', 'errors', 'heater']);
        expect(new Set(records.map(record => record.at(-1)))).toEqual(new Set([toConfirm]));
        expect(records.length).toBeGreaterThan(15);
    });
    test('by the IEC rules with the zones as solids and the scope line', async () => {
        const { out } = await fulmar().run(['schedule', 'fulmar-ferry.hotroom', '--format', 'markdown']);
        // Heater casing 400 x 550 mm on the right wall 200 mm from the front: zone 1 reaches 500 mm from it, and is cut off by the cold side of the wall.
        for (const words of ['## Zones', 'corners rounded with 500 mm', 'outside zone 1, 0 mm to 1000 mm over the floor', zoneScopeLine.slice(0, 60)]) expect(out).toContain(words);
        const read = readElectricalSchedule((await fulmar().run(['schedule', 'fulmar-ferry.hotroom', '--format', 'json'])).out);
        expect(read.ok && read.schedule.jobs[0]?.zones).toMatchObject({ scope: zoneScopeLine, zones: [{ zone: 1 }, { zone: 2 }, { zone: 3 }] });
    });
});

test('what is not stated is not said to be: terminals unmarked, usual insulation named as such, the run in feet', async () => {
    const { out } = await birchPoint().run(['schedule', 'birch-point.hotroom', '--format', 'markdown']);
    for (const words of ['terminals = not marked', 'The rating of the insulation is not stated; wire of 90 °C, as it is usually bought, is taken.', '| Length of the run | 34\' |']) expect(out).toContain(words);
    const folder = birchPoint();
    folder.write('birch-point.hotroom', folder.read('birch-point.hotroom').replace('disconnect_in_sight yes', 'disconnect_in_sight yes; terminals degC_75; insulation degC_75'));
    const stated = (await folder.run(['schedule', 'birch-point.hotroom', '--format', 'markdown'])).out;
    expect(stated).toContain('terminals = marked 75 °C');
    expect(stated).not.toContain('insulation is not stated');
});
test('a sensor on the lining stands in the zone that reaches to the cold side behind it', async () => {
    const { out } = await fulmar().run(['schedule', 'fulmar-ferry.hotroom', '--format', 'markdown']);
    expect(out).toContain('| sensor | zone 1 |');
});

test('names a job cannot say get into the page as text', async () => {
    const folder = birchPoint();
    folder.write('birch-point.hotroom', folder.read('birch-point.hotroom').replace('"Birch Point bathhouse"', '"<script>x</script> & Co"'));
    expect((await folder.run(['schedule', 'birch-point.hotroom', '--format', 'html'])).out).toContain('&lt;script&gt;x&lt;/script&gt; &amp; Co');
});
test('a job without a heater has an empty schedule that says what it needs', async () => {
    const folder = birchPoint();
    folder.write('birch-point.hotroom', folder.read('birch-point.hotroom').replace('model     Tarn60', ''));
    const { code, out, err } = await folder.run(['schedule', 'birch-point.hotroom']);
    expect(code).toBe(1);
    expect(err).toContain('the schedule stands with');
    expect(out).toContain('No circuit could be worked out');
});
test('is not written over a job', async () => {
    expect(await birchPoint().run(['schedule', 'birch-point.hotroom', '--out', 'birch-point.hotroom'])).toMatchObject({ code: 2, out: '' });
});
