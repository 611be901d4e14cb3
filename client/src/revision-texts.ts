/** Files as they were in a revision: read-only, from the language server, which alone asks git. */
import type * as vscode from 'vscode';
import { ExecuteCommandRequest, type LanguageClient } from 'vscode-languageclient/node';

export const revisionScheme = 'hotroom-revision';

export class RevisionTexts implements vscode.TextDocumentContentProvider {
    readonly #client: LanguageClient;

    constructor(client: LanguageClient) {
        this.#client = client;
    }

    async provideTextDocumentContent(uri: vscode.Uri, token: vscode.CancellationToken): Promise<string> {
        // A window that comes back with such a tab asks before the server has started.
        await this.#client.start();
        const text: unknown = await this.#client.sendRequest(ExecuteCommandRequest.type, { command: 'hotroom.server.revisionText', arguments: [uri.toString()] }, token);
        if (typeof text !== 'string') throw new Error('The revision has no such file.');
        return text;
    }
}
