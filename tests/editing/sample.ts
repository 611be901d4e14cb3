import { createHotroomServices } from '../../language/src/syntax/module.js';
import { HotroomLexer } from '../../language/src/syntax/lexer.js';
import type { Sight } from '../../language/src/editing/offer.js';
import { readRaw, type RawText } from '../../language/src/editing/raw-facts.js';

const { Lexer } = createHotroomServices().hotroom.parser;
if (!(Lexer instanceof HotroomLexer)) throw new Error('not the lexer of the language');
export const lexer: HotroomLexer = Lexer;
export const rawOf = (text: string): RawText => readRaw(text, lexer);

/** Names by kind and paths, as if other files gave them. */
export const sightOf = (names: Readonly<Record<string, readonly string[]>>, paths: readonly string[] = []): Sight => ({
    names: kinds => kinds.flatMap(kind => (names[kind] ?? []).map(name => ({ name, kind }))),
    paths: () => paths,
});

/** Text without its cursor mark `<|>`, and where the mark stood. */
export function withCursor(marked: string): { readonly text: string; readonly offset: number } {
    const offset = marked.indexOf('<|>');
    if (offset < 0 || marked.indexOf('<|>', offset + 1) >= 0) throw new Error('The text needs one cursor <|>.');
    return { text: marked.replace('<|>', ''), offset };
}
