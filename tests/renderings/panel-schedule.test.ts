import { beforeAll, expect, test } from 'vitest';
import type { Analysis, JobAnalysis } from '../../language/src/analyze.js';
import { walls } from '../../language/src/core/geometry.js';
import { sum } from '../../language/src/core/length.js';
import { cutListDocument } from '../../language/src/renderings/cut-list-document.js';
import { cutListExport } from '../../language/src/renderings/cut-list-json.js';
import { panelSchedule, panelTables } from '../../language/src/renderings/panel-schedule.js';
import { analyzeText, exampleText } from '../support/workspace.js';
import { parseCsv } from './parse-csv.js';

const examples = ['birch-point', 'otter-cove', 'gull-watch', 'heron-clinic', 'tern-loft', 'cormorant-club', 'fulmar-ferry'];
let jobs: readonly JobAnalysis[];
beforeAll(async () => {
    const files: readonly Analysis[] = await Promise.all(examples.map(name => analyzeText(exampleText(`${name}.hotroom`))));
    jobs = files.flatMap(file => file.jobs);
});

test('every panel of the shell stands in table, CSV and JSON, in one order', () => {
    for (const job of jobs) {
        const { result } = job.results.shell!;
        const marks = [...walls.flatMap(wall => result.walls[wall].panels), ...result.ceiling?.panels ?? []].map(({ mark }) => mark);
        expect(marks.length).toBeGreaterThan(8);
        const document = cutListDocument(job);
        expect(document.tables.at(-1)!.rows.map(row => row.cells[0]!.text)).toEqual(marks);
        expect(parseCsv(document.csv.at(-1)!.text).slice(1).map(record => record[4])).toEqual(marks);
        expect(cutListExport([{ analysis: job }]).jobs[0]!.panels!.map(({ mark }) => mark)).toEqual(marks);
    }
});

test('a panel begins where the one before it ends, and the last ends with the outside or the lining', () => {
    for (const job of jobs) {
        const { input, result } = job.results.shell!;
        for (const side of [...walls, 'ceiling'] as const) {
            const panels = panelSchedule(job).filter(one => one.side === side);
            expect(panels.map(({ distance }) => distance)).toEqual(panels.map((_, index) => sum(...panels.slice(0, index).map(({ panel }) => panel.cover))));
            const all = sum(...panels.map(({ panel }) => panel.cover));
            expect(all).toBe(side === 'ceiling' ? result.ceiling!.acrossAxis === 'x' ? input.width : input.depth : result.walls[side].run.to - result.walls[side].run.from);
        }
    }
});

test('overall is the cover and the engagement where there is a tongue, the cover where there is none', () => {
    for (const job of jobs) {
        for (const { panel, tongue } of panelSchedule(job)) expect(panel.overall - panel.cover).toBe(tongue === undefined ? 0 : job.results.shell!.input.system.engagement);
    }
});

test('as the shop reads it: the front wall counts from the right wall, which is on the left hand inside', () => {
    const [table] = panelTables(jobs[0]!);
    const rows = table!.rows.map(row => row.cells.map(({ text }) => text).join(' | '));
    expect(rows.slice(0, 4)).toEqual([
        'FRONT-1 | front | 0" | outside right | module | 18" | 18" | 78 3/4" | none |  | ',
        'FRONT-2 | front | 18" | outside right | module | 12" | 12 3/8" | 78 3/4" | left |  | ',
        'FRONT-3 | front | 30" | outside right | door section | 30" | 30 3/8" | 78 3/4" | left | door entry | door entry: frame 27 1/4" x 78 1/8", 2 1/8" from the panel\'s left edge, down to the finished floor',
        'FRONT-4 | front | 60" | outside right | module | 24" | 24 3/8" | 78 3/4" | left | vent exhaust | vent exhaust: opening 8" x 4", 9 1/4" from the panel\'s left edge, bottom 4" over the finished floor (2 1/2" over the panel\'s lower edge)',
    ]);
    expect(rows.at(-1)).toBe('CEILING-4 | ceiling | 61 1/2" | outside back | module | 18" | 18 3/8" | 84" | back |  | ');
    expect(rows.filter(row => row.includes('door entry'))).toHaveLength(1);
    expect(rows.filter(row => row.includes('vent intake')).every(row => row.startsWith('RIGHT-'))).toBe(true);
});

test('a thickness stands in the footer when there is one, in a column when there are several', async () => {
    const [table] = panelTables(jobs[0]!);
    expect(table!.footer![0]).toMatch(/ All are 3 3\/4" thick\.$/);
    const [thin] = (await analyzeText(exampleText('birch-point.hotroom').replace('height    7\'0"', 'height    7\'0"\n        no_facing left'))).jobs;
    const [other] = panelTables(thin!);
    expect(other!.columns.map(({ id }) => id)).toContain('thickness');
    for (const row of other!.rows) expect(row.cells).toHaveLength(other!.columns.length);
    const csv = cutListDocument(thin!).csv.at(-1)!.text;
    expect(csv).toContain('lining of the front wall');
});

test('a side that does not close is named, not left out in silence', async () => {
    const text = exampleText('birch-point.hotroom');
    const [job] = (await analyzeText(text.replace('from      left 23 7/8"', 'from      left 5 3/8"'))).jobs;
    const [table] = panelTables(job!);
    expect(table!.footer).toContain('Without panels, because it does not close: front wall.');
    expect(table!.rows.some(row => row.cells[0]!.text.startsWith('FRONT'))).toBe(false);
});
test('no shell, no schedule', async () => {
    const [job] = (await analyzeText('job j {\n}')).jobs;
    expect(panelTables(job!)).toEqual([]);
});

test('the holes of a wall lie in its panels where the job puts them, and their parts make them whole', () => {
    let split = 0;
    for (const job of jobs) {
        const { input, result } = job.results.shell!;
        const scheduled = panelSchedule(job);
        const inPanels = scheduled.flatMap(({ cutOuts, panel }) => cutOuts.map(cutOut => ({ ...cutOut, u: panel.at.from + cutOut.fromLeft, cover: panel.cover, plate: input.system.plate.section.thickness })));
        for (const { fromLeft, width, cover, overFloor, overPanel, plate } of inPanels) {
            expect([fromLeft >= 0, fromLeft + width <= cover, overPanel]).toEqual([true, true, Math.max(0, overFloor - plate)]);
        }
        for (const { name, vent } of job.results.air!.vents) {
            if (!vent || result.walls[vent.wall].panels.length === 0) continue;
            const own = inPanels.filter(({ of }) => of === `vent ${name}`).sort((a, b) => a.u - b.u);
            // a vent is as wide and as high as the job says, its lower edge where the job says
            expect([own[0]!.u, sum(...own.map(({ width }) => width)), own[0]!.height, own[0]!.overFloor]).toEqual([vent.onWall.u.from, vent.size.width, vent.size.height, vent.lowerEdge]);
            expect(own.map(({ isPart }) => isPart)).toEqual(own.map(() => own.length > 1));
            if (own.length > 1) split++;
        }
        for (const { name, window } of job.results.windows) {
            const [glass, ...more] = inPanels.filter(({ of }) => of === `window ${name}`);
            expect(more).toEqual([]);
            // glass in the middle of its section
            expect([glass!.u, glass!.fromLeft * 2 + glass!.width, glass!.overFloor]).toEqual([window!.glass.u.from, glass!.cover, window!.glass.v.from]);
        }
        const exported = cutListExport([{ analysis: job }]).jobs[0]!.panels!.flatMap(({ cutOuts }) => cutOuts ?? []);
        expect(exported.map(({ of, width, fromLeftEdge, overFinishedFloor }) => [of, width.ticks, fromLeftEdge.ticks, overFinishedFloor.ticks]))
            .toEqual(inPanels.map(({ of, width, fromLeft, overFloor }) => [of, width, fromLeft, overFloor]));
        const [header, ...records] = parseCsv(cutListDocument(job).csv.at(-1)!.text);
        expect(records.map(record => record[header!.indexOf('cut_outs')])).toEqual(scheduled.map(({ panel }) => cutListExport([{ analysis: job }]).jobs[0]!.panels!.find(({ mark }) => mark === panel.mark)!.cutOuts!.map(({ text }) => text).join('; ')));
    }
    expect(split).toBeGreaterThan(0);
});
