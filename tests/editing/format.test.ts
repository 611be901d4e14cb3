import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formatText, type FormatOptions } from '../../language/src/editing/format.js';
import { applyChanges } from '../../language/src/editing/text-lines.js';
import { isReadingReport } from '../../language/src/syntax/lexer.js';
import { summary } from '../support/check.js';
import { analyzeText, exampleText, examplePaths } from '../support/workspace.js';
import { allConstructs } from './all-constructs.js';
import { lexer, rawOf } from './sample.js';

const format = (text: string, options: FormatOptions = { indent: '    ' }): string => applyChanges(text, formatText(rawOf(text), lexer, options));
const imagesOf = (text: string): string[] => lexer.raw(text).tokens.filter(({ tokenType }) => tokenType !== lexer.wordTypes.lineEnd).map(({ image }) => image);

describe('the usual shape', () => {
    test.each<[string, string, string]>([
        ['indents by depth', 'job a {\nsite {\nwidth 96"\n}\n}\n', 'job a {\n    site {\n        width     96"\n    }\n}\n'],
        ['puts values in column 10', 'job a {\n    site {\n        width 96"\n        measured_by "x"\n    }\n}\n', 'job a {\n    site {\n        width     96"\n        measured_by "x"\n    }\n}\n'],
        ['one space before a brace and inside braces', 'job a{\n    sign bathing   {says bathing;stands outside}\n}\n', 'job a {\n    sign bathing { says bathing; stands outside }\n}\n'],
        ['spaces of lists and of brackets', 'job a {\n    rules us_dwelling,iec ,good_practice\n    room { width ( 72" - 2" ) }\n}\n', 'job a {\n    rules     us_dwelling, iec, good_practice\n    room { width (72" - 2") }\n}\n'],
        ['blanks at line ends and blank lines', '\n\njob a {   \n    number "1"  \n\n\n\n    revision "B"\n}\n\n\n', 'job a {\n    number    "1"\n\n    revision  "B"\n}\n'],
        ['a line end at the end', 'job a { }', 'job a { }\n'],
        ['a value carried over lines', 'job a {\n    rules us_dwelling,\n  iec\n}\n', 'job a {\n    rules     us_dwelling,\n        iec\n}\n'],
        ['remarks stay, with their distance', '// one\njob a {\n  // two\n  number "1"   // three\n}\n', '// one\njob a {\n    // two\n    number    "1"   // three\n}\n'],
        ['remarks of lines in a row stay in one column', 'job a {\n    number "1"     // one\n    revision  "B"  // two\n}\n', 'job a {\n    number    "1"  // one\n    revision  "B"  // two\n}\n'],
        ['values lined up by hand stay', 'catalogue c {\n    panel_system p {\n      lining a_long_name  3/4"\n      core   wool         2 1/2"\n    }\n}\n', 'catalogue c {\n    panel_system p {\n        lining    a_long_name  3/4"\n        core      wool         2 1/2"\n    }\n}\n'],
        ['a value that lines up with nothing moves up', 'job a {\n    site {\n        supply 240 V     single_phase\n    }\n}\n', 'job a {\n    site {\n        supply    240 V single_phase\n    }\n}\n'],
        ['braces of one-line blocks in a row are brought into one column again', 'job a {\n    sign bathing    { says bathing }\n    sign caution_sign   { says warning }\n}\n', 'job a {\n    sign bathing      { says bathing }\n    sign caution_sign { says warning }\n}\n'],
        ['signs and brackets of calculations', 'job a {\n    let b=max( upper.top ,3"*2 )>=12" and not(c!=left)\n    room { width if w>3" then 2*w else (w+1")/2 }\n}\n', 'job a {\n    let b = max(upper.top, 3" * 2) >= 12" and not(c != left)\n    room { width if w > 3" then 2 * w else (w + 1") / 2 }\n}\n'],
        ['a name and its value, in no column', 'let   a=3"\njob j {\n  let step   =   4"\n\n  let b = 2\n}\n', 'let a = 3"\njob j {\n    let step = 4"\n\n    let b = 2\n}\n'],
        ['signs of names in a row, once lined up, stay so', 'job j {\n    let step   = 4"\n    let middle = 3"\n    let widest_of_all = 2"\n}\n', 'job j {\n    let step          = 4"\n    let middle        = 3"\n    let widest_of_all = 2"\n}\n'],
        ['a job of a series', 'job one   "One" is  cottage( 96" ,side=left )\n', 'job one "One" is cottage(96", side = left)\n'],
        ['a waiver stays on its line', 'job j {\n  waive   head-clearance-too-low  on upper   because "a very long reason that goes on and on, as reasons do, until nobody reads it any more"   by "design office"  until 2027-03-01\n}\n', 'job j {\n    waive head-clearance-too-low on upper because "a very long reason that goes on and on, as reasons do, until nobody reads it any more" by "design office" until 2027-03-01\n}\n'],
    ])('%s', (_, before, after) => {
        expect(format(before)).toBe(after);
        expect(format(after), 'twice is once').toBe(after);
    });
    test('a tab when the editor wants tabs', () => expect(format('job a {\n    site {\n        width     96"\n    }\n}\n', { indent: '\t' })).toBe('job a {\n\tsite {\n\t\twidth     96"\n\t}\n}\n'));
    test('line ends are kept as they are', () => expect(format('job a {\r\nnumber "1"\r\n\r\n\r\n}')).toBe('job a {\r\n    number    "1"\r\n\r\n}\r\n'));
    test('only the lines asked for', () => expect(format('job a {\nnumber "1"\nrevision "B"\n}\n', { indent: '    ', lines: { first: 2, last: 2 } })).toBe('job a {\nnumber "1"\n    revision  "B"\n}\n'));
    test.each(['birch-point.hotroom', 'catalogue/skerry.hotroom', 'catalogue/heaters.hotroom'])('%s is in its usual shape', path => expect(format(exampleText(path))).toBe(exampleText(path)));
    test('a file that uses every construct is in its usual shape, and comes back to it', async () => {
        expect(format(allConstructs)).toBe(allConstructs);
        const shaken = allConstructs.replaceAll(/\n {4,8}/g, '\n  ').replaceAll(/ (?=[=<>]=? )| (?=[*/] )/g, '');
        expect(format(shaken).replaceAll(/ +/g, ' ')).toBe(allConstructs.replaceAll(/ +/g, ' '));
        expect(summary(await analyzeText(format(shaken)))).toEqual(summary(await analyzeText(allConstructs)));
    });
    test('every example keeps its tokens and is done at once', () => {
        for (const path of examplePaths()) {
            const text = exampleText(path);
            const once = format(text);
            expect(imagesOf(once), path).toEqual(imagesOf(text));
            expect(format(once), path).toBe(once);
        }
    });
});

describe('what it leaves alone', () => {
    test.each<[string, string]>([
        ['a line with an open text', 'job a {\n  number   "24\n}\n'],
        ['a line with a character that is not used', 'job a {\n  number  = "24"\n}\n'],
        ['two figures that would become one', 'job a {\n    site { corridor 7\'  6" }\n}\n'],
        ['a figure that lacks its mark', 'job a {\n  room { width   7\'6 }\n}\n'],
        ['a decimal comma', 'job a {\n  room { width   7,5 m }\n}\n'],
    ])('%s', (_, text) => {
        const line = text.split('\n')[1] ?? '';
        expect(format(text).split('\n')[1]).toBe(line);
    });
    test('indentation while a brace is missing, for that is what tells where the block ends', () => {
        const text = 'job a {\n  site {\n      width     96"\n  room {\n      width     72"\n  }\n}\n';
        expect(format(text)).toBe(text);
    });
});

/** Pieces of text that the language is made of, and some it is not. */
const pieces = ['job a', '{', '}', '\n', '\n', '\n', '  ', '    ', '\t', ' ', ';', ',', 'bench upper on back', 'top', '37"', '7\'6"', '7\'', '6', '34-3/4"', '3/4', '-', '+', '(', ')', 'x', 'to', '8" x 4"', '"text"', '"open', '// remark', 'rules', 'us_dwelling', 'width', 'depth', 'site', 'room', '\r\n', '1,5', '=', 'from front 8"', 'price 1.20 USD per ft', 'let', 'let a = ', 'waive', 'max(', 'upper.top', '>=', '!=', '*', 'is', 'if', 'then', 'else', 'and', 'cottage', 'until 2027-03-01'];

const mistakes = (text: string): string[] => { const { report } = lexer.tokenize(text); return isReadingReport(report) ? report.problems.map(({ id }) => id) : []; };

test('any text: tokens, remarks and mistakes stay, and twice is once', () => {
    fc.assert(fc.property(fc.array(fc.constantFrom(...pieces), { maxLength: 40 }), words => {
        const text = words.join('');
        const once = format(text);
        expect(imagesOf(once)).toEqual(imagesOf(text));
        expect(lexer.raw(once).hidden.map(({ image }) => image.trimEnd())).toEqual(lexer.raw(text).hidden.map(({ image }) => image.trimEnd()));
        expect(mistakes(once)).toEqual(mistakes(text));
        expect(format(once)).toBe(once);
    }), { numRuns: 2000, seed: 20260914 });
});

test('an example with its white space shaken finds the same and says the same', async () => {
    const text = exampleText('birch-point.hotroom').replaceAll(/\n {4,8}/g, '\n  ').replaceAll(/ {2,}(?=\S)/g, ' ');
    expect(summary(await analyzeText(format(text)))).toEqual(summary(await analyzeText(text)));
});
