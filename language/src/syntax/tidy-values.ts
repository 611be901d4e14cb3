import type { SyntaxProblem } from './problem.js';
import { endOf, insertedToken, isWordLike, touches, withType, type Token, type TokenTypes } from './token-list.js';

type Report = (problem: Omit<SyntaxProblem, 'damages'>) => void;

/**
 * Second pass, the values of one fact: operators have a value on both sides, commas stand between values, brackets are in balance.
 * What breaks that is left out with one report for the whole fact, so the grammar never meets it. Also decides whether `x` and `to` are
 * operators or names, which only their neighbours tell.
 * @param tokens what stands behind the key of a fact, up to its brace or line end
 * @param key the key itself
 */
export function tidyValues(key: Token, tokens: readonly Token[], types: TokenTypes, report: Report): Token[] {
    const reader = new ValueReader(key, tokens, types, report);
    return reader.read();
}

class ValueReader {
    private at = 0;
    private readonly out: Token[] = [];
    private isReported = false;

    constructor(private readonly key: Token, private readonly tokens: readonly Token[], private readonly types: TokenTypes, private readonly report: Report) {}

    read(): Token[] {
        let termsInPhrase = 0;
        let comma: Token | undefined;
        while (this.at < this.tokens.length) {
            const token = this.current();
            if (!token) break;
            if (token.image === ',') {
                if (termsInPhrase === 0) this.once('value-missing', token, comma ? 'A value is missing between these commas.' : `A value is missing before this comma.`);
                else comma = token;
                termsInPhrase = 0;
                this.at++;
                continue;
            }
            if (!this.startsValue(token)) {
                this.at++;
                this.complainOfStart(token);
                continue;
            }
            if (comma) { this.out.push(comma); comma = undefined; }
            this.range();
            termsInPhrase++;
        }
        if (comma) this.once('value-missing', comma, 'A value is missing after this comma. Add it, or take the comma away.');
        return this.out;
    }

    private range(): void {
        this.size();
        const word = this.current();
        if (word?.image === 'to' && this.startsValue(this.peek(1))) {
            this.out.push(word);
            this.at++;
            this.size();
        }
    }

    private size(): void {
        this.sum();
        const word = this.current();
        if (word?.image === 'x' && this.startsValue(this.peek(1))) {
            this.out.push(word);
            this.at++;
            this.sum();
        }
    }

    private sum(): void {
        this.product();
        for (let operator = this.current(); operator && (operator.image === '+' || operator.image === '-'); operator = this.current()) {
            if (!this.operatorWithValue(operator)) return;
            if (operator.image === '-') this.checkSpacing(operator);
            this.product();
        }
    }

    private product(): void {
        this.signed();
        for (let operator = this.current(); operator && (operator.image === '*' || operator.image === '/'); operator = this.current()) {
            if (!this.operatorWithValue(operator)) return;
            this.signed();
        }
    }

    /** Moves past an operator when a value follows; otherwise reports it and leaves it out. */
    private operatorWithValue(operator: Token): boolean {
        this.at++;
        if (this.startsValue(this.current(), { isAfterOperator: true })) {
            this.out.push(operator);
            return true;
        }
        this.once('value-missing', operator, `A value is missing after ‘${operator.image}’.`);
        return false;
    }

    private signed(): void {
        const sign = this.current();
        if (sign?.image === '-') {
            this.out.push(sign);
            this.at++;
        }
        this.atom();
    }

    private atom(): void {
        const token = this.current();
        if (!token) return;
        this.at++;
        if (token.image === '(') { this.group(token); return; }
        this.out.push(this.isWordLike(token) ? withType(token, this.types.word) : token);
        if (!this.isWordLike(token)) return;
        while (this.current()?.image === '.') {
            const dot = this.current();
            const name = this.peek(1);
            this.at++;
            if (!dot) return;
            if (name && this.isWordLike(name)) {
                this.out.push(dot, withType(name, this.types.word));
                this.at++;
            } else {
                this.once('value-missing', dot, `A name is missing after ‘${token.image}.’.`);
            }
        }
    }

    private group(open: Token): void {
        if (!this.startsValue(this.current())) {
            this.once('value-missing', open, 'There is no value in these brackets.');
            if (this.current()?.image === ')') this.at++;
            // The brackets are gone, and a value must stand where they stood: the key of the fact, as a word that names nothing.
            this.out.push({ ...insertedToken(this.types.word, open) });
            return;
        }
        this.out.push(open);
        this.sum();
        const extra = this.current();
        if (extra && extra.image !== ')') {
            this.once(extra.image === ',' ? 'bracket-not-closed' : 'part-out-of-place', extra.image === ',' ? open : extra,
                extra.image === ',' ? 'This bracket is not closed. Add ).' : `‘${extra.image}’ does not belong in these brackets; one calculation stands there.`);
            if (extra.image !== ',') while (this.current() && this.current()?.image !== ')') this.at++;
        }
        const close = this.current();
        if (close?.image === ')') {
            this.out.push(close);
            this.at++;
        } else {
            this.once('bracket-not-closed', open, 'This bracket is not closed. Add ).');
            this.out.push(insertedToken(this.types.closeBracket, this.out.at(-1) ?? open));
        }
    }

    private complainOfStart(token: Token): void {
        if (token.image === ')') this.once('bracket-without-partner', token, 'This bracket was never opened. Remove it.');
        else if (token.image === '.') this.once('part-out-of-place', token, 'A point joins two names and stands right between them.');
        else this.once('value-missing', token, `A value is missing before ‘${token.image}’.`);
    }

    private checkSpacing(minus: Token): void {
        const before = this.tokens[this.tokens.indexOf(minus) - 1] ?? this.key;
        const after = this.current();
        if (!after) return;
        const isLeft = touches(before, minus);
        const isRight = touches(minus, after);
        if (!isLeft && !isRight) return;
        if (this.isReported) return;
        this.isReported = true;
        this.report({
            id: 'hyphen-spacing', start: minus.startOffset, end: endOf(minus),
            message: `A hyphen subtracts when it has a space on both sides, and joins when it has none and stands inside one figure or name. Put spaces round it.`,
            fix: { title: 'Put spaces round the hyphen', edits: [{ start: endOf(before), end: after.startOffset, newText: ' - ' }] },
        });
    }

    private startsValue(token: Token | undefined, { isAfterOperator = false } = {}): boolean {
        if (!token) return false;
        if (token.image === '(') return true;
        if (token.image === '-') {
            const next = this.tokens[this.tokens.indexOf(token) + 1];
            return next !== undefined && next.image !== '-' && !isAfterOperator && this.startsValue(next);
        }
        return this.isWordLike(token) || token.tokenType === this.types.text || token.tokenType === this.types.length
            || token.tokenType === this.types.quantity || token.tokenType === this.types.number || token.tokenType === this.types.date;
    }

    private isWordLike(token: Token): boolean {
        return isWordLike(token, this.types);
    }
    private current(): Token | undefined { return this.tokens[this.at]; }
    private peek(ahead: number): Token | undefined { return this.tokens[this.at + ahead]; }

    private once(id: SyntaxProblem['id'], token: Token, message: string): void {
        if (this.isReported) return;
        this.isReported = true;
        this.report({ id, start: token.startOffset, end: Math.max(endOf(token), token.startOffset + 1), message });
    }
}
