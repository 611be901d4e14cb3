import { describe, expect, test } from 'vitest';
import { meaningsIn, namesOf, type PlacedName } from '../../language/src/editing/name-index.js';
import { rename, type Renaming } from '../../language/src/editing/rename.js';
import { applyChanges } from '../../language/src/editing/text-lines.js';
import { nameFiles, nameWorkspace } from './rename-workspace.js';

type Files = Readonly<Record<string, string>>;
const { context, workspace, library, uris } = await nameWorkspace();
const meanings = meaningsIn(uris, library);
const pathOf = (uri: string): string => uri.replace('memory:/jobs/', '');
const own = uris.filter(uri => pathOf(uri) in nameFiles);
const places: readonly PlacedName[] = own.flatMap(uri => (namesOf(uri, library)?.occurrences ?? []).map(one => ({ ...one, uri })));
/** Names that the files themselves declare, each with every place of it. */
const groups = new Map<string, PlacedName[]>();
for (const place of places) { const key = meanings.of(place.key); groups.set(key, [...groups.get(key) ?? [], place]); }
const declared = [...groups.values()].filter(group => group.some(({ role }) => role !== 'use'));

const edited = (files: Files, renaming: Renaming | undefined): Files => {
    if (!renaming || 'refused' in renaming) throw new Error(renaming ? renaming.refused : 'no name');
    return Object.fromEntries(Object.entries(files).map(([path, text]) => [path, applyChanges(text, renaming.edits.filter(({ uri }) => pathOf(uri) === path))]));
};
const show = ([first]: readonly PlacedName[]): string => first ? `${first.kind} ${first.name} of ${pathOf(first.uri)} at ${first.start}` : '';

/** Everything that is worked out for the jobs of some files, as lines of text. */
async function workedOut(files: Files): Promise<string> {
    const { workspace: other } = await nameWorkspace(files);
    const lines = other.shared.workspace.LangiumDocuments.all.filter(({ uri }) => pathOf(uri.toString()) in nameFiles).toArray().flatMap(document => {
        const { jobs, findings } = other.analyze(document, { today: { year: 2026, month: 11, day: 25 } });
        return [
            ...jobs.flatMap(({ job, facts, results }) => [
                ...facts.paths().map(path => { const found = facts.get(path); return `${job.block.name?.value ?? ''} ${path} ${found.kind === 'value' ? JSON.stringify(found.fact.value) : found.kind}`; }),
                ...results.parts.map(({ mark, cut, count }) => `${job.block.name?.value ?? ''} ${mark} ${cut} ${count}`),
            ]),
            ...findings.map(({ severity, rule, message }) => `${severity} ${rule} ${message}`),
        ];
    });
    return lines.sort().join('\n');
}

test('the files use every kind of name, and what they give is sound', async () => {
    expect(new Set(declared.flat().map(({ kind }) => kind))).toEqual(new Set(['job', 'catalogue', 'series', 'entry', 'variant', 'rule', 'parameter', 'let', 'block']));
    expect(declared.length).toBeGreaterThan(35);
    expect((await workedOut(nameFiles)).split('\n').filter(line => line.startsWith('error '))).toEqual([]);
});

test('a renaming gives the same edits from every place of a name', () => {
    for (const group of declared) {
        const [first, ...others] = group.map(({ uri, start }) => rename(uri, start, 'zz_new', context));
        expect(first && 'edits' in first ? first.edits : first, show(group)).toHaveLength(group.length);
        for (const other of others) expect(other, show(group)).toEqual(first);
        const [{ uri, start, end } = { uri: '', start: 0, end: 0 }] = group;
        for (const offset of [start + 1, end]) expect(rename(uri, offset, 'zz_new', context), show(group)).toEqual(first);
    }
});

test('what is worked out is the same but for the name, and renaming back gives the text back', async () => {
    const before = await workedOut(nameFiles);
    for (const group of declared) {
        const [{ uri, start, name } = { uri: '', start: 0, name: '' }] = group;
        const after = edited(nameFiles, rename(uri, start, 'zz_new', context));
        const lines = (await workedOut(after)).replaceAll('zz_new', name).replaceAll('ZZ-NEW', name.toUpperCase().replaceAll('_', '-')).replaceAll('ZZ_NEW', name.toUpperCase());
        expect(lines.split('\n').sort(), show(group)).toEqual(before.split('\n').sort());
        const back = await nameWorkspace(after);
        const text = after[pathOf(uri)] ?? '';
        expect(edited(after, rename(uri, text.indexOf('zz_new', Math.max(0, start - 200)), name, back.context)), show(group)).toEqual(nameFiles);
    }
}, 120_000);

describe('refusals', () => {
    const at = (path: string, needle: string): readonly [string, number] => [workspace.uri(`names/${path}.hotroom`).toString(), nameFiles[`names/${path}.hotroom`]?.indexOf(needle) ?? -1];
    test.each([
        ['line', 'upper on', 'lower', 'The name lower is taken by another bench.'],
        ['line', 'upper on', 'notice', 'The name notice is taken by a sign.'],
        ['line', 'step =', 'across', 'The name across is taken by another let.'],
        ['line', 'step =', 'w', 'The name w is taken by a parameter.'],
        ['jobs', 'under =', 'finger_room', 'The name finger_room is taken by another let.'],
        ['line', 'step =', 'max', '‘max’ is a function and cannot be a name.'],
        ['line', 'w {', 'left', '‘left’ is a wall and cannot be a name.'],
        ['line', 'w {', 'bench', '‘bench’ is a kind of block and cannot be a name.'],
        ['line', 'w {', 'if', '‘if’ has a meaning of its own and cannot be a name.'],
        ['line', 'w {', '2nd', '‘2nd’ is not a name. A name is made of letters, digits and _, and begins with a letter.'],
        ['house', 'Leaf23', 'Leaf24', 'The name Leaf24 is taken by a door model of catalogue/skerry.hotroom, which names/house.hotroom uses too.'],
        ['line', 'leaf {', 'Leaf24', 'The name Leaf24 is taken by a door model.'],
        ['jobs', 'wide =', 'Leaf23', 'The name Leaf23 is taken by a door model.'],
        ['jobs', 'one "First"', 'two', 'The name two is taken by another job.'],
        ['line', 'cottage "', 'high', 'The name high is taken by another series.'],
    ])('in %s, %sto %s', (path, needle, newName, message) => {
        expect(rename(...at(path, needle), newName, context)).toEqual({ refused: message });
    });
    test('of a name in a file that may not be changed', () => {
        expect(rename(...at('line', 'Tarn60'), 'Tarn62', { ...context, mayChange: uri => !uri.includes('/catalogue/') }))
            .toEqual({ refused: 'Tarn60 also stands in catalogue/heaters.hotroom, which lies outside the open folders. Open the folder that holds it first.' });
    });
    test('of a vent that has its role from its name', async () => {
        const text = 'job a { vent intake on left { bottom 4" } vent other on left { bottom 4" } }'.replace('} vent', '}\nvent');
        const small = await nameWorkspace({ 'a.hotroom': text });
        const to = (from: string, newName: string): unknown => rename('memory:/jobs/a.hotroom', text.indexOf(from), newName, small.context);
        expect(to('intake', 'low')).toEqual({ refused: 'The vent is an intake because it is called so. Write role intake in it first.' });
        expect(to('other', 'exhaust')).toEqual({ refused: 'Called exhaust, the vent would become one. Write its role in it first.' });
    });
    test('of what nothing declares', () => {
        expect(rename(...at('line', 'left, right'), 'other', context)).toEqual({ refused: 'Nothing in sight is called left, so there is nothing to rename.' });
    });
    test('where no name stands there is nothing to rename', () => {
        expect(rename(...at('line', 'depth     79'), 'other', context)).toBeUndefined();
    });
});
