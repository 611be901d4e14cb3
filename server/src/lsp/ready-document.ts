import { DocumentState, URI, type Cancellation, type LangiumDocument } from 'langium';
import { LSPErrorCodes, ResponseError } from 'vscode-languageserver';
import type { Span } from '../../../language/src/core/span.js';
import type { HotroomServerServices, HotroomServerSharedServices } from '../services.js';
import type { Places } from '../to-lsp.js';
import { OpenFiles } from './open-files.js';
import { relativePath } from './relative-path.js';

export const refused = (message: string): ResponseError => new ResponseError(LSPErrorCodes.RequestFailed, message);

/**
 * The document in its state after everything typed so far; a file nobody has opened is read from disk.
 * @throws when it is not open and cannot be read
 */
export async function readyDocument(services: HotroomServerSharedServices, uri: URI, token: Cancellation.CancellationToken): Promise<LangiumDocument> {
    const { LangiumDocuments, DocumentBuilder, WorkspaceManager } = services.workspace;
    await WorkspaceManager.ready;
    const { DocumentUpdateHandler } = services.lsp;
    if (!LangiumDocuments.hasDocument(uri) && DocumentUpdateHandler instanceof OpenFiles) await DocumentUpdateHandler.refresh([uri], []);
    const document = LangiumDocuments.getDocument(uri);
    if (!document) throw refused(`The file ${uri.path} is not open and cannot be read.`);
    await DocumentBuilder.waitUntil(DocumentState.Validated, uri, token);
    return document;
}

export const servicesOf = (services: HotroomServerSharedServices, document: LangiumDocument): HotroomServerServices =>
    services.ServiceRegistry.getServices(document.uri) as unknown as HotroomServerServices;

export const fileNameOf = (uri: URI): string => uri.path.split('/').at(-1) ?? uri.path;

/** Places as a person at a document names them: `birch-point.hotroom:42`, other files by their path from there. */
export const shownFrom = (document: LangiumDocument, places: Places) => (span: Span): string => {
    const { line } = places.range(span).start;
    return `${span.uri === document.uri.toString() ? fileNameOf(document.uri) : relativePath(document.uri, URI.parse(span.uri))}:${line + 1}`;
};
