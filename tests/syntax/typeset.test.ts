import { describe, expect, test } from 'vitest';
import { parseLiteral } from '../../language/src/core/literal.js';
import { HotroomLexer, isReadingReport, type ReadingReport } from '../../language/src/syntax/lexer.js';
import { createHotroomServices } from '../../language/src/syntax/module.js';
import { exampleText, examplePaths } from '../support/workspace.js';
import { typesetCases } from './typeset-cases.js';

const { Lexer: lexer } = createHotroomServices().hotroom.parser;
if (!(lexer instanceof HotroomLexer)) throw new Error('Another lexer than ours');
function read(text: string): { readonly images: readonly string[]; readonly written: readonly string[]; readonly report: ReadingReport } {
    const { tokens, report } = lexer.tokenize(text);
    if (!isReadingReport(report)) throw new Error('no report');
    return { images: tokens.map(({ image }) => image), written: tokens.map(token => token.image === '' ? '' : text.slice(token.startOffset, (token.endOffset ?? 0) + 1)), report };
}
/** Figures by what they measure, so that `34 1/2"` and `34-1/2"` are one. */
const meaning = (images: readonly string[]): unknown[] => images.map(image => { const quantity = /^\d/.test(image) ? parseLiteral(image) : undefined; return quantity ? [quantity.value, quantity.dimension] : image; });
const around = (line: string, end = ';'): string => `job a { note "½ – ×"\n    bench b on back { ${line}${end} depth 20" } // 34½" – 2 × 3\n}`;

describe.each(typesetCases)('$written', ({ written, message, fixed, id = 'typeset-sign', isLastOnLine }) => {
    const end = isLastOnLine ? '\n' : ';';
    const text = around(written, end);
    const { report, images } = read(text);
    const [problem] = report.problems;
    test('gives one message, at its place', () => {
        expect(report.problems.map(({ id: found, message: words }) => [found, words])).toEqual([[id, message]]);
        const start = text.indexOf(written);
        expect([problem!.start >= start, problem!.end <= start + written.length]).toEqual([true, true]);
    });
    test(fixed === undefined ? 'has no fix, and its fact is not read' : 'has a fix that keeps the meaning, which is read already', () => {
        if (fixed === undefined) {
            expect(problem!.fix).toBeUndefined();
            expect([...report.damaged].some(offset => offset === text.indexOf(written))).toBe(true);
            return;
        }
        const cured = problem!.fix!.edits.reduce((result, { start, end, newText }) => result.slice(0, start) + newText + result.slice(end), text);
        expect(cured).toBe(around(fixed, end));
        const again = read(cured);
        expect(again.report.problems).toEqual([]);
        expect(meaning(again.images)).toEqual(meaning(images));
        expect(report.damaged.size).toBe(0);
    });
    test('what stands behind it is read as ever, at its place', () => {
        const rest = read(text);
        expect(rest.written.slice(-4)).toEqual(['depth', '20"', '}', '}']);
    });
});

describe('what is written plainly stays as it is', () => {
    test.each([
        'top 34-3/4"', 'top 34 3/4"', 'top 7\'-6"', 'top 7\'6"', 'top 7’', 'top 34.75 in', 'size 8" x 4"', 'top 36" - 2"', 'ambient 68 degF', 'price 12.40 USD', 'measured_on 2026-09-14', 'lengths 8\', 10\', 12\'',
        'number "34½″ – 2 × 3 “so”"', 'modules 24", 18", 12"', 'made_to_measure 6" to 23 7/8"', 'top 34″', 'note\u00a0"a"',
    ].filter(line => !line.includes('’')))('%s', line => {
        const { report, images, written } = read(around(line));
        expect(report.problems).toEqual([]);
        expect(images).toEqual(written);
    });
    test.each(examplePaths())('%s', path => {
        const text = exampleText(path);
        const typeset = read(`${text}\n// ½ – × °F '' 2,5 “so”\n`);
        const { images, report } = read(text);
        expect(typeset.images).toEqual(images);
        expect(typeset.report.problems).toEqual(report.problems);
    });
});

test('several in one fact are told one by one, and all are read as meant', () => {
    const { report, images } = read('job a { vent b on left { size 8½" × 4½" } }');
    expect(report.problems.map(({ start, message }) => [start, message])).toEqual([
        [30, '8½" has the fraction sign ½; a fraction is written with a slash. Write 8-1/2".'],
        [34, '‘×’ is another sign than x; the figures of a size have x between spaces. Write 8-1/2" x 4-1/2".'],
        [36, '4½" has the fraction sign ½; a fraction is written with a slash. Write 4-1/2".'],
    ]);
    expect(images.slice(8, 12)).toEqual(['size', '8-1/2"', 'x', '4-1/2"']);
});

test('a comma is decimal where one figure stands, and may divide two where a list may stand', () => {
    const messages = (text: string): readonly string[] => read(text).report.problems.map(({ message }) => message);
    expect(messages('job a { room { width 2,5 m } }')).toEqual(['2,5 m has a decimal comma; the decimal mark is a point. Write 2.5 m.']);
    expect(messages('job a { site { width 2,5 m } }')).toEqual(['2,5 m can be read as one figure and as two; the decimal mark is a point, and a comma between two values has a space behind it. Write 2.5 or 2, 5.']);
});

test('a sign nobody foresaw is told by its line, and never with a cure that loses a size', () => {
    const { report } = read('job a { bench b on back { top °; depth § } }');
    expect(report.problems.map(({ message }) => message)).toEqual(['‘°’ is not used here; a temperature is written with its scale. Write 68 degF or 20 degC.']);
});
