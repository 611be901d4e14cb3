import type { LangiumDocument } from 'langium';
import type { HotroomFile } from '../../language/src/model/job.js';
import type { Block } from '../../language/src/model/block.js';
import type { Analysis } from '../../language/src/analyze.js';
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

/** Every block of a file that has a name or a kind of its own, by a key that damage elsewhere does not change, with its values as text. */
export function blocksOf(file: HotroomFile): Map<string, { readonly start: number; readonly end: number; readonly values: string }> {
    const found = new Map<string, { start: number; end: number; values: string }>();
    const visit = (block: Block, parent: string): void => {
        const name = `${parent}/${block.kind} ${block.name?.value ?? ''} ${block.walls.map(wall => wall.value).join()}`;
        let key = name;
        for (let n = 2; found.has(key); n++) key = `${name} ${n}`;
        found.set(key, { start: block.span.start, end: block.span.end, values: plainValues(block) });
        for (const child of block.children) visit(child, block.kind);
    };
    for (const block of [...file.catalogues, ...file.jobs.map(job => job.block)]) visit(block, '');
    return found;
}

/** The facts of one block without their places; a reference by its name, because what it leads to is a block of its own. */
function plainValues(block: Block): string {
    const values = Object.entries(block.values as Readonly<Record<string, { readonly value: unknown }>>).map(([key, { value }]) => [key, plain(value)]);
    return JSON.stringify(values.sort(([a], [b]) => String(a) < String(b) ? -1 : 1));
}
function plain(value: unknown): unknown {
    if (Array.isArray(value)) return value.map(plain);
    if (typeof value !== 'object' || value === null) return value;
    if ('span' in value && 'name' in value) return (value as { name: string }).name;
    return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, plain(inner)]));
}

/** Names of the grammar that a message must never show. */
export const grammarNames: readonly string[] = [...Object.keys(HotroomTerminals), 'Fact', 'Phrase', 'Expr', 'Atom', 'Binary', 'Literal', 'Negative', 'token', 'Token', 'undefined', 'NaN', 'null', '[object', 'EOF'];
export const showsGrammar = (message: string): boolean => grammarNames.some(name => new RegExp(`(?<![A-Za-z_])${name.replace('[', '\\[')}(?![A-Za-z_])`).test(message));
