import { DocumentState } from 'langium';
import { createServerRequestHandler, startLanguageServer } from 'langium/lsp';
import type { Connection, SelectionRange, SelectionRangeParams } from 'vscode-languageserver';
import { isOperationCancelled } from 'langium';
import { LSPErrorCodes, ResponseError } from 'vscode-languageserver';
import type { HotroomServerServices, HotroomServerSharedServices } from '../services.js';
import { Commands } from './commands.js';
import { followDays } from './day-change.js';
import { selectionRanges } from './folding.js';
import { HotroomLanguageServer } from './language-server.js';
import { OpenFiles } from './open-files.js';
import { answerDiagnosticRequests } from './pull-diagnostics.js';

/** Answers requests over a connection: what Langium has handlers for, and the few it has not. */
export function startHotroomServer(connection: Connection, shared: HotroomServerSharedServices): void {
    const { LanguageServer } = shared.lsp;
    if (LanguageServer instanceof HotroomLanguageServer) answerDiagnosticRequests(connection, shared, LanguageServer.client, LanguageServer.log);
    // Features that read the analysis wait until it is there; what works on tokens waits for the text only.
    startLanguageServer(shared, {
        HoverProvider: DocumentState.Validated, InlayHintProvider: DocumentState.Validated, CodeLensProvider: DocumentState.Validated,
        Formatter: DocumentState.Parsed, DefinitionProvider: DocumentState.Linked,
    });
    connection.onSelectionRanges(createServerRequestHandler(
        (services, document, { positions }: SelectionRangeParams): SelectionRange[] => selectionRanges(services as unknown as HotroomServerServices, document, positions), shared, DocumentState.Parsed));
    connection.onInitialized(params => {
        shared.lsp.LanguageServer.initialized(params);
        const { DocumentUpdateHandler } = shared.lsp;
        if (DocumentUpdateHandler instanceof OpenFiles) {
            connection.workspace.onDidChangeWorkspaceFolders(({ added, removed }) => { void DocumentUpdateHandler.changeFolders(added, removed); });
        }
    });
    const endDays = followDays(shared);
    connection.onExit(endDays);
    const commands = shared.lsp.ExecuteCommandHandler;
    connection.onExecuteCommand(async ({ command, arguments: args }, token, progress) => {
        if (!(commands instanceof Commands)) return null;
        progress.begin(commands.titleOf(command), 0, undefined, true);
        try {
            return await commands.executeCommand(command, args ?? [], token, (message, percentage) => { if (percentage === undefined) progress.report(message); else progress.report(percentage, message); }) ?? null;
        } catch (error) {
            if (isOperationCancelled(error)) return new ResponseError(LSPErrorCodes.RequestCancelled, 'The request has been cancelled.');
            throw error;
        } finally {
            progress.done();
        }
    });
}
