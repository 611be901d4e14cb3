import { describe, expect, test } from 'vitest';
import type { Edit } from '../../language/src/core/finding.js';
import { convertUnits } from '../../language/src/editing/refactorings/convert-units.js';
import { extractSeries } from '../../language/src/editing/refactorings/extract-series.js';
import { moveEntry } from '../../language/src/editing/refactorings/move-entry.js';
import { waiveFindings } from '../../language/src/editing/refactorings/waive-finding.js';
import { withStandardJob } from '../support/standard-job.js';
import { analyzeText, exampleText } from '../support/workspace.js';
import { rawOf, withCursor } from './sample.js';

const uri = 'memory:/jobs/job.hotroom';
const applied = (text: string, edits: readonly Edit[], of = uri): string =>
    edits.filter(({ span }) => span.uri === of).toSorted((a, b) => b.span.start - a.span.start).reduce((now, { span, newText }) => now.slice(0, span.start) + newText + now.slice(span.end), text);

describe('units', () => {
    const titles = (marked: string): readonly string[] => { const { text, offset } = withCursor(marked); return convertUnits(rawOf(text), uri, offset, offset).map(({ title }) => title); };
    test.each([
        ['top 36<|>"', ['Write 3\'', 'Write 914.4 mm', 'Write 0.9144 m']],
        ['top <|>34 3/4"', ['Write 2\' 10 3/4"', 'Write 882.65 mm', 'Write 0.88265 m']],
        // 2210 mm is no finite fraction of an inch, so inches are not offered.
        ['top 2210<|> mm', ['Write 2.21 m']],
        ['power 6<|> kW', []], ['top<|> 36"', []],
    ])('%s', (marked, expected) => { expect(titles(marked)).toEqual(expected); });
    test('a selection converts all its lengths and keeps their meaning', async () => {
        const text = withStandardJob('');
        const [metric] = convertUnits(rawOf(text), uri, text.indexOf('bench upper'), text.length).filter(({ title }) => title.includes('millimetres'));
        const changed = applied(text, metric?.edits ?? []);
        expect(changed).toContain('939.8 mm');
        const facts = async (one: string): Promise<unknown> => (await analyzeText(one)).jobs[0]?.results.parts.map(({ mark, cut, count }) => [mark, cut, count]);
        expect(await facts(changed)).toEqual(await facts(text));
    });
});

describe('a series from a job', () => {
    test.each(['birch-point', 'otter-cove', 'gull-watch', 'cormorant-club', 'fulmar-ferry', 'heron-clinic', 'tern-loft'])('%s stays the same room', async name => {
        const text = exampleText(`${name}.hotroom`);
        const [extract] = extractSeries(rawOf(text), uri, text.search(/^job /m) + 5);
        if (!extract) throw new Error('nothing is offered');
        const changed = applied(text, extract.edits);
        const [before, after] = [await analyzeText(text), await analyzeText(changed)];
        const plain = (analysis: typeof before): unknown => analysis.jobs.map(({ results, facts, findings }) => [results.parts.map(({ mark, cut, count }) => [mark, cut, count]), facts.under().map(({ path, value }) => [path, value]), findings.filter(({ severity }) => severity === 'error').map(({ message }) => message)]);
        expect(plain(after)).toEqual(plain(before));
        expect(changed).toMatch(/^series \w+_series "[^"]*" \{\n {4}parameter w \{ takes length;/m);
    });
    test('is offered on the header of a job that is none yet', () => {
        const text = withStandardJob('');
        expect(extractSeries(rawOf(text), uri, text.indexOf('bench upper'))).toEqual([]);
        expect(extractSeries(rawOf('job a is b(3") {\n}\n'), uri, 2)).toEqual([]);
    });
});

describe('a waiver', () => {
    const until = { year: 2027, month: 2, day: 23 };
    test('is offered where a finding may be waived, and asks for a reason', async () => {
        const text = withStandardJob('bench upper on back { build Slatted; top 42"; depth 20" }');
        const analysis = await analyzeText(text);
        const offset = text.indexOf('42"');
        const [waive] = waiveFindings(analysis, analysis.file.uri, offset, offset, until).filter(({ finding }) => finding.rule === 'head-clearance-too-low');
        expect(waive?.title).toBe('Waive head-clearance-too-low on upper');
        const changed = applied(text, waive?.edits ?? [], analysis.file.uri);
        expect(changed).toContain('    waive head-clearance-too-low on upper because "" by "" until 2027-02-23\n');
        expect((await analyzeText(changed)).findings.map(({ rule }) => rule)).toContain('waiver-incomplete');
        const signed = changed.replace('because "" by ""', 'because "low room" by "office"');
        expect((await analyzeText(signed)).findings.find(({ rule }) => rule === 'head-clearance-too-low')?.severity).toBe('info');
    });
    test('is not offered for what can never be waived', async () => {
        const text = withStandardJob('heater stove on right { model Tarn60; from front 1"; guard yes }');
        const analysis = await analyzeText(text);
        expect(analysis.findings.some(({ rule }) => rule === 'clearance-beside-too-small')).toBe(true);
        expect(waiveFindings(analysis, analysis.file.uri, 0, text.length, until).map(({ finding }) => finding.rule)).not.toContain('clearance-beside-too-small');
    });
});

describe('an entry that moves', () => {
    const here = 'use "house.hotroom"\n\ncatalogue mine {\n    screw long_screw { length 4"; gauge 10; diameter 0.19"; penetration 1 1/4" }\n    bench_build Wide is Slatted { ledger_screw long_screw }\n}\n';
    const home = { uri: 'memory:/jobs/house.hotroom', path: 'house.hotroom', raw: rawOf('catalogue house {\n    material felt { kind other }\n}\n'), sees: (name: string) => name === 'Slatted', exports: (name: string) => name === 'felt' };
    test('leaves its place and stands in the other file', () => {
        const [move] = moveEntry(rawOf(here), uri, here.indexOf('long_screw {'), [home]);
        expect(applied(here, move?.edits ?? [])).not.toContain('screw long_screw {');
        expect(applied(home.raw.text, move?.edits ?? [], home.uri)).toBe('catalogue house {\n    material felt { kind other }\n\n    screw long_screw { length 4"; gauge 10; diameter 0.19"; penetration 1 1/4" }\n}\n');
    });
    test('stays where what it needs would be out of sight', () => {
        expect(moveEntry(rawOf(here), uri, here.indexOf('Wide'), [home])).toEqual([expect.objectContaining({ edits: [], refusal: 'house.hotroom does not know long_screw, which Wide needs.' })]);
    });
    test('stays where its name is taken', () => {
        const text = here.replace('long_screw {', 'felt {');
        expect(moveEntry(rawOf(text), uri, text.indexOf('felt'), [home])).toEqual([expect.objectContaining({ refusal: 'house.hotroom has an entry felt already.' })]);
    });
});
