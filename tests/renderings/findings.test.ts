import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import type { ReportedFinding } from '../../language/src/core/finding.js';
import { inches } from '../../language/src/core/length.js';
import { findingsExport, findingsJsonSchema } from '../../language/src/renderings/findings-json.js';
import { countSeverities, findingText, Places, summaryText } from '../../language/src/renderings/findings-text.js';
import { TextLines } from '../../language/src/renderings/text-lines.js';

const uri = 'file:///jobs/a.hotroom';
const places = (text: string): Places => new Places({ textOf: () => text, nameOf: () => 'jobs/a.hotroom' });
const on = (text: string, marked: string, more: Partial<ReportedFinding> = {}): ReportedFinding => {
    const start = text.indexOf(marked);
    return { at: { uri, start, end: start + marked.length }, rule: 'bench-too-low', severity: 'error', message: 'It is too low.', ...more };
};
const show = (text: string, marked: string, more: Partial<ReportedFinding> = {}, width = 100): string[] => findingText(on(text, marked, more), places(text), { width }).split('\n');

test('place, severity, rule and message first, then the line with the words underlined', () => {
    expect(show('job j {\n    top 37"\n}\n', '37"')).toEqual(['jobs/a.hotroom:2:9: error bench-too-low: It is too low.', '  2 |     top 37"', '    |         ^^^']);
});

test('the editor reads the first line with its problem matcher', () => {
    const manifest = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8')) as { contributes: { problemMatchers: { pattern: { regexp: string } }[] } };
    const pattern = new RegExp(manifest.contributes.problemMatchers[0]!.pattern.regexp);
    const [first] = show('top 37"', '37"', { message: 'Two\nlines: one message.' });
    expect(pattern.exec(first!)?.slice(1)).toEqual(['jobs/a.hotroom', '1', '5', 'error', 'bench-too-low', 'Two lines: one message.']);
});

test.each([
    ['a tab', '\ttop 37"', '37"', ':1:6:', '  1 |     top 37"', '    |         ^^^'],
    ['a tab inside', 'ab\t37"', '37"', ':1:4:', '  1 | ab  37"', '    |     ^^^'],
    // the column counts UTF-16 units (two for the emoji), the underline display columns (two as well, but one character)
    ['an emoji', 'x "🔥🔥" 37"', '37"', ':1:10:', '  1 | x "🔥🔥" 37"', '    |          ^^^'],
    ['wide letters', '木 37"', '37"', ':1:3:', '  1 | 木 37"', '    |    ^^^'],
    ['a letter of two characters', 'e\u0301 37"', '37"', ':1:4:', '  1 | e\u0301 37"', '    |   ^^^'],
    ['CR LF', 'a\r\nb\r\ntop 37"\r\n', '37"', ':3:5:', '  3 | top 37"', '    |     ^^^'],
    ['a lone CR', 'a\rtop 37"', '37"', ':2:5:', '  2 | top 37"', '    |     ^^^'],
    ['control characters', 'a\u001b[31m 37"', '37"', ':1:8:', '  1 | a\\u{1b}[31m 37"', '    |             ^^^'],
])('%s', (_, text, marked, place, line, underline) => {
    const [first, excerpt, marks] = show(text, marked);
    expect(first).toContain(place);
    expect([excerpt, marks]).toEqual([line, underline]);
});

test('a place of no width and one at the end of the file are marked too', () => {
    expect(show('job j {', '')[2]).toBe('    | ^');
    const text = 'job j {\n';
    expect(findingText({ ...on(text, 'job'), at: { uri, start: text.length, end: text.length } }, places(text), { width: 80 }).split('\n').slice(0, 3)).toEqual(['jobs/a.hotroom:2:1: error bench-too-low: It is too low.', '  2 |', '    | ^']);
});

test('several lines are underlined on the first and told how far they go', () => {
    expect(show('job j {\n    top 37"\n}', 'job j {\n    top 37"\n}').slice(1, 3)).toEqual(['  1 | job j {', '    | ^^^^^^^ to line 3']);
});

test('a long line is cut to a window on the words', () => {
    const [, excerpt, marks] = show(`${'x'.repeat(300)} top 37" ${'y'.repeat(300)}`, '37"', {}, 80);
    expect(excerpt!.length).toBeLessThanOrEqual(80);
    expect(excerpt!.slice(marks!.indexOf('^'), marks!.indexOf('^') + 3)).toBe('37"');
    expect(excerpt).toMatch(/^ {2}1 \| ….*…$/);
});

test('source, other places and fixes stand below', () => {
    const text = 'top 37"\ndepth 20"';
    const lines = show(text, '37"', {
        citation: { kind: 'standard', document: 'Code', edition: '2020', clause: '4.2', text: 'x', fromMemory: true },
        related: [{ at: { uri, start: 14, end: 17 }, message: 'The depth is here.' }],
        fixes: [{ title: 'Write 38"', safety: 'review', edits: [] }, { title: 'Write "', safety: 'safe', edits: [] }],
    });
    expect(lines.slice(3)).toEqual(['    source: Code 2020, 4.2 (figure from memory of the document)', '    see jobs/a.hotroom:2:7: The depth is here.', '    fix: Write 38" (changes the design)', '    fix: Write "']);
});

test('a name with a command in it cannot reach the terminal', () => {
    const hostile = new Places({ textOf: () => 'top', nameOf: () => 'a\u001b]0;x\u0007.hotroom' });
    expect(findingText({ ...on('top', 'top'), message: 'bad \u001b[2J' }, hostile, { width: 80 })).not.toMatch(/[\u001b\u0007]/);
});

test('a text that is not there has its place left out', () => {
    expect(findingText(on('x', 'x'), new Places({ textOf: () => undefined, nameOf: () => 'gone.hotroom' }), { width: 80 })).toBe('gone.hotroom: error bench-too-low: It is too low.');
});

test.each([
    [[], 1, 'No findings in 1 file.'], [['error'], 2, '1 error in 2 files.'], [['hint', 'error', 'error', 'warning', 'info'], 3, '2 errors, 1 warning, 1 info, 1 hint in 3 files.'],
    [['info', 'info'], 1, '2 infos in 1 file.'],
] as const)('sum of %j', (found, files, text) => { expect(summaryText(countSeverities(found.map(severity => ({ severity }))), files)).toBe(text); });

test.each([
    ['', [[0, 0, 0]]], ['a\nb', [[0, 0, 0], [1, 0, 1], [2, 1, 0], [3, 1, 1], [99, 1, 1], [-1, 0, 0]]], ['a\r\n\r\nb', [[1, 0, 1], [2, 0, 1], [3, 1, 0], [5, 2, 0]]], ['🔥b', [[2, 0, 2]]], ['a\rb', [[2, 1, 0]]],
] as const)('lines of %j', (text, expected) => {
    const lines = new TextLines(text);
    for (const [offset, line, character] of expected) expect(lines.at(offset)).toEqual({ line, character });
});

test('as data every place has line, column and offset, and figures stay exact', () => {
    const text = 'job j {\n    top 37"\n}';
    const exported = findingsExport([on(text, '37"', {
        measured: { kind: 'length', length: inches(37) }, required: { kind: 'amount', value: 40, unit: 'A' }, subject: 'upper.top', citation: { kind: 'practice', text: 'usual' },
        fixes: [{ title: 'Write 38"', safety: 'review', edits: [{ span: { uri, start: 16, end: 19 }, newText: '38"' }] }],
    })], ['jobs/a.hotroom'], places(text));
    expect(exported).toEqual({
        format: 'hotroom-findings', version: 1, files: ['jobs/a.hotroom'], counts: { error: 1, warning: 0, info: 0, hint: 0 },
        findings: [{
            rule: 'bench-too-low', severity: 'error', message: 'It is too low.',
            at: { file: 'jobs/a.hotroom', start: { line: 2, column: 9, offset: 16 }, end: { line: 2, column: 12, offset: 19 } },
            source: { kind: 'practice', text: 'common practice, no source: usual' },
            measured: { kind: 'length', ticks: inches(37), text: '37"' }, required: { kind: 'amount', value: 40, unit: 'A' }, subject: 'upper.top', related: [],
            fixes: [{ title: 'Write 38"', safety: 'review', edits: [{ at: { file: 'jobs/a.hotroom', start: { line: 2, column: 9, offset: 16 }, end: { line: 2, column: 12, offset: 19 } }, newText: '38"' }] }],
        }],
        waivers: [], changedSeverities: [], settings: [],
    });
    const schema = JSON.stringify(findingsJsonSchema());
    JSON.stringify(exported, (key, value: unknown) => { if (key !== '' && !/^\d+$/.test(key)) expect(schema).toContain(`"${key}"`); return value; });
});
