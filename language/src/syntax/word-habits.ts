import type { SyntaxProblem } from './problem.js';
import { propertyKinds } from './property-kinds.js';
import { endOf, isLength, touches, withImage, withType, type Token, type TokenTypes } from './token-list.js';
import { unitMeant, unitOfTwoWords } from './unit-words.js';

type Report = (problem: Omit<SyntaxProblem, 'damages'>) => void;

const comparisons: Readonly<Record<string, keyof TokenTypes['comparisons']>> = { '==': '=', '===': '=', '=>': '>=', '=<': '<=', '<>': '!=', '!==': '!=' };
const sizes: readonly string[] = ['size', 'length-range'];

/** Reads what people are used to writing elsewhere as what the language calls it: units in words, `by` in a size, the comparisons of other languages. */
export class WordHabits {
    /** First word of the fact, and where it stands among the tokens. */
    private key = '';
    private keyAt = -1;
    private isStart = true;

    constructor(private readonly types: TokenTypes, private readonly text: string, private readonly report: Report) {}

    /**
     * @param before the token that was taken last
     * @returns what the tokens from `at` on mean, and how many they are; nothing when they mean what they say
     */
    read(tokens: readonly Token[], at: number, before: Token | undefined): { readonly token: Token; readonly count: number } | undefined {
        const [token, next] = [tokens[at], tokens[at + 1]];
        if (!token) return undefined;
        const { types } = this;
        if (token.tokenType === types.lineEnd || token.tokenType === types.openBrace || token.tokenType === types.closeBrace) { this.isStart = true; return undefined; }
        if (this.isStart) { this.key = token.image; this.keyAt = at; this.isStart = false; return undefined; }
        if (!next) return undefined;
        if (token.tokenType === types.number || token.tokenType === types.length || token.tokenType === types.quantity) return this.figure(tokens, at);
        if (token.image === 'by' && before && this.isFigure(before) && this.isFigure(next) && sizes.some(kind => propertyKinds(this.key).kinds.has(kind))) {
            this.say('part-out-of-place', token, endOf(token), `A size is written with x: ${before.image} x ${next.image}.`, 'Write x', 'x');
            return { token: { ...withType(token, types.times), image: 'x' }, count: 1 };
        }
        return /^[=<!]/.test(token.image) ? this.comparison(tokens, at) : undefined;
    }

    /** A figure with a unit in words, or with a point behind its unit. */
    private figure(tokens: readonly Token[], at: number): { readonly token: Token; readonly count: number } | undefined {
        const [token, next] = [tokens[at], tokens[at + 1]];
        if (!token || !next) return undefined;
        const { types } = this;
        const capitals = token.tokenType === types.quantity && !propertyKinds(this.key).kinds.has('price') ? /^(.*?)[ \t]*(AMP|LBS|MIN|INS|HRS)$/.exec(token.image) : null;
        if (capitals) {
            const [image, unit] = [`${capitals[1] ?? ''} ${unitMeant(capitals[2] ?? '', this.key) ?? ''}`, capitals[2] ?? ''];
            this.say('unknown-unit', token, endOf(token), `‘${unit}’ is written ${unitMeant(unit, this.key) ?? ''} here: ${image}.`, `Write ${image}`, image);
            return { token: { ...token, image }, count: 1 };
        }
        const second = tokens[at + 2];
        const square = token.tokenType === types.number && next.tokenType === types.word && second?.tokenType === types.word ? unitOfTwoWords(next.image, second.image) : undefined;
        if (square !== undefined && second) {
            const image = `${token.image} ${square}`;
            this.say('unknown-unit', token, endOf(second), `‘${next.image} ${second.image}’ is written ${square} here: ${image}.`, `Write ${image}`, image);
            return { token: this.joined(token, second, types.quantity, image), count: 3 };
        }
        const unit = token.tokenType === types.number && next.tokenType === types.word ? unitMeant(next.image, this.key) : undefined;
        if (unit !== undefined) {
            const count = 2 + (this.isPoint(tokens, at + 1) ? 1 : 0);
            const last = tokens[at + count - 1] ?? next;
            const inches = unit === 'ft' && count === 2 && /^\d+$/.test(token.image) ? this.inchesAfter(tokens, at + 2) : undefined;
            if (inches) {
                const image = `${token.image}'${inches.figure.image}"`;
                this.say('unknown-unit', token, endOf(inches.last), `Feet and inches are written with marks: ${image}.`, `Write ${image}`, image);
                return { token: this.joined(token, inches.last, types.length, image), count: 2 + inches.count };
            }
            const image = `${token.image} ${unit}`;
            this.say('unknown-unit', token, endOf(last), `‘${next.image}’ is written ${unit} here: ${image}.`, `Write ${image}`, image);
            return { token: this.joined(token, last, types.quantity, image), count };
        }
        if (token.tokenType === types.quantity && this.isPoint(tokens, at)) {
            const point = next;
            this.say('unknown-unit', token, endOf(point), `A unit is written without a point: ${token.image}.`, `Write ${token.image}`, token.image);
            return { token: this.joined(token, point, types.quantity, token.image), count: 2 };
        }
        return undefined;
    }
    private inchesAfter(tokens: readonly Token[], at: number): { readonly figure: Token; readonly last: Token; readonly count: number } | undefined {
        const [figure, word] = [tokens[at], tokens[at + 1]];
        if (!figure || figure.tokenType !== this.types.number || word?.tokenType !== this.types.word || unitMeant(word.image, this.key) !== 'in') return undefined;
        return { figure, last: word, count: 2 };
    }
    /** Whether a point that joins nothing touches the unit or its word. */
    private isPoint(tokens: readonly Token[], at: number): boolean {
        const [unit, point, next] = [tokens[at], tokens[at + 1], tokens[at + 2]];
        return unit !== undefined && point?.image === '.' && touches(unit, point) && (!next || !touches(point, next) || next.tokenType !== this.types.word);
    }

    private comparison(tokens: readonly Token[], at: number): { readonly token: Token; readonly count: number } | undefined {
        const [first] = [tokens[at]];
        if (!first) return undefined;
        let count = 1;
        for (let [last, next] = [first, tokens[at + 1]]; next && touches(last, next) && /^(?:[<>]=?|!?=)$/.test(next.image); next = tokens[at + count]) { last = next; count++; }
        const run = tokens.slice(at, at + count);
        const signs = run.map(({ image }) => image).join('');
        const meant = Object.hasOwn(comparisons, signs) ? comparisons[signs] : undefined;
        const last = run.at(-1);
        if (meant === undefined || !last || count < 2) return undefined;
        // Behind the first word of a fact nothing is compared, however it is written: that has its own message.
        if (at > this.keyAt + 1) this.say('unexpected-character', first, endOf(last), `‘${signs}’ is written ${meant} here.`, `Write ${meant}`, meant);
        return { token: this.joined(first, last, this.types.comparisons[meant], meant), count };
    }

    private isFigure(token: Token): boolean { return isLength(token, this.types) || token.tokenType === this.types.number || token.tokenType === this.types.quantity; }
    private joined(first: Token, last: Token, type: Token['tokenType'], image: string): Token {
        return { ...withImage(first, type, image), endOffset: endOf(last) - 1, ...(last.endColumn !== undefined && { endColumn: last.endColumn }), ...(last.endLine !== undefined && { endLine: last.endLine }) };
    }
    private say(id: SyntaxProblem['id'], token: Token, end: number, message: string, title: string, newText: string): void {
        const start = token.startOffset;
        const isTight = /\w$/.test(newText) && /\w/.test(this.text[end] ?? '');
        this.report({ id, start, end, message, fix: { title, edits: [{ start, end, newText: isTight ? `${newText} ` : newText }] } });
    }
}
