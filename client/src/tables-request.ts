/** Asks the language server for a document of tables: progress in the status bar, cancelled there or by the caller, ended by a time limit. */
import * as vscode from 'vscode';
import { ExecuteCommandRequest, LSPErrorCodes, ResponseError, WorkDoneProgress, type LanguageClient } from 'vscode-languageclient/node';
import type { Asked } from './page-kinds.js';
import { tablesDocumentSchema, type TablesDocument } from './tables-document.js';

/** A stock plan is bounded to a few seconds by the server; past this something is wrong and waiting longer helps no one. */
const timeLimitMs = 60_000;

export type TablesAnswer =
    | { readonly kind: 'document'; readonly document: TablesDocument }
    | { readonly kind: 'cancelled' }
    /** What is asked for cannot be had as things are: no repository, no such revision. */
    | { readonly kind: 'refused'; readonly message: string }
    | { readonly kind: 'failed'; readonly message: string };

/** The requests under way, shown as one status bar item that cancels them when it is pressed. */
export class TablesRequests implements vscode.Disposable {
    readonly #client: LanguageClient;
    readonly #log: vscode.LogOutputChannel;
    readonly #item: vscode.StatusBarItem;
    readonly #running = new Set<vscode.CancellationTokenSource>();
    #serial = 0;

    constructor(client: LanguageClient, log: vscode.LogOutputChannel) {
        this.#client = client;
        this.#log = log;
        this.#item = vscode.window.createStatusBarItem('hotroom.progress', vscode.StatusBarAlignment.Left);
        this.#item.name = 'Hotroom Progress';
        this.#item.command = 'hotroom.cancel';
    }

    /**
     * @param asked what is wanted, and of which document and job.
     * @param token cancels this request only.
     * @param onProgress called with what the server says it is doing.
     * @returns the checked answer; never throws for trouble on the server's side.
     */
    async ask({ kind, subject }: Asked, token: vscode.CancellationToken, onProgress?: (message: string) => void): Promise<TablesAnswer> {
        const source = new vscode.CancellationTokenSource();
        const follow = token.onCancellationRequested(() => source.cancel());
        if (token.isCancellationRequested) source.cancel();
        const limit = { reached: false };
        const timer = setTimeout(() => {
            limit.reached = true;
            source.cancel();
        }, timeLimitMs);
        const workDoneToken = `hotroom-tables-${++this.#serial}`;
        const progress = this.#client.onProgress(WorkDoneProgress.type, workDoneToken, value => {
            if (value.kind === 'end') return;
            const percentage = value.percentage === undefined ? '' : ` ${Math.round(value.percentage)} %`;
            const message = `${value.message ?? kind.working}${percentage}`;
            this.#show(message);
            onProgress?.(message);
        });
        this.#running.add(source);
        this.#show(kind.working);
        try {
            // A page restored with its window can come before its file: the server should hear of the file first.
            await vscode.workspace.openTextDocument(vscode.Uri.parse(subject.uri, true));
            const raw: unknown = await this.#client.sendRequest(
                ExecuteCommandRequest.type,
                { command: kind.serverCommand, arguments: [subject], workDoneToken },
                source.token,
            );
            if (source.token.isCancellationRequested) return this.#stopped(limit.reached, kind.what);
            return this.#checked(raw, kind);
        } catch (error) {
            if (source.token.isCancellationRequested || isCancellation(error)) return this.#stopped(limit.reached, kind.what);
            const message = error instanceof Error ? error.message : String(error);
            if (error instanceof ResponseError && error.code === LSPErrorCodes.RequestFailed) return { kind: 'refused', message };
            this.#log.error(`The ${kind.what} of ${subject.uri} could not be made: ${message}`);
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

    #checked(raw: unknown, { what, nothing }: Asked['kind']): TablesAnswer {
        if (raw === null || raw === undefined) return { kind: 'failed', message: nothing };
        const parsed = tablesDocumentSchema.safeParse(raw);
        if (parsed.success) return { kind: 'document', document: parsed.data };
        const where = parsed.error.issues.slice(0, 3).map(issue => `${issue.path.join('.')}: ${issue.message}`).join('; ');
        this.#log.error(`The language server sent a ${what} this extension does not understand: ${where}`);
        return { kind: 'failed', message: `The language server sent a ${what} this extension does not understand. The log says which part.` };
    }

    #stopped(timeLimitReached: boolean, what: string): TablesAnswer {
        if (!timeLimitReached) return { kind: 'cancelled' };
        this.#log.error(`A ${what} took longer than ${timeLimitMs / 1000} s and was stopped.`);
        return { kind: 'failed', message: `Stopped: the ${what} took longer than ${timeLimitMs / 1000} seconds.` };
    }

    #show(message: string): void {
        this.#item.text = `$(loading~spin) ${message}`;
        this.#item.tooltip = 'Cancel';
        this.#item.accessibilityInformation = { label: `${message}. Press to cancel.`, role: 'button' };
        this.#item.show();
        void vscode.commands.executeCommand('setContext', 'hotroom.requestRunning', true);
    }

    #hide(): void {
        this.#item.hide();
        void vscode.commands.executeCommand('setContext', 'hotroom.requestRunning', false);
    }
}

function isCancellation(error: unknown): boolean {
    if (error instanceof vscode.CancellationError) return true;
    const codes: readonly number[] = [LSPErrorCodes.RequestCancelled, LSPErrorCodes.ServerCancelled, LSPErrorCodes.ContentModified];
    return error instanceof ResponseError && codes.includes(error.code);
}
