import { describe, expect, test } from 'vitest';
import { inches } from '../../language/src/core/length.js';
import { showValue } from '../../language/src/core/value.js';
import { lookUp } from '../../language/src/facts/look-up.js';
import { compare } from '../support/check.js';
import { withStandardJob } from '../support/standard-job.js';
import { analyzeText } from '../support/workspace.js';

const lengthOf = async (text: string): Promise<number | undefined> => {
    const { jobs: [job] } = await analyzeText(text);
    return job?.job.benches.find(({ name }) => name?.value === 'lower')?.values.top?.value;
};
const lower = (top: string, more = ''): string => withStandardJob(`${more}\nbench lower on back {\n    build Slatted\n    top ${top}\n    depth 16"\n    in_front_of upper\n}`);

describe('names', () => {
    // The standard job: upper bench top 37", slat and cross-bearer 2 1/4" (two dressed 3/4" and 1 1/2"), so its ledger top is 34 3/4".
    test.each<readonly [string, number]>([
        ['upper.top - 19"', 18], ['upper.ledger.top - 16 3/4"', 18], ['max(bench.top) / 2 - 1/2"', 18], ['round_down(upper.top / 2, 1")', 18], ['round_up(17 1/4", 1/2")', 17.5],
        ['if upper.top > 30" then 18" else 10"', 18], ['if upper.top > 40" and count(door) = 1 then 18" else 10"', 10], ['upper.build.bearer_spacing - upper.build.bearer_spacing + 18"', 18],
        ['min(18", upper.top)', 18], ['if upper.top > if 1 < 2 then 30" else 40" then 18" else 10"', 18], ['if upper.top - 40" > -4" then 18" else 10"', 18], ['sum(upper.top, 1") - 20"', 18],
    ])('top %s', async (expression, top) => { expect(await lengthOf(lower(expression))).toBe(inches(top)); });

    test('a let is seen in its block and may hang on others, in any order', async () => {
        expect(await lengthOf(lower('step', 'let step = half - 1/2"\nlet half = upper.top / 2'))).toBe(inches(18));
    });
    test('a let at the top of a file is seen in its jobs', async () => {
        expect(await lengthOf(`let step = 18"\n${lower('step')}`)).toBe(inches(18));
    });
    test('inches and millimetres of one let are one length', async () => {
        expect(await lengthOf(lower('18 in'))).toBe(await lengthOf(lower('457.2 mm')));
    });
    test.each([
        ['if hand = left then 18" else 10"', 'let hand = left', 18], ['if hand != left then 18" else 10"', 'let hand = left', 10],
        ['if entry.hinge = left then 18" else 10"', '', 18], ['if opposite(side) = right then 18" else 10"', 'let side = left', 18],
    ])('words are compared: %s', async (expression, more, top) => { expect(await lengthOf(lower(expression, more))).toBe(inches(top)); });

    test('a value reaches the place that uses it, in a header too', async () => {
        const { jobs: [job] } = await analyzeText(withStandardJob('let side = left\nwindow view on side { model Pane24; from front 30"; sill 30" }'));
        expect(job?.job.windows[0]?.walls.map(({ value }) => value)).toEqual(['left']);
    });
});

describe('mistakes stand at the spot', () => {
    const check = async (snippet: string): Promise<void> => {
        const source = withStandardJob(snippet);
        compare(source, (await analyzeText(source, { rules: [] })).findings);
    };
    test('dimensions, both named', () => check(`
        let a = upper.top + stove.power
        //      ^^^^^^^^^^^^^^^^^^^^^^^ error: ‘+’ stands between a length and a power; both sides must be of one kind.
        let b = room.inside.volume > 3 kW
        //      ^^^^^^^^^^^^^^^^^^^^^^^^^ error: ‘>’ compares a volume with a power; both sides must be of one kind.
        let c = max(upper.top, 3 V)
        //      ^^^^^^^^^^^^^^^^^^^ error: max cannot be worked out: a length and a voltage are of two kinds. It is written max(a, b, …).
    `));
    test('a list where a figure is wanted', () => check(`
        let a = bench.top > 30"
        let b = if a then 1 else 2
        //         ^ error: a is a list; a comparison or yes or no is wanted, such as any(…) or all(…) of the list.
    `));
    test('names and functions that do not exist', () => check(`
        let a = uper.top
        //      ^^^^^^^^ 💡 error: Nothing is called ‘uper.top’ here. Is upper.top meant?
        let b = upper.ledger.tip
        //      ^^^^^^^^^^^^^^^^ 💡 error: Nothing is called ‘upper.ledger.tip’ here. Is upper.ledger.top meant?
        let c = mx(3", 4")
        //      ^^ 💡 error: There is no function mx. Functions are min, max, sum, count, any, all, not, round_down, round_up and opposite.
        let d = not(3", 4")
        //      ^^^^^^^^^^^ error: not is written not(condition).
    `));
    test('how it is written', () => check(`
        let = 3"
        //  ^ error: ‘=’ compares two values. A fact is a word and then its value, such as top 37".
        let b =
        //    ^ error: A value is missing after ‘=’.
        let c = if 3 > 2 then 4
        //      ^^ error: ‘if’ has no ‘else’. A choice is written if … then … else …
        let d = 3 > 2 > 1
        //            ^ error: Two values are compared at a time. Join two comparisons by and.
        let e = max(3"
        //         ^ error: The bracket after max is not closed. Add ).
    `));
});

describe('rings', () => {
    const ringOf = async (snippet: string): Promise<readonly string[]> => (await analyzeText(withStandardJob(snippet))).findings.filter(({ rule }) => rule === 'names-in-a-ring').map(({ message }) => message);
    test('through lets', async () => {
        expect(await ringOf('let a = b\nlet b = c\nlet c = a + 1"')).toEqual(['a needs b needs c needs a again: none of them can be worked out first. Give one of them a figure.']);
    });
    test('of a value through what is computed from it', async () => {
        expect(await ringOf('bench lower on back {\n    build Slatted\n    top lower.ledger.top + 2 1/4"\n    depth 16"\n    in_front_of upper\n}'))
            .toEqual(['lower.top needs lower.ledger.top needs lower.top again: none of them can be worked out first. Give one of them a figure.']);
    });
    test('of two blocks through a let', async () => {
        expect(await ringOf('let step = upper.top - 19"\nbench lower on back {\n    build Slatted\n    top step\n    depth 16"\n    in_front_of upper\n}\nbench upper on back {\n    build Slatted\n    top lower.top + 19"\n    depth 20"\n}'))
            .toEqual([expect.stringMatching(/^lower\.top needs step needs upper\.top needs lower\.top again|^step needs upper\.top needs lower\.top needs step again/)]);
    });
    test('what looks at its neighbours only is no ring', async () => {
        expect(await ringOf('bench lower on back {\n    build Slatted\n    top upper.ledger.top - 16 3/4"\n    depth 16"\n    in_front_of upper\n}')).toEqual([]);
    });
    test('what never comes to rest is one', async () => {
        // The room is as wide as leaves a bench one inch shorter than it is.
        expect(await ringOf('bench lower on back {\n    build Slatted\n    top 18"\n    depth 16"\n    length lower.length - 1"\n    in_front_of upper\n}')).toHaveLength(1);
    });
});

test('figures are shown in the unit they were written in', async () => {
    const { jobs: [job] } = await analyzeText(withStandardJob(''));
    if (!job) throw new Error('no job');
    const shown = (path: string): string => { const found = lookUp(job.job, job.facts, path.split('.')); return found.kind === 'value' ? showValue(found.value, 'in') : found.kind; };
    expect(['upper.top', 'upper.ledger.top', 'upper.is_highest', 'lower.is_highest', 'bench.top', 'stove.model', 'entry.wall', 'bench'].map(shown)).toEqual(['37"', '34 3/4"', 'yes', 'no', '37", 18"', 'Tarn60', 'front', 'upper, lower']);
});
