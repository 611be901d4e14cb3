/** Pages of tables beside the editor: one for each job shown, kept up to date, following the source and leading back to it. */
import * as vscode from 'vscode';
import { saveCsv } from './csv-files.js';
import { pageHtml } from './page-html.js';
import { keyOf, pageKinds, type Asked } from './page-kinds.js';
import type { ToPage } from './page-protocol.js';
import { rowsAt, showPlace, showTexts } from './places.js';
import { mode, refreshMoments } from './refresh-moments.js';
import { pageMessageSchema, type PageMessage, type TablesDocument } from './tables-document.js';
import type { TablesRequests } from './tables-request.js';

/** The open pages. */
export class TablesPanels implements vscode.WebviewPanelSerializer, vscode.Disposable {
    readonly #extensionUri: vscode.Uri;
    readonly #requests: TablesRequests;
    readonly #open = new Map<string, TablesPanel>();

    constructor(extensionUri: vscode.Uri, requests: TablesRequests) {
        this.#extensionUri = extensionUri;
        this.#requests = requests;
    }

    /** Opens the page of a job beside the editor, or brings it forward with a fresh list when it is open already. */
    show(asked: Asked): void {
        const existing = this.#open.get(keyOf(asked));
        if (existing) {
            existing.reveal();
            return;
        }
        this.#adopt(vscode.window.createWebviewPanel(
            asked.kind.viewType,
            asked.kind.title,
            { viewColumn: vscode.ViewColumn.Beside, preserveFocus: false },
            { enableScripts: true, enableFindWidget: true, localResourceRoots: [this.#pageFolder] },
        ), asked);
    }

    /** @returns the page in front, if the active tab is one. */
    active(): TablesPanel | undefined {
        return [...this.#open.values()].find(panel => panel.isActive);
    }

    deserializeWebviewPanel(panel: vscode.WebviewPanel, state: unknown): Promise<void> {
        const kind = pageKinds.find(({ viewType }) => viewType === panel.viewType);
        const subject = kind?.readSubject(state);
        if (kind && subject && !this.#open.has(keyOf({ kind, subject }))) {
            panel.webview.options = { enableScripts: true, localResourceRoots: [this.#pageFolder] };
            this.#adopt(panel, { kind, subject });
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

    #adopt(panel: vscode.WebviewPanel, asked: Asked): void {
        const key = keyOf(asked);
        const { file, title } = asked.kind;
        panel.iconPath = {
            light: vscode.Uri.joinPath(this.#extensionUri, 'client', 'icons', `${file}-light.svg`),
            dark: vscode.Uri.joinPath(this.#extensionUri, 'client', 'icons', `${file}-dark.svg`),
        };
        panel.webview.html = pageHtml(panel.webview, this.#pageFolder, { file, title });
        this.#open.set(key, new TablesPanel(panel, asked, this.#requests));
        panel.onDidDispose(() => this.#open.delete(key));
    }
}

/** One page and what it shows. */
export class TablesPanel implements vscode.Disposable {
    readonly #panel: vscode.WebviewPanel;
    readonly #asked: Asked;
    readonly #uri: vscode.Uri;
    readonly #requests: TablesRequests;
    readonly #disposables: vscode.Disposable[] = [];
    #picture: { readonly number: number; readonly document: TablesDocument } | undefined;
    #asking: vscode.CancellationTokenSource | undefined;
    #refreshWhenSeen = false;

    constructor(panel: vscode.WebviewPanel, asked: Asked, requests: TablesRequests) {
        this.#panel = panel;
        this.#asked = asked;
        this.#uri = vscode.Uri.parse(asked.subject.uri, true);
        this.#requests = requests;
        this.#disposables.push(
            panel.webview.onDidReceiveMessage((raw: unknown) => this.#receive(raw)),
            panel.onDidDispose(() => this.dispose()),
            panel.onDidChangeViewState(() => {
                if (panel.visible && this.#refreshWhenSeen) void this.refresh();
            }),
            refreshMoments(this.#uri, asked.kind.refreshSetting, {
                onDue: () => {
                    // A page no one sees costs nothing until it is looked at again.
                    if (panel.visible) void this.refresh();
                    else this.#refreshWhenSeen = true;
                },
                onEdited: () => {
                    if (this.#picture) this.#post({ type: 'condition', condition: 'edited', message: editedMessage(asked.kind.refreshSetting) });
                },
            }),
            vscode.window.onDidChangeTextEditorSelection(event => {
                this.#followSource(event.textEditor.document.uri, event.selections[0]);
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
        this.#post({ type: 'condition', condition: 'working', message: `${this.#asked.kind.working}…` });
        const answer = await this.#requests.ask(this.#asked, asking.token, message => {
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
                    ? { type: 'condition', condition: 'stale', message: `Cancelled. This is the ${this.#asked.kind.what} as it was last made.` }
                    : { type: 'condition', condition: 'failed', message: 'Cancelled.' });
                break;
            case 'refused':
            case 'failed':
                this.#post(this.#picture
                    ? { type: 'condition', condition: 'stale', message: `${answer.message} This is the ${this.#asked.kind.what} as it was last made.` }
                    : { type: 'condition', condition: answer.kind, message: answer.message });
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
                const row = this.#picture.document.tables.find(table => table.id === message.table)?.rows[message.row];
                const place = message.side === 'before' ? row?.before : row?.at;
                if (place) await showPlace(place, { moveFocus: message.moveFocus, notIn: this.#panel.viewColumn });
                break;
            }
            case 'saveCsv':
                await this.saveCsv();
                break;
            case 'copyMarkdown':
                if (this.#picture?.document.markdown === undefined) return;
                await vscode.env.clipboard.writeText(this.#picture.document.markdown);
                this.#post({ type: 'said', message: 'Copied as Markdown.' });
                break;
            case 'showTexts':
                if (this.#picture) await showTexts(this.#picture.document, { uri: this.#uri, notIn: this.#panel.viewColumn });
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
        this.#post({ type: 'picture', number: this.#picture.number, document: this.#picture.document, subject: this.#asked.subject });
        this.#post(this.#picture.document.stale === true
            ? { type: 'condition', condition: 'stale', message: 'The file has errors. This is the list as it was last made without them.' }
            : { type: 'condition', condition: 'fresh', message: '' });
    }

    #followSource(uri: vscode.Uri, selection: vscode.Selection | undefined): void {
        if (!this.#picture || !selection || !this.#panel.visible) return;
        const rows = rowsAt(this.#picture.document, uri, selection.active);
        if (rows.length > 0 || uri.toString() === this.#uri.toString()) this.#post({ type: 'sourceSelected', picture: this.#picture.number, rows });
    }

    #post(message: ToPage): void {
        void this.#panel.webview.postMessage(message);
    }
}

function editedMessage(setting: string): string {
    return mode(setting) === 'off' ? 'Edited since this list was made.' : 'Edited since this list was made. Save the file to bring it up to date.';
}
