import type { SyntaxProblem } from './problem.js';
import { propertyKinds } from './property-kinds.js';
import { endOf, firstAtOrAfter, isLength, isWordLike, startOf, touches, type Token, type TokenTypes } from './token-list.js';

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

    protected checkSpacing(minus: Token): void {
        const before = this.tokens[this.indexOf(minus) - 1] ?? this.key;
        const after = this.current();
        if (!after) return;
        const isLeft = touches(before, minus);
        const isRight = touches(minus, after);
        if (!isLeft && !isRight) return;
        if (!isLeft && this.isWordLike(before) && propertyKinds(this.key.image).takesPlace && isLength(after, this.types)) { this.negative(minus, after); return; }
        if (this.isReported) return;
        this.isReported = true;
        this.report({
            id: 'hyphen-spacing', start: minus.startOffset, end: endOf(minus),
            message: `A hyphen subtracts when it has a space on both sides, and joins when it has none and stands inside one figure or name. Put spaces round it.`,
            fix: { title: 'Put spaces round the hyphen', edits: [{ start: endOf(before), end: after.startOffset, newText: ' - ' }] },
        });
    }

    /** Nothing on a drawing is shorter than nothing; what was meant instead is not known. */
    protected negative(sign: Token, figure: Token): void {
        if (this.isReported) return;
        this.isReported = true;
        this.report({ id: 'negative-length', start: sign.startOffset, end: endOf(figure), message: `-${figure.image} is negative; a length of 0 or more is needed. Write it without the sign, and a distance from the side it is measured from.` });
    }
}
