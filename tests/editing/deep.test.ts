import { expect, test } from 'vitest';
import { completionsAt } from '../../language/src/editing/complete.js';
import { formatText } from '../../language/src/editing/format.js';
import { highlights } from '../../language/src/editing/highlight.js';
import { outlineOf } from '../../language/src/editing/outline.js';
import { foldsOf, stretchesAround } from '../../language/src/editing/ranges.js';
import { lexer, rawOf, sightOf } from './sample.js';

/** Texts nobody writes and everybody can paste. */
const odd: readonly (readonly [string, string])[] = [
    ['thousands of braces', '{'.repeat(1500)], ['thousands of closing braces', '}'.repeat(1500)], ['ten thousand brackets', `job a { room { width ${'('.repeat(10_000)} } }`],
    ['thousands of blocks in each other', 'room {\n'.repeat(1500)], ['ten thousand signs', `job a { room { width ${'-'.repeat(10_000)}1" } }`], ['a very long line', `job a { number "${'x'.repeat(100_000)}" }`],
];
test.each(odd)('%s: every question has an answer', (_, text) => {
    const raw = rawOf(text);
    highlights(raw);
    outlineOf(raw);
    foldsOf(raw);
    formatText(raw, lexer, { indent: '    ' });
    for (const offset of [0, text.length >> 1, text.length]) {
        expect(stretchesAround(raw, offset).at(-1)).toEqual({ start: 0, end: text.length });
        completionsAt(raw, offset, sightOf({}));
    }
}, 60_000);
