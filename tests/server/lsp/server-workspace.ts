import { EmptyFileSystem, URI, type LangiumDocument } from 'langium';
import type { Position, Range, TextEdit } from 'vscode-languageserver';
import { createServerServices, type HotroomServerServices, type HotroomServerSharedServices, type ServerOptions } from '../../../server/src/services.js';
import { exampleText } from '../../support/workspace.js';

/** The server's services over documents in memory, without a connection. */
export class ServerWorkspace {
    readonly shared: HotroomServerSharedServices;
    readonly hotroom: HotroomServerServices;
    readonly logged: string[] = [];

    /** @param folder what is open; its files are in memory all the same */
    constructor(options: ServerOptions = {}, private readonly folder = 'memory:/jobs') {
        ({ shared: this.shared, hotroom: this.hotroom } = createServerServices(EmptyFileSystem, { log: line => { this.logged.push(line); }, ...options }));
        this.shared.workspace.Imports.roots = [URI.parse(folder)];
        void this.shared.workspace.ConfigurationProvider.initialized({});
    }

    uri(path: string): string { return `${this.folder}/${path}`; }

    async add(path: string, text: string): Promise<LangiumDocument> {
        const document = this.shared.workspace.LangiumDocumentFactory.fromString(text, URI.parse(this.uri(path)));
        this.shared.workspace.LangiumDocuments.addDocument(document);
        await this.build();
        return document;
    }
    async build(): Promise<void> {
        await this.shared.workspace.DocumentBuilder.build(this.shared.workspace.LangiumDocuments.all.toArray(), { validation: true });
    }
    /** The standard job and its two catalogues. */
    async addExamples(): Promise<LangiumDocument> {
        await this.add('catalogue/skerry.hotroom', exampleText('catalogue/skerry.hotroom'));
        await this.add('catalogue/heaters.hotroom', exampleText('catalogue/heaters.hotroom'));
        return this.add('birch-point.hotroom', exampleText('birch-point.hotroom'));
    }
}

/** The place right before `needle`, plus `shift` characters. */
export function placeOf(document: LangiumDocument, needle: string, shift = 0): Position {
    const offset = document.textDocument.getText().indexOf(needle);
    if (offset < 0) throw new Error(`The text has no ${needle}`);
    return document.textDocument.positionAt(offset + shift);
}
export const at = (document: LangiumDocument, needle: string, shift = 0): { textDocument: { uri: string }; position: Position } =>
    ({ textDocument: { uri: document.uri.toString() }, position: placeOf(document, needle, shift) });

export const textIn = (document: LangiumDocument, range: Range): string => document.textDocument.getText(range);

export function applyEdits(text: string, edits: readonly TextEdit[]): string {
    const lines = text.split('\n');
    const offset = ({ line, character }: Position): number => lines.slice(0, line).reduce((n, l) => n + l.length + 1, 0) + character;
    return [...edits].sort((a, b) => offset(b.range.start) - offset(a.range.start)).reduce((result, { range, newText }) => result.slice(0, offset(range.start)) + newText + result.slice(offset(range.end)), text);
}

/** Text without its cursor mark `<|>`, and where the mark stood. */
export function withCursor(marked: string): { readonly text: string; readonly offset: number } {
    const offset = marked.indexOf('<|>');
    if (offset < 0) throw new Error('The text has no cursor');
    return { text: marked.replace('<|>', ''), offset };
}
