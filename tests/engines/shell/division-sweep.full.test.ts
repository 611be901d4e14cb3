import { expect, test } from 'vitest';
import { inches, mm, plus, type Length } from '../../../language/src/core/length.js';
import { divided, inchModules, inchRange, metricModules, metricRange, runsOf, said } from './division-cases.js';
import { enumerateByCount, type Problem } from './enumerate.js';

/** A heater's fastening zone and a ledger end, so that the third preference is at work in every second size. */
const soft = [{ from: inches(20), to: inches(33) }, { from: inches(58), to: inches(62) }];

const grids: [string, Pick<Problem, 'modules' | 'toMeasure'>, Length, Length, Length][] = [
    ['24, 18, 12 and made to measure, each 1/16"', { modules: inchModules, toMeasure: inchRange }, inches(48), inches(240), inches(0, 1, 16)],
    ['24, 18, 12 only, each 1/16"', { modules: inchModules }, inches(48), inches(240), inches(0, 1, 16)],
    ['narrow made-to-measure range, each 1/4"', { modules: inchModules, toMeasure: { from: inches(8), to: inches(9, 1, 2) } }, inches(48), inches(240), inches(0, 1, 4)],
    ['600, 450, 300 and made to measure, each mm', { modules: metricModules, toMeasure: metricRange }, mm(1200), mm(6000), mm(1)],
];

test.each(grids)('closing, refusing and the order of preference over the whole grid: %s', { timeout: 300_000 }, (_name, offer, from, to, step) => {
    const wrong: string[] = [];
    let count = 0;
    for (let outside = from; outside <= to; outside = plus(outside, step)) {
        for (const problem of runsOf(outside, inches(3, 3, 4), inches(3), offer)) {
            const asked = { ...problem, soft: count % 2 === 0 ? [] : soft };
            count += 1;
            const [ours, expected] = [JSON.stringify(divided(asked)), JSON.stringify(said(enumerateByCount(asked)))];
            if (ours !== expected) wrong.push(`run ${problem.run}: ${ours} instead of ${expected}`);
        }
    }
    expect(wrong.slice(0, 5)).toEqual([]);
    expect(count).toBeGreaterThan(2000);
});
