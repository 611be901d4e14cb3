import { describe, expect, test } from 'vitest';
import { meaningsIn, namesOf } from '../../language/src/editing/name-index.js';
import { namesIn } from '../../language/src/editing/name-occurrences.js';
import type { Property } from '../../language/src/vocabulary/block.js';
import { vocabulary } from '../../language/src/vocabulary/index.js';
import { examplePaths, exampleText } from '../support/workspace.js';
import { nameFiles, nameWorkspace } from './rename-workspace.js';

const choices = new Set(Object.values(vocabulary).flatMap(({ properties }) => Object.values(properties as Readonly<Record<string, Property>>)).flatMap(({ type }) => type.choices ?? []));
const sound = examplePaths().filter(path => !path.startsWith('mistakes/') && !path.startsWith('catalogue/'));

describe('every name of the examples', () => {
    test('is where its text stands, and what is declared is found', async () => {
        const { library, uris, context } = await nameWorkspace(Object.fromEntries(sound.map(path => [path, exampleText(path)])));
        const meanings = meaningsIn(uris, library);
        const all = uris.flatMap(uri => (namesOf(uri, library)?.occurrences ?? []).map(one => ({ ...one, uri, meaning: meanings.of(one.key) })));
        for (const { uri, start, end, name } of all) expect(context.textOf(uri).slice(start, end)).toBe(name);
        const declared = new Set(all.filter(({ role }) => role !== 'use').map(({ meaning }) => meaning));
        // Walls and other choices, and words a parameter may be, name nothing.
        const isChoice = (word: string, uri: string): boolean => choices.has(word) || new RegExp(`one_of [^;]*\\b${word}\\b`).test(context.textOf(uri));
        expect(all.filter(({ meaning, name, uri }) => !declared.has(meaning) && !isChoice(name, uri)).map(({ name, uri }) => `${context.nameOfFile(uri)} ${name}`)).toEqual([]);
    });
});

test('a name leads where the links of the language lead', async () => {
    const { library, uris, workspace } = await nameWorkspace({ ...nameFiles, ...Object.fromEntries(sound.map(path => [path, exampleText(path)])) });
    const meanings = meaningsIn(uris, library);
    const declaring = new Map<string, Set<unknown>>();
    for (const uri of uris) for (const { key, role, fact } of namesOf(uri, library)?.occurrences ?? []) if (role !== 'use') declaring.set(meanings.of(key), (declaring.get(meanings.of(key)) ?? new Set()).add(fact));
    let count = 0;
    for (const document of workspace.shared.workspace.LangiumDocuments.all) {
        const names = namesOf(document.uri.toString(), library);
        for (const reference of document.references) {
            if (!('ref' in reference)) continue;
            const { $refNode, ref, $refText } = reference;
            if (!ref || !$refNode) continue;
            count++;
            const found = names?.occurrences.find(({ start }) => start === $refNode.offset);
            expect(declaring.get(meanings.of(found?.key ?? ''))?.has(ref), `${$refText} in ${document.uri.path}`).toBe(true);
        }
    }
    expect(count).toBeGreaterThan(200);
});

test('no text is too broken to be asked for its names', async () => {
    const { library, context } = await nameWorkspace();
    for (const [path, text] of Object.entries(nameFiles)) {
        const uri = `memory:/jobs/${path}`;
        for (let at = 0; at < text.length; at += 7) for (const damaged of [text.slice(0, at), text.slice(0, at) + text.slice(at + 5)]) {
            const root = context.read(damaged);
            if (!root) throw new Error('no tree');
            const { occurrences, steps } = namesIn(uri, root, { ...library, root: other => other === uri ? root : library.root(other) });
            for (const { start, end, name } of occurrences) if (damaged.slice(start, end) !== name) expect.fail(`${path} at ${start}: ${name} is ${damaged.slice(start, end)}`);
            for (const { start, end } of steps) if (!/^[\w-]+$/.test(damaged.slice(start, end))) expect.fail(`${path} at ${start}: ${damaged.slice(start, end)}`);
        }
    }
}, 60_000);
