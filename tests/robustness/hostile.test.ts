import { describe, expect, test } from 'vitest';
import { formatText } from '../../language/src/editing/format.js';
import { outlineOf } from '../../language/src/editing/outline.js';
import { readRaw } from '../../language/src/editing/raw-facts.js';
import { HotroomLexer } from '../../language/src/syntax/lexer.js';
import { limits } from '../../language/src/syntax/limits.js';
import { createHotroomServices } from '../../language/src/syntax/module.js';
import { exampleText, TestWorkspace } from '../support/workspace.js';
import { bunch, findingsOf, lines, patience, readFilesOfOneMistake } from './one-mistake.js';

const { Lexer: lexer } = createHotroomServices().hotroom.parser;
if (!(lexer instanceof HotroomLexer)) throw new Error('Another lexer than ours');
const million = 5_000_000;
const until = 'Nothing of this file is read until then.';

describe('a text beyond what is read has one message, stays as it is, and reads as empty', () => {
    const tooLong = (count: string): string => `This file is ${count} characters long; Hotroom reads up to 524,288. Split it: each job may have a file of its own, and a file takes catalogues from others by use. ${until}`;
    const tooDeep = `Here 51 blocks stand inside each other; Hotroom reads up to 50. Close the blocks that are open, or put { } in balance. ${until}`;
    const brackets = `Here 51 brackets stand inside each other; Hotroom reads up to 50. Split the calculation. ${until}`;
    test.each<readonly [string, string, string]>([
        ['five million characters of blocks', lines('job a { room { width 84" } }', million), tooLong('4,999,977')],
        ['a word of five million letters', bunch('a', million), tooLong('5,000,000')],
        ['a line of half a million', bunch('top 1; ', 500_000), `Line 1 is 499,996 characters long; Hotroom reads up to 4,000 a line. Write one fact a line. ${until}`],
        ['a long third line', `a\r\nb\r\n${bunch('c', 4001)}\n`, `Line 3 is 4,001 characters long; Hotroom reads up to 4,000 a line. Write one fact a line. ${until}`],
        ['ten thousand opening braces', bunch('{', 3000) + '\n' + bunch('{', 3000) + '\n' + bunch('{', 4000), tooDeep],
        ['blocks in blocks', bunch('a {\n', 100_000), tooDeep],
        ['brackets in brackets', `job a { room { width ${bunch('(', 3000)}1${bunch(')', 900)} } }`, `This fact has 3,902 words and figures; Hotroom reads up to 2,000. End a fact at the end of its line, or split the list. ${until}`],
        ['fewer brackets', `job a { room { width ${bunch('(', 60)}1${bunch(')', 60)} } }`, brackets],
        ['a list without an end', `job a { room { width 1${bunch(',\n1', 400_000)} } }`, `This fact has 266,668 words and figures; Hotroom reads up to 2,000. End a fact at the end of its line, or split the list. ${until}`],
    ])('%s', patience, async (_, text, message) => {
        expect(await findingsOf(text)).toEqual([`file-too-large: ${message}`]);
        const raw = readRaw(text, lexer);
        outlineOf(raw);
        expect(formatText(raw, lexer, { indent: '    ' })).toEqual([]);
    });

    test('what stands right at the limits is read', async () => {
        expect(await findingsOf(`catalogue c { }\n// ${bunch('a', limits.lineCharacters - 3)}`)).toEqual([]);
        expect(lexer.tokenize(`a ${'1, '.repeat(limits.factParts / 2 - 1)}1`).tokens.length).toBe(limits.factParts);
        expect(lexer.tokenize(lines('// a remark', limits.characters)).report).toMatchObject({ problems: [] });
        expect(lexer.tokenize(bunch('a {\n', 4 * limits.nesting) + bunch('}\n', 2 * limits.nesting)).tokens.length).toBe(3 * limits.nesting);
    });

    test('a file that uses one has no message of its own for what the other would give', async () => {
        const workspace = new TestWorkspace();
        workspace.addCatalogues();
        workspace.add('catalogue/huge.hotroom', `${exampleText('catalogue/skerry.hotroom')}\n${lines('// filling', million)}`);
        const document = workspace.add('birch-point.hotroom', exampleText('birch-point.hotroom').replace('catalogue/skerry.hotroom', 'catalogue/huge.hotroom'));
        const sound = workspace.add('sound.hotroom', exampleText('birch-point.hotroom'));
        await workspace.build();
        const known = new Set(workspace.analyze(sound).findings.map(({ message }) => message));
        expect(workspace.analyze(document).findings.map(({ message }) => message).filter(message => !known.has(message))).toEqual([]);
    });
});

describe('a large file of one kind of mistake is read from end to end', () => { readFilesOfOneMistake(limits.characters / 4); });
