import { describe, expect, test } from 'vitest';
import { hoverAt, type HoverText } from '../../language/src/editing/hover.js';
import { endOf } from '../../language/src/syntax/token-list.js';
import { analyzeText, exampleText } from '../support/workspace.js';
import { allConstructs as text } from './all-constructs.js';
import { rawOf } from './sample.js';
import { sightOfConstructs } from './try-offers.js';

const analysed = analyzeText(text);
async function hover(offset: number): Promise<HoverText | undefined> {
    const analysis = await analysed;
    return hoverAt({ raw: rawOf(text), analysis, sight: sightOfConstructs(analysis), textAt: ({ uri, start, end }) => (uri.endsWith('job.hotroom') ? text : exampleText(uri.replace('memory:/jobs/', ''))).slice(start, end) }, offset);
}

describe('at a glance', () => {
    // 18 inches are 457.2 mm; inside width 96" less two walls of 3 3/4" is 88 1/2", its half 44 1/4".
    test.each<[string, string, string[]]>([
        ['a let', 'let |middle', ['**let middle** = `room.inside.width / 2`', '44 1/4" (≈1124 mm) in one', 'Used in entry.from.']],
        ['a let where it is used', 'top |step;', ['**let step** = `18"`', '18" (≈457 mm) in one', 'Used in lower.top.']],
        ['a parameter', 'width |w;', ['**parameter w**: Outside width', 'Takes a length.', '96" (≈2438.5 mm) in one', 'Used in room.width, wide.when.']],
        ['a name with points: what it is, its value, how it was worked out', 'upper.ledger.|top -', ['**upper.ledger.top**: ledger top.', '34 3/4" (≈882.5 mm)', '= 37" less 2 1/4" of slat and cross-bearer, from the finished floor']],
        ['a given value', 'lower.|top + 18"', ['**lower.top**: Finished top over the finished floor.', '18" (≈457 mm)']],
        ['a name of a house rule, for each of its things', 'bench.|top >=', ['**bench.top**: Finished top over the finished floor.', 'one: upper 38" (≈965 mm), lower 18" (≈457 mm)', 'one-low: upper 34" (≈863.5 mm), lower 16" (≈406.5 mm)']],
        ['a function', '|round_down(', ['**round_down(value, step)**', 'The greatest whole number of steps that is not above the value.']],
        ['a series that is made use of', 'is |cottage(96', ['**series cottage(w, side, stove_kind)** “Cottage”', 'w = 96" (≈2438.5 mm): Outside width', 'side = right', 'stove_kind = Tarn60']],
        ['a parameter that is given', '|side = right)', ['**parameter side = right**', 'side takes a wall: one of left, right; otherwise right.']],
        ['a value that is given', '|96", side', ['**parameter w = 96" (≈2438.5 mm)**', 'Outside width. w takes a length: at least 60"; at most 120"; otherwise 84".']],
        ['a parameter of a series', 'parameter |stove_kind', ['**parameter stove_kind**: A value a job gives when it is made from the series, in the order written.', 'stove_kind takes a heater model: otherwise Tarn60.', 'one Tarn60, one-low Tarn60, two Tarn61, three Tarn60']],
        ['a house rule', 'rule |seated_headroom', ['**rule seated_headroom** “Head clearance over the top bench”: A house rule: what a maker asks of every job that uses the file, over and above what is published.', 'In this file it holds 2 times and fails 2 times: upper in one, upper in three.']],
        ['a waiver', 'waive |seated_headroom', ['**seated_headroom**: Head clearance over the top bench.', 'Head clearance over the top bench, bench upper: room.inside.height - bench.top is 42 1/4"; at least 44" is needed (house standard 7). Accepted by design office until 2027-03-01: low room, signed.']],
        ['a statement', '|waive seated', ['**waive**: Takes a finding on record as accepted, with the reason, who decided it, and until when.', '`waive head-clearance-too-low on upper because "low room, signed by the customer" by "design office" until 2027-03-01`']],
        ['a figure of a calculation', 'min(|16"', ['16" (≈406.5 mm)']],
        ['a choice', '|if room.height', ['A choice: if ⟨condition⟩ then ⟨value⟩ else ⟨value⟩.']],
    ])('%s', async (_, marked, lines) => {
        const at = text.indexOf(marked.replace('|', ''));
        expect(at, marked).toBeGreaterThanOrEqual(0);
        expect((await hover(at + marked.indexOf('|')))?.lines).toEqual(lines);
    });
    test('a fact that says it otherwise: the chain, and what won', async () => {
        const lines = (await hover(text.indexOf('top rise + 18"')))?.lines ?? [];
        expect(lines.slice(1, 3)).toEqual(['34" (≈863.5 mm)', 'Said before: cottage says `37"`, then one says `max(38", lower.top + 18")`. This one wins.']);
        expect(lines.length).toBeLessThanOrEqual(4);
    });
});

test('every word and figure has a hover of at most five lines', async () => {
    const raw = rawOf(text);
    const analysis = await analysed;
    const input = { raw, analysis, sight: sightOfConstructs(analysis), textAt: () => '' };
    const tokens = raw.tokens.filter(token => /^\w/.test(token.image));
    expect(tokens.filter(token => !hoverAt(input, token.startOffset) || !hoverAt(input, endOf(token) - 1)).map(({ image }) => image)).toEqual([]);
    expect(tokens.filter(token => (hoverAt(input, token.startOffset)?.lines.length ?? 0) > 5).map(({ image }) => image)).toEqual([]);
});
test('without the sight of a server the file itself is what is known', async () => {
    const analysis = await analysed;
    expect(hoverAt({ raw: rawOf(text), analysis, textAt: () => '' }, text.indexOf('cottage(96'))?.lines[1]).toBe('w = 96" (≈2438.5 mm): Outside width');
});
test('a text cut off anywhere has hovers', async () => {
    const analysis = await analysed;
    for (let length = 0; length <= text.length; length += 9) {
        const input = { raw: rawOf(text.slice(0, length)), analysis, sight: sightOfConstructs(analysis), textAt: () => '' };
        for (const offset of [length, length - 1, length - 4]) expect(() => hoverAt(input, offset)).not.toThrow();
    }
});
