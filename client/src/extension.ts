/** Starts the language server and registers what only an editor can do. Everything it shows is computed by the server. */
import * as vscode from 'vscode';
import { RevealOutputChannelOn, TransportKind, type NodeModule } from 'vscode-languageclient/node';
import { registerCommands } from './commands.js';
import { documentSelector } from './document-selector.js';
import { pageKinds } from './page-kinds.js';
import { ReviewPanels, reviewViewType } from './review-panel.js';
import { RevisionTexts, revisionScheme } from './revision-texts.js';
import { HotroomClient } from './server-client.js';
import { showServerStatus } from './server-status.js';
import { TablesPanels } from './tables-panel.js';
import { TablesRequests } from './tables-request.js';

let client: HotroomClient | undefined;

export async function activate(context: vscode.ExtensionContext): Promise<void> {
    const log = vscode.window.createOutputChannel('Hotroom', { log: true });
    const server: NodeModule = {
        module: vscode.Uri.joinPath(context.extensionUri, 'dist', 'server.cjs').fsPath,
        transport: TransportKind.ipc,
    };
    const started = new HotroomClient('hotroom', 'Hotroom', { run: server, debug: server }, {
        // The server tells of closed files too, without being asked every other second.
        initializationOptions: { pushDiagnostics: true, asksAgain: true },
        documentSelector: documentSelector(),
        outputChannel: log,
        // A log that opens itself takes the keyboard from someone typing; trouble is told by the status item instead.
        revealOutputChannelOn: RevealOutputChannelOn.Never,
        markdown: { isTrusted: { enabledCommands: ['hotroom.showCutList'] }, supportHtml: false },
    });
    client = started;
    const requests = new TablesRequests(started, log);
    const panels = new TablesPanels(context.extensionUri, requests);
    const reviews = new ReviewPanels(context.extensionUri, started);
    // The log is in no list of things to dispose of: requests that end with the window still write to it, and writing to
    // a closed channel is an error of its own. It ends with the extension host.
    context.subscriptions.push(
        requests,
        panels,
        reviews,
        registerCommands({ client: started, log, requests, panels, reviews }),
        vscode.window.registerWebviewPanelSerializer(reviewViewType, reviews),
        showServerStatus(started),
        ...pageKinds.map(({ viewType }) => vscode.window.registerWebviewPanelSerializer(viewType, panels)),
        vscode.workspace.registerTextDocumentContentProvider(revisionScheme, new RevisionTexts(started)),
    );
    await vscode.commands.executeCommand('setContext', 'hotroom.active', true);
    try {
        await started.start();
    } catch (error) {
        log.error(error instanceof Error ? error : String(error));
        const showLog = 'Show Log';
        void vscode.window.showErrorMessage('The Hotroom language server did not start.', showLog).then(answer => {
            if (answer === showLog) log.show();
        });
    }
}

export async function deactivate(): Promise<void> {
    await client?.dispose();
    client = undefined;
}
