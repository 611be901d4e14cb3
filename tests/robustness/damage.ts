import type { LangiumDocument } from 'langium';
import type { HotroomFile } from '../../language/src/model/job.js';
import type { Span } from '../../language/src/core/span.js';
import type { Block, Given } from '../../language/src/model/block.js';
import type { Analysis } from '../../language/src/analyze.js';
import { HouseCondition } from '../../language/src/model/house-condition.js';
import { forget } from '../../language/src/analyze.js';
import { HotroomLexer } from '../../language/src/syntax/lexer.js';
import { HotroomTerminals } from '../../language/src/syntax/generated/ast.js';
import { exampleText, TestWorkspace } from '../support/workspace.js';

/** One example file with everything it uses, in which the text of one file can be replaced again and again. */
export class DamageBench {
    private readonly workspace = new TestWorkspace();
    private document: LangiumDocument | undefined;

    private constructor(private readonly path: string) {}

    static async open(path: string, others: readonly string[]): Promise<DamageBench> {
        const bench = new DamageBench(path);
        for (const other of others) if (other !== path) bench.workspace.add(other, exampleText(other));
        await bench.workspace.build();
        return bench;
    }

    async analyze(text: string): Promise<Analysis> {
        const { LangiumDocuments, LangiumDocumentFactory, DocumentBuilder, IndexManager } = this.workspace.shared.workspace;
        if (this.document) { LangiumDocuments.deleteDocument(this.document.uri); IndexManager.remove(this.document.uri); forget(this.document); }
        this.document = LangiumDocumentFactory.fromString(text, this.workspace.uri(this.path));
        LangiumDocuments.addDocument(this.document);
        await DocumentBuilder.build([this.document]);
        return this.workspace.analyze(this.document);
    }

    /** Places of every token as written, comments and line ends left out. */
    tokens(text: string): { readonly start: number; readonly end: number }[] {
        const { Lexer: lexer } = this.workspace.hotroom.parser;
        if (!(lexer instanceof HotroomLexer)) throw new Error('Another lexer than ours');
        return lexer.raw(text).tokens.filter(token => !/^[\r\n]+$/.test(token.image)).map(token => ({ start: token.startOffset, end: token.startOffset + token.image.length }));
    }
}

/** One block as damage elsewhere has to leave it. */
export interface SteadyBlock { readonly spans: readonly { readonly start: number; readonly end: number }[]; readonly values: string; readonly mayGo: boolean; readonly ofSeries: boolean }
export const isHit = ({ spans, ofSeries }: SteadyBlock, start: number, end: number, all: Iterable<SteadyBlock>): boolean =>
    spans.some(span => span.start <= start && end <= span.end) || (ofSeries && ![...all].some(other => other.ofSeries && other.spans.some(span => span.start <= start && end <= span.end)));

/**
 * Every block of a file, by a key that damage elsewhere does not change, with its values as text. What is calculated hangs on the names it is calculated
 * from, wherever they stand, and is left out; so is what another file says. A block of a job made from a series is compared while other blocks of it
 * are damaged: the head of the series and the line of the job say what becomes of all of them.
 */
export function blocksOf(file: HotroomFile, text: string): Map<string, SteadyBlock> {
    const found = new Map<string, SteadyBlock>();
    const names = new Set([...text.matchAll(/^\s*(?:let|parameter)\s+([\w-]+)/gm)].map(([, name]) => name ?? ''));
    const isFixed = (written: string): boolean => !/[A-Za-z_]\.[A-Za-z_]|\w\(|\bif\b/.test(written.replace(/"[A-Za-z][^"]*"/g, '')) && !(written.match(/[A-Za-z_][\w-]*/g) ?? []).some(word => names.has(word));
    const textOf = ({ uri, start, end }: Span): string | undefined => uri === file.uri ? text.slice(start, end) : undefined;
    const visit = (block: Block, parent: string, ofSeries: boolean): void => {
        const name = `${parent}/${block.kind} ${block.name?.value ?? ''}`;
        let key = name;
        for (let n = 2; found.has(key); n++) key = `${name} ${n}`;
        const spans = block.span.uri === file.uri ? [{ start: block.span.start, end: block.span.end }] : [];
        const values = Object.entries(block.values as Readonly<Record<string, Given<unknown> | undefined>>).flatMap(([property, given]) => given && isFixed(textOf(given.span) ?? '.(') ? [[property, plain(given.value)]] : []);
        const walls = block.walls.filter(wall => isFixed(textOf(wall.span) ?? '.(')).map(wall => wall.value);
        found.set(key, { spans, values: JSON.stringify([walls, values.sort(([a], [b]) => String(a) < String(b) ? -1 : 1)]), mayGo: block.written.has('when') || block.span.uri !== file.uri, ofSeries: ofSeries && block.kind !== 'job' });
        for (const child of block.children) visit(child, block.kind, ofSeries);
    };
    for (const block of [...file.catalogues, ...file.jobs.map(job => job.block)]) if (!(block.kind === 'job' && block.base)) visit(block, '', false); else for (const child of block.children) visit(child, block.kind, true);
    return found;
}

function plain(value: unknown): unknown {
    if (Array.isArray(value)) return value.map(plain);
    if (typeof value !== 'object' || value === null) return value;
    if (value instanceof HouseCondition) return value.text;
    if ('span' in value && 'name' in value) return (value as { name: string }).name;
    return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, plain(inner)]));
}

/** Names of the grammar that a message must never show. */
export const grammarNames: readonly string[] = [...Object.keys(HotroomTerminals), 'Fact', 'Phrase', 'Expr', 'Atom', 'Binary', 'Literal', 'Negative', 'token', 'Token', 'undefined', 'NaN', 'null', '[object', 'EOF'];
export const showsGrammar = (message: string): boolean => grammarNames.some(name => new RegExp(`(?<![A-Za-z_])${name.replace('[', '\\[')}(?![A-Za-z_])`).test(message));
