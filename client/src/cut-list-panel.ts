/** The cut-list page beside the editor: one for each job shown, kept up to date, following the source and leading back to it. */
import * as vscode from 'vscode';
import { saveCsv } from './csv-files.js';
import type { CutListRequests } from './cut-list-request.js';
import { cutListPage } from './cut-list-html.js';
import type { ToPage } from './page-protocol.js';
import { rowsAt, showPlace } from './places.js';
import { refreshMoments } from './refresh-moments.js';
import { pageMessageSchema, subjectSchema, type PageMessage, type Subject, type TablesDocument } from './tables-document.js';

export const cutListViewType = 'hotroom.cutList';

/** The open pages. */
export class CutListPanels implements vscode.WebviewPanelSerializer, vscode.Disposable {
    readonly #extensionUri: vscode.Uri;
    readonly #requests: CutListRequests;
    readonly #open = new Map<string, CutListPanel>();

    constructor(extensionUri: vscode.Uri, requests: CutListRequests) {
        this.#extensionUri = extensionUri;
        this.#requests = requests;
    }

    /** Opens the page of a job beside the editor, or brings it forward with a fresh list when it is open already. */
    show(subject: Subject): void {
        const existing = this.#open.get(keyOf(subject));
        if (existing) {
            existing.reveal();
            return;
        }
        this.#adopt(vscode.window.createWebviewPanel(
            cutListViewType,
            'Cut List',
            { viewColumn: vscode.ViewColumn.Beside, preserveFocus: false },
            { enableScripts: true, enableFindWidget: true, localResourceRoots: [this.#pageFolder] },
        ), subject);
    }

    /** @returns the page in front, if the active tab is one. */
    active(): CutListPanel | undefined {
        return [...this.#open.values()].find(panel => panel.isActive);
    }

    deserializeWebviewPanel(panel: vscode.WebviewPanel, state: unknown): Promise<void> {
        const subject = subjectSchema.safeParse(state);
        if (subject.success && !this.#open.has(keyOf(subject.data))) {
            panel.webview.options = { enableScripts: true, localResourceRoots: [this.#pageFolder] };
            this.#adopt(panel, subject.data);
        } else {
            panel.dispose();
        }
        return Promise.resolve();
    }

    dispose(): void {
        for (const panel of [...this.#open.values()]) panel.dispose();
    }

    get #pageFolder(): vscode.Uri {
        return vscode.Uri.joinPath(this.#extensionUri, 'dist', 'page');
    }

    #adopt(panel: vscode.WebviewPanel, subject: Subject): void {
        const key = keyOf(subject);
        panel.iconPath = {
            light: vscode.Uri.joinPath(this.#extensionUri, 'client', 'icons', 'cut-list-light.svg'),
            dark: vscode.Uri.joinPath(this.#extensionUri, 'client', 'icons', 'cut-list-dark.svg'),
        };
        panel.webview.html = cutListPage(panel.webview, this.#pageFolder);
        this.#open.set(key, new CutListPanel(panel, subject, this.#requests));
        panel.onDidDispose(() => this.#open.delete(key));
    }
}

/** One page and the list it shows. */
export class CutListPanel implements vscode.Disposable {
    readonly #panel: vscode.WebviewPanel;
    readonly #subject: Subject;
    readonly #uri: vscode.Uri;
    readonly #requests: CutListRequests;
    readonly #disposables: vscode.Disposable[] = [];
    #picture: { readonly number: number; readonly document: TablesDocument } | undefined;
    #asking: vscode.CancellationTokenSource | undefined;
    #refreshWhenSeen = false;

    constructor(panel: vscode.WebviewPanel, subject: Subject, requests: CutListRequests) {
        this.#panel = panel;
        this.#subject = subject;
        this.#uri = vscode.Uri.parse(subject.uri, true);
        this.#requests = requests;
        this.#disposables.push(
            panel.webview.onDidReceiveMessage((raw: unknown) => this.#receive(raw)),
            panel.onDidDispose(() => this.dispose()),
            panel.onDidChangeViewState(() => {
                if (panel.visible && this.#refreshWhenSeen) void this.refresh();
            }),
            refreshMoments(this.#uri, {
                onDue: () => {
                    // A page no one sees costs nothing until it is looked at again.
                    if (panel.visible) void this.refresh();
                    else this.#refreshWhenSeen = true;
                },
                onEdited: () => {
                    if (this.#picture) this.#post({ type: 'condition', condition: 'edited', message: editedMessage() });
                },
            }),
            vscode.window.onDidChangeTextEditorSelection(event => {
                if (event.textEditor.document.uri.toString() === this.#uri.toString()) this.#followSource(event.selections[0]);
            }),
        );
    }

    get isActive(): boolean {
        return this.#panel.active;
    }

    reveal(): void {
        this.#panel.reveal(undefined, false);
        void this.refresh();
    }

    /** Asks for the list again; a request still under way is given up for this one. */
    async refresh(): Promise<void> {
        this.#refreshWhenSeen = false;
        this.#asking?.cancel();
        const asking = new vscode.CancellationTokenSource();
        this.#asking = asking;
        this.#post({ type: 'condition', condition: 'working', message: 'Working out the cut list…' });
        const answer = await this.#requests.ask(this.#subject, asking.token, message => {
            if (this.#asking === asking) this.#post({ type: 'condition', condition: 'working', message });
        });
        asking.dispose();
        if (this.#asking !== asking) return;
        this.#asking = undefined;
        switch (answer.kind) {
            case 'document': {
                this.#picture = { number: (this.#picture?.number ?? 0) + 1, document: answer.document };
                this.#panel.title = answer.document.title;
                this.#showPicture();
                break;
            }
            case 'cancelled':
                this.#post(this.#picture
                    ? { type: 'condition', condition: 'stale', message: 'Cancelled. This is the list as it was last made.' }
                    : { type: 'condition', condition: 'failed', message: 'Cancelled.' });
                break;
            case 'failed':
                this.#post(this.#picture
                    ? { type: 'condition', condition: 'stale', message: `${answer.message} This is the list as it was last made.` }
                    : { type: 'condition', condition: 'failed', message: answer.message });
                break;
            default:
                answer satisfies never;
        }
    }

    async saveCsv(): Promise<void> {
        if (!this.#picture) return;
        const saved = await saveCsv(this.#picture.document, this.#uri);
        if (saved) this.#post({ type: 'said', message: `Saved ${vscode.workspace.asRelativePath(saved)}.` });
    }

    dispose(): void {
        this.#asking?.cancel();
        this.#panel.dispose();
        vscode.Disposable.from(...this.#disposables.splice(0)).dispose();
    }

    #receive(raw: unknown): void {
        const message = pageMessageSchema.safeParse(raw);
        if (message.success) void this.#act(message.data).catch((error: unknown) => {
            void vscode.window.showErrorMessage(error instanceof Error ? error.message : String(error));
        });
    }

    async #act(message: PageMessage): Promise<void> {
        switch (message.type) {
            case 'ready':
                // The page starts anew whenever its tab comes back into view.
                if (this.#picture && !this.#refreshWhenSeen) this.#showPicture();
                else await this.refresh();
                break;
            case 'goTo': {
                if (message.picture !== this.#picture?.number) return;
                const place = this.#picture.document.tables.find(table => table.id === message.table)?.rows[message.row]?.at;
                if (place) await showPlace(place, { moveFocus: message.moveFocus, notIn: this.#panel.viewColumn });
                break;
            }
            case 'saveCsv':
                await this.saveCsv();
                break;
            case 'refresh':
                await this.refresh();
                break;
            case 'cancel':
                this.#asking?.cancel();
                break;
            case 'showLog':
                await vscode.commands.executeCommand('hotroom.showLog');
                break;
            default:
                message satisfies never;
        }
    }

    #showPicture(): void {
        if (!this.#picture) return;
        this.#post({ type: 'picture', number: this.#picture.number, document: this.#picture.document, subject: this.#subject });
        this.#post(this.#picture.document.stale === true
            ? { type: 'condition', condition: 'stale', message: 'The file has errors. This is the list as it was last made without them.' }
            : { type: 'condition', condition: 'fresh', message: '' });
    }

    #followSource(selection: vscode.Selection | undefined): void {
        if (!this.#picture || !selection || !this.#panel.visible) return;
        const rows = rowsAt(this.#picture.document, this.#uri, selection.active);
        this.#post({ type: 'sourceSelected', picture: this.#picture.number, rows });
    }

    #post(message: ToPage): void {
        void this.#panel.webview.postMessage(message);
    }
}

function editedMessage(): string {
    const refresh = vscode.workspace.getConfiguration('hotroom').get<string>('cutList.refresh');
    return refresh === 'off' ? 'Edited since this list was made.' : 'Edited since this list was made. Save the file to bring it up to date.';
}

function keyOf(subject: Subject): string {
    return JSON.stringify([subject.uri, subject.job ?? null]);
}
