import { DefaultLexer, type LangiumCoreServices, type LexerResult, type LexingReport } from 'langium';
import type { SyntaxProblem } from './problem.js';
import { tidyStructure } from './tidy.js';
import { tidyWords } from './tidy-words.js';
import type { Token, TokenTypes } from './token-list.js';

/** What reading the text found, beside the tokens; travels with the parse result. */
export interface ReadingReport extends LexingReport {
    readonly problems: readonly SyntaxProblem[];
    /** Key offsets of facts that are not whole; `-1` is the file itself. */
    readonly damaged: ReadonlySet<number>;
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
            lineEnd: type('NL'), openBrace: type('{'), closeBrace: type('}'), closeBracket: type(')'), comma: type(','),
        };
    }

    get wordTypes(): TokenTypes { return this.types; }

    /** The tokens as written, line ends included, and the comments: for the formatter, completion and signature help. */
    raw(text: string): LexerResult {
        return super.tokenize(text);
    }

    override tokenize(text: string): LexerResult {
        const raw = super.tokenize(text);
        const problems: SyntaxProblem[] = [];
        const words = tidyWords(raw.tokens, raw.errors, text, this.types, problem => { problems.push({ ...problem, damages: [] }); });
        const structure = tidyStructure(words.tokens, words.damaged, this.types);
        const report: ReadingReport = { diagnostics: [], problems: oneForEachPlace([...problems, ...structure.problems]), damaged: structure.damaged };
        return { tokens: structure.tokens, hidden: raw.hidden, errors: [], report };
    }
}

/** A word mistake and a value mistake of the same place have one cause; the first stays. */
function oneForEachPlace(problems: readonly SyntaxProblem[]): SyntaxProblem[] {
    return problems.filter((problem, i) => !problems.slice(0, i).some(other => other.start < problem.end && problem.start < other.end)).sort((a, b) => a.start - b.start);
}

export const isReadingReport = (report: LexingReport | undefined): report is ReadingReport => report !== undefined && 'problems' in report;
