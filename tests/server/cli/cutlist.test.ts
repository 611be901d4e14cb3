import { readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readCutList } from '../../../language/src/renderings/cut-list-json.js';
import { parseCsv } from '../../renderings/parse-csv.js';
import { birchPoint, Folder } from './command-line.js';

describe('a sound job', () => {
    test('its list and plan as text', async () => {
        const { code, out, err } = await birchPoint().run(['cutlist', 'birch-point.hotroom']);
        expect([code, err]).toEqual([0, '']);
        for (const words of ['Birch Point bathhouse: cut list and stock plan', 'UPPER-RAIL-1', 'Boards to pull', 'Proven optimum', 'Catalogue used: Skerry Works (fictional)', 'no approval', 'birch-point.hotroom:']) expect(out).toContain(words);
        expect(Math.max(...out.split('\n').map(line => line.length))).toBeLessThanOrEqual(150);
    });
    test('places are named by the file alone, without its folder', async () => {
        const folder = birchPoint();
        folder.write('jobs/b.hotroom', folder.read('birch-point.hotroom').replaceAll('"catalogue/', '"../catalogue/'));
        expect((await folder.run(['cutlist', 'jobs/b.hotroom', '--no-stock'])).out).toMatch(/ {2}b\.hotroom:\d+\n/);
    });
    test('without the plan', async () => {
        const { out } = await birchPoint().run(['cutlist', 'birch-point.hotroom', '--no-stock']);
        expect(out).toContain('Birch Point bathhouse: cut list\n');
        expect(out).not.toContain('Boards to pull');
    });
    test('as markdown', async () => {
        const { out } = await birchPoint().run(['cutlist', 'birch-point.hotroom', '--format', 'markdown']);
        expect(out).toMatch(/^# Birch Point bathhouse: cut list and stock plan\n/);
        expect(out).toContain('| Mark | Part | Count |');
    });
    test('as json that is read back', async () => {
        const read = readCutList((await birchPoint().run(['cutlist', 'birch-point.hotroom', '--format', 'json'])).out);
        expect(read).toMatchObject({ ok: true, list: { jobs: [{ name: 'birch_point', isWhole: true }] } });
        const [job] = read.ok ? read.list.jobs : [];
        expect(job!.parts[0]!.at!.file).toBe('birch-point.hotroom');
        expect(job!.stockPlan!.every(({ plan }) => plan?.proof === 'proven')).toBe(true);
    });
    test('as csv the list alone', async () => {
        const { code, out } = await birchPoint().run(['cutlist', 'birch-point.hotroom', '--format', 'csv']);
        const [header, ...records] = parseCsv(out);
        expect([code, header!.slice(0, 5)]).toEqual([0, ['job', 'number', 'revision', 'errors', 'mark']]);
        expect(new Set(records.map(record => record.slice(0, 4).join()))).toEqual(new Set(['birch_point,2417,B,0']));
        expect(records.length).toBeGreaterThan(15);
        expect(records.every(record => /^birch-point\.hotroom:\d+$/.test(record.at(-1)!))).toBe(true);
    });
    test('as csv with the plan beside it, and nothing else left behind', async () => {
        const folder = birchPoint();
        expect(await folder.run(['cutlist', 'birch-point.hotroom', '--format', 'csv', '--stock', '--out', 'birch.csv'])).toEqual({ code: 0, out: '', err: '' });
        expect(parseCsv(folder.read('birch.csv'))[0]).toContain('goes_to');
        expect(parseCsv(folder.read('birch-stock-plan.csv'))[0]).toContain('offcut_mm');
        expect(parseCsv(folder.read('birch-panels.csv'))[0]).toContain('overall_mm');
        expect(readdirSync(folder.path).sort()).toEqual(['birch-panels.csv', 'birch-point.hotroom', 'birch-stock-plan.csv', 'birch.csv', 'catalogue']);
    });
    test.each([['parts', 'mark', 'UPPER-RAIL-1'], ['panels', 'panel', 'FRONT-1'], ['stock', 'stock', 'alder_2x4']])('as csv the one table of %s', async (table, column, value) => {
        const { code, out, err } = await birchPoint().run(['cutlist', 'birch-point.hotroom', '--format', 'csv', '--table', table]);
        const [header, ...records] = parseCsv(out);
        expect([code, err, header![4]]).toEqual([0, '', column]);
        expect(records.map(record => record[4])).toContain(value);
    });
    test('a file is the same whatever terminal it was made in', async () => {
        const folder = birchPoint();
        await folder.run(['cutlist', 'birch-point.hotroom', '--out', 'narrow.txt'], { isTTY: true, columns: 60 });
        await folder.run(['cutlist', 'birch-point.hotroom', '--out', 'wide.txt']);
        expect(folder.read('narrow.txt')).toBe(folder.read('wide.txt'));
    });
    test('an older list is replaced', async () => {
        const folder = birchPoint();
        folder.write('list.txt', 'old');
        expect((await folder.run(['cutlist', 'birch-point.hotroom', '--out', 'list.txt', '--no-stock'])).code).toBe(0);
        expect(folder.read('list.txt')).not.toContain('old\n');
    });
    test('when the time is over the best plan so far stands, and says so where it is not proven', async () => {
        const folder = birchPoint();
        // lengths close together leave the quick plan a gap to close
        folder.write('catalogue/skerry.hotroom', folder.read('catalogue/skerry.hotroom').replace("lengths   8', 10', 12'\n        price     3.40", "lengths   85\", 97\", 111\", 127\"\n        price     3.40"));
        const { code, out } = await folder.run(['cutlist', 'birch-point.hotroom', '--seconds', '0.000001']);
        expect([code, out.includes('Boards to pull')]).toEqual([0, true]);
        const said = out.replaceAll(/\s+/g, ' ').match(/The 0\.000001 s allowed were over; --seconds gives more time\./g);
        expect(said?.length).toBeGreaterThan(0);
        expect(said).toHaveLength(out.match(/Not proven/g)?.length ?? 0);
        expect((await folder.run(['cutlist', 'birch-point.hotroom'])).out).not.toContain('allowed were over');
    });
});

test('a list is never written over a job file', async () => {
    const folder = birchPoint();
    const before = folder.read('birch-point.hotroom');
    const { code, err } = await folder.run(['cutlist', 'birch-point.hotroom', '--out', 'birch-point.hotroom']);
    expect([code, folder.read('birch-point.hotroom') === before]).toEqual([2, true]);
    expect(err).toContain('birch-point.hotroom is the name of a job file');
});

describe('jobs', () => {
    const two = 'job one_room "One" {\n}\njob two_rooms {\n}\n';
    test('all of a file, or the one named', async () => {
        const folder = new Folder({ 'a.hotroom': two });
        expect((await folder.run(['cutlist', 'a.hotroom'])).out).toMatch(/One: cut list[^]*two_rooms: cut list/);
        const { out } = await folder.run(['cutlist', 'a.hotroom', '--job', 'two_rooms']);
        expect(out).not.toContain('One');
        expect(out).toContain('There is nothing to cut in this job yet.');
    });
    test.each([
        [['--job', 'two_room'], 'There is no job called two_room. Is two_rooms meant?'],
        [['--job', 'elsewhere_entirely'], 'There is no job called elsewhere_entirely. There are one_room and two_rooms.'],
    ])('%j', async (words, message) => {
        expect(await new Folder({ 'a.hotroom': two }).run(['cutlist', 'a.hotroom', ...words])).toEqual({ code: 2, out: '', err: `hotroom: ${message}\n` });
    });
    test('a file without a job', async () => {
        expect(await new Folder({ 'a.hotroom': 'catalogue c {\n}\n' }).run(['cutlist', 'a.hotroom'])).toEqual({ code: 2, out: '', err: 'hotroom: There is no job in a.hotroom.\n' });
    });
    test('only the findings of the listed job count', async () => {
        const folder = birchPoint();
        folder.write('a.hotroom', `${folder.read('birch-point.hotroom')}\njob bad {\n    topp 37"\n}\n`);
        expect(await folder.run(['cutlist', 'a.hotroom', '--job', 'birch_point', '--no-stock'])).toMatchObject({ code: 0, err: '' });
        const { code, out, err } = await folder.run(['cutlist', 'a.hotroom', '--job', 'bad']);
        expect([code, out.startsWith('bad: cut list')]).toEqual([1, true]);
        expect(err).toBe('hotroom: the list stands with 1 error. Do not cut before it is settled; hotroom check says what is wrong.\n');
        expect((await folder.run(['cutlist', 'a.hotroom', '--job', 'bad', '--fail-on', 'never'])).code).toBe(0);
    });
    test('a broken job still gives what is sound of it', async () => {
        const folder = birchPoint();
        folder.write('birch-point.hotroom', folder.read('birch-point.hotroom').replace('hinge     left', 'hinge     sideways'));
        const { code, out } = await folder.run(['cutlist', 'birch-point.hotroom']);
        expect(code).toBe(1);
        expect(out).toContain('UPPER-RAIL-1');
        expect(out).toContain('Part of this job could not be read');
        expect(out).toMatch(/^Job birch_point, number 2417, stands with \d+ errors?: do not cut, revision B$/m);
        const [header, ...records] = parseCsv((await folder.run(['cutlist', 'birch-point.hotroom', '--format', 'csv'])).out);
        expect(records.every(record => Number(record[header!.indexOf('errors')]) > 0)).toBe(true);
    });
    test('pieces no board is long enough for are warned of, also when the format has no room for it', async () => {
        const folder = birchPoint();
        const catalogue = folder.read('catalogue/skerry.hotroom');
        folder.write('catalogue/skerry.hotroom', catalogue.replace("lengths   6', 8', 10', 12'", "lengths   6'"));
        expect(folder.read('catalogue/skerry.hotroom')).not.toBe(catalogue);
        const { err } = await folder.run(['cutlist', 'birch-point.hotroom', '--format', 'csv', '--stock', '--out', 'a.csv', '--fail-on', 'never']);
        expect(err).toMatch(/the stock plan of birch_point leaves out \d+ pieces; the list without --format csv says which and why\.\n$/);
    });
});

describe('wrong use', () => {
    test.each([
        [['cutlist'], 'hotroom cutlist wants job files.'],
        [['cutlist', 'a.hotroom', '--format', 'csv', '--stock'], 'Two tables do not go into one csv. Give --out FILE for both, or --table stock for the plan alone.'],
        [['cutlist', 'a.hotroom', '--table', 'panels'], '--table goes with --format csv; the other formats hold every table.'],
        [['cutlist', 'a.hotroom', '--format', 'csv', '--table', 'stock', '--no-stock'], '--table stock and --no-stock do not go together.'],
        [['cutlist', 'a.hotroom', '--seconds', 'soon'], '--seconds wants a number above 0, up to a day, not soon.'],
        [['cutlist', 'a.hotroom', '--seconds', '0'], '--seconds wants a number above 0, up to a day, not 0.'],
        [['cutlist', 'a.hotroom', '--seconds', '1e9'], '--seconds wants a number above 0, up to a day, not 1e9.'],
        [['cutlist', 'a.hotroom', '--format', 'markdow'], '--format takes text, markdown, csv, json, not markdow. Is markdown meant?'],
        [['cutlist', 'a.hotroom', '--no-stok'], 'hotroom cutlist has no option --no-stok. Is --no-stock meant?'],
    ])('%j', async (words, message) => {
        expect(await new Folder({ 'a.hotroom': 'job j {\n}\n' }).run(words)).toEqual({ code: 2, out: '', err: `hotroom: ${message}\n` });
    });
    test.each([['gone/list.txt', 'there is no such file'], ['folder', 'it is a folder']])('3: it cannot be written to %s', async (out, reason) => {
        const folder = new Folder({ 'a.hotroom': 'job j {\n}\n', 'folder/x': '' });
        expect(await folder.run(['cutlist', 'a.hotroom', '--out', out])).toEqual({ code: 3, out: '', err: `hotroom: Cannot write ${out}: ${reason}.\n` });
        expect(readdirSync(folder.path).sort()).toEqual(['a.hotroom', 'folder']);
    });
});
