import { beforeAll, expect, test } from 'vitest';
import type { JobAnalysis } from '../../language/src/analyze.js';
import type { Part } from '../../language/src/engines/parts/part.js';
import { cutListDocument } from '../../language/src/renderings/cut-list-document.js';
import { cutListExport, readCutList } from '../../language/src/renderings/cut-list-json.js';
import { jobTrace, withTextFindings } from '../../language/src/renderings/job-trace.js';
import { notOnList } from '../../language/src/renderings/not-on-list.js';
import { numberingRule } from '../../language/src/renderings/part-place.js';
import { analyzeText, exampleText } from '../support/workspace.js';

const examples = ['birch-point', 'birch-point-mirrored', 'otter-cove', 'gull-watch', 'heron-clinic', 'tern-loft', 'cormorant-club', 'fulmar-ferry'];
let jobs: readonly JobAnalysis[];
beforeAll(async () => { jobs = (await Promise.all(examples.map(name => analyzeText(exampleText(`${name}.hotroom`))))).flatMap(file => file.jobs); });

/** What a number counts in: pieces of one word in one row of one wall, and base plates wall by wall. */
const rowOf = ({ mark, what, goesTo, place }: Part): string => `${mark.replace(/-\d+$/, '')} ${what} ${place?.wall ?? ''} ${/rear end|front end/.exec(goesTo)?.[0] ?? ''}`;

// benches have their own test beside the engine, in rooms of every shape
test('numbers count left to right as seen from inside', () => {
    for (const { results: { parts } } of jobs) {
        const rows = new Map<string, Part[]>();
        for (const part of parts) if (part.place && /-\d+$/.test(part.mark)) rows.set(rowOf(part), [...rows.get(rowOf(part)) ?? [], part]);
        for (const row of rows.values()) {
            const numbers = row.map(({ mark }) => Number(/\d+$/.exec(mark)![0]));
            const inOrder = [...row].sort((a, b) => a.place!.stretches[0]!.from - b.place!.stretches[0]!.from);
            expect(inOrder.map(({ mark }) => mark)).toEqual(row.map(({ mark }) => mark));
            expect(numbers).toEqual([...numbers].sort((a, b) => a - b));
        }
        expect([...rows.values()].some(row => row.length > 1)).toBe(true);
    }
});

test('the left ledger of a bench comes before the right one, and each is on its wall', () => {
    for (const { results: { benches } } of jobs) {
        for (const bench of benches?.result.benches ?? []) {
            for (const [run] of bench.runs.entries()) {
                const held = bench.ledgers.filter(ledger => ledger.run === run && ledger.holds !== 'back').map(({ holds }) => holds);
                expect(held).toEqual([...held].sort()); // 'left end' before 'right end'
            }
            for (const { mark, wall } of bench.ledgers) expect(bench.parts.find(part => part.mark === mark)).toMatchObject({ place: { wall }, goesTo: expect.stringContaining(`onto the ${wall} wall`) as string });
        }
    }
});

test('two pieces under different marks never have the same row in the list', () => {
    for (const { results: { parts } } of jobs) {
        const rows = parts.filter(({ place }) => place).map(({ what, goesTo, place }) => JSON.stringify([what, goesTo, place]));
        expect(new Set(rows).size).toBe(rows.length);
    }
});

test('a piece with a place lies on its wall: no farther than the outside of the room', () => {
    for (const { results: { parts } } of jobs) {
        for (const { place } of parts) {
            if (!place) continue;
            expect(place.stretches.length).toBeGreaterThan(0);
            for (const { from, to } of place.stretches) expect([from >= 0, to <= place.run, from < to]).toEqual([true, true, true]);
        }
    }
});

test('what ships long says its allowance, and finished and allowance make the cut length', () => {
    for (const job of jobs) {
        for (const part of job.results.parts) expect([part.mark, part.allowance !== undefined]).toEqual([part.mark, part.cut === 'site']);
        for (const part of cutListExport([{ analysis: job }]).jobs[0]!.parts) expect(part.finishedLength!.ticks + (part.allowance?.ticks ?? 0)).toBe(part.length.ticks);
    }
    // the finished leg is what the bench engine says it is once it stands
    const { results } = jobs[0]!;
    for (const leg of results.benches!.result.benches.flatMap(({ legs }) => legs)) {
        const part = results.parts.find(({ mark }) => mark === leg.mark)!;
        expect(part.length - part.allowance!).toBe(leg.finishedLength);
    }
});

test('every notch says its end, its face and where that looks, in list, CSV and JSON', () => {
    const notched = jobs.flatMap(job => cutListExport([{ analysis: job }]).jobs[0]!.parts.filter(({ notches }) => notches.length > 0).map(part => ({ job, part })));
    expect(notched.length).toBeGreaterThan(2);
    for (const { job, part } of notched) {
        const wall = job.results.parts.find(({ mark }) => mark === part.mark)!.place!.wall;
        const opposite = { front: 'back', back: 'front', left: 'right', right: 'left' }[wall];
        for (const notch of part.notches) expect(notch).toMatchObject({ measuredFrom: 'head', toward: opposite, faceWidth: part.section.thickness });
        const { tables, csv } = cutListDocument(job);
        for (const text of [JSON.stringify(tables), csv[0]!.text]) expect(text).toContain('from the head (the top end)');
    }
});

test('the list ends with what is not on it, and says the rule of its numbers once', () => {
    for (const job of jobs) {
        const { notes } = cutListDocument(job);
        expect(notes.at(-1)).toBe(`Not on this list: ${notOnList(job).join('; ')}.`);
        expect(notes.filter(note => note === numberingRule)).toHaveLength(1);
        const [exported] = cutListExport([{ analysis: job }]).jobs;
        expect([exported!.notOnList, exported!.numbering]).toEqual([notOnList(job), numberingRule]);
    }
});

test('what is on the list is not said to be missing, and the other way round', async () => {
    const text = exampleText('birch-point.hotroom');
    const said = async (change: (text: string) => string): Promise<string> => notOnList((await analyzeText(change(text))).jobs[0]!).join('; ');
    const named = await said(all => all);
    expect(named).toContain('except the heater blocking listed');
    expect(named).not.toMatch(/blocking for stove|guard of stove|frame and header|ceiling mouldings inside|window/);
    const unnamed = await said(all => all.replace(/ *(guard|backing)_stock .*\n/g, ''));
    expect(unnamed).toContain('blocking for stove, whose stock the job does not name; the guard of stove, whose stock the job does not name');
    expect(unnamed).not.toContain('except the heater blocking listed');
    expect(await said(all => all.replace('from      left 23 7/8"', ''))).toContain('frame and header of door entry, which could not be placed');
    expect(await said(all => all.replace(/\n {4}bench lower[^}]*\}/, '\n    bench lower on back { build Slatted }'))).toContain('bench lower, which could not be laid out');
    for (const thing of ['frames, lining', 'corner boards', 'battens over the facing joints', 'base moulding', 'door leaves', 'screws']) expect(await said(all => all)).toContain(thing);
});

test('a list made before these members were added is still read', () => {
    const list = cutListExport([{ analysis: jobs[0]! }]);
    const added = new Set(['finishedLength', 'allowance', 'place', 'measuredFrom', 'face', 'faceWidth', 'toward', 'panels', 'notOnList', 'numbering', 'ends', 'cutOuts', 'slats', 'practice']);
    const older = JSON.stringify(list, (key, value: unknown) => added.has(key) ? undefined : value);
    expect(readCutList(older).ok).toBe(true);
});

test('mistakes of the text count as errors of the job they stand in, not of the other', async () => {
    const file = await analyzeText('job one {\n    topp 37"\n}\njob two {\n}\n');
    const [one, two] = file.jobs.map(job => withTextFindings(job, file));
    expect(jobTrace(one!).errors).toBe(1);
    expect(one!.findings.some(({ at }) => at.start >= one!.job.block.span.end)).toBe(false);
    expect(two!.findings.some(({ at }) => at.start < one!.job.block.span.end)).toBe(false);
    expect(two!.findings.map(({ rule }) => rule)).toContain('fact-missing');
    const trace = jobTrace({ ...jobs[0]!, findings: [{ at: jobs[0]!.job.block.head, severity: 'error', rule: 'r', message: 'm' }] });
    expect(trace).toEqual({ job: 'birch_point', number: '2417', revision: 'B', errors: 1 });
});
