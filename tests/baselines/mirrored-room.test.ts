import { beforeAll, expect, test } from 'vitest';
import type { JobAnalysis } from '../../language/src/analyze.js';
import { exampleText } from '../support/workspace.js';
import { openExamples } from './examples.js';

// birch-point-mirrored.hotroom is birch-point.hotroom with left and right exchanged, so everything but the hands of things has to come out the same.

const mirror = (text: string): string => text.replace(/\b(left|right)(?=\b|_)/g, word => word === 'left' ? 'right' : 'left');
/** What a job says, without remarks, names and numbers. */
const facts = (text: string): string[] => text.split('\n').filter(line => !/^\/\/|^job |^ {4}(number|revision) |measured_by|spans_/.test(line)).map(line => line.replaceAll(/ +/g, ' '));

/** Every measured fact. Lengths are exact; what is added up in floating point may differ in its last bit when the walls come in another order. */
const measured = ({ facts: tree }: JobAnalysis): [string, unknown][] => tree.under().flatMap(({ path, value }): [string, unknown][] =>
    value.kind === 'words' ? [] : [[path, value.kind === 'amount' ? { ...value, value: Number(value.value.toPrecision(12)) } : value]]);

let one: JobAnalysis;
let other: JobAnalysis;
beforeAll(async () => {
    const analysisOf = await openExamples();
    [one, other] = ['birch-point.hotroom', 'birch-point-mirrored.hotroom'].map(path => analysisOf(path).jobs[0]!) as [JobAnalysis, JobAnalysis];
});

test('the two files say the same, left and right exchanged', () => {
    expect(facts(exampleText('birch-point-mirrored.hotroom'))).toEqual(facts(mirror(exampleText('birch-point.hotroom'))));
});
test('the same rules speak, equally gravely', () => {
    const summary = ({ findings }: JobAnalysis): string[] => findings.map(({ rule, severity }) => `${severity} ${rule}`).sort();
    expect(summary(other)).toEqual(summary(one));
});
test('every measured fact is the same on the mirrored wall', () => {
    expect(measured(one).length).toBeGreaterThan(40);
    expect(Object.fromEntries(measured(other).map(([path, value]) => [mirror(path), value]))).toEqual(Object.fromEntries(measured(one)));
});
test('each wall has the panels of the mirrored wall, in whatever order', () => {
    const widths = ({ results }: JobAnalysis, wall: 'front' | 'left' | 'back' | 'right'): number[] => (results.shell?.result.walls[wall].panels ?? []).map(({ cover }) => cover).sort((a, b) => a - b);
    for (const [wall, mirrored] of [['front', 'front'], ['back', 'back'], ['left', 'right'], ['right', 'left']] as const) expect(widths(other, mirrored)).toEqual(widths(one, wall));
});
test('the saw cuts the same pieces', () => {
    const cuts = ({ results }: JobAnalysis): string[] => results.parts.map(({ what, count, section, length, cut }) => [what, count, section.thickness, section.width, length, cut].join(' ')).sort();
    expect(cuts(other)).toEqual(cuts(one));
});
test('the door is hung on the other hand', () => {
    const hand = ({ facts: tree }: JobAnalysis): unknown => { const found = tree.get('entry.hand'); return found.kind === 'value' ? found.fact.value : undefined; };
    expect([hand(one), hand(other)]).toEqual([{ kind: 'words', words: 'left-hand, seen from outside, the pull side' }, { kind: 'words', words: 'right-hand, seen from outside, the pull side' }]);
});

// The rooms of a line are laid out once for both hands, so each left-handed one has to be the mirror of its right-handed sister.
test('a line of rooms is the same in both hands, measure by measure and piece by piece', async () => {
    const jobs = new Map((await openExamples())('line/skua.hotroom').jobs.map(job => [job.job.block.name?.value ?? '', job]));
    const lefts = [...jobs.keys()].filter(name => name.includes('_left_'));
    expect(lefts).toHaveLength(24);
    const cuts = ({ results }: JobAnalysis): string[] => results.parts.filter(({ mark }) => !mark.startsWith('BASE-')).map(({ what, count, section, length, cut }) => [what, count, section.thickness, section.width, length, cut].join(' ')).sort();
    for (const name of lefts) {
        const [left, right] = [jobs.get(name)!, jobs.get(mirror(name.replaceAll('_', ' ')).replaceAll(' ', '_'))!];
        expect(Object.fromEntries(measured(right).map(([path, value]) => [mirror(path), value])), name).toEqual(Object.fromEntries(measured(left)));
        expect(cuts(right), name).toEqual(cuts(left));
    }
});
