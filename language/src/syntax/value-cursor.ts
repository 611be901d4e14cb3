import type { SyntaxProblem } from './problem.js';
import { endOf, firstAtOrAfter, isWordLike, startOf, type Token, type TokenTypes } from './token-list.js';

export type Report = (problem: Omit<SyntaxProblem, 'damages'>) => void;

/** Where the reading of one fact's values has come to, what it has put out, and whether the fact has its one report. */
export abstract class ValueCursor {
    protected at = 0;
    protected readonly out: Token[] = [];
    protected isReported = false;

    constructor(protected readonly key: Token, protected readonly tokens: readonly Token[], protected readonly types: TokenTypes, protected readonly report: Report) {}

    protected startsValue(token: Token | undefined, { isAfterOperator = false } = {}): boolean {
        if (!token) return false;
        if (token.image === '(') return true;
        if (token.image === '-') {
            const next = this.tokens[this.indexOf(token) + 1];
            return next !== undefined && next.image !== '-' && !isAfterOperator && this.startsValue(next);
        }
        return this.isWordLike(token) || token.tokenType === this.types.text || token.tokenType === this.types.length
            || token.tokenType === this.types.quantity || token.tokenType === this.types.number || token.tokenType === this.types.date;
    }

    protected isWordLike(token: Token): boolean {
        return isWordLike(token, this.types);
    }
    protected indexOf(token: Token): number { return firstAtOrAfter(this.tokens, token.startOffset, startOf); }
    protected current(): Token | undefined { return this.tokens[this.at]; }
    protected peek(ahead: number): Token | undefined { return this.tokens[this.at + ahead]; }

    protected once(id: SyntaxProblem['id'], token: Token, message: string): void {
        if (this.isReported) return;
        this.isReported = true;
        this.report({ id, start: token.startOffset, end: Math.max(endOf(token), token.startOffset + 1), message });
    }
}
