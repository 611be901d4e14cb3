import { describe, expect, test } from 'vitest';
import { completionsAt } from '../../language/src/editing/complete.js';
import type { Offer } from '../../language/src/editing/offer.js';
import { withStandardJob } from '../support/standard-job.js';
import { analyzeText } from '../support/workspace.js';
import { allConstructs } from './all-constructs.js';
import { rawOf } from './sample.js';
import { sightOfConstructs } from './try-offers.js';

/** Offers where `piece` of the text is replaced by `marked`, which holds the cursor `<|>`. */
async function offersAt(piece: string, marked: string): Promise<readonly Offer[]> {
    const text = allConstructs.replace(piece, marked);
    const offset = text.indexOf('<|>');
    if (offset < 0) throw new Error(`${piece} is not there`);
    const plain = text.replace('<|>', '');
    return completionsAt(rawOf(plain), offset, sightOfConstructs(await analyzeText(plain)));
}
const show = (offers: readonly Offer[]): string[] => offers.map(({ label, detail, leadsOn }) => `${label}${leadsOn ? '.' : ''} | ${detail}`);

describe('names', () => {
    // The room of job one is 96" wide with walls of 3 3/4" a side, so 88 1/2" inside and 44 1/4" to its middle; the lower bench is 18" high with 2 1/4" of slat and cross-bearer.
    test.each<[string, string, string, string[]]>([
        ['values of the series and the file, with what they come to here', 'lower.top + 18")', '<|>)', ['w | 96"', 'step | 18"', 'middle | 44 1/4"', 'margin | 4 1/2"', 'upper. | bench', 'room. | room', 'max | max(a, b, …)']],
        ['what a bench is given and what is computed for it, of the kind wanted', 'lower.top + 18")', 'lower.<|>)', ['top | 18"', 'depth | 16"', 'ledger.top | 15 3/4"', 'build. | Slatted']],
        ['what a reference leads to', 'let rise = min(16", 18" - 2")', 'let rise = stove.model.<|>', ['power | 6000 W', 'off_floor | 8"']],
        ['in a rule, each of its things', 'require   room.inside.height - bench.top >= 44"', 'require bench.<|>', ['top | length', 'is_highest | flag', 'wall | word']],
        ['signs behind a value of a condition', 'require   room.inside.height - bench.top >= 44"', 'require bench.top <|>', ['>= | at least', '= | equal to']],
        ['the choices a value is compared with', 'require   room.inside.height - bench.top >= 44"', 'require entry.hinge = left and bench.load_path = <|>', ['end_ledgers | ', 'back_ledger_and_legs | ']],
        ['then behind a condition', 'then 72" else 66"', '<|>', ['then | and both values', 'and | a further condition']],
        ['a value that holds a word', 'hinge opposite(side)', 'hinge <|>', ['left | ', 'right | ', 'side | right']],
        ['a wall a header can name', 'heater stove on side', 'heater stove on <|>', ['front | wall', 'side | right']],
    ])('%s', async (_, piece, marked, expected) => expect(show(await offersAt(piece, marked))).toEqual(expect.arrayContaining(expected)));
    test('not the name that is being given, nor one that hangs on it', async () => {
        const labels = (await offersAt('let middle = room.inside.width / 2', 'let middle = <|>\n    let double = 2 * middle')).map(({ label }) => label);
        expect(labels).toContain('step');
        expect(labels.filter(label => label === 'middle' || label === 'double')).toEqual([]);
    });
    test('not the fact itself, nor what is worked out from it', async () => {
        const labels = (await offersAt('bench upper { top max(38", lower.top + 18") }', 'bench upper { top upper.<|> }')).map(({ label }) => label);
        expect(labels).toContain('depth');
        expect(labels.filter(label => ['top', 'ledger.top', 'head_clearance'].includes(label))).toEqual([]);
    });
});

describe('jobs of a series', () => {
    test.each<[string, string, string, string[]]>([
        ['is behind a title', 'job three "Third" is cottage', 'job three "Third" <|>', ['is | made from a series']],
        ['the series', 'is cottage(96", side = right)', 'is <|>', ['cottage | cottage(w, side, stove_kind)']],
        ['values of the first parameter, and the others by name', 'is cottage(96", side = right)', 'is cottage(<|>)', ['84" | what holds without it', '60" | the smallest', '120" | the greatest', 'w = | length', 'side = | wall', 'stove_kind = | heater model']],
        ['the next by place', 'is cottage(96", side = right)', 'is cottage(96", <|>', ['right | what holds without it', 'left | allowed']],
        ['one by name', 'is cottage(96", side = right)', 'is cottage(stove_kind = <|>)', ['Tarn60 | what holds without it', 'Tarn61 | heater model']],
        ['what can be said otherwise', 'bench upper { top max(38", lower.top + 18") }', '<|>', ['bench upper | says something of it otherwise', 'waive | waive head-clearance-too-low on upper because "low room, signed by the customer" by "design office" until 2027-03-01']],
        ['names of the series', 'bench upper { top max(38", lower.top + 18") }', 'bench <|>', ['upper | bench on back', 'lower | bench on back']],
        ['facts with what the series says', 'bench upper { top max(38", lower.top + 18") }', 'bench upper { <|> }', ['top | 37" in cottage', 'depth | 20" in cottage']],
    ])('%s', async (_, piece, marked, expected) => expect(show(await offersAt(piece, marked))).toEqual(expect.arrayContaining(expected)));
});

describe('waivers', () => {
    test('findings the job has come first, then the others', async () => {
        const labels = (await offersAt('waive seated_headroom on', 'waive <|> on')).map(({ label }) => label);
        expect(labels.indexOf('seated_headroom')).toBeLessThan(labels.indexOf('site-out-of-square'));
        expect(labels).not.toContain('unknown-word');
        expect(new Set(labels).size).toBe(labels.length);
    });
    test.each<[string, string, string, string[]]>([
        ['blocks, those it is found at first', 'on upper because', 'on <|> because', ['upper', 'entry', 'lower']],
        ['what is missing', 'on upper because "low room, signed" by', 'on upper <|> by', ['because']],
        ['and the end', ' until 2027-03-01', ' <|>', ['until']],
    ])('%s', async (_, piece, marked, expected) => expect((await offersAt(piece, marked)).map(({ label }) => label).slice(0, expected.length)).toEqual(expected));
});

describe('figures that were worked out', () => {
    // Slats of 3 1/2" with gaps of 1/4" to 3/4": n slats fill n * 3 1/2" + (n - 1) gaps, so 19" (five, gaps of 3/8"), and not 20 1/2" with five (3/4" is 20 1/2").
    test('depths that slats fill stand first, with the reason', async () => {
        const offers = await offersAt('bench upper { top max(38", lower.top + 18") }', 'bench upper { depth 20<|>" }');
        expect(offers.slice(0, 2).map(({ label, detail }) => [label, detail])).toEqual([['19"', 'slats fill it'], ['23"', 'slats fill it']]);
        expect(offers[0]?.doc).toContain('equal gaps');
    });
    test('positions that clear', async () => {
        const offers = await offersAt('bench upper { top max(38", lower.top + 18") }', 'heater stove { from front 20"<|> }');
        expect(offers.find(({ label }) => label === 'front 4"')).toMatchObject({ detail: 'clears everything', filter: 'front 20"' });
    });
    test('positions that clear where none is written yet', async () => {
        const text = withStandardJob('heater stove on right {\n    model Tarn60\n    from \n    guard yes\n    backing 1 1/2"\n}');
        const at = text.indexOf('from \n') + 5;
        const offers = completionsAt(rawOf(text), at, sightOfConstructs(await analyzeText(text)));
        expect(offers.filter(({ detail }) => detail === 'clears everything').map(({ label }) => label)).toContain('front 4"');
    });
    test('sizes and places that mend a finding', async () => {
        const offers = await offersAt('room { height 86" }', 'room { height 86"; width 85 1/4"<|> }');
        expect(offers.filter(({ detail }) => detail === 'worked out').length).toBeGreaterThan(0);
    });
    test('places of an opening that save a panel made to measure', async () => {
        const text = withStandardJob('door entry on front {\n    model Leaf24\n    from left 25"\n    hinge left\n}');
        const analysis = await analyzeText(text);
        const saving = analysis.findings.find(({ rule, at }) => rule === 'made-to-measure-avoidable' && text.slice(at.start, at.end) === 'left 25"');
        const wanted = saving?.fixes?.map(({ edits: [edit] }) => edit?.newText) ?? [];
        expect(wanted.length).toBeGreaterThan(0);
        const offers = completionsAt(rawOf(text), text.indexOf('left 25"'), sightOfConstructs(analysis));
        expect(offers.slice(0, wanted.length).map(({ label, doc }) => [label, doc])).toEqual(wanted.map(label => [label, saving?.message]));
    });
});
