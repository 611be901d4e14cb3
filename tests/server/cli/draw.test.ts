import { readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { viewNames } from '../../../language/src/drawings/views/view.js';
import { birchPoint, Folder, misspelt } from './command-line.js';

describe('drawings of a sound job', () => {
    test('every view in a folder of its own, each named as it is written', async () => {
        const folder = birchPoint();
        const { code, out, err } = await folder.run(['draw', 'birch-point.hotroom']);
        expect([code, err]).toEqual([0, '']);
        const names = viewNames.map(view => `birch-point-${view}.svg`);
        expect(out.trim().split('\n')).toEqual(names.map(name => `drawings/${name}`));
        expect(readdirSync(folder.at('drawings')).sort()).toEqual([...names].sort());
        expect(folder.read('drawings/birch-point-plan.svg')).toMatch(/^<svg [^>]*width="431.8mm"[\s\S]*Birch Point bathhouse[\s\S]*No approval of any kind/);
    });
    test('one view on another paper, elsewhere, twice the same', async () => {
        const folder = birchPoint();
        const words = ['draw', 'birch-point.hotroom', '--view', 'heater', '--paper', 'a4', '--out', 'sheets/of heater'];
        expect((await folder.run(words)).out).toBe('sheets/of heater/birch-point-heater.svg\n');
        const first = folder.read('sheets/of heater/birch-point-heater.svg');
        await folder.run(words);
        expect(folder.read('sheets/of heater/birch-point-heater.svg')).toBe(first);
        expect(first).toContain('width="297mm" height="210mm"');
    });
});
describe('other formats', () => {
    test('pdf is one file of all sheets, or of the one asked for', async () => {
        const folder = birchPoint();
        expect((await folder.run(['draw', 'birch-point.hotroom', '--format', 'pdf'])).out).toBe('drawings/birch-point.pdf\n');
        expect((await folder.run(['draw', 'birch-point.hotroom', '--format', 'pdf', '--view', 'base'])).out).toBe('drawings/birch-point-base.pdf\n');
        expect(folder.read('drawings/birch-point.pdf')).toMatch(/^%PDF-1/);
    });
    test('dxf is a file a view', async () => {
        const folder = birchPoint();
        expect((await folder.run(['draw', 'birch-point.hotroom', '--format', 'dxf', '--view', 'plan'])).out).toBe('drawings/birch-point-plan.dxf\n');
        expect(folder.read('drawings/birch-point-plan.dxf')).toMatch(/DIMENSIONS[\s\S]*No approval of any kind[\s\S]*EOF\s*$/);
    });
});
describe('what cannot be drawn', () => {
    test.each([
        [['draw'], 'hotroom draw wants job files'], [['draw', 'birch-point.hotroom', '--job', 'birch_pont'], 'There is no job called birch_pont. Is birch_point meant?'],
        [['draw', 'birch-point.hotroom', '--view', 'plans'], 'plan'], [['draw', 'birch-point.hotroom', '--format', 'png'], 'svg'],
    ])('%j', async (words, said) => {
        const { code, err } = await birchPoint().run(words);
        expect(code).toBe(2);
        expect(err).toContain(said);
    });
    test('a job without sizes leaves no file and says so', async () => {
        const folder = new Folder({ 'j.hotroom': misspelt });
        const { code, out, err } = await folder.run(['draw', 'j.hotroom']);
        expect([code, out]).toEqual([1, '']);
        expect(err).toContain('there is nothing to draw of j');
    });
    test('a job with errors says so on its sheets and at the end', async () => {
        const folder = birchPoint();
        folder.write('b.hotroom', folder.read('birch-point.hotroom').replace('from      front 8"', 'from      front 1"'));
        const { code, err } = await folder.run(['draw', 'b.hotroom', '--view', 'plan']);
        expect(code).toBe(1);
        expect(err).toMatch(/the drawings stand with \d+ errors?\. Do not build/);
        expect(folder.read('drawings/birch-point-plan.svg')).toMatch(/STANDS WITH \d+ ERRORS?: DO NOT BUILD/);
    });
    test('a folder that cannot be made', async () => {
        const folder = birchPoint();
        folder.write('taken', 'x');
        const { code, err } = await folder.run(['draw', 'birch-point.hotroom', '--out', 'taken']);
        expect(code).toBe(3);
        expect(err).toMatch(/^hotroom: Cannot (make|write)/);
    });
});
