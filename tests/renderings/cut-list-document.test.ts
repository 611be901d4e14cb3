import { beforeAll, expect, test } from 'vitest';
import { tablesDocumentSchema } from '../../client/src/tables-document.js';
import type { Analysis } from '../../language/src/analyze.js';
import { catalogueEntries } from '../../language/src/model/given-facts.js';
import { planStockGreedy } from '../../language/src/engines/stock/plan-stock.js';
import { cutListDocument } from '../../language/src/renderings/cut-list-document.js';
import { cutListExport, cutListJsonSchema, readCutList } from '../../language/src/renderings/cut-list-json.js';
import { sourceOfPart } from '../../language/src/renderings/part-source.js';
import { stockOffers } from '../../language/src/renderings/stock-offers.js';
import { planTasks, stockTasks, type PlannedStock } from '../../language/src/renderings/stock-tasks.js';
import { TextLines } from '../../language/src/renderings/text-lines.js';
import { analyzeText, exampleText, TestWorkspace } from '../support/workspace.js';
import { parseCsv } from './parse-csv.js';

const text = exampleText('birch-point.hotroom');
let analysis: Analysis;
let job: Analysis['jobs'][number];
let planned: readonly PlannedStock[];

beforeAll(async () => {
    analysis = await analyzeText(text);
    job = analysis.jobs[0]!;
    planned = await planTasks(stockTasks(job.results.parts, stockOffers(job.job)), async request => ({ plan: planStockGreedy(request) }));
});

test('the page takes the document once offsets are lines and columns', () => {
    const lines = new TextLines(text);
    const document = cutListDocument(job, planned);
    const shown = {
        ...document,
        tables: document.tables.map(table => ({
            ...table, rows: table.rows.map(({ cells, at }) => ({ cells, ...(at && { at: { uri: at.uri, range: { start: lines.at(at.start), end: lines.at(at.end) } } }) })),
        })),
    };
    expect(tablesDocumentSchema.safeParse(JSON.parse(JSON.stringify(shown))).error).toBeUndefined();
});

test('every row of the list leads to the block that makes the part', () => {
    const byMark = new Map(cutListDocument(job).tables.filter(({ id }) => id.startsWith('cut-')).flatMap(table => table.rows.map(row => [row.cells[0]!.text, row.at && text.slice(row.at.start, row.at.end)])));
    expect(byMark.get('UPPER-RAIL-1')).toBe('bench upper');
    expect(byMark.get('LOWER-SLAT-1')).toBe('bench lower');
    expect(byMark.get('BASE-BACK')).toBe('room');
    expect(byMark.get('ENTRY-HEADER-1')).toBe('door entry');
    expect([...byMark.values()]).not.toContain(undefined);
});

test('a longer name that fits goes before a shorter one', async () => {
    const { jobs } = await analyzeText('job j {\n bench upper on back { top 37" }\n bench upper_left on left { top 37" }\n door side_door on front { hinge left }\n}');
    const source = 'job j {\n bench upper on back { top 37" }\n bench upper_left on left { top 37" }\n door side_door on front { hinge left }\n}';
    const of = (mark: string): string | undefined => { const at = sourceOfPart({ mark }, jobs[0]!.job); return at && source.slice(at.start, at.end); };
    expect([of('UPPER_LEFT-RAIL-1'), of('UPPER-RAIL-1'), of('SIDE-DOOR-HEAD-1'), of('UPPERMOST-1')]).toEqual(['bench upper_left', 'bench upper', 'door side_door', undefined]);
});

test('all pieces of the job are listed, and all of them planned', () => {
    const pieces = job.results.parts.reduce((count, part) => count + part.count, 0);
    const document = cutListDocument(job, planned);
    const listed = document.tables.filter(({ id }) => id.startsWith('cut-')).flatMap(table => table.rows.map(row => Number(row.cells[2]!.text)));
    expect(pieces).toBeGreaterThan(30);
    expect(listed.reduce((a, b) => a + b, 0)).toBe(pieces);
    expect(planned.flatMap(one => one.plan?.boards ?? []).reduce((count, board) => count + board.cuts.length, 0)).toBe(pieces);
});

test('title, number and revision stand at its head, cautions defer and approve of nothing', () => {
    const { title, subtitle, revision, cautions } = cutListDocument(job, planned);
    expect([title, subtitle, revision]).toEqual(['Birch Point bathhouse: cut list and stock plan', 'Job birch_point, number 2417', 'B']);
    const all = cautions.join('\n');
    for (const word of ['no approval', 'manual', 'local code', 'licensed electrician', 'Lifting']) expect(all).toContain(word);
});

test('notes name rule sets with editions, the manual, the catalogue, and what was not checked', () => {
    const workspace = new TestWorkspace();
    workspace.addCatalogues();
    const document = workspace.add('birch.hotroom', text);
    return workspace.build().then(() => {
        const [one] = workspace.analyze(document).jobs;
        const catalogues = workspace.shared.workspace.LangiumDocuments.all.toArray().flatMap(other => workspace.analyze(other).file.catalogues);
        const notes = cutListDocument(one!, undefined, { catalogues }).notes.join('\n');
        for (const words of ['National Electrical Code (NFPA 70), 2023', 'Tarn 60 installation sheet, demo edition 2', 'Skerry Works (fictional), edition demo 1', 'Not checked: ', 'sprinklers', '1/32"']) expect(notes).toContain(words);
    });
});

test('open findings are the first note', () => {
    const at = job.job.block.head;
    const findings = (['error', 'warning', 'error', 'hint'] as const).map(severity => ({ at, severity, rule: 'r', message: 'm' }));
    expect(cutListDocument({ ...job, findings }).notes[0]).toBe('This job stands with 2 errors and 1 warning. Do not cut before the errors are settled.');
    expect(cutListDocument({ ...job, findings: findings.slice(1, 2) }).notes[0]).toBe('This job stands with 1 warning.');
});

test('what could not be read is said, wherever in the job it stands', async () => {
    const said = 'Part of this job could not be read; what depends on it is left out.';
    const [broken] = (await analyzeText(text.replace('hinge     left', 'hinge     sideways'))).jobs;
    expect(cutListDocument(broken!).notes).toContain(said);
    expect(cutListExport([{ analysis: broken! }]).jobs[0]!.isWhole).toBe(false);
    expect(cutListDocument(job).notes).not.toContain(said);
});

test('an empty job makes an empty list, not an error', async () => {
    const [empty] = (await analyzeText('job j {\n}')).jobs;
    const document = cutListDocument(empty!, []);
    expect([document.tables, document.csv]).toEqual([[], []]);
    expect(document.notes.join()).toContain('No published rule set is named in this job');
});

test('the files have names every system takes', async () => {
    expect(cutListDocument(job, planned).csv.map(({ fileName }) => fileName)).toEqual(['birch_point-cut-list.csv', 'birch_point-stock-plan.csv', 'birch_point-panels.csv']);
    const parts = parseCsv(cutListDocument(job).csv[0]!.text);
    expect(parts).toHaveLength(job.results.parts.length + 1);
});

test('equal jobs give equal documents', async () => {
    const again = (await analyzeText(text)).jobs[0]!;
    expect(JSON.stringify(cutListDocument(again))).toBe(JSON.stringify(cutListDocument(job)));
});

test('the stocks a job reaches are those its system and builds name', () => {
    const offers = stockOffers(job.job);
    for (const name of new Set(job.results.parts.map(part => part.material.stock))) expect(offers.has(name!)).toBe(true);
    expect(offers.get('alder_2x4')).toMatchObject({ nominal: '2x4', species: 'alder', price: { minor: 340, currency: 'USD', per: 'ft' } });
    expect(new Set(catalogueEntries(job.job).map(({ kind }) => kind))).toContain('heater_model');
});

test('exported as data it is read back the same, lengths exact', () => {
    const list = cutListExport([{ analysis: job, planned, showFile: uri => uri.replace('memory:/jobs/', '') }]);
    const read = readCutList(JSON.stringify(list));
    expect(read).toEqual({ ok: true, list: JSON.parse(JSON.stringify(list)) as unknown });
    const [first] = list.jobs;
    expect(first).toMatchObject({ name: 'birch_point', number: '2417', revision: 'B', unit: 'in' });
    const rail = first!.parts.find(({ mark }) => mark === 'UPPER-RAIL-1')!;
    const own = job.results.parts.find(({ mark }) => mark === 'UPPER-RAIL-1')!;
    expect(rail).toMatchObject({ length: { ticks: own.length, text: '73 1/2"' }, cut: 'shop', at: { file: 'job.hotroom' } });
    expect(list.cautions.length).toBeGreaterThan(0);
});

test.each([
    ['no JSON', 'This is not JSON.'], ['{}', 'format'], ['{"format":"hotroom-cut-list","version":2,"jobs":[],"cautions":[]}', 'version'],
    ['{"format":"hotroom-cut-list","version":1,"jobs":[{"name":3}],"cautions":[]}', 'jobs.0.name'],
])('%s is refused with the place named', (written, why) => {
    const read = readCutList(written);
    expect(read.ok ? '' : read.why).toContain(why);
});

test('the JSON Schema names every member of the export', () => {
    const list = cutListExport([{ analysis: job, planned }]);
    const schema = JSON.stringify(cutListJsonSchema());
    const names = new Set<string>();
    JSON.stringify(list, (key, value: unknown) => { if (key !== '' && !/^\d+$/.test(key)) names.add(key); return value; });
    for (const name of names) expect(schema).toContain(`"${name}"`);
    expect(cutListJsonSchema()).toMatchObject({ $schema: 'https://json-schema.org/draft/2020-12/schema', type: 'object' });
});
