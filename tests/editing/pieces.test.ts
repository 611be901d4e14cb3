import { expect, test } from 'vitest';
import { highlights } from '../../language/src/editing/highlight.js';
import { outlineOf, type OutlineEntry } from '../../language/src/editing/outline.js';
import { foldsOf, stretchesAround } from '../../language/src/editing/ranges.js';
import { exampleText, examplePaths } from '../support/workspace.js';
import { dedent } from '../support/dedent.js';
import { allConstructs } from './all-constructs.js';
import { rawOf, withCursor } from './sample.js';

const colours = (text: string): string[] => highlights(rawOf(text)).map(({ start, end, kind }) => `${kind} ${text.slice(start, end)}`);

test('every word has the colour of what it is', () => {
    expect(colours(dedent(`
        use "a.hotroom"   // remark
        job a "Title" {
            rules us_dwelling
            bench upper on back, left {
                top 37" - 2 * 1 mm
                in_front_of lower
                from left 2"
            }
            stock x { price 1.20 USD }
        }
    `))).toEqual([
        'block use', 'text "a.hotroom"', 'remark // remark', 'block job', 'name a', 'text "Title"', 'property rules', 'choice us_dwelling',
        'block bench', 'name upper', 'connective on', 'choice back', 'choice left', 'property top', 'figure 37"', 'operator -', 'figure 2', 'operator *', 'figure 1 mm',
        'property in_front_of', 'reference lower', 'property from', 'choice left', 'figure 2"', 'property price', 'figure 1.20 USD',
    ]);
});
test('names, calls, waivers and parameters have theirs', () => {
    expect(colours(dedent(`
        let margin = max(upper.top, 2 * 3")
        series cottage {
            parameter w { takes length }
            room { width w }
            let half = if w > 3" then count(bench) else margin
        }
        job one is cottage(w = 96") {
            waive seated on upper because "low" by "us" until 2027-03-01
        }
    `))).toEqual([
        'statement let', 'name margin', 'operator =', 'function max', 'reference upper', 'member top', 'figure 2', 'operator *', 'figure 3"',
        'block series', 'name cottage', 'block parameter', 'name w', 'property takes', 'choice length', 'block room', 'property width', 'parameter w',
        'statement let', 'name half', 'operator =', 'connective if', 'parameter w', 'operator >', 'figure 3"', 'connective then', 'function count', 'kind bench', 'connective else', 'reference margin',
        'block job', 'name one', 'connective is', 'base cottage', 'reference w', 'operator =', 'figure 96"',
        'statement waive', 'reference seated', 'connective on', 'reference upper', 'connective because', 'text "low"', 'connective by', 'text "us"', 'connective until', 'figure 2027-03-01',
    ]);
});
test('a block where it does not belong has no colour of its own, and one that is half typed has', () => {
    expect(colours('stock s { lengths 8\' }')).toEqual(['property lengths', 'figure 8\'']);
    expect(colours('catalogue c {\n    stock s {\n        price 1.20 USD per ft\n        section 1" x 2"')).toEqual([
        'block catalogue', 'name c', 'block stock', 'name s', 'property price', 'figure 1.20 USD', 'connective per', 'choice ft', 'property section', 'figure 1"', 'connective x', 'figure 2"',
    ]);
});
// The examples below mistakes/ hold words that mean nothing.
test.each<readonly [string, string]>([...examplePaths().filter(path => !path.startsWith('mistakes/')).map(path => [path, exampleText(path)] as const), ['a file that uses every construct', allConstructs]])('every token of %s has a colour', (_, text) => {
    const raw = rawOf(text);
    const coloured = new Set(highlights(raw).map(({ start }) => start));
    const bare = raw.tokens.filter(({ tokenType, image, startOffset }) => tokenType !== raw.types.lineEnd && !/^[{}(),;.]$/.test(image) && !coloured.has(startOffset)).map(({ image }) => image);
    expect(bare).toEqual([]);
});

test('an outline has jobs, catalogues and their blocks', () => {
    const show = (entries: readonly OutlineEntry[]): unknown[] => entries.map(({ name, detail, children }) => children.length > 0 ? [name, detail, show(children)] : [name, detail]);
    expect(show(outlineOf(rawOf('job a "Title" {\n number "1"\n bench upper on back, left { top 37" }\n door on front { model Leaf24 }\n room {\n  width 72"\n')))).toEqual([
        ['a', 'job · Title', [['upper', 'bench · on back, left'], ['door', 'on front · Leaf24'], ['room', '']]],
    ]);
});

test('blocks, remarks in a row and uses fold', () => {
    const text = '// one\n// two\nuse "a.hotroom"\nuse "b.hotroom"\n\njob a {\n    room { width 72" }\n    site {\n        width 96"\n    }\n}\n';
    expect(foldsOf(rawOf(text)).map(({ firstLine, lastLine, kind }) => [firstLine, lastLine, kind])).toEqual([[0, 1, 'comment'], [2, 3, 'imports'], [5, 9, 'block'], [7, 8, 'block']]);
});

test('a selection grows from the word to the file', () => {
    const { text, offset } = withCursor('job a {\n    rules us_dwelling, ie<|>c\n    number "1"\n}\n');
    expect(stretchesAround(rawOf(text), offset).map(({ start, end }) => text.slice(start, end))).toEqual([
        'iec', 'us_dwelling, iec', 'rules us_dwelling, iec', '\n    rules us_dwelling, iec\n    number "1"\n', 'job a {\n    rules us_dwelling, iec\n    number "1"\n}', text,
    ]);
});
test('a selection grows anywhere in any text', () => {
    for (const path of examplePaths()) {
        const raw = rawOf(exampleText(path));
        for (let offset = 0; offset <= raw.text.length; offset += 11) {
            const around = stretchesAround(raw, offset);
            expect(around.at(-1)).toEqual({ start: 0, end: raw.text.length });
            around.forEach(({ start, end }, i) => { const outer = around[i + 1]; if (outer) expect(outer.start <= start && end <= outer.end && outer.end - outer.start > end - start).toBe(true); });
        }
    }
});

test('an outline has series with their parameters, lets, variants, house rules and waivers', () => {
    const show = (entries: readonly OutlineEntry[]): unknown[] => entries.map(({ name, detail, kind, children }) => children.length > 0 ? [kind, name, detail, show(children)] : [kind, name, detail]);
    expect(show(outlineOf(rawOf(dedent(`
        let finger = 1 1/2"
        rule deep "Deep enough" { severity error; each bench; require bench.depth >= 18"; because "house" }
        series cottage "Cottage" {
            parameter w { takes length; otherwise 84" }
            let step = max(finger, w / 5)
            room { width w }
        }
        series high is cottage(90")
        job one "First" is cottage(96") {
            waive deep on upper because "agreed" by "office" until 2027-03-01
            variant low "Low" { bench upper { top 36" } }
        }
        job two is high
        job three
    `))))).toEqual([
        ['let', 'finger', '= 1 1/2"'],
        ['rule', 'deep', 'rule · Deep enough · error · each bench'],
        ['series', 'cottage', 'series · Cottage', [['parameter', 'w', 'parameter · length · otherwise 84"'], ['let', 'step', '= max(finger, w / 5)'], ['room', 'room', '']]],
        ['series', 'high', 'series · is cottage(90")'],
        ['job', 'one', 'job · First · is cottage(96")', [['waive', 'deep', 'waived · on upper · until 2027-03-01'], ['variant', 'low', 'variant · Low', [['bench', 'upper', 'bench']]]]],
        ['job', 'two', 'job · is high'],
    ]);
});

test.each([
    ['bench a { top max(step, upper.led<|>ger.top / 2 - 1") }', ['ledger', 'upper.ledger.top', 'upper.ledger.top / 2', 'upper.ledger.top / 2 - 1"', 'step, upper.ledger.top / 2 - 1"', '(step, upper.ledger.top / 2 - 1")', 'max(step, upper.ledger.top / 2 - 1")', 'top max(step, upper.ledger.top / 2 - 1")']],
    ['require room.height > 3" and a<|>ll(bench.top <= 2") or not(x)', ['all', 'all(bench.top <= 2")', 'room.height > 3" and all(bench.top <= 2")', 'room.height > 3" and all(bench.top <= 2") or not(x)', 'require room.height > 3" and all(bench.top <= 2") or not(x)']],
    ['hinge if side = ri<|>ght then left else right', ['right', 'side = right', 'if side = right then left else right', 'hinge if side = right then left else right']],
    ['let a = b<|> * 2', ['b', 'b * 2', 'a = b * 2', 'let a = b * 2']],
])('a selection grows through a calculation: %s', (marked, stretches) => {
    const { text, offset } = withCursor(marked);
    const grown = stretchesAround(rawOf(text), offset).map(({ start, end }) => text.slice(start, end)).filter(stretch => !stretch.includes('{') && !/^\s/.test(stretch));
    expect(grown).toEqual(stretches.at(-1) === text ? stretches : stretches.filter(stretch => stretch !== text));
});
test('series, variants and house rules fold', () => {
    const text = 'series a {\n    parameter w {\n        takes length\n    }\n}\njob b is a(1") {\n    variant c {\n        bench d { top 1" }\n    }\n}\nrule e {\n    require 1 < 2\n}\n';
    expect(foldsOf(rawOf(text)).map(({ firstLine, lastLine }) => [firstLine, lastLine])).toEqual([[0, 3], [1, 2], [5, 8], [6, 7], [10, 11]]);
});
