import type { AstNode, LangiumCoreServices, LangiumParser, ParseResult, ParserOptions, Reference } from 'langium';
import { derivesFrom, propertiesOf } from '../vocabulary/index.js';
import type * as ast from './generated/ast.js';
import { HotroomLexer } from './lexer.js';
import { FilePlace, NodePlace, WordPlace } from './places.js';
import { endOf, type Token, type TokenType, type TokenTypes } from './token-list.js';

/**
 * Reads the tidied token list into the tree that the grammar (hotroom.langium) describes. The tidying leaves one shape only, so nothing has to be
 * looked ahead for or recovered from, and the tree is made at once: several times as fast as the generated parser, which a test holds it equal to,
 * and in a fraction of the memory.
 */
export class HotroomReader {
    constructor(private readonly services: LangiumCoreServices, private readonly lexer: HotroomLexer) {}

    /** @param _options Langium's; the language has one entry rule */
    parse<T extends AstNode = ast.File>(text: string, _options?: ParserOptions): ParseResult<T> {
        const { tokens, report: lexerReport } = this.lexer.tokenize(text);
        const reading = new TokenReading(tokens, this.lexer.wordTypes, this.services.references.Linker);
        const file = reading.file(text);
        const { stoppedAt } = reading;
        return {
            value: file as AstNode as T, lexerErrors: [], ...(lexerReport && { lexerReport }),
            parserErrors: stoppedAt ? [{ name: 'NotAllInputParsed', message: `‘${stoppedAt.image}’ cannot stand here.`, token: stoppedAt, resyncedTokens: [], context: { ruleStack: [], ruleOccurrenceStack: [] } }] : [],
        };
    }
}

/** The reader in the place of Langium's parser: of that class only `parse` is called. */
export function createReader(services: LangiumCoreServices): LangiumParser {
    const { Lexer } = services.parser;
    if (!(Lexer instanceof HotroomLexer)) throw new Error('The reader needs the lexer of the language, which tidies');
    return new HotroomReader(services, Lexer) as unknown as LangiumParser;
}

type Linker = LangiumCoreServices['references']['Linker'];

/** A word that refers to nothing by what it is and where it stands, such as `yes` or a block's name. */
class PlainWord implements Reference {
    get ref(): undefined { return undefined; }
    /** Made when somebody asks: most words of a file are plain, and few are ever asked. */
    get $refNode(): WordPlace { return new WordPlace(this.offset, this.end, this.word, this.tokenType); }
    constructor(readonly $refText: string, private readonly word: ast.Word, private readonly offset: number, private readonly end: number, private readonly tokenType: TokenType) {}
}

/** Lists that hold nothing are one list: most facts have no body, most words no path. */
const none: never[] = [];
/** A list as long as what it holds; one that was pushed into keeps room for more. */
const exact = <T>(items: T[]): T[] => items.length === 0 ? none : items.slice();

/** Words that stand in every file, such as `width`, are one text in all of them. */
const words = new Map<string, string>();
function interned(word: string): string {
    const known = words.get(word);
    if (known !== undefined) return known;
    if (words.size < 4096 && word.length < 32) words.set(word, word);
    return word;
}

/** A node while it is made. */
type Draft<T extends AstNode> = { -readonly [K in Exclude<keyof T, keyof AstNode>]: T[K] } & Pick<T, '$type'> & { $container?: AstNode | undefined; $containerProperty?: string | undefined; $containerIndex?: number | undefined; $cstNode?: NodePlace | undefined };
const made = <T extends AstNode>(draft: Draft<T>): T => draft as unknown as T;

class TokenReading {
    private at = 0;
    /** A token the grammar has no place for: never met while the tidying does its work. */
    stoppedAt: Token | undefined;

    constructor(private readonly tokens: readonly Token[], private readonly types: TokenTypes, private readonly linker: Linker) {}

    file(text: string): ast.File {
        const file: ast.File = { $type: 'File', items: [] };
        const [first] = this.tokens;
        const last = this.tokens.at(-1);
        Object.assign(file, { $cstNode: new FilePlace(text, first?.startOffset ?? 0, last ? endOf(last) : 0, file) });
        this.facts(file, 'items', file.items, 'file');
        if (this.at < this.tokens.length) this.stoppedAt ??= this.tokens[this.at];
        return file;
    }

    private facts(container: ast.File | ast.Fact, property: 'items' | 'body', into: ast.Fact[], context: string): void {
        for (let key = this.current; key && this.stoppedAt === undefined && key.tokenType === this.types.word; key = this.current) {
            into.push(this.fact(key, container, property, into.length, context));
            if (!this.is(this.types.lineEnd)) return;
            this.at++;
        }
    }

    private fact(key: Token, container: AstNode, property: string, index: number, context: string): ast.Fact {
        const draft: Draft<ast.Fact> = { $type: 'Fact', $container: container, $containerProperty: property, $containerIndex: index, $cstNode: undefined, key: interned(key.image), phrases: none, body: none, braced: false };
        const fact = made(draft);
        const place = draft.$cstNode = new NodePlace(key.startOffset, endOf(key), fact);
        this.at++;
        const mayRefer = propertiesOf(context).get(key.image)?.property.type.refersTo !== undefined;
        const phrases: ast.Phrase[] = [];
        while (this.startsValue()) {
            phrases.push(this.phrase(fact, phrases.length, mayRefer));
            if (!this.is(this.types.comma)) break;
            this.at++;
        }
        draft.phrases = exact(phrases);
        if (this.is(this.types.openBrace)) {
            draft.braced = true;
            this.at++;
            const body: ast.Fact[] = [];
            this.facts(fact, 'body', body, key.image);
            draft.body = exact(body);
            if (this.is(this.types.closeBrace)) this.at++;
            else this.stoppedAt ??= this.current;
        }
        place.end = this.endBefore();
        return fact;
    }

    private phrase(fact: ast.Fact, index: number, mayRefer: boolean): ast.Phrase {
        const start = this.current?.startOffset ?? 0;
        const draft: Draft<ast.Phrase> = { $type: 'Phrase', $container: fact, $containerProperty: 'phrases', $containerIndex: index, $cstNode: undefined, terms: none };
        const terms: ast.Expr[] = [];
        const phrase = made(draft);
        const place = draft.$cstNode = new NodePlace(start, start, phrase);
        const mayDerive = index === 0 && derivesFrom(fact.key) !== undefined;
        while (this.startsValue()) {
            const before = this.tokens[this.at - 1];
            const isBase = mayDerive && (terms.length === 2 || terms.length === 3) && before?.image === 'is';
            hold(terms[terms.push(this.choice(isBase || (mayRefer && terms.length === 0))) - 1], phrase, 'terms', terms.length - 1);
        }
        draft.terms = exact(terms);
        place.end = this.endBefore();
        return phrase;
    }

    private choice(mayRefer: boolean): ast.Expr {
        const start = this.current?.startOffset ?? 0;
        if (!this.takeOperator('if')) return this.either(mayRefer);
        const condition = this.either(false);
        this.expect('then');
        const yes = this.choice(mayRefer);
        this.expect('else');
        const no = this.choice(mayRefer);
        const draft: Draft<ast.Choice> = { $type: 'Choice', condition, yes, no };
        const node = this.around(draft, condition, 'condition', start);
        hold(yes, node, 'yes');
        hold(no, node, 'no');
        return node;
    }
    private expect(word: string): void { if (!this.takeOperator(word)) this.stoppedAt ??= this.current; }

    private either(mayRefer: boolean): ast.Expr {
        let left = this.both(mayRefer);
        while (this.takeOperator('or')) left = this.pair<ast.Logic>({ $type: 'Logic', left, operator: 'or', right: this.both(false) }, 'left', 'right');
        return left;
    }
    private both(mayRefer: boolean): ast.Expr {
        let left = this.comparison(mayRefer);
        while (this.takeOperator('and')) left = this.pair<ast.Logic>({ $type: 'Logic', left, operator: 'and', right: this.comparison(false) }, 'left', 'right');
        return left;
    }
    private comparison(mayRefer: boolean): ast.Expr {
        const left = this.range(mayRefer);
        // The `=` of a `let` divides the name from its value, as a comma divides values.
        const operator = this.is(this.types.comma) ? undefined : this.takeOperator('=', '!=', '<', '<=', '>', '>=');
        return operator ? this.pair<ast.Comparison>({ $type: 'Comparison', left, operator: operator as ast.Comparison['operator'], right: this.compared() }, 'left', 'right') : left;
    }

    private compared(): ast.Expr {
        const token = this.current;
        return token?.image === 'if' && token.tokenType !== this.types.word ? this.choice(false) : this.range(false);
    }

    private range(mayRefer: boolean): ast.Expr {
        const from = this.size(mayRefer);
        return this.takeOperator('to') ? this.pair<ast.Range>({ $type: 'Range', from, to: this.size(false) }, 'from', 'to') : from;
    }
    private size(mayRefer: boolean): ast.Expr {
        const width = this.sum(mayRefer);
        return this.takeOperator('x') ? this.pair<ast.Size>({ $type: 'Size', width, height: this.sum(false) }, 'width', 'height') : width;
    }
    private sum(mayRefer: boolean): ast.Expr {
        let left = this.product(mayRefer);
        for (let operator = this.takeOperator('+', '-'); operator; operator = this.takeOperator('+', '-')) left = this.binary(left, operator, this.product(false));
        return left;
    }
    private product(mayRefer: boolean): ast.Expr {
        let left = this.signed(mayRefer);
        for (let operator = this.takeOperator('*', '/'); operator; operator = this.takeOperator('*', '/')) left = this.binary(left, operator, this.signed(false));
        return left;
    }
    private binary(left: ast.Expr, operator: string, right: ast.Expr): ast.Binary {
        return this.pair<ast.Binary>({ $type: 'Binary', left, operator: operator as ast.Binary['operator'], right }, 'left', 'right');
    }
    /** A node of two operands; it reaches from the first to what was read last. */
    private pair<T extends ast.Range | ast.Size | ast.Binary | ast.Comparison | ast.Logic>(draft: Draft<T>, first: keyof Draft<T> & string, second: keyof Draft<T> & string): T {
        const node = made(draft);
        const [left, right] = [draft[first] as ast.Expr, draft[second] as ast.Expr];
        draft.$cstNode = new NodePlace(left.$cstNode?.offset ?? 0, this.endBefore(), node);
        hold(left, node, first);
        hold(right, node, second);
        return node;
    }

    private signed(mayRefer: boolean): ast.Expr {
        const start = this.current?.startOffset ?? 0;
        if (!this.takeOperator('-')) return this.atom(mayRefer);
        const draft: Draft<ast.Negative> = { $type: 'Negative', operand: this.atom(false) };
        return this.around(draft, draft.operand, 'operand', start);
    }
    private group(open: Token): ast.Group {
        const draft: Draft<ast.Group> = { $type: 'Group', inner: this.choice(false) };
        if (this.is(this.types.closeBracket)) this.at++;
        else this.stoppedAt ??= this.current;
        return this.around(draft, draft.inner, 'inner', open.startOffset);
    }
    private call(callee: ast.Word): ast.Call {
        const draft: Draft<ast.Call> = { $type: 'Call', callee, args: [] };
        const node = made(draft);
        const place = draft.$cstNode = new NodePlace(callee.$cstNode?.offset ?? 0, this.endBefore(), node);
        hold(callee, node, 'callee');
        while (this.startsValue()) {
            hold(draft.args[draft.args.push(this.choice(false)) - 1], node, 'args', draft.args.length - 1);
            if (!this.is(this.types.comma)) break;
            this.at++;
        }
        if (this.is(this.types.closeBracket)) this.at++;
        else this.stoppedAt ??= this.current;
        place.end = this.endBefore();
        return node;
    }
    private around<T extends ast.Negative | ast.Group | ast.Choice>(draft: Draft<T>, inner: ast.Expr, property: string, start: number): T {
        const node = made(draft);
        draft.$cstNode = new NodePlace(start, this.endBefore(), node);
        hold(inner, node, property);
        return node;
    }

    private atom(mayRefer: boolean): ast.Expr {
        const token = this.current;
        const { types } = this;
        if (token) {
            this.at++;
            switch (token.tokenType) {
                case types.word: {
                    const word = this.word(token, mayRefer);
                    if (!this.is(types.callOpen)) return word;
                    this.at++;
                    return this.call(word);
                }
                case types.length: case types.quantity: case types.number: return leaf<ast.Literal>('Literal', token);
                case types.text: return leaf<ast.Text>('Text', token);
                case types.date: return leaf<ast.DateLiteral>('DateLiteral', token);
                default: if (token.image === '(') return this.group(token);
            }
        }
        // The tidying puts a value wherever one has to stand. Were it ever to fail, the reading stops here and says so.
        this.stoppedAt ??= token ?? this.tokens.at(-1);
        this.at = this.tokens.length;
        return made<ast.Literal>({ $type: 'Literal', text: '' });
    }

    private word(token: Token, mayRefer: boolean): ast.Word {
        const draft = { $type: 'Word', $container: undefined, $containerProperty: undefined, $containerIndex: undefined, $cstNode: undefined, path: none, ref: undefined } as unknown as Draft<ast.Word>;
        const word = made(draft);
        const [start, end] = [token.startOffset, endOf(token)];
        const place = draft.$cstNode = new NodePlace(start, end, word);
        draft.ref = (mayRefer ? this.linker.buildReference(word, 'ref', new WordPlace(start, end, word, token.tokenType), token.image) : new PlainWord(interned(token.image), word, start, end, token.tokenType)) as Reference<ast.Fact>;
        while (this.takeOperator('.')) {
            const name = this.current;
            if (!name) break;
            draft.path = [...draft.path, name.image];
            this.at++;
        }
        place.end = this.endBefore();
        return word;
    }

    private get current(): Token | undefined { return this.tokens[this.at]; }
    private is(type: TokenType): boolean { return this.tokens[this.at]?.tokenType === type; }
    /** End of the token that was read last. */
    private endBefore(): number {
        const before = this.tokens[this.at - 1];
        return before ? endOf(before) : 0;
    }
    /** Moves past one of these operators; a name or a text that reads like one is none. */
    private takeOperator(...images: readonly string[]): string | undefined {
        const token = this.current;
        if (!token || token.tokenType === this.types.word || !images.includes(token.image)) return undefined;
        this.at++;
        return token.image;
    }
    private startsValue(): boolean {
        const token = this.current;
        if (!token || this.stoppedAt !== undefined) return false;
        const { tokenType } = token;
        const { types } = this;
        return tokenType === types.word || tokenType === types.length || tokenType === types.quantity || tokenType === types.number || tokenType === types.text || tokenType === types.date
            || token.image === '(' || token.image === '-' || token.image === 'if';
    }
}

function hold(node: ast.Expr | undefined, container: AstNode, property: string, index?: number): void {
    if (!node) return;
    const draft = node as unknown as Draft<AstNode>;
    draft.$container = container;
    draft.$containerProperty = property;
    if (index !== undefined) draft.$containerIndex = index;
}

/** A node of one token. It has all its places from the start, so that it never grows a second store for them. */
function leaf<T extends ast.Literal | ast.Text | ast.DateLiteral>($type: T['$type'], token: Token): T {
    const draft = { $type, $container: undefined, $containerProperty: undefined, $containerIndex: undefined, $cstNode: undefined as NodePlace | undefined, text: token.image };
    const node = draft as unknown as T;
    draft.$cstNode = new NodePlace(token.startOffset, endOf(token), node);
    return node;
}
