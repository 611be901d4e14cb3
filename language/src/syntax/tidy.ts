import { beginsFact, definitionOf } from '../vocabulary/index.js';
import { joinFirstWord, plainHeader, withItsKind } from './header-habits.js';
import { overlongFact } from './limits.js';
import { isClosedTooEarly, missingBraceAt, missingHeader } from './missing-header.js';
import type { SyntaxProblem } from './problem.js';
import { headerBefore, readSegment, type Segment } from './segments.js';
import { kindToldByBody } from './told-by-body.js';
import { tidyValues } from './tidy-values.js';
import { endOf, firstAtOrAfter, insertedToken, isWordLike, startOf, withImage, withType, type Token, type TokenTypes } from './token-list.js';
import { secondFactAt } from './two-facts.js';

/** A block that is open while the list is read. */
interface Open {
    /** Its key word, or `file` at the bottom. */
    readonly kind: string;
    readonly key: Token | undefined;
    readonly header: readonly Token[];
    /** A brace that opened nothing; its partner is left out with it. */
    readonly isDropped: boolean;
}

/**
 * Third pass, the structure of the file: brings the tokens into the one shape the grammar knows, so that parsing cannot fail and a half-typed
 * line costs that line only. Missing braces are found by the vocabulary (a fact that cannot stand here but could one block further out) and by
 * indentation, but only while the braces of the file are out of balance: a badly indented sound file is never touched.
 */
export function tidyStructure(tokens: readonly Token[], damagedAt: readonly number[], types: TokenTypes): { readonly tokens: Token[]; readonly problems: SyntaxProblem[]; readonly damaged: ReadonlySet<number>; readonly overlong?: SyntaxProblem } {
    return new Structure(tokens, damagedAt, types).read();
}

class Structure {
    private readonly out: Token[] = [];
    private readonly problems: SyntaxProblem[] = [];
    private readonly note = (problem: SyntaxProblem): void => { this.problems.push(problem); };
    private readonly stack: Open[] = [{ kind: 'file', key: undefined, header: [], isDropped: false }];
    /** Opening braces without a partner, when positive; closing ones, when negative. */
    private surplus: number;

    constructor(private readonly tokens: readonly Token[], private readonly damagedAt: readonly number[], private readonly types: TokenTypes) {
        this.surplus = tokens.reduce((n, t) => n + (t.tokenType === types.openBrace ? 1 : t.tokenType === types.closeBrace ? -1 : 0), 0);
    }

    read(): { tokens: Token[]; problems: SyntaxProblem[]; damaged: ReadonlySet<number>; overlong?: SyntaxProblem } {
        let at = 0;
        let last: Segment | undefined;
        while (at < this.tokens.length) {
            const { segment, next } = readSegment(this.tokens, at, this.types, this.stack.map(open => open.kind));
            const overlong = overlongFact(segment.tokens);
            if (overlong) return { tokens: [], problems: [], damaged: this.damaged, overlong };
            const passed = this.passHeaderless(segment);
            if (passed === undefined) this.place(segment);
            at = passed ?? next;
            if (segment.tokens.length > 0 || segment.end === 'open') last = segment;
        }
        this.closeAtEnd(last);
        for (const problem of this.problems) for (const key of problem.damages) this.damaged.add(key);
        return { tokens: this.out, problems: this.problems, damaged: this.damaged };
    }

    private get top(): Open { return this.stack.at(-1) ?? { kind: 'file', key: undefined, header: [], isDropped: false }; }
    /** The block the next fact stands in; dropped braces do not count. */
    private get context(): string { return this.stack.findLast(open => !open.isDropped)?.kind ?? 'file'; }

    /** Opens a block whose header is missing, and passes over one that could be several kinds; only while closing braces are too many. */
    private passHeaderless({ tokens }: Segment): number | undefined {
        const [first] = tokens;
        if (this.surplus >= 0 || !first) return undefined;
        if (this.reopen(first)) return undefined;
        const missing = missingHeader(this.tokens, this.indexOf(first), this.context, this.top.key?.startOffset ?? -1, this.types);
        if (!missing) return undefined;
        const { problem, key, passTo } = missing;
        this.surplus++;
        this.problems.push(problem);
        if (key) {
            this.emitFact([key]);
            this.out.push(insertedToken(this.types.openBrace, key));
            this.push({ kind: key.image, key, header: [key], isDropped: false });
        }
        return passTo;
    }

    /** A block that was closed a moment ago, when what follows belongs in it: the brace that closed it is one too many. */
    private reopen(first: Token): boolean {
        const { lastClosed } = this;
        if (!lastClosed || this.out.at(-1) !== lastClosed.brace) return false;
        const { open, brace } = lastClosed;
        if (!isClosedTooEarly(this.tokens, this.indexAfter(open.header.at(-1)), this.indexOf(first), open.kind, this.context, this.types)) return false;
        this.surplus++;
        this.out.pop();
        this.push(open);
        this.report('brace-without-partner', brace, [], `This } closes ${open.header.slice(0, 2).map(t => t.image).join(' ')} too early: ‘${first.image}’ and what follows belong in it. Remove it.`,
            { title: 'Remove it', edits: [{ start: brace.startOffset, end: endOf(brace), newText: '' }] });
        return true;
    }
    private lastClosed: { readonly open: Open; readonly brace: Token } | undefined;

    private place(written: Segment): void {
        const segment = { ...written, tokens: joinFirstWord(written.tokens, this.context, this.types, this.note) };
        const pieces = this.split(segment);
        pieces.forEach((piece, i) => { this.placeFact(piece, i === pieces.length - 1 ? segment : { tokens: piece, end: 'line', endToken: segment.endToken }); });
        if (pieces.length === 0 && segment.end === 'open') this.openWithoutHeader(segment.endToken);
        if (segment.end === 'close') this.close(segment.endToken, { isAtLineStart: segment.tokens.length === 0 });
    }

    /** Two facts on one line, because the line end between them is gone, become two again. */
    private split(segment: Segment): (readonly Token[])[] {
        const { tokens } = segment;
        const [key] = tokens;
        if (!key) return [];
        const at = secondFactAt(tokens, this.contextFor(key), this.types);
        const [before, token] = at === undefined ? [] : [tokens[at - 1], tokens[at]];
        if (!before || !token) return [tokens];
        this.report('two-facts-on-one-line', token, [],
            `‘${token.image}’ begins a fact of its own. Put it on its own line or after a semicolon.`,
            { title: 'Put a semicolon between the facts', edits: [{ start: endOf(before), end: token.startOffset, newText: '; ' }] });
        return [tokens.slice(0, at), ...this.split({ ...segment, tokens: tokens.slice(at) })];
    }

    /** The block `key` will stand in once blocks that lack their brace are closed; used to look ahead, changes nothing. */
    private contextFor(key: Token): string {
        return this.stack[this.levelFor(key)]?.kind ?? 'file';
    }

    private placeFact(tokens: readonly Token[], segment: Segment): void {
        const key = tokens[0];
        if (!key) return;
        if (!this.isWord(key)) {
            this.closeForgotten(key);
            this.report('line-without-a-word', key, [this.top.key?.startOffset ?? -1],
                `A line begins with a word that says what it is; ‘${key.image}’ stands there. Add the word, such as top 37".`);
            if (segment.end === 'open') this.push({ kind: '', key, header: tokens, isDropped: true });
            return;
        }
        this.closeForgotten(key);
        if (segment.end === 'open') {
            const mended = withItsKind(tokens, this.tokens, this.indexAfter(tokens.at(-1)), this.context, this.types);
            if (mended) { this.note(mended.problem); this.openBlock(mended.header, segment.endToken); return; }
        }
        const braceAt = segment.end === 'open' || this.surplus >= 0 ? -1 : missingBraceAt(tokens, segment.end, this.context, this.types);
        if (braceAt > 0) { this.openMissing(tokens, braceAt, segment); return; }
        if (segment.end === 'open') this.openBlock(tokens, segment.endToken);
        else this.emitFact(key.image === 'job' ? plainHeader(tokens, this.types, this.note) : tokens);
    }

    private openBlock(header: readonly Token[], brace: Token | undefined): void {
        const [key] = header;
        if (!key || !brace) return;
        this.emitFact(plainHeader(header, this.types, this.note));
        this.out.push(brace);
        this.push({ kind: key.image, key, header, isDropped: false });
    }

    private emitFact(tokens: readonly Token[]): void {
        const [key, ...rest] = tokens;
        if (!key) return;
        const last = this.out.at(-1);
        if (last && last.tokenType !== this.types.openBrace && last.tokenType !== this.types.lineEnd) this.out.push(insertedToken(this.types.lineEnd, last));
        this.out.push(withType(key, this.types.word));
        this.out.push(...tidyValues(key, rest, this.types, problem => this.problems.push({ ...problem, damages: [key.startOffset] })));
        if (this.damagedAt.length > 0 && this.holdsDamage(tokens, key)) this.damage(key.startOffset);
    }

    /** Whether one of the fact's own words is damaged, or something after them that belongs to no later word. */
    private holdsDamage(tokens: readonly Token[], key: Token): boolean {
        const end = endOf(tokens.at(-1) ?? key);
        const following = this.tokens[firstAtOrAfter(this.tokens, end, startOf)]?.startOffset ?? Infinity;
        return (this.damagedAt[firstAtOrAfter(this.damagedAt, key.startOffset, offset => offset)] ?? Infinity) < following;
    }

    private readonly damaged = new Set<number>();
    private damage(offset: number): void { this.damaged.add(offset); }

    private openMissing(tokens: readonly Token[], braceAt: number, segment: Segment): void {
        const header = tokens.slice(0, braceAt);
        const key = header[0];
        const last = header.at(-1);
        if (!key || !last) return;
        this.surplus++;
        this.report('brace-missing', key, [], `The facts of this ${key.image} stand in braces. Put { at the end of ‘${header.map(t => t.image).join(' ')}’.`,
            { title: 'Add the brace', edits: [{ start: endOf(last), end: endOf(last), newText: ' {' }] }, endOf(last));
        this.emitFact(header);
        this.out.push(insertedToken(this.types.openBrace, this.out.at(-1) ?? last));
        this.push({ kind: key.image, key, header, isDropped: false });
        if (braceAt < tokens.length) this.placeFact(tokens.slice(braceAt), { ...segment, tokens: tokens.slice(braceAt) });
    }

    /** Index in the stack of the block the fact belongs to; lower than the top when blocks above it were not closed. */
    private levelFor(key: Token): number {
        const top = this.stack.length - 1;
        if (this.surplus <= 0 || beginsFact(this.context, key.image) && !this.isOutdented(key)) return top;
        for (let level = top - 1; level >= 0; level--) {
            const open = this.stack[level];
            const inner = this.stack[level + 1];
            if (open && inner?.key && !open.isDropped && beginsFact(open.kind, key.image) && columnOf(key) <= columnOf(inner.key) && lineOf(inner.key) < lineOf(key)) return level;
        }
        return top;
    }
    private isOutdented(key: Token): boolean {
        const { key: header } = this.top;
        return header !== undefined && lineOf(header) < lineOf(key) && columnOf(key) <= columnOf(header) && this.isFirstOnLine(header);
    }
    private indexOf(token: Token): number { return firstAtOrAfter(this.tokens, token.startOffset, startOf); }
    private indexAfter(token: Token | undefined): number { return token ? firstAtOrAfter(this.tokens, endOf(token), startOf) : 0; }
    private isFirstOnLine(token: Token): boolean {
        const before = this.tokens[this.indexOf(token) - 1];
        return before === undefined || before.tokenType === this.types.lineEnd;
    }

    private closeForgotten(key: Token): void {
        if (this.surplus <= 0) return;
        const level = this.levelFor(key);
        while (this.stack.length - 1 > level && this.surplus > 0) this.closeMissing();
    }

    private closeMissing(): void {
        const open = this.stack.pop();
        if (!open?.key || open.isDropped) return;
        this.surplus--;
        const last = this.out.at(-1) ?? open.key;
        this.out.push(insertedToken(this.types.closeBrace, last));
        const header = open.header.slice(0, 2).map(t => t.image).join(' ');
        this.report('block-not-closed', open.key, [open.key.startOffset], `‘${header}’ is not closed. Put } after its last fact.`,
            { title: 'Close the block', edits: [{ start: endOf(last), end: endOf(last), newText: '\n' + ' '.repeat(Math.max(0, columnOf(open.key) - 1)) + '}' }] }, endOf(open.header.at(-1) ?? open.key));
    }

    private close(brace: Token | undefined, { isAtLineStart }: { isAtLineStart: boolean }): void {
        if (!brace) return;
        if (this.surplus > 0 && isAtLineStart && this.isFirstOnLine(brace)) {
            const partner = this.stack.findLastIndex(open => open.key !== undefined && columnOf(open.key) === columnOf(brace) && this.isFirstOnLine(open.key));
            if (partner > 0) while (this.stack.length - 1 > partner && this.surplus > 0) this.closeMissing();
        }
        if (this.stack.length === 1) {
            this.surplus++;
            this.report('brace-without-partner', brace, [], 'This } closes nothing. Remove it.', { title: 'Remove it', edits: [{ start: brace.startOffset, end: endOf(brace), newText: '' }] });
            return;
        }
        const open = this.stack.pop();
        if (!open || open.isDropped) return;
        this.lastClosed = { open, brace };
        // A brace does not stand after a line end.
        if (this.out.at(-1)?.tokenType === this.types.lineEnd) this.out.pop();
        this.out.push(brace);
    }

    private openWithoutHeader(brace: Token | undefined): void {
        if (!brace) return;
        const header = headerBefore(this.tokens, this.indexOf(brace), this.context, this.types);
        if (header) {
            this.report('brace-on-its-own-line', brace, [], `The { of a block stands on the line of its header.`,
                { title: 'Move { to the header', edits: [{ start: endOf(header.at(-1) ?? brace), end: endOf(brace), newText: ' {' }] });
            this.out.push(brace);
            this.push({ kind: header[0]?.image ?? '', key: header[0], header, isDropped: false });
            return;
        }
        const kind = kindToldByBody(this.tokens, this.indexOf(brace), this.context, this.types);
        if (kind && definitionOf(kind).name !== 'required') {
            this.report('kind-missing', brace, [], `This block does not say what it is. Put ${kind} before {.`, { title: `Put ${kind} before it`, edits: [{ start: brace.startOffset, end: brace.startOffset, newText: `${kind} ` }] });
            this.openBlock([withImage(brace, this.types.word, kind)], brace);
            return;
        }
        this.report('brace-without-partner', brace, [this.top.key?.startOffset ?? -1], 'This { has no header. Write what the block is before it, such as bench upper on back {.');
        this.push({ kind: '', key: brace, header: [], isDropped: true });
    }

    private closeAtEnd(last: Segment | undefined): void {
        const open = this.stack.filter(block => block.key !== undefined && !block.isDropped);
        const innermost = open.at(-1);
        if (innermost?.key) {
            const lastKey = last?.tokens[0];
            const isCutShort = last !== undefined && (last.end === 'file' || last.end === 'open');
            if (isCutShort && lastKey) this.dropProblemsOf(last);
            const header = innermost.header.slice(0, 2).map(t => t.image).join(' ');
            const end = this.tokens.at(-1) ?? innermost.key;
            this.report('block-not-closed', innermost.key,
                [...open.flatMap(block => block.key ? [block.key.startOffset] : []), ...(isCutShort && lastKey ? [lastKey.startOffset] : [])],
                open.length > 1 ? `The file ends inside ‘${header}’. ${open.length} blocks lack their }.` : `The file ends inside ‘${header}’. Put } after its last fact.`,
                { title: 'Close what is open', edits: [{ start: endOf(end), end: endOf(end), newText: open.toReversed().map(block => '\n' + ' '.repeat(Math.max(0, columnOf(block.key ?? end) - 1)) + '}').join('') }] },
                endOf(innermost.header.at(-1) ?? innermost.key));
        }
        while (this.stack.length > 1) {
            const block = this.stack.pop();
            if (block?.isDropped) continue;
            if (this.out.at(-1)?.tokenType === this.types.lineEnd) this.out.pop();
            const after = this.out.at(-1);
            if (after) this.out.push(insertedToken(this.types.closeBrace, after));
        }
        if (this.out.at(-1)?.tokenType === this.types.lineEnd) this.out.pop();
    }

    /** The file ends in the middle of a fact: that is one cause, and the open block is its one message. */
    private dropProblemsOf(segment: Segment): void {
        const start = segment.tokens[0]?.startOffset ?? 0;
        for (let i = this.problems.length - 1; i >= 0; i--) if ((this.problems[i]?.start ?? 0) >= start) this.problems.splice(i, 1);
    }

    private push(open: Open): void { this.stack.push(open); }
    private isWord(token: Token): boolean { return isWordLike(token, this.types); }

    private report(id: SyntaxProblem['id'], token: Token, damages: readonly number[], message: string, fix?: SyntaxProblem['fix'], end = Math.max(endOf(token), token.startOffset + 1)): void {
        this.problems.push({ id, message, start: token.startOffset, end, damages, ...(fix && { fix }) });
    }
}

const columnOf = (token: Token): number => token.startColumn ?? 1;
const lineOf = (token: Token): number => token.startLine ?? 1;
