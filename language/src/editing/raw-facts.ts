import type { LexerResult } from 'langium';
import type { HotroomLexer } from '../syntax/lexer.js';
import { endOf, isWordLike, type Token, type TokenTypes } from '../syntax/token-list.js';
import { beginsFact, blocksIn, isBlockKind } from '../vocabulary/index.js';

/** One fact as its tokens stand in the text, mended by nobody: what completion, formatting and highlighting work on. */
export interface RawFact {
    readonly scope: RawScope;
    /** Everything before the brace or separator that ends the fact; never empty. */
    readonly tokens: readonly Token[];
    /** The word the fact begins with; absent when it begins with a value. */
    readonly key: Token | undefined;
    readonly start: number;
    /** Where the separator, brace or end of text behind it stands: a cursor up to here is still in the fact. */
    readonly end: number;
    body?: RawScope;
}

/** What stands between two braces, or the whole file. */
export interface RawScope {
    /** Kind of the block, `file` at the top, empty for a brace that opens nothing known. */
    readonly kind: string;
    readonly parent: RawScope | undefined;
    readonly header: RawFact | undefined;
    readonly open: Token | undefined;
    close: Token | undefined;
    readonly facts: RawFact[];
}

export interface RawText {
    readonly text: string;
    readonly tokens: readonly Token[];
    readonly comments: readonly Token[];
    readonly errors: LexerResult['errors'];
    readonly types: TokenTypes;
    readonly file: RawScope;
    /** Every fact of every scope, in the order of the text. */
    readonly facts: readonly RawFact[];
    /** Opening braces without a partner, when positive; closing ones, when negative. */
    readonly surplus: number;
}

/** `x` and `to` are operators to the lexer and words to everybody else. */
export const isWordToken = isWordLike;

/** Lexes and puts the tokens into the tree their braces make. Never fails. */
export function readRaw(text: string, lexer: HotroomLexer): RawText {
    const { tokens, hidden, errors } = lexer.raw(text);
    const types = lexer.wordTypes;
    const surplus = tokens.reduce((n, token) => n + (token.tokenType === types.openBrace ? 1 : token.tokenType === types.closeBrace ? -1 : 0), 0);
    const file: RawScope = { kind: 'file', parent: undefined, header: undefined, open: undefined, close: undefined, facts: [] };
    const facts = new RawReader(tokens, text, types, file, surplus).read();
    return { text, tokens, comments: hidden, errors, types, file, facts, surplus };
}

/** Blocks of the language nest a few levels; looking further out than this for the one a fact belongs to helps nobody. */
const deepest = 64;

class RawReader {
    private scope: RawScope;
    private readonly facts: RawFact[] = [];
    constructor(private readonly tokens: readonly Token[], private readonly text: string, private readonly types: TokenTypes, file: RawScope, private surplus: number) {
        this.scope = file;
    }

    read(): readonly RawFact[] {
        let pending: Token[] = [];
        let depth = 0;
        const flush = (end: number): RawFact | undefined => {
            const fact = pending.length > 0 ? this.add(pending, end) : undefined;
            pending = [];
            depth = 0;
            return fact;
        };
        for (let i = 0; i < this.tokens.length; i++) {
            const token = this.tokens[i];
            if (!token) continue;
            if (token.tokenType === this.types.openBrace) this.open(token, flush(token.startOffset) ?? this.headerAbove());
            else if (token.tokenType === this.types.closeBrace) { flush(token.startOffset); this.close(token); }
            else if (token.tokenType === this.types.lineEnd) {
                if (!this.goesOn(pending, depth, i)) flush(token.startOffset);
                // Blank lines inside brackets are asked about once.
                else while (this.tokens[i + 1]?.tokenType === this.types.lineEnd && this.tokens[i + 1]?.image !== ';') i++;
            }
            else {
                if (token.image === '(') depth++;
                if (token.image === ')') depth--;
                pending.push(token);
            }
        }
        flush(this.text.length);
        return this.facts;
    }

    /** A line goes on inside brackets and after a comma, unless the next line plainly begins a fact of its own. */
    private goesOn(pending: readonly Token[], depth: number, at: number): boolean {
        if (pending.length === 0 || this.tokens[at]?.image === ';') return false;
        const isAfterComma = pending.at(-1)?.image === ',';
        if (depth <= 0 && !isAfterComma) return false;
        let i = at;
        while (this.tokens[i]?.tokenType === this.types.lineEnd) i++;
        const next = this.tokens[i];
        const following = this.tokens[i + 1];
        if (!next || next.tokenType === this.types.closeBrace || next.tokenType === this.types.openBrace) return false;
        if (!isWordToken(next, this.types)) return true;
        if (depth > 0 && !isAfterComma) return /^[-+*/(]$/.test(pending.at(-1)?.image ?? '');
        return !(this.beginsSomewhere(next.image) && following !== undefined && following.image !== ',' && following.tokenType !== this.types.lineEnd);
    }
    private beginsSomewhere(word: string): boolean {
        let levels = deepest;
        for (let scope: RawScope | undefined = this.scope; scope && levels > 0; scope = scope.parent, levels--) if (beginsFact(scope.kind, word)) return true;
        return false;
    }

    private add(tokens: readonly Token[], end: number): RawFact | undefined {
        const [first] = tokens;
        if (!first) return undefined;
        const key = isWordToken(first, this.types) ? first : undefined;
        if (key) this.leaveUnclosed(key);
        return this.put({ scope: this.scope, tokens, key, start: first.startOffset, end });
    }
    private put(fact: RawFact): RawFact {
        this.scope.facts.push(fact);
        this.facts.push(fact);
        return fact;
    }

    /** A fact that cannot stand here but could further out shows that a brace is missing; only while braces are out of balance. */
    private leaveUnclosed(key: Token): void {
        if (this.surplus <= 0 || beginsFact(this.scope.kind, key.image)) return;
        let levels = deepest;
        for (let scope: RawScope = this.scope; scope.parent && levels > 0; scope = scope.parent, levels--) {
            const header = scope.header?.key;
            if (!header || !beginsFact(scope.parent.kind, key.image) || (key.startColumn ?? 1) > (header.startColumn ?? 1)) continue;
            while (this.scope !== scope.parent && this.scope.parent) { this.scope = this.scope.parent; this.surplus--; }
            return;
        }
    }

    /** The block header on the line before a brace that stands alone. */
    private headerAbove(): RawFact | undefined {
        const last = this.scope.facts.at(-1);
        return last?.key && !last.body && isBlockKind(last.key.image) && blocksIn(this.scope.kind).includes(last.key.image) ? last : undefined;
    }

    private open(brace: Token, header: RawFact | undefined): void {
        const word = header?.key?.image ?? '';
        const body: RawScope = { kind: isBlockKind(word) ? word : '', parent: this.scope, header, open: brace, close: undefined, facts: [] };
        if (header) header.body = body;
        else this.put({ scope: this.scope, tokens: [brace], key: undefined, start: brace.startOffset, end: brace.startOffset, body });
        this.scope = body;
    }
    private close(brace: Token): void {
        if (!this.scope.parent) return;
        this.scope.close = brace;
        this.scope = this.scope.parent;
    }
}

/** The innermost scope an offset stands in: behind its opening and not behind its closing brace. */
export function scopeAt(file: RawScope, offset: number): RawScope {
    let scope = file;
    for (;;) {
        const inner: RawScope | undefined = scope.facts.find(({ body }) => body?.open && endOf(body.open) <= offset && offset <= scopeEnd(body))?.body;
        if (!inner) return scope;
        scope = inner;
    }
}
/** Where a scope without a closing brace ends: behind its last fact, blank lines included, up to what stands further out. */
function scopeEnd(scope: RawScope): number {
    if (scope.close) return scope.close.startOffset;
    for (let outer = scope; outer.parent; outer = outer.parent) {
        const header = outer.header;
        const next = header && outer.parent.facts[outer.parent.facts.indexOf(header) + 1];
        if (next) return next.start - 1;
        if (outer.parent.close) return outer.parent.close.startOffset;
    }
    return Infinity;
}
