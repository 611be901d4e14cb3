import { expect, test } from 'vitest';
import { HotroomLexer } from '../../language/src/syntax/lexer.js';
import { limits } from '../../language/src/syntax/limits.js';
import { createHotroomServices } from '../../language/src/syntax/module.js';
import { TestWorkspace } from '../support/workspace.js';

/** Quadratic reading of any of these takes minutes to days, so that the time a test may take is the guard. */
export const patience = { timeout: 60_000 };
export const bunch = (piece: string, length: number): string => piece.repeat(Math.floor(length / piece.length));
export const lines = (line: string, length = limits.characters - 100): string => bunch(`${line}\n`, length);

export async function findingsOf(text: string): Promise<readonly string[]> {
    const workspace = new TestWorkspace();
    const document = workspace.add('job.hotroom', text);
    await workspace.build();
    return workspace.analyze(document).findings.map(({ rule, message }) => `${rule}: ${message}`);
}

/** Files of one kind of mistake, read from end to end, with as many problems as there are; the figures are those of the largest file that is read. */
export function readFilesOfOneMistake(characters: number): void {
    const { Lexer: lexer } = createHotroomServices().hotroom.parser;
    if (!(lexer instanceof HotroomLexer)) throw new Error('Another lexer than ours');
    const filled = (line: string): string => lines(line, characters - 100);
    test.each<readonly [string, string, number]>([
        ['closing braces', filled('}'), 262_094], ['blocks without a header', filled('{}'), 174_729], ['blank lines in brackets', `job a { room { width (${bunch('\n', characters - 24_000)}1) } }`, 0],
        ['open brackets', `job a { room {\n${filled(`width ${bunch('(', 40)}`)}`, 11_147 + 1], ['minus signs', `job a {\n${filled(`width ${bunch('- ', 3000)}`)}`, 175],
        ['choices without an end', `job a {\n${filled(`width ${bunch('if 1 ', 3000)} then`)}`, 175], ['escaped quotes', filled(`a "${bunch('\\"', 3900)}`), 134],
        ['fractions of a word processor', `job a { room {\n${filled('width 34½"')}`, 47_654], ['dashes', filled(bunch('– ', 3900)), 134], ['curly quotes', filled(bunch('“', 3900)), 261_300],
        ['odd signs', filled(bunch('§ ', 3900)), 134], ['thin spaces', filled(bunch('\u2009', 3900)), 134], ['figures and commas', filled(bunch('1,2,', 3900)), 134], ['two facts a line', `job a { room {\n${filled(bunch('width 1" ', 3900))}`, 57_882],
    ])('%s', patience, (_, text, least) => {
        expect(text.length).toBeLessThanOrEqual(limits.characters);
        // A shorter file ends within a line, which may hold a thirtieth of it.
        const { report } = lexer.tokenize(text);
        const { problems } = report as unknown as { problems: readonly { start: number }[] };
        expect(problems.length).toBeGreaterThanOrEqual(characters === limits.characters ? least : Math.floor(least * 0.95 * characters / limits.characters));
        if (least > 1) expect(problems.at(-1)!.start).toBeGreaterThan(text.length - limits.lineCharacters - 10);
    });
    test('with the findings of the model behind it', patience, async () => {
        const all = Math.floor(characters / limits.characters * 100_000);
        expect((await findingsOf(lines('a', all))).length).toBe(Math.floor(all / 2));
    });
}
