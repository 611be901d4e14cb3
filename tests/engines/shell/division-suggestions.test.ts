import fc from 'fast-check';
import { expect, test } from 'vitest';
import { inches, minus, plus, ticks, TICKS_PER_INCH, zero, type Length } from '../../../language/src/core/length.js';
import { divideRun, type RunInput } from '../../../language/src/engines/shell/division.js';
import { runAfter, runWithMoved, suggestForRun } from '../../../language/src/engines/shell/division-suggestions.js';
import { fewestToMeasure, type Problem } from './enumerate.js';

const modules = [inches(24), inches(18)];
const quarter = TICKS_PER_INCH / 4;
const quarters = (from: number, to: number) => fc.integer({ min: from * 4, max: to * 4 }).map(n => ticks(n * quarter));

const asProblem = (input: RunInput): Problem => ({
    run: input.run, leftCovered: input.left.covered, leftLeast: input.left.least, rightCovered: input.right.covered, rightLeast: input.right.least,
    modules: input.offer.modules, ...(input.offer.madeToMeasure && { toMeasure: input.offer.madeToMeasure }), soft: [],
    sections: input.sections.map(({ from, width }) => ({ from, to: plus(from, width) })),
});

const runs = fc.record({
    lengths: fc.array(quarters(0, 33), { minLength: 1, maxLength: 3 }), held: fc.array(fc.constantFrom('left' as const, 'right' as const), { minLength: 2, maxLength: 2 }),
    leftThrough: fc.boolean(), rightThrough: fc.boolean(), hasOwn: fc.boolean(),
}).map(({ lengths, held, leftThrough, rightThrough, hasOwn }): RunInput => {
    const width = inches(12);
    const end = (isThrough: boolean) => isThrough ? { covered: inches(3, 3, 4), least: inches(6, 3, 4) } : { covered: zero, least: zero };
    const froms = lengths.slice(0, -1).map((_, index) => ticks(lengths.slice(0, index + 1).reduce((total, length) => total + length, index * width)));
    return {
        run: ticks(lengths.reduce((total, length) => total + length, (lengths.length - 1) * width)),
        left: end(leftThrough), right: end(rightThrough), softRules: [],
        sections: froms.map((from, index) => ({ name: `section ${index + 1}`, from, width, measuredFrom: held[index] ?? 'left' })),
        offer: { modules, ...(hasOwn && { madeToMeasure: { from: inches(6), to: inches(9, 1, 2) } }) },
    };
}).filter(input => input.run > 0);

test('the nearest sizes and places are those found by trying every quarter inch', () => {
    const known = new Map<string, Map<string, number>>();
    const seen = { closed: 0, saved: 0, none: 0 };
    fc.assert(fc.property(runs, input => {
        const cache = known.get(JSON.stringify(input.offer)) ?? new Map<string, number>();
        known.set(JSON.stringify(input.offer), cache);
        // Openings keep their order: one that jumps over its neighbour is another design, not a nearby one.
        const isInOrder = (run: RunInput) => run.sections.every((section, index) => index === 0 || section.from >= run.sections[index - 1]!.from + run.sections[index - 1]!.width);
        const fewest = (run: RunInput): number | undefined => run.run > 0 && isInOrder(run) ? fewestToMeasure(asProblem(run), 5, cache) : undefined;
        // Two panels of 24" are as far as a suggestion looks; five panels of 18" fill more than any gap reached by it.
        const tried = (after: (change: Length) => RunInput, most: number) => [1, -1].flatMap(sign => {
            for (let steps = 1; steps * quarter <= inches(48); steps++) {
                const count = fewest(after(ticks(sign * steps * quarter)));
                if (count !== undefined && count <= most) return [{ change: sign * steps * quarter, madeToMeasure: count }];
            }
            return [];
        });
        const bySize = (most: number) => tried(change => runAfter(input, change), most);
        const byPlace = (most: number) => input.sections.flatMap(({ name }) =>
            tried(change => runWithMoved(input, name, change), most).map(found => ({ section: name, ...found })));

        const now = fewest(input);
        const sizesThatClose = now === undefined ? bySize(9) : [];
        const placesThatClose = now === undefined ? byPlace(9) : [];
        const base = now ?? Math.min(...[...sizesThatClose, ...placesThatClose].map(found => found.madeToMeasure));
        const saves = Number.isFinite(base) && base > 0;
        const expected = { sizesThatClose, placesThatClose, sizesThatSave: saves ? bySize(base - 1) : [], placesThatSave: saves ? byPlace(base - 1) : [] };
        const ours = suggestForRun(input);
        expect(ours).toEqual(expected);
        if (sizesThatClose.length > 0) seen.closed += 1;
        if (expected.sizesThatSave.length > 0) seen.saved += 1;
        if (now === undefined && sizesThatClose.length + placesThatClose.length === 0) seen.none += 1;
        for (const { change } of ours.sizesThatClose) expect(divideRun(runAfter(input, change)).closes).toBe(true);
    }), { numRuns: 250, seed: 11 });
    expect(Math.min(seen.closed, seen.saved, seen.none), JSON.stringify(seen)).toBeGreaterThan(10);
});

test('a run of 27" that modules leave 3" over: 24" and 36" close, and say so', () => {
    const input: RunInput = {
        run: inches(27), left: { covered: zero, least: zero }, right: { covered: zero, least: zero }, sections: [], softRules: [],
        offer: { modules: [inches(24), inches(18), inches(12)] },
    };
    expect(suggestForRun(input)).toEqual({
        sizesThatClose: [{ change: inches(3), madeToMeasure: 0 }, { change: minus(zero, inches(3)), madeToMeasure: 0 }],
        placesThatClose: [], sizesThatSave: [], placesThatSave: [],
    });
});

test('an opening far outside its wall gets no suggestion: no small change is near', () => {
    const end = { covered: zero, least: zero };
    const input: RunInput = {
        run: inches(84), left: end, right: end, softRules: [], sections: [{ name: 'entry', from: inches(-1000), width: inches(30), measuredFrom: 'left' }],
        offer: { modules: [inches(24), inches(18), inches(12)] },
    };
    expect(suggestForRun(input)).toEqual({ sizesThatClose: [], placesThatClose: [], sizesThatSave: [], placesThatSave: [] });
});

type Placed = readonly [from: number, width: number, measuredFrom: 'left' | 'right'];
test.each<[string, Placed, Placed]>([
    ['at one place, held from both ends', [37, 24, 'left'], [37, 24, 'right']], ['at one place, the other order', [37, 24, 'right'], [37, 24, 'left']],
    ['one inside the other', [30, 24, 'right'], [34, 12, 'left']], ['with one left edge', [30, 24, 'left'], [30, 12, 'right']], ['with one right edge', [30, 24, 'left'], [42, 12, 'right']],
    ['overlapping a little', [20, 24, 'left'], [40, 24, 'left']],
])('sections that overlap have the mirror image of what their mirror image is told: %s', (_, ...sections) => {
    const plain = { covered: zero, least: zero };
    const inHand = (isMirrored: boolean): RunInput => ({
        run: inches(98), left: plain, right: plain, softRules: [], offer: { modules, madeToMeasure: { from: inches(6), to: inches(24) } },
        sections: sections.map(([from, width, measuredFrom], index) => ({
            name: `section ${index + 1}`, from: inches(isMirrored ? 98 - from - width : from), width: inches(width), measuredFrom: (measuredFrom === 'left') !== isMirrored ? 'left' : 'right',
        })),
    });
    const [here, there] = [inHand(false), inHand(true)].map(input => ({ division: divideRun(input), suggestions: suggestForRun(input) }));
    const turned = (moves: readonly { readonly section: string; readonly change: Length }[]) => moves.map(({ section, change }) => [section, change]).sort();
    expect(there!.suggestions.sizesThatClose).toEqual(here!.suggestions.sizesThatClose);
    expect(turned(there!.suggestions.placesThatClose)).toEqual(turned(here!.suggestions.placesThatClose.map(move => ({ ...move, change: minus(zero, move.change) }))));
    expect(here!.suggestions.placesThatClose.length).toBeGreaterThan(0);
    const overlaps = ({ division }: NonNullable<typeof here>) => division.closes ? [] : division.faults.flatMap(fault => fault.kind === 'sections-overlap' ? [fault.by] : []);
    expect(overlaps(here!)).toHaveLength(1);
    expect(overlaps(there!)).toEqual(overlaps(here!));
});
