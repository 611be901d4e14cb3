import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inches, mm, minus, plus, ticks, TICKS_PER_INCH, zero, type Length } from '../../../language/src/core/length.js';
import { divideRun, type RunInput } from '../../../language/src/engines/shell/division.js';
import { asRun, divided, inchModules, inchRange, metricModules, metricRange, runsOf, said } from './division-cases.js';
import { enumerateByCount, enumerateEverything, type Problem } from './enumerate.js';

const plain = (run: Length, more: Partial<RunInput> = {}): RunInput => ({
    run, left: { covered: zero, least: zero }, right: { covered: zero, least: zero }, sections: [],
    offer: { modules: inchModules, madeToMeasure: inchRange }, softRules: [], ...more,
});
/** Widths in inches, left to right: `24 [30] 18*` is a module, a section and a panel made to measure. */
function widths(input: RunInput): string {
    const division = divideRun(input);
    if (!division.closes) return division.faults.map(fault => fault.kind === 'stretch-does-not-close' ? `${fault.kind}: ${fault.fault.kind}` : fault.kind).join('; ');
    return division.pieces.map(({ kind, width }) => {
        const text = `${width / TICKS_PER_INCH}`;
        return kind === 'section' ? `[${text}]` : kind === 'made_to_measure' ? `${text}*` : text;
    }).join(' ');
}
const zone = (from: Length, to: Length) => ({ kind: 'fastening-zone' as const, name: 'stove', zone: { from, to } });
const section = (name: string, from: Length, width: Length) => ({ name, from, width, measuredFrom: 'left' as const });
const through = { covered: inches(3, 3, 4), least: inches(6, 3, 4) };

describe('order of preference', () => {
    test.each([
        ['whole modules, largest first', plain(inches(66)), '24 24 18'],
        ['the widest narrowest panel before the larger first', plain(inches(78)), '24 18 18 18'],
        ['made to measure away from the corners', plain(inches(80)), '24 20* 18 18'],
        ['one made to measure when modules leave a rest', plain(inches(30, 1, 2)), '18 12.5*'],
        ['no panel at all in a run of one section', plain(inches(30), { sections: [section('entry', zero, inches(30))] }), '[30]'],
        ['a section divides the run', plain(inches(84), { sections: [section('entry', inches(30), inches(30))] }), '18 12 [30] 24'],
        ['a joint on the edge of the zone passes', plain(inches(84), { softRules: [zone(inches(24), inches(48))] }), '24 24 18 18'],
        ['a joint strictly inside it does not', plain(inches(84), { softRules: [zone(inches(19), inches(41))] }), '18 24 24 18'],
        ['a soft rule never buys a panel', plain(inches(48), { softRules: [zone(inches(23), inches(25))] }), '24 24'],
        ['a through end keeps its least width', plain(inches(30), { left: through, right: { covered: zero, least: zero }, offer: { modules: [inches(24)], madeToMeasure: { from: inches(6), to: inches(12) } } }), '24 6*'],
        ['both ends through', plain(inches(30), { left: through, right: through, offer: { modules: [inches(24)], madeToMeasure: { from: inches(6), to: inches(12) } } }), 'stretch-does-not-close: rest-cannot-be-made'],
    ])('%s', (_name, input, expected) => expect(widths(input)).toBe(expected));
});

describe('why a run does not close', () => {
    test.each<[string, RunInput, unknown]>([
        ['no length', plain(ticks(-5)), [{ kind: 'run-has-no-length' }]],
        ['a slip of the pen', plain(inches(84 * 240)), [{ kind: 'run-too-long', limit: inches(600) }]],
        ['narrow, unrelated widths', plain(inches(599), { offer: { modules: [ticks(2_032_001), ticks(2_345_679), ticks(2_654_323)] } }), [{ kind: 'too-many-mixtures' }]],
        ['nothing offered', plain(inches(84), { offer: { modules: [] } }), [{ kind: 'no-panels-offered' }]],
        ['modules under 1" are no panels', plain(inches(84), { offer: { modules: [inches(0, 1, 16)] } }), [{ kind: 'no-panels-offered' }]],
        ['rest', plain(inches(27), { offer: { modules: inchModules } }), [{ kind: 'stretch-does-not-close', at: { from: 0, to: inches(27) }, fault: { kind: 'rest-cannot-be-made', reached: inches(24), rest: inches(3) } }]],
        ['narrow', plain(inches(60), { sections: [section('entry', inches(3), inches(30))] }), [{ kind: 'stretch-does-not-close', at: { from: 0, to: inches(3) }, after: 'entry', fault: { kind: 'narrower-than-any-panel', narrowest: inches(6) } }]],
        ['corner', plain(inches(60), { left: through, sections: [section('entry', inches(6), inches(30))] }), [{ kind: 'stretch-does-not-close', at: { from: 0, to: inches(6) }, after: 'entry', fault: { kind: 'corner-panel-too-narrow', least: inches(6, 3, 4) } }]],
        ['over the corner', plain(inches(60), { left: through, sections: [section('entry', inches(3), inches(30))] }), [{ kind: 'section-over-corner', section: 'entry', end: 'left', by: inches(0, 3, 4) }]],
        ['two sections', plain(inches(84), { sections: [section('entry', inches(12), inches(30)), section('pane', inches(40), inches(24))] }), [{ kind: 'sections-overlap', first: 'entry', second: 'pane', by: inches(2) }]],
    ])('%s', (_name, input, faults) => expect(divideRun(input)).toEqual({ closes: false, faults }));
});

describe('compared with an exhaustive enumeration', () => {
    const offers: [string, Pick<Problem, 'modules' | 'toMeasure'>, Length, Length, Length][] = [
        ['24, 18, 12 and made to measure', { modules: inchModules, toMeasure: inchRange }, inches(48), inches(240), inches(3, 7, 16)],
        ['24, 18, 12 only', { modules: inchModules }, inches(48), inches(240), inches(0, 3, 4)],
        ['narrow made-to-measure range', { modules: inchModules, toMeasure: { from: inches(8), to: inches(9, 1, 2) } }, inches(48), inches(240), inches(2, 11, 16)],
        ['600, 450, 300 and made to measure', { modules: metricModules, toMeasure: metricRange }, mm(1200), mm(6000), mm(83)],
        ['both systems mixed', { modules: [...inchModules, mm(600)], toMeasure: inchRange }, inches(48), inches(120), inches(7, 5, 16)],
    ];
    test.each(offers)('sizes: %s', (_name, offer, from, to, step) => {
        let closing = 0;
        for (let outside = from; outside <= to; outside = plus(outside, step)) {
            for (const problem of runsOf(outside, inches(3, 3, 4), inches(3), offer)) {
                const expected = said(enumerateByCount(problem));
                if (expected) closing += 1;
                expect({ run: problem.run, ...divided(problem) }).toEqual({ run: problem.run, ...expected });
            }
        }
        expect(closing).toBeGreaterThan(0);
    });

    const sixteenths = (from: number, to: number) => fc.integer({ min: from * 16, max: to * 16 }).map(n => ticks(n * TICKS_PER_INCH / 16));
    const problems = fc.record({
        lengths: fc.array(fc.oneof(sixteenths(0, 40), fc.constantFrom(0, 12, 18, 24, 30, 36).map(n => inches(n))), { minLength: 1, maxLength: 2 }),
        leftThrough: fc.boolean(), rightThrough: fc.boolean(), hasOwn: fc.boolean(),
        soft: fc.array(fc.tuple(sixteenths(0, 90), sixteenths(1, 20)), { maxLength: 4 }),
    }).map(({ lengths, leftThrough, rightThrough, hasOwn, soft }): Problem => {
        const door = inches(30);
        const run = ticks(lengths.reduce((total, length) => total + length, (lengths.length - 1) * door));
        const first = lengths[0] ?? zero;
        return {
            run, modules: inchModules, ...(hasOwn && { toMeasure: inchRange }),
            leftCovered: leftThrough ? inches(3, 3, 4) : zero, leftLeast: leftThrough ? inches(6, 3, 4) : zero,
            rightCovered: rightThrough ? inches(3, 3, 4) : zero, rightLeast: rightThrough ? inches(6, 3, 4) : zero,
            sections: lengths.length === 2 ? [{ from: first, to: plus(first, door) }] : [],
            soft: soft.map(([at, size]) => ({ from: at, to: plus(at, size) })),
        };
    }).filter(problem => problem.run > 0);
    test('openings, corners and soft rules together', () => {
        const seen = { closing: 0, refused: 0, broken: 0 };
        fc.assert(fc.property(problems, problem => {
            const expected = said(enumerateEverything(problem, 5));
            expect(divided(problem)).toEqual(expected);
            seen[expected ? 'closing' : 'refused'] += 1;
            if ((expected?.figures[2] ?? 0) > 0) seen.broken += 1;
        }), { numRuns: 400, seed: 7 });
        expect(Math.min(seen.closing, seen.refused, seen.broken), JSON.stringify(seen)).toBeGreaterThan(20);
    });

    test('the mirrored run is as good, and its panels sum to the run', () => fc.assert(fc.property(problems, problem => {
        const flip = ({ from, to }: { from: Length; to: Length }) => ({ from: minus(problem.run, to), to: minus(problem.run, from) });
        const mirrored: Problem = {
            ...problem, sections: problem.sections.map(flip), soft: problem.soft.map(flip),
            leftCovered: problem.rightCovered, leftLeast: problem.rightLeast, rightCovered: problem.leftCovered, rightLeast: problem.leftLeast,
        };
        expect(divided(mirrored)?.figures).toEqual(divided(problem)?.figures);
        const division = divideRun(asRun(problem));
        if (!division.closes) return;
        expect(division.pieces.reduce((total, piece) => total + piece.width, 0)).toBe(problem.run);
        expect(division.pieces.every((piece, index) => piece.at.from === (division.pieces[index - 1]?.at.to ?? 0))).toBe(true);
    })));
});
