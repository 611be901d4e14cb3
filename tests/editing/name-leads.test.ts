import { describe, expect, test } from 'vitest';
import { leadsAt } from '../../language/src/editing/name-index.js';
import { nameFiles, nameWorkspace } from './rename-workspace.js';
import { exampleText } from '../support/workspace.js';

const { library, uris, context } = await nameWorkspace();
const textOf = (path: string): string => nameFiles[path] ?? exampleText(path);

/** What a place leads to: the file, and the line with the words gone to in brackets. */
function leads(file: string, needle: string, word: string): readonly string[] {
    const path = `names/${file}.hotroom`;
    const text = textOf(path);
    const from = text.indexOf(needle);
    const offset = text.indexOf(word, from);
    if (from < 0 || offset < 0) throw new Error(`no ${needle} in ${path}`);
    return (leadsAt(`memory:/jobs/${path}`, offset + 1, uris, library)?.leads ?? []).map(({ uri, start, end }) => {
        const other = context.nameOfFile(uri);
        const its = context.textOf(uri);
        const line = its.slice(its.lastIndexOf('\n', start) + 1, its.indexOf('\n', end));
        const column = start - (its.lastIndexOf('\n', start) + 1);
        return `${other.replace(/^names\//, '').replace('.hotroom', '')}: ${`${line.slice(0, column)}[${line.slice(column, column + end - start)}]${line.slice(column + end - start)}`.trim().replace(/ +/g, ' ')}`;
    });
}

describe('a name leads to what declares it', () => {
    test.each([
        ['line', 'width     w\n', 'w\n', ['line: parameter [w] { takes length; least 60"; most 120"; otherwise 84"; doc "Outside width" }']],
        ['line', 'model     leaf', 'leaf', ['line: parameter [leaf] { takes door_model; otherwise Leaf24 }']],
        ['line', 'top       step', 'step', ['line: let [step] = lower_top']],
        ['line', 'let step = lower_top', 'lower_top', ['line: let [lower_top] = 18"']],
        ['line', 'on across', 'across', ['line: let [across] = opposite(side)']],
        ['line', 'feeds     stove', 'stove', ['line: heater [stove] on side {']],
        ['line', 'stove_feed.cellar', 'cellar', ['line: segment [cellar] { length 22\'; ambient 68 degF }']],
        ['line', 'seat = finger', 'seat', ['line: parameter [seat] { takes length; least finger_room; otherwise 20" }']],
        ['line', 'finger * 14', 'finger', ['line: let [finger] = 1 1/2"']],
        ['jobs', 'w = wide', 'w = ', ['line: parameter [w] { takes length; least 60"; most 120"; otherwise 84"; doc "Outside width" }']],
        ['jobs', 'leaf = Leaf23', 'Leaf23', ['house: door_model [Leaf23] "Wide leaf" is Leaf24 { }']],
        ['jobs', 'let step = 16"', 'step', ['line: let [step] = lower_top']],
        ['jobs', 'bench upper { top 36"', 'upper', ['line: bench [upper] on back {']],
        ['jobs', 'waive seated_headroom', 'seated', ['house: rule [seated_headroom] "Head clearance over the top bench" {']],
        ['jobs', 'on upper because', 'upper', ['line: bench [upper] on back {']],
        ['jobs', 'is cottage(96', 'cottage', ['line: series [cottage] "Cottage" {']],
        ['house', 'upper.depth >= 20', 'upper', ['line: bench [upper] on back {']],
        ['house', 'is Tarn60', 'Tarn60', ['catalogue/heaters: heater_model [Tarn60] "6 kW wall heater" {']],
    ])('in %s: %s', (file, needle, word, expected) => { expect(leads(file, needle, word)).toEqual(expected); });
});

describe('a later word of a path leads to the fact it asks for', () => {
    test.each([
        ['line', 'upper.depth - 4"', 'depth', ['line: [depth] seat']],
        ['line', 'site.pipe.width', 'width', ['line: obstruction pipe { from_left 0"; from_front 2"; [width] 2"; depth 2"; top site.pipe.width + 20" }']],
        ['line', 'stove.model.power', 'model', ['line: [model] Tarn60']],
        ['line', 'stove.model.power', 'power', [expect.stringMatching(/^catalogue\/heaters: \[power\] /)]],
        ['jobs', 'when upper.top', 'top', ['jobs: bench upper { [top] 36" }']],
        ['jobs', 'lower.depth + 5', 'depth', ['jobs: bench lower { [depth] 15" }']],
    ])('in %s: %s', (file, needle, word, expected) => { expect(leads(file, needle, word)).toEqual(expected); });
});

describe('a fact that says something otherwise leads to what it wins over, and back', () => {
    test.each([
        ['jobs', 'top 36"', 'top', ['line: [top] 37"']],
        ['jobs', 'top 35"', 'top', ['jobs: bench upper { [top] 36" }', 'line: [top] 37"']],
        ['line', 'top       37"', 'top', ['jobs: bench upper { [top] 36" }', 'jobs: bench upper { [top] 35"; depth lower.depth + 5" }']],
    ])('in %s: %s', (file, needle, word, expected) => { expect(leads(file, needle, word)).toEqual(expected); });
});

test('a word that says what it is leads nowhere', () => {
    expect(leads('line', 'stands outside', 'outside')).toEqual([]);
    expect(leads('line', 'spans_left', 'spans')).toEqual([]);
});
