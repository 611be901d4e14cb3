import { DocumentState, type LangiumDocument } from 'langium';
import { createServerRequestHandler } from 'langium/lsp';
import { DocumentDiagnosticReportKind, type Connection, type Diagnostic, type DocumentDiagnosticReport, type InitializeParams, type WorkspaceDiagnosticReport, type WorkspaceDocumentDiagnosticReport } from 'vscode-languageserver';
import type { ClientAbilities, HotroomServerSharedServices } from '../services.js';

/**
 * Some editors ask for diagnostics instead of waiting to be told. One that asks is not told as well, or it would show everything twice. An editor that
 * could ask and rather wants to be told of every file, open or not, says so when it starts: `initializationOptions: { "pushDiagnostics": true }`.
 */
export const wantsToAsk = ({ capabilities: { textDocument }, initializationOptions }: InitializeParams): boolean =>
    textDocument?.diagnostic !== undefined && (initializationOptions as { readonly pushDiagnostics?: unknown } | null | undefined)?.pushDiagnostics !== true;

/** What the server tells of itself to an editor that asks. */
export const diagnosticProvider = { identifier: 'hotroom', interFileDependencies: true, workspaceDiagnostics: true } as const;

/** Answers an editor that asks. To be called before anything is sent. */
export function answerDiagnosticRequests(connection: Connection, shared: HotroomServerSharedServices, client: ClientAbilities, log: (message: string) => void): void {
    const { DocumentBuilder, LangiumDocuments, TextDocuments } = shared.workspace;
    const push = connection.sendDiagnostics.bind(connection);
    // What is wrong with a file of settings is told in any case: nobody asks for that.
    connection.sendDiagnostics = async params => { if (!client.asksForDiagnostics || !params.uri.endsWith('.hotroom')) await push(params); };

    connection.languages.diagnostics.on(createServerRequestHandler(
        (_services, document, { previousResultId }): DocumentDiagnosticReport => reportOf(document, previousResultId), shared, DocumentState.Validated) as Parameters<Connection['languages']['diagnostics']['on']>[0]);
    connection.languages.diagnostics.onWorkspace(async ({ previousResultIds }, token): Promise<WorkspaceDiagnosticReport> => {
        await DocumentBuilder.waitUntil(DocumentState.Validated, token);
        const known = new Map(previousResultIds.map(({ uri, value }) => [uri, value]));
        const items = LangiumDocuments.all.map((document): WorkspaceDocumentDiagnosticReport => {
            const uri = document.uri.toString();
            const isOpen = TextDocuments.get(document.uri) !== undefined;
            return { ...reportOf(document, known.get(uri)), uri, version: isOpen ? document.textDocument.version : null };
        }).toArray();
        const gone = [...known.keys()].filter(uri => !items.some(item => item.uri === uri));
        return { items: [...items, ...gone.map((uri): WorkspaceDocumentDiagnosticReport => ({ kind: DocumentDiagnosticReportKind.Full, uri, version: null, items: [] }))] };
    });

    // The editor asks again after its own edits; what changed on disk or in another file it has to be told of.
    const built = new Map<string, number>();
    DocumentBuilder.onBuildPhase(DocumentState.Validated, documents => {
        let isElsewhere = false;
        for (const { uri, textDocument: { version } } of documents) {
            const key = uri.toString();
            if (TextDocuments.get(uri) === undefined) { built.delete(key); continue; }
            isElsewhere ||= built.get(key) === version;
            built.set(key, version);
        }
        if (isElsewhere && client.asksForDiagnostics && client.refreshesDiagnostics) Promise.resolve(connection.languages.diagnostics.refresh()).catch((error: unknown) => { log(`The editor did not refresh: ${String(error)}`); });
    });
}

function reportOf({ diagnostics = [] }: LangiumDocument, previous: string | undefined): { readonly kind: 'unchanged'; readonly resultId: string } | { readonly kind: 'full'; readonly resultId: string; readonly items: Diagnostic[] } {
    const resultId = markOf(JSON.stringify(diagnostics));
    return resultId === previous ? { kind: DocumentDiagnosticReportKind.Unchanged, resultId } : { kind: DocumentDiagnosticReportKind.Full, resultId, items: diagnostics };
}

/** A short mark that differs when a text differs: two sums over its characters, of which hardly ever both come out alike by chance. */
function markOf(text: string): string {
    let [a, b] = [0x811c9dc5, 0x1505];
    for (let i = 0; i < text.length; i++) {
        const code = text.charCodeAt(i);
        a = Math.imul(a ^ code, 0x01000193);
        b = Math.imul(b, 33) + code | 0;
    }
    return `${text.length}-${a >>> 0}-${b >>> 0}`;
}
