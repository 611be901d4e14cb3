import type { TextFix } from './problem.js';
import { propertyKinds } from './property-kinds.js';
import { endOf, insertedToken, isLength, operatorWords, touches, withType, type Token, type TokenTypes } from './token-list.js';
import { ValueCursor, type Report } from './value-cursor.js';

/**
 * Second pass, the values of one fact: operators have a value on both sides, commas stand between values, brackets are in balance.
 * What breaks that is left out with one report for the whole fact, so the grammar never meets it. Also decides whether `x`, `to`, `and`, `or`, `if`,
 * `then` and `else` are operators or names, which only their neighbours tell.
 * @param tokens what stands behind the key of a fact, up to its brace or line end
 * @param key the key itself
 */
export function tidyValues(key: Token, tokens: readonly Token[], types: TokenTypes, report: Report): Token[] {
    return new ValueReader(key, tokens, types, report).read();
}

/** The functions of the language; they are defined in model/functions.ts. */
export const functionNames: ReadonlySet<string> = new Set(['min', 'max', 'sum', 'count', 'any', 'all', 'not', 'round_down', 'round_up', 'opposite']);
const comparisons: ReadonlySet<string> = new Set(['=', '!=', '<', '<=', '>', '>=']);
const isComparison = (token: Token): boolean => comparisons.has(token.image);

class ValueReader extends ValueCursor {
    /** Whether the next `=` gives a `let` its value, and so compares nothing. */
    private givesName: boolean;

    constructor(key: Token, tokens: readonly Token[], types: TokenTypes, report: Report) {
        super(key, tokens, types, report);
        this.givesName = key.image === 'let';
    }

    read(): Token[] {
        let termsInPhrase = 0;
        let comma: Token | undefined;
        while (this.at < this.tokens.length) {
            const token = this.current();
            if (!token) break;
            if (token.image === ',' || (token.image === '=' && this.givesName && termsInPhrase === 1)) {
                this.givesName = false;
                if (termsInPhrase === 0) this.once('value-missing', token, comma ? 'A value is missing between these commas.' : `A value is missing before this comma.`);
                else comma = withType(token, this.types.comma);
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
            this.choice();
            termsInPhrase++;
        }
        if (comma) this.once('value-missing', comma, comma.image === '=' ? 'A value is missing after ‘=’.' : 'A value is missing after this comma. Add it, or take the comma away.');
        return this.out;
    }

    /** `if … then … else …` where all three words and their values are there; otherwise the words are names. */
    private choice(): void {
        const word = this.current();
        if (!word || !this.isChoice()) { this.either(); return; }
        this.out.push(word);
        this.at++;
        this.either();
        if (!this.branch(word, 'then', () => { this.choice(); })) return;
        this.branch(word, 'else', () => { this.choice(); });
    }
    private isChoice(): boolean { return this.current()?.image === 'if' && this.startsValue(this.peek(1)) && this.aheadIs('then'); }
    /** One branch of a choice; what is missing is reported and the choice is filled up, so that it stands whole before the grammar. */
    private branch(start: Token, name: 'then' | 'else', read: () => void): boolean {
        const word = this.current();
        const isThere = word?.image === name;
        if (isThere) {
            this.out.push(word);
            this.at++;
            if (this.startsValue(this.current())) { read(); return true; }
        } else {
            this.out.push({ ...insertedToken(this.types.word, this.out.at(-1) ?? start), tokenType: this.types[name], tokenTypeIdx: this.types[name].tokenTypeIdx ?? 0, image: name });
        }
        this.once('value-missing', word ?? start, isThere ? `A value is missing after ‘${name}’.` : `‘if’ has no ‘${name}’. A choice is written if … then … else …`);
        this.out.push(insertedToken(this.types.word, this.out.at(-1) ?? start));
        if (name === 'then' && this.current()?.image !== 'else') {
            this.out.push(...['else'].map(() => ({ ...insertedToken(this.types.else, this.out.at(-1) ?? start), image: 'else' })), insertedToken(this.types.word, this.out.at(-1) ?? start));
            return false;
        }
        return name === 'then';
    }
    /** Whether this word stands further on among these values, outside of brackets that open on the way. */
    private aheadIs(name: string): boolean {
        let depth = 0;
        for (let i = this.at + 1; i < this.tokens.length; i++) {
            const token = this.tokens[i];
            if (!token) break;
            if (token.image === '(') depth++;
            else if (token.image === ')' && --depth < 0) return false;
            else if (depth === 0 && token.image === name) return true;
        }
        return false;
    }

    private either(): void {
        this.both();
        this.chain('or', () => { this.both(); });
    }
    private both(): void {
        this.comparison();
        this.chain('and', () => { this.comparison(); });
    }
    private chain(name: string, read: () => void): void {
        for (let word = this.current(); word?.image === name && this.startsValue(this.peek(1)); word = this.current()) {
            this.out.push(word);
            this.at++;
            read();
        }
    }
    private comparison(): void {
        this.range();
        const operator = this.current();
        if (!operator || !isComparison(operator) || (operator.image === '=' && this.givesName)) return;
        if (!this.operatorWithValue(operator, { mayBeNegative: true })) return;
        if (this.isChoice()) this.choice(); else this.range();
        const again = this.current();
        if (!again || !isComparison(again)) return;
        this.once('part-out-of-place', again, `Two values are compared at a time. Join two comparisons by and.`);
        while (this.current() && !/^[,)]$/.test(this.current()?.image ?? '')) this.at++;
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
    private operatorWithValue(operator: Token, { mayBeNegative = false } = {}): boolean {
        this.at++;
        if (this.startsValue(this.current(), { isAfterOperator: !mayBeNegative })) {
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
            const [before, figure] = [this.tokens[this.at - 2], this.current()];
            const isInside = before && (isComparison(before) || /^(?:\(|and|or|if|then|else)$/.test(before.image));
            if (figure && !isInside && isLength(figure, this.types) && propertyKinds(this.key.image).takesLength && !/^[-+*/]$/.test(this.peek(1)?.image ?? '')) this.negative(sign, figure);
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
        const open = this.current();
        if (open?.image === '(' && touches(this.tokens[this.at - 1] ?? token, open)) this.call(token, open);
        else if (functionNames.has(token.image) && this.tokens[this.at - 1] === token) this.loose(token, open);
    }

    /** A function whose bracket stands apart, or a `not` without one. */
    private loose(name: Token, next: Token | undefined): void {
        const isApart = next?.image === '(';
        if (!next || !(isApart || (name.image === 'not' && this.startsValue(next) && next.image !== '-' && !operatorWords.has(next.image)))) return;
        const say = (edits?: TextFix['edits']): void => {
            if (this.isReported) return;
            this.isReported = true;
            this.report({
                id: 'part-out-of-place', start: name.startOffset, end: endOf(next), message: `${name.image} is written ${name.image}(${name.image === 'not' ? 'condition' : '…'}): its bracket touches it.`,
                ...(edits && { fix: { title: 'Put the bracket right behind it', edits } }),
            });
        };
        if (isApart) { say([{ start: endOf(name), end: next.startOffset, newText: '' }]); this.call(name, next); return; }
        this.out.push(withType(insertedToken(this.types.callOpen, name), this.types.callOpen));
        const start = this.at;
        this.comparison();
        const last = this.tokens[this.at - 1] ?? next;
        this.out.push({ ...insertedToken(this.types.closeBracket, last), image: ')' });
        // What `not a = b` means differs from language to language.
        const isOne = !this.tokens.slice(start, this.at).some(isComparison);
        say(isOne ? [{ start: endOf(name), end: next.startOffset, newText: '(' }, { start: endOf(last), end: endOf(last), newText: ')' }] : undefined);
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
        this.choice();
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

    /** The bracket after a name: values divided by commas, and the closing bracket. */
    private call(name: Token, open: Token): void {
        this.out.push(withType(open, this.types.callOpen));
        this.at++;
        let comma: Token | undefined;
        let count = 0;
        while (this.at < this.tokens.length && this.current()?.image !== ')') {
            const token = this.current();
            if (!token) break;
            if (this.startsValue(token) && (count === 0 || comma)) {
                if (comma) this.out.push(comma);
                comma = undefined;
                this.choice();
                count++;
                continue;
            }
            this.at++;
            if (token.image === ',' && count > 0 && !comma) comma = token;
            else if (token.image === ',') this.once('value-missing', token, 'A value is missing before this comma.');
            else if (this.startsValue(token)) this.once('part-out-of-place', token, `‘${token.image}’ does not belong here. Values in brackets are divided by commas.`);
            else this.complainOfStart(token);
        }
        if (comma) this.once('value-missing', comma, 'A value is missing after this comma. Add it, or take the comma away.');
        const close = this.current();
        if (close) { this.out.push(close); this.at++; return; }
        this.once('bracket-not-closed', open, `The bracket after ${name.image} is not closed. Add ).`);
        this.out.push(insertedToken(this.types.closeBracket, this.out.at(-1) ?? open));
    }

    private complainOfStart(token: Token): void {
        if (token.image === '=') { this.once('unexpected-character', token, `‘=’ compares two values. A fact is a word and then its value, such as top 37".`); return; }
        if (token.image === ')') this.once('bracket-without-partner', token, 'This bracket was never opened. Remove it.');
        else if (token.image === '.') this.once('part-out-of-place', token, 'A point joins two names and stands right between them.');
        else this.once('value-missing', token, `A value is missing before ‘${token.image}’.`);
    }
}
