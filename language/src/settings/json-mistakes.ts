import { printParseErrorCode, type ParseError } from 'jsonc-parser';

/** What to do where JSON ends to be JSON, by the reader's name of the mistake. */
const cures: Readonly<Record<string, string>> = {
    InvalidSymbol: 'Words stand in double quotes.',
    InvalidNumberFormat: 'This is no number.',
    PropertyNameExpected: 'A setting in double quotes belongs here; behind the last one stands no comma.',
    ValueExpected: 'A value belongs here; behind the last one stands no comma.',
    ColonExpected: 'A colon belongs between a setting and its value.',
    CommaExpected: 'A comma is missing before this.',
    CloseBraceExpected: 'A closing brace is missing.',
    CloseBracketExpected: 'A closing bracket is missing.',
    EndOfFileExpected: 'The settings end before this; nothing more may follow.',
    InvalidCommentToken: 'JSON has no remarks; take it out.',
    UnexpectedEndOfComment: 'JSON has no remarks; take it out.',
    UnexpectedEndOfString: 'The closing quote is missing.',
    UnexpectedEndOfNumber: 'This is no number.',
    InvalidUnicode: 'Behind \\u stand four digits.',
    InvalidEscapeCharacter: 'A backslash stands before ", \\, /, b, f, n, r, t or u only. A path is written with /.',
    InvalidCharacter: 'A line break or tab stands in a text; it ends on its line.',
};

export const jsonMistake = ({ error }: ParseError): string => `This is not JSON. ${cures[printParseErrorCode(error)] ?? 'It cannot be read from here on.'}`;
