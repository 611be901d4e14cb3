/** Asks the language server for a cut list: progress in the status bar, cancelled there or by the caller, ended by a time limit. */
import * as vscode from 'vscode';
import { ExecuteCommandRequest, LSPErrorCodes, ResponseError, WorkDoneProgress, type LanguageClient } from 'vscode-languageclient/node';
import { tablesDocumentSchema, type Subject, type TablesDocument } from './tables-document.js';

const serverCommand = 'hotroom.server.cutList';

/** A stock plan is bounded to a few seconds by the server; past this something is wrong and waiting longer helps no one. */
const timeLimitMs = 60_000;

export type CutListAnswer =
    | { readonly kind: 'document'; readonly document: TablesDocument }
    | { readonly kind: 'cancelled' }
    | { readonly kind: 'failed'; readonly message: string };

/** The requests under way, shown as one status bar item that cancels them when it is pressed. */
export class CutListRequests implements vscode.Disposable {
    readonly #client: LanguageClient;
    readonly #log: vscode.LogOutputChannel;
    readonly #item: vscode.StatusBarItem;
    readonly #running = new Set<vscode.CancellationTokenSource>();
    #serial = 0;

    constructor(client: LanguageClient, log: vscode.LogOutputChannel) {
        this.#client = client;
        this.#log = log;
        this.#item = vscode.window.createStatusBarItem('hotroom.cutListProgress', vscode.StatusBarAlignment.Left);
        this.#item.name = 'Hotroom Cut List Progress';
        this.#item.command = 'hotroom.cancelCutList';
    }

    /**
     * @param subject the document, and the job when it has several.
     * @param token cancels this request only.
     * @param onProgress called with what the server says it is doing.
     * @returns the checked answer; never throws for trouble on the server's side.
     */
    async ask(subject: Subject, token: vscode.CancellationToken, onProgress?: (message: string) => void): Promise<CutListAnswer> {
        const source = new vscode.CancellationTokenSource();
        const follow = token.onCancellationRequested(() => source.cancel());
        if (token.isCancellationRequested) source.cancel();
        const limit = { reached: false };
        const timer = setTimeout(() => {
            limit.reached = true;
            source.cancel();
        }, timeLimitMs);
        const workDoneToken = `hotroom-cut-list-${++this.#serial}`;
        const progress = this.#client.onProgress(WorkDoneProgress.type, workDoneToken, value => {
            if (value.kind === 'end') return;
            const percentage = value.percentage === undefined ? '' : ` ${Math.round(value.percentage)} %`;
            const message = `${value.message ?? 'Working out the cut list'}${percentage}`;
            this.#show(message);
            onProgress?.(message);
        });
        this.#running.add(source);
        this.#show('Working out the cut list');
        try {
            // A page restored with its window can come before its file: the server should hear of the file first.
            await vscode.workspace.openTextDocument(vscode.Uri.parse(subject.uri, true));
            const raw: unknown = await this.#client.sendRequest(
                ExecuteCommandRequest.type,
                { command: serverCommand, arguments: [subject], workDoneToken },
                source.token,
            );
            if (source.token.isCancellationRequested) return this.#stopped(limit.reached);
            return this.#checked(raw);
        } catch (error) {
            if (source.token.isCancellationRequested || isCancellation(error)) return this.#stopped(limit.reached);
            const message = error instanceof Error ? error.message : String(error);
            this.#log.error(`The cut list of ${subject.uri} could not be made: ${message}`);
            return { kind: 'failed', message };
        } finally {
            clearTimeout(timer);
            follow.dispose();
            progress.dispose();
            source.dispose();
            this.#running.delete(source);
            if (this.#running.size === 0) this.#hide();
        }
    }

    cancelAll(): void {
        for (const source of this.#running) source.cancel();
    }

    dispose(): void {
        this.cancelAll();
        this.#item.dispose();
    }

    #checked(raw: unknown): CutListAnswer {
        if (raw === null || raw === undefined) return { kind: 'failed', message: 'This file has no job to make a cut list of.' };
        const parsed = tablesDocumentSchema.safeParse(raw);
        if (parsed.success) return { kind: 'document', document: parsed.data };
        const where = parsed.error.issues.slice(0, 3).map(issue => `${issue.path.join('.')}: ${issue.message}`).join('; ');
        this.#log.error(`The language server sent a cut list this extension does not understand: ${where}`);
        return { kind: 'failed', message: 'The language server sent a cut list this extension does not understand. The log says which part.' };
    }

    #stopped(timeLimitReached: boolean): CutListAnswer {
        if (!timeLimitReached) return { kind: 'cancelled' };
        this.#log.error(`A cut list took longer than ${timeLimitMs / 1000} s and was stopped.`);
        return { kind: 'failed', message: `Stopped: the cut list took longer than ${timeLimitMs / 1000} seconds.` };
    }

    #show(message: string): void {
        this.#item.text = `$(loading~spin) ${message}`;
        this.#item.tooltip = 'Cancel the cut list';
        this.#item.accessibilityInformation = { label: `${message}. Press to cancel.`, role: 'button' };
        this.#item.show();
        void vscode.commands.executeCommand('setContext', 'hotroom.cutListRunning', true);
    }

    #hide(): void {
        this.#item.hide();
        void vscode.commands.executeCommand('setContext', 'hotroom.cutListRunning', false);
    }
}

function isCancellation(error: unknown): boolean {
    if (error instanceof vscode.CancellationError) return true;
    const codes: readonly number[] = [LSPErrorCodes.RequestCancelled, LSPErrorCodes.ServerCancelled, LSPErrorCodes.ContentModified];
    return error instanceof ResponseError && codes.includes(error.code);
}
