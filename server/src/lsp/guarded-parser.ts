import type { AstNode, LangiumParser, ParseResult, ParserOptions } from 'langium';
import type { ReadingReport } from '../../../language/src/syntax/lexer.js';
import { createReader } from '../../../language/src/syntax/reader.js';
import type { HotroomServerServices } from '../services.js';

/**
 * A parser that never throws. What is too large or nested too deeply is refused by the lexer (limits.ts); should anything else ever break the reading,
 * the text reads as an empty file with one problem, and every other file goes on as before.
 */
export function createGuardedParser(services: HotroomServerServices): LangiumParser {
    const parser = createReader(services);
    const read: LangiumParser['parse'] = parser.parse.bind(parser);
    parser.parse = <T extends AstNode>(input: string, options?: ParserOptions): ParseResult<T> => {
        try {
            return read<T>(input, options);
        } catch (error) {
            services.editing.log(`Reading a text of ${input.length} characters failed: ${error instanceof Error ? error.stack ?? error.message : String(error)}`);
            const report: ReadingReport = {
                diagnostics: [], damaged: new Set([-1]), isUnread: true,
                problems: [{ id: 'reading-failed' as never, message: 'This file cannot be read: something in it was not foreseen. Undo the last change, and please report it with the file.', start: 0, end: Math.min(1, input.length), damages: [-1] }],
            };
            return { ...read<T>('', options), lexerReport: report };
        }
    };
    return parser;
}
