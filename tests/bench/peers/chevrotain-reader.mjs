import { EmbeddedActionsParser, EOF, Lexer, createToken } from 'chevrotain';

/**
 * The same language read by Chevrotain alone: the plainest parser a team would write with it, which makes a tree of plain objects with offsets.
 * No recovery, no tidying, no concrete tree; sound texts only.
 */
const token = (name, pattern, more = {}) => createToken({ name, pattern, ...more });
const id = token('ID', /[A-Za-z_][A-Za-z0-9_]*(-[A-Za-z][A-Za-z0-9_]*)*/);
const to = token('To', /to/, { longer_alt: id });
const by = token('By', /x/, { longer_alt: id });
const date = token('DATE', /[0-9]{4}-[0-9]{2}-[0-9]{2}(?![A-Za-z0-9_])/);
const lengthToken = token('LENGTH', /[0-9]+(\.[0-9]+)?['\u2032\u2019\u2018](([ \t]|-)?[0-9]+(([ \t]|-)[0-9]+\/[0-9]+|\/[0-9]+|\.[0-9]+)?["\u2033\u201c\u201d])?|[0-9]+(([ \t]+|-)[0-9]+\/[0-9]+|\/[0-9]+|\.[0-9]+)?["\u2033\u201c\u201d]/);
const quantity = token('QUANTITY', /[0-9]+(([ \t]+|-)[0-9]+\/[0-9]+|\/[0-9]+|\.[0-9]+)?[ \t]*(mm|cm2|cm|min|m2|m3|m|in2|in|ft2|ft3|ft|lb|kg|kW|W|V|A|degF|degC|psi|h|[A-Z]{3})(?![A-Za-z0-9_-])/);
const number = token('NUMBER', /[0-9]+(([ \t]+|-)[0-9]+\/[0-9]+|\/[0-9]+|\.[0-9]+)?/);
const string = token('STRING', /"([^"\\\r\n]|\\.)*"/);
const lineEnd = token('NL', /\r?\n|\r|;/, { line_breaks: true });
const space = token('WS', /[ \t\u00a0\ufeff]+/, { group: Lexer.SKIPPED });
const comment = token('COMMENT', /\/\/[^\r\n]*/, { group: Lexer.SKIPPED });
const [open, close, comma, dot, plus, minus, times, over, left, right] = [['LCurly', /\{/], ['RCurly', /\}/], ['Comma', /,/], ['Dot', /\./], ['Plus', /\+/], ['Minus', /-/], ['Times', /\*/], ['Over', /\//], ['Left', /\(/], ['Right', /\)/]].map(([name, pattern]) => token(name, pattern));
const tokens = [space, comment, lineEnd, date, lengthToken, quantity, number, string, to, by, id, open, close, comma, dot, plus, minus, times, over, left, right];
const lexer = new Lexer(tokens, { positionTracking: 'full', ensureOptimizations: false });

class Reader extends EmbeddedActionsParser {
    constructor() {
        super(tokens, { recoveryEnabled: false, maxLookahead: 2 });
        this.RULE('file', () => {
            const items = [];
            this.MANY(() => this.OR([{ ALT: () => this.CONSUME(lineEnd) }, { ALT: () => items.push(this.SUBRULE(this.fact)) }]));
            this.CONSUME(EOF);
            return { type: 'File', items };
        });
        this.RULE('fact', () => {
            const key = this.SUBRULE(this.word);
            const phrases = [];
            const body = [];
            let end = key;
            this.OPTION(() => this.MANY_SEP({ SEP: comma, DEF: () => phrases.push(this.SUBRULE(this.phrase)) }));
            const braced = this.OPTION2(() => {
                this.CONSUME(open);
                this.MANY(() => this.OR([{ ALT: () => this.CONSUME(lineEnd) }, { ALT: () => body.push(this.SUBRULE(this.fact)) }]));
                end = this.CONSUME(close);
                return true;
            });
            return { type: 'Fact', key: key.image, phrases, body, braced: braced === true, start: key.startOffset, end: end.endOffset };
        });
        this.RULE('word', () => this.OR([{ ALT: () => this.CONSUME(id) }, { ALT: () => this.CONSUME(to) }, { ALT: () => this.CONSUME(by) }]));
        this.RULE('phrase', () => {
            const terms = [];
            this.AT_LEAST_ONE(() => terms.push(this.SUBRULE(this.range)));
            return { type: 'Phrase', terms };
        });
        this.RULE('range', () => {
            const from = this.SUBRULE(this.size);
            const until = this.OPTION(() => { this.CONSUME(to); return this.SUBRULE2(this.size); });
            return until ? { type: 'Range', from, to: until } : from;
        });
        this.RULE('size', () => {
            const width = this.SUBRULE(this.sum);
            const height = this.OPTION(() => { this.CONSUME(by); return this.SUBRULE2(this.sum); });
            return height ? { type: 'Size', width, height } : width;
        });
        this.RULE('sum', () => this.chain(this.product, plus, minus));
        this.RULE('product', () => this.chain(this.signed, times, over));
        this.RULE('signed', () => this.OR([{ ALT: () => this.SUBRULE(this.atom) }, { ALT: () => { this.CONSUME(minus); return { type: 'Negative', operand: this.SUBRULE2(this.atom) }; } }]));
        this.RULE('atom', () => this.OR([
            { ALT: () => this.leaf('Literal', this.CONSUME(lengthToken)) }, { ALT: () => this.leaf('Literal', this.CONSUME(quantity)) }, { ALT: () => this.leaf('Literal', this.CONSUME(number)) },
            { ALT: () => this.leaf('Text', this.CONSUME(string)) }, { ALT: () => this.leaf('Date', this.CONSUME(date)) },
            { ALT: () => {
                const first = this.CONSUME(id);
                const path = [];
                this.MANY(() => { this.CONSUME(dot); path.push(this.CONSUME2(id).image); });
                return { type: 'Word', ref: first.image, path, start: first.startOffset, end: first.endOffset };
            } },
            { ALT: () => { this.CONSUME(left); const inner = this.SUBRULE(this.sum); this.CONSUME(right); return { type: 'Group', inner }; } },
        ]));
        this.performSelfAnalysis();
    }
    chain(operand, one, other) {
        let tree = this.SUBRULE(operand);
        this.MANY(() => {
            const operator = this.OR([{ ALT: () => this.CONSUME(one) }, { ALT: () => this.CONSUME(other) }]);
            tree = { type: 'Binary', operator, left: tree, right: this.SUBRULE2(operand) };
        });
        return tree;
    }
    leaf(type, { image, startOffset, endOffset }) {
        return { type, text: image, start: startOffset, end: endOffset };
    }
}

const reader = new Reader();

/** @returns the tree; throws on a text it cannot read, because then it measures nothing */
export function readWithChevrotain(text) {
    const { tokens: found, errors } = lexer.tokenize(text);
    reader.input = found;
    const tree = reader.file();
    if (errors.length > 0 || reader.errors.length > 0) throw new Error(`The Chevrotain peer cannot read the text: ${(errors[0] ?? reader.errors[0]).message}`);
    return tree;
}
