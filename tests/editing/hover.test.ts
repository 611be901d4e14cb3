import { describe, expect, test } from 'vitest';
import { hoverAt, type HoverText } from '../../language/src/editing/hover.js';
import { hintsOf } from '../../language/src/editing/hints.js';
import { lensesOf } from '../../language/src/editing/lenses.js';
import { showAmountBoth } from '../../language/src/editing/show-both.js';
import { endOf } from '../../language/src/syntax/token-list.js';
import { analyzeText, exampleText } from '../support/workspace.js';
import { rawOf } from './sample.js';

const standard = exampleText('birch-point.hotroom');
const analysed = new Map<string, ReturnType<typeof analyzeText>>();
function analysisOf(text: string): ReturnType<typeof analyzeText> {
    const known = analysed.get(text) ?? analyzeText(text);
    analysed.set(text, known);
    return known;
}
async function hover(needle: string, shift = 0, text = standard): Promise<HoverText | undefined> {
    const analysis = await analysisOf(text);
    return hoverAt({ raw: rawOf(text), analysis, textAt: ({ uri, start, end }) => (uri.endsWith('job.hotroom') ? text : exampleText(uri.replace('memory:/jobs/', ''))).slice(start, end) }, text.indexOf(needle) + shift);
}
const about = (text: string, found: HoverText | undefined): string | undefined => found && text.slice(found.start, found.end);

describe('a hover tells', () => {
    test('a block: what it is and what was worked out for it, at most four lines', async () => {
        const found = await hover('room {');
        expect(found?.lines[0]).toBe('**room**: The shell of the room: which panel system, how large, how its ceiling spans.');
        expect(found?.lines[1]).toMatch(/^inside volume: [\d.]+ ft3 \([\d.]+ m3\)$/);
        expect(found?.lines.length).toBeLessThanOrEqual(4);
        expect(found?.more.join('\n')).toContain('inside volume = 76 1/2" x 72" x 80 1/4"');
    });
    test('the name of a block the same as its key', async () => expect((await hover('upper on'))?.lines).toEqual((await hover('bench upper'))?.lines));
    test('a figure: its fact, both systems, and what follows from it', async () => {
        const found = await hover('37"', 1);
        expect(about(standard, found)).toBe('37"');
        expect(found?.lines.slice(0, 2)).toEqual(['**top**: Finished top over the finished floor.', '37" (≈940 mm)']); // 37 x 25.4 mm = 939.8 mm, by definition of the inch
        expect(found?.lines[2]).toMatch(/^→ ledger top: 34 3\/4"/); // common practice, no source: a 2 1/4" build-up under a top at 37"
        expect(found?.more.at(-1)).toBe('Takes a length, such as 34 3/4" or 885 mm. Required.');
    });
    test('the key of a fact the same as its value', async () => expect((await hover('top       37'))?.lines).toEqual((await hover('37"'))?.lines));
    test('what holds when a fact is left out', async () => expect((await hover('in_front_of'))?.more.at(-1)).toBe('Takes the name of a bench. Otherwise: the next higher bench on the same wall.'));
    test('a reference: what it leads to', async () => {
        const found = await hover('Slatted');
        expect(found?.lines[0]).toBe('**bench build Slatted** “Slats on cross-bearers, 2 1/4 in build-up”');
        expect(found?.lines[1]).toBe('`slat alder_1x4`');
    });
    test('rule sets: where their texts disagree and what governs', async () => {
        const found = await hover('us_commercial', 0, standard.replace('us_dwelling, good_practice', 'us_commercial, good_practice'));
        expect(found?.more.join('\n')).toContain('Place of the ventilation opening: near top of door (IMC 2018, 914.5) governs; across the room low (common practice, no source) yields to it.');
    });
    test('a temperature in both systems', async () => expect((await hover('68 degF'))?.lines[1]).toBe('68 degF (20 degC)'));
    test('a wall of a header', async () => expect((await hover('front {'))?.lines).toEqual(['The front wall.']));
    test('a rule set by its title', async () => expect((await hover('us_dwelling'))?.lines[1]).toMatch(/^us_dwelling: /));
    test('a fact that could not be read still by its meaning', async () => {
        expect((await hover('top =', 0, 'job a {\n    bench b on back {\n        top = ?\n    }\n}\n'))?.lines).toEqual(['**top**: Finished top over the finished floor.']);
    });
    test('nothing about braces, remarks and unknown words', async () => {
        expect(await hover('{', 0)).toBeUndefined();
        expect(await hover('// Birch', 4)).toBeUndefined();
        expect(await hover('sofa', 1, 'job a {\n    sofa b { }\n}\n')).toBeUndefined();
    });
});

test('every word and figure of the standard job has a hover', async () => {
    const analysis = await analysisOf(standard);
    const raw = rawOf(standard);
    const silent = raw.tokens.filter(token => /^[\w"]/.test(token.image) && !token.image.startsWith('"')).filter(token => !hoverAt({ raw, analysis, textAt: () => '' }, token.startOffset) || !hoverAt({ raw, analysis, textAt: () => '' }, endOf(token) - 1));
    expect(silent.map(({ image }) => image)).toEqual([]);
});

test('computed values stand behind the head of their block', async () => {
    const hints = hintsOf(await analysisOf(standard));
    const shown = hints.map(({ at, label }) => `${standard.slice(standard.lastIndexOf('\n', at) + 1, at).trim()} | ${label}`);
    expect(shown.find(line => line.startsWith('room'))).toMatch(/^room \| inside volume [\d.]+ ft3, panels \d+$/);
    expect(shown.find(line => line.startsWith('heater stove on right |'))).toMatch(/current 25 A/); // 6 kW at 240 V
});
test('hints in the unit that is asked for', async () => {
    expect(hintsOf(await analysisOf(standard), 'mm').find(({ label }) => label.startsWith('inside volume'))?.label).toMatch(/^inside volume [\d.]+ m3/);
});

test('a job has a line that counts its findings and one that leads to its cut list', async () => {
    const good = lensesOf(await analysisOf(standard));
    expect(good.map(({ opens, job }) => [opens, job])).toEqual([['nothing', 'birch_point'], ['cut-list', 'birch_point']]);
    expect(good[1]?.title).toMatch(/^cut list: \d+ parts, \d+ pieces$/);
    const bad = lensesOf(await analysisOf('job a {\n    rules iec\n    room { widht 72" }\n    room { depth 72" }\n}\n'));
    expect(bad[0]?.title).toMatch(/^[1-9]\d* errors?/);
});

test.each([
    [1, 'm3', true, '1 m3 (35.31 ft3)'], [100, 'ft3', false, '100 ft3 (2.83 m3)'], [45.359237, 'kg', false, '100 lb (45.36 kg)'], [100, 'degC', false, '212 degF (100 degC)'], [25, 'A', true, '25 A'], [7, '', false, '7'],
    // cubic foot, pound and Fahrenheit scale: NIST SP 811, appendix B
])('%d %s is %s', (value, unit, metricFirst, shown) => expect(showAmountBoth(value, unit, metricFirst)).toBe(shown));
