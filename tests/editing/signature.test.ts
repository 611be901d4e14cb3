import { describe, expect, test } from 'vitest';
import { signatureAt, type Signature } from '../../language/src/editing/signature.js';
import type { Sight } from '../../language/src/editing/offer.js';
import { analyzeText } from '../support/workspace.js';
import { allConstructs } from './all-constructs.js';
import { rawOf, sightOf, withCursor } from './sample.js';
import { sightOfConstructs } from './try-offers.js';

let sight: Promise<Sight> | undefined;
const signature = async (marked: string): Promise<Signature | undefined> => {
    const { text, offset } = withCursor(marked);
    return signatureAt(rawOf(text), offset, await (sight ??= analyzeText(allConstructs).then(sightOfConstructs)));
};
const shown = async (marked: string): Promise<string | undefined> => {
    const found = await signature(marked);
    const place = found?.active === undefined ? undefined : found.parameters[found.active];
    return found && `${found.label} at ${place ? found.label.slice(place.start, place.end) : 'nothing'}`;
};

describe('a series', () => {
    test.each([
        ['job a is cottage(<|>', 'cottage(w, side, stove_kind) at w'],
        ['job a is cottage(96", <|>', 'cottage(w, side, stove_kind) at side'],
        ['job a "A" is cottage(96", left, <|>) { }', 'cottage(w, side, stove_kind) at stove_kind'],
        ['job a is cottage(96", left, Tarn60, <|>)', 'cottage(w, side, stove_kind) at nothing'],
        ['job a is cottage(stove_kind = <|>', 'cottage(w, side, stove_kind) at stove_kind'],
        ['job a is cottage(side = left, <|>)', 'cottage(w, side, stove_kind) at w'],
        ['job a is cottage(max(80", <|>), left)', 'max(value, …) at …'],
        ['job a is cottage(max(80", 90")<|>, left)', 'cottage(w, side, stove_kind) at w'],
    ])('%s', async (marked, expected) => expect(await shown(marked)).toBe(expected));
    test('with its title, and what a parameter takes', async () => {
        const found = await signature('job a is cottage(<|>');
        expect(found?.doc).toBe('Cottage');
        expect(found?.parameters[0]?.doc).toBe('Outside width. w takes a length: at least 60"; at most 120"; otherwise 84".');
    });
});

describe('a function', () => {
    test.each([
        ['job a {\n    room { width round_down(72", <|> }\n}', 'round_down(value, step) at step'],
        ['let a = max(1", 2", 3", <|>', 'max(value, …) at …'],
        ['let a = not(<|>)', 'not(condition) at condition'],
        ['let a = not(1 > 2, <|>)', 'not(condition) at nothing'],
        ['let a = opposite(left)<|>', undefined], ['let a = (<|>', undefined], ['job a is unknown(<|>', undefined], ['let a = "max(<|>"', undefined], ['job a { } // max(<|>', undefined],
    ])('%s', async (marked, expected) => expect(await shown(marked)).toBe(expected));
});

test('an answer at every offset of every cut-off beginning', () => {
    for (let length = 0; length <= allConstructs.length; length += 5) {
        const raw = rawOf(allConstructs.slice(0, length));
        expect(() => signatureAt(raw, length, sightOf({}))).not.toThrow();
    }
});
