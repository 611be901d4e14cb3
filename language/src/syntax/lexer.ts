import { DefaultLexer, type LangiumCoreServices, type LexerResult, type LexingReport } from 'langium';
import type { SyntaxProblem } from './problem.js';
import { overdeepBlocks, overlongText } from './limits.js';
import { tidyStructure } from './tidy.js';
import { tidyWords } from './tidy-words.js';
import { endOf, type Token, type TokenTypes } from './token-list.js';
import { readTypeset, type PlainText } from './typeset.js';

/** What reading the text found, beside the tokens; travels with the parse result. */
export interface ReadingReport extends LexingReport {
    readonly problems: readonly SyntaxProblem[];
    /** Key offsets of facts that are not whole; `-1` is the file itself. */
    readonly damaged: ReadonlySet<number>;
    /** The text is beyond what is read (limits.ts): its one problem says so, and it reads as empty. */
    readonly isUnread?: true;
}

/** Lexes, then tidies: words, structure, values. The parser behind it never sees a mistake; the mistakes are in the report. */
export class HotroomLexer extends DefaultLexer {
    private readonly types: TokenTypes;

    constructor(services: LangiumCoreServices) {
        super(services);
        const type = (name: string): Token['tokenType'] => {
            const found = this.tokenTypes[name];
            if (!found) throw new Error(`The grammar has no token ${name}`);
            return found;
        };
        this.types = {
            word: type('ID'), text: type('STRING'), length: type('LENGTH'), quantity: type('QUANTITY'), number: type('NUMBER'), date: type('DATE'),
            lineEnd: type('NL'), openBrace: type('{'), closeBrace: type('}'), closeBracket: type(')'), comma: type(','), callOpen: type('CALL_OPEN'), then: type('then'), else: type('else'),
            times: type('x'), comparisons: { '=': type('='), '!=': type('!='), '<=': type('<='), '>=': type('>=') },
        };
    }

    get wordTypes(): TokenTypes { return this.types; }

    /** The tokens as written, line ends included, and the comments: for the formatter, completion and signature help. None of a text beyond what is read. */
    raw(text: string): LexerResult {
        if (overlongText(text)) return nothing();
        const raw = super.tokenize(text);
        return overdeepBlocks(raw.tokens, this.types) ? nothing() : raw;
    }

    override tokenize(text: string): LexerResult {
        const overlong = overlongText(text);
        if (overlong) return unread(overlong);
        const plain = readTypeset(text);
        const raw = super.tokenize(plain?.text ?? text);
        const overdeep = overdeepBlocks(raw.tokens, this.types);
        if (plain) putBack(raw, plain);
        if (overdeep) return unread(overdeep);
        const problems: SyntaxProblem[] = (plain?.problems ?? []).map(problem => ({ ...problem, damages: [] }));
        const words = tidyWords(raw.tokens, raw.errors, text, this.types, problem => { problems.push({ ...problem, damages: [] }); });
        const damaged = [...plain?.damaged ?? [], ...words.damaged].sort((a, b) => a - b);
        const structure = tidyStructure(words.tokens, damaged, this.types);
        if (structure.overlong) return unread(structure.overlong);
        const report: ReadingReport = { diagnostics: [], problems: oneForEachPlace([...problems, ...structure.problems]), damaged: structure.damaged };
        return { tokens: structure.tokens, hidden: raw.hidden, errors: [], report };
    }
}

const nothing = (): LexerResult => ({ tokens: [], hidden: [], errors: [] });
function unread(problem: SyntaxProblem): LexerResult {
    const report: ReadingReport = { diagnostics: [], problems: [problem], damaged: new Set([-1]), isUnread: true };
    return { ...nothing(), report };
}

/** Gives tokens and errors the places they have in what was written. */
function putBack({ tokens, hidden, errors }: LexerResult, plain: PlainText): void {
    let line = 0;
    let shift = 0;
    let lastShift = 0;
    for (const token of tokens) {
        const start = plain.startOf(token.startOffset);
        if (token.startLine !== line) { line = token.startLine ?? 1; shift = lastShift; }
        const end = plain.endOf(endOf(token));
        lastShift = end - endOf(token);
        token.startColumn = (token.startColumn ?? 1) + start - token.startOffset - shift;
        token.endColumn = (token.endColumn ?? 1) + lastShift - shift;
        token.startOffset = start;
        token.endOffset = end - 1;
    }
    for (const remark of hidden) {
        const end = plain.endOf(endOf(remark));
        remark.startOffset = plain.startOf(remark.startOffset);
        remark.endOffset = end - 1;
    }
    for (const error of errors) {
        const end = plain.endOf(error.offset + error.length);
        error.offset = plain.startOf(error.offset);
        error.length = end - error.offset;
    }
}

/** A word mistake and a value mistake of the same place have one cause; the first stays. */
function oneForEachPlace(problems: readonly SyntaxProblem[]): SyntaxProblem[] {
    const order = problems.map((problem, rank) => ({ problem, rank })).sort((a, b) => a.problem.start - b.problem.start || a.rank - b.rank);
    const kept: typeof order = [];
    for (const one of order) {
        let isFirst = true;
        while (isFirst) {
            const before = kept.at(-1);
            if (!before || before.problem.end <= one.problem.start) break;
            if (before.rank < one.rank) isFirst = false;
            else kept.pop();
        }
        if (isFirst) kept.push(one);
    }
    return kept.map(({ problem }) => problem);
}

export const isReadingReport = (report: LexingReport | undefined): report is ReadingReport => report !== undefined && 'problems' in report;
