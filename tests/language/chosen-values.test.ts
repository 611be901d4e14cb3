import { describe, expect, test } from 'vitest';
import type { JobAnalysis } from '../../language/src/analyze.js';
import { inches } from '../../language/src/core/length.js';
import { exampleText } from '../support/workspace.js';
import { compare } from '../support/check.js';
import { withStandardJob } from '../support/standard-job.js';
import { analyzeText } from '../support/workspace.js';

const jobOf = async (snippet: string, change: (text: string) => string = text => text): Promise<JobAnalysis> => {
    const { jobs: [job] } = await analyzeText(change(withStandardJob(snippet)));
    if (!job) throw new Error('no job');
    return job;
};

describe('what a choice gives', () => {
    test('may be a word', async () => {
        const { job } = await jobOf('door entry on front { model Leaf24; from left 23 7/8"; hinge if room.width > 80" then right else left }');
        expect(job.doors[0]?.values.hinge?.value).toBe('right');
    });
    test('may be an entry of a catalogue, which is linked as one', async () => {
        const { job } = await jobOf('heater stove on right { model if room.inside.volume <= 210 ft3 then Tarn45 else if room.inside.volume <= 250 ft3 then Tarn60 else Tarn80; from front 8"; guard yes; backing 1 1/2" }');
        expect(job.heaters[0]?.values.model?.value.block?.values.power?.value).toBe(8000);
    });
    test('may be a wall, in a header too', async () => {
        const { job } = await jobOf('window view on (if room.width > 80" then left else right) { model View18; from front 30"; sill 30" }');
        expect(job.windows[0]?.walls.map(({ value }) => value)).toEqual(['left']);
    });
    test('may be a text', async () => {
        const { job } = await jobOf('number if room.width > 80" then "W-1" else "N-1"');
        expect(job.block.values.number?.value).toBe('W-1');
    });
    test('may be another choice, behind then as behind else', async () => {
        const { job } = await jobOf('bench lower on back { build Slatted; top if room.width > 80" then if room.width > 90" then 17" else 18" else 16"; depth 16"; in_front_of upper }');
        expect(job.benches.find(({ name }) => name?.value === 'lower')?.values.top?.value).toBe(inches(18));
    });
    test('may be a let that is a word', async () => {
        const { job } = await jobOf('let side = if room.width > 80" then left else right\nwindow view on side { model View18; from front 30"; sill 30" }');
        expect(job.windows[0]?.walls.map(({ value }) => value)).toEqual(['left']);
    });
});
test('a wall is named to opposite as it is anywhere else', async () => {
    const { job } = await jobOf('window view on opposite(right) { model View18; from front 30"; sill 30" }');
    expect(job.windows[0]?.walls.map(({ value }) => value)).toEqual(['left']);
});
test('a text may come from a value of a series', async () => {
    const series = withStandardJob('number order').replace('job standard "Standard job" {', 'series s {\n    parameter order { takes text }');
    const { jobs } = await analyzeText(`${series}job a is s("2499")\n`);
    expect(jobs[0]?.job.block.values.number?.value).toBe('2499');
});
test('lets at the top of a file hang on each other, in any order', async () => {
    const { jobs: [job] } = await analyzeText(`let step = half - 1/2"\nlet half = 37" / 2\n${withStandardJob('bench lower on back { build Slatted; top step; depth 16"; in_front_of upper }')}`);
    expect(job?.job.benches.find(({ name }) => name?.value === 'lower')?.values.top?.value).toBe(inches(18));
});
test('a value of a series is not compared with a word it never is, in the series nor in its job', async () => {
    const text = withStandardJob('parameter layout { takes word; one_of straight, corner }\nsign wide on front { says bathing; stands outside; when layout = cornr }').replace('job standard "Standard job" {', 'series s {');
    const { findings } = await analyzeText(`${text}job a is s(corner) {\n    sign low on front { says bathing; stands outside; when layout != strait }\n}\n`, { rules: [] });
    expect(findings.map(({ message }) => message)).toEqual(['layout is never cornr: it is straight or corner. Is corner meant?', 'layout is never strait: it is straight or corner. Is straight meant?']);
});
test.each([
    ['a comma is missing', 'straight corner, lounge', ['part-not-expected']], ['the other comma is missing', 'straight, corner lounge', ['part-not-expected']],
    ['the last word is missing', 'straight, corner,', ['value-missing']], ['the first word is missing', ', corner, lounge', ['value-missing']],
])('nor are words missed while the list of them is not whole: %s', async (_, list, expected) => {
    const signs = ['straight', 'corner', 'lounge'].map(word => `sign ${word} on front { says bathing; stands outside; when layout = ${word} }`).join('\n');
    const text = withStandardJob(`parameter layout { takes word; one_of ${list} }\n${signs}`).replace('job standard "Standard job" {', 'series s {');
    const { findings } = await analyzeText(`${text}job a is s(corner) {\n    sign low on front { says bathing; stands outside; when layout != lounge }\n}\n`, { rules: [] });
    expect(findings.map(({ rule }) => rule)).toEqual(expected);
});
test('a misspelt branch is told at the branch, and only when it counts', async () => {
    const source = withStandardJob(`
        door entry on front {
            model Leaf24
            from left 23 7/8"
            hinge if room.width > 80" then lft else rigt
            //                             ^^^ 💡 error: ‘lft’ is not what hinge takes: front, left, back or right. Is left meant?
        }
        heater stove on right {
            model if room.width > 80" then Tarn6O else Tarn45
            //                             ^^^^^^ 💡 error: There is no heater model called Tarn6O. Is Tarn60 meant? There are Tarn45, Tarn60, Tarn80, Fell150, Loch60 and Beck60.
            from front 8"
            guard yes
        }`);
    compare(source, (await analyzeText(source, { rules: [] })).findings);
});

describe('a mistake in what a job gives its series', () => {
    const skua = async (line: string): Promise<readonly string[]> => (await analyzeText(`use "line/skua.hotroom"\n${line}\n`, {}, 'job.hotroom', { 'line/skua.hotroom': exampleText('line/skua.hotroom').replaceAll('"../catalogue', '"../catalogue') }))
        .findings.map(({ rule }) => rule);
    test.each([['w', '108", 79 1/2", right, straight', 'argument-does-not-fit'], ['hand', '84", 79 1/2", back, straight', 'argument-does-not-fit'], ['layout', '84", 79 1/2", right, round', 'argument-does-not-fit'], ['one missing', '84", 79 1/2", right', 'argument-missing']])('is one finding: %s', async (_, values, rule) => {
        expect(await skua(`job a "A" is skua(${values})`)).toEqual([rule]);
    });
    test('of several jobs of one file, too, each at its own line', async () => {
        expect(await skua('job a "A" is skua(108", 79 1/2", right, straight)\njob b "B" is skua(109", 79 1/2", right, straight)')).toEqual(['argument-does-not-fit', 'argument-does-not-fit']);
    });
});
test('a ring inside a series is told once, however many jobs are made from it', async () => {
    const series = withStandardJob('let a = b + 1"\nlet b = upper.top\nbench upper on back { build Slatted; top a; depth 20" }').replace('job standard "Standard job" {', 'series s {');
    const { findings } = await analyzeText(`${series}job one is s\njob two is s\n`);
    expect(findings.filter(({ severity }) => severity === 'error').map(({ message }) => message)).toEqual([expect.stringMatching(/again: none of them can be worked out first/)]);
});

describe('the house rules of the example', () => {
    const petrel = exampleText('house/petrel-wharf.hotroom').replaceAll('"../catalogue/', '"catalogue/').replace('"rules.hotroom"', '"house/rules.hotroom"');
    const house = async (change: (text: string) => string): Promise<readonly string[]> => (await analyzeText(change(petrel), {}, 'job.hotroom', { 'house/rules.hotroom': exampleText('house/rules.hotroom') }))
        .findings.flatMap(({ rule, citation }) => citation?.kind === 'house' ? [rule] : []);
    test('are met by its job', async () => { expect(await house(text => text)).toEqual([]); });
    test.each<readonly [string, RegExp, string]>([
        ['aisle-too-narrow', /aisle = 36"/, 'aisle = 30"'], ['head-room-too-small', /43 1\/4"/, '41"'], ['nowhere-to-lie', /width {5}84"/, 'width     72"'], ['too-many-legs', /depth {5}20"/, 'depth     20"\n        length    48"\n        from      left 10"'],
        ['heater-weak-for-room', /Tarn60/, 'Tarn45'], ['door-too-narrow', /Leaf25/, 'Leaf24'],
    ])('%s is found when it is broken', async (rule, from, to) => { expect(await house(text => text.replace(from, to))).toContain(rule); });
});
