/** The review report of a job beside the editor: the page the command line writes, in the colours of the editor, leading back to the text. */
import * as vscode from 'vscode';
import { ExecuteCommandRequest, type LanguageClient } from 'vscode-languageclient/node';
import * as z from 'zod/mini';
import { showPlace } from './places.js';
import { refreshMoments } from './refresh-moments.js';
import { placeSchema, subjectSchema, type Subject } from './tables-document.js';

export const reviewViewType = 'hotroom.review';
const answerSchema = z.object({ title: z.string(), styles: z.string(), body: z.string(), places: z.array(placeSchema), html: z.string() });
type ReviewAnswer = z.infer<typeof answerSchema>;
const pageMessageSchema = z.object({ type: z.literal('goTo'), place: z.int().check(z.nonnegative()), moveFocus: z.boolean() });

/** @returns the report, or nothing when the file has no job; trouble on the server's side throws. */
async function ask(client: LanguageClient, subject: Subject): Promise<ReviewAnswer | undefined> {
    // A page restored with its window can come before its file: the server should hear of the file first.
    await vscode.workspace.openTextDocument(vscode.Uri.parse(subject.uri, true));
    const answer: unknown = await client.sendRequest(ExecuteCommandRequest.type, { command: 'hotroom.server.review', arguments: [subject] });
    return answer === null ? undefined : answerSchema.parse(answer);
}

const keyOf = ({ uri, job }: Subject): string => JSON.stringify([uri, job ?? null]);

/** The open pages, one for each job. */
export class ReviewPanels implements vscode.WebviewPanelSerializer, vscode.Disposable {
    readonly #extensionUri: vscode.Uri;
    readonly #client: LanguageClient;
    readonly #open = new Map<string, vscode.WebviewPanel>();

    constructor(extensionUri: vscode.Uri, client: LanguageClient) {
        this.#extensionUri = extensionUri;
        this.#client = client;
    }

    async show(subject: Subject): Promise<void> {
        const existing = this.#open.get(keyOf(subject));
        if (existing) { existing.reveal(undefined, false); return; }
        await this.#adopt(vscode.window.createWebviewPanel(reviewViewType, 'Review', { viewColumn: vscode.ViewColumn.Beside, preserveFocus: false }, { enableFindWidget: true }), subject);
    }

    async deserializeWebviewPanel(panel: vscode.WebviewPanel, state: unknown): Promise<void> {
        const subject = subjectSchema.safeParse(state);
        if (subject.success && !this.#open.has(keyOf(subject.data))) await this.#adopt(panel, subject.data);
        else panel.dispose();
    }

    /** Writes the report as a page of its own, to print or to send. */
    async save(subject: Subject): Promise<void> {
        const answer = await ask(this.#client, subject);
        if (!answer) { void vscode.window.showInformationMessage('This file has no job to review.'); return; }
        const source = vscode.Uri.parse(subject.uri, true);
        const name = `${(subject.job ?? source.path.split('/').at(-1) ?? 'job').replace(/\.hotroom$/, '')}-review.html`;
        const target = await vscode.window.showSaveDialog({ defaultUri: vscode.Uri.joinPath(source, '..', name), filters: { 'Web page': ['html'] }, title: 'Save Review Report' });
        if (!target) return;
        await vscode.workspace.fs.writeFile(target, new TextEncoder().encode(answer.html));
        vscode.window.setStatusBarMessage(`Saved ${vscode.workspace.asRelativePath(target)}`, 5000);
    }

    dispose(): void {
        for (const panel of [...this.#open.values()]) panel.dispose();
    }

    async #adopt(panel: vscode.WebviewPanel, subject: Subject): Promise<void> {
        const folder = vscode.Uri.joinPath(this.#extensionUri, 'dist', 'page');
        panel.webview.options = { enableScripts: true, localResourceRoots: [folder] };
        this.#open.set(keyOf(subject), panel);
        let places: ReviewAnswer['places'] = [];
        let round = 0;
        let isDue = false;
        const refresh = async (): Promise<void> => {
            const own = ++round;
            const answer = await ask(this.#client, subject).catch((error: unknown) => error instanceof Error ? error : new Error(String(error)));
            // A later request answers for this one.
            if (own !== round || !this.#open.has(keyOf(subject))) return;
            if (answer === undefined || answer instanceof Error) {
                if (places.length === 0) panel.webview.html = reviewPage(panel.webview, folder, subject, { title: 'Review', styles: '', body: `<p>${answer ? 'The review report could not be made. The log says why.' : 'This file has no job to review.'}</p>` });
                if (answer) void vscode.window.showErrorMessage(`The review report could not be made: ${answer.message}`);
                return;
            }
            places = answer.places;
            panel.title = answer.title;
            panel.webview.html = reviewPage(panel.webview, folder, subject, answer);
        };
        const owned = vscode.Disposable.from(
            panel.webview.onDidReceiveMessage((raw: unknown) => {
                const message = pageMessageSchema.safeParse(raw);
                const place = message.success ? places[message.data.place] : undefined;
                if (message.success && place) void showPlace(place, { moveFocus: message.data.moveFocus, notIn: panel.viewColumn });
            }),
            // A page no one sees costs nothing until it is looked at again.
            panel.onDidChangeViewState(() => { if (panel.visible && isDue) { isDue = false; void refresh(); } }),
            refreshMoments(vscode.Uri.parse(subject.uri, true), 'review.refresh', { onDue: () => { if (panel.visible) void refresh(); else isDue = true; }, onEdited: () => undefined }),
        );
        panel.onDidDispose(() => { this.#open.delete(keyOf(subject)); owned.dispose(); });
        await refresh();
    }
}

/** The report in the frame of a page that may run one script and its own styles, and load nothing else. What a job says was escaped where the markup was made. */
function reviewPage(webview: vscode.Webview, folder: vscode.Uri, subject: Subject, { title, styles, body }: Pick<ReviewAnswer, 'title' | 'styles' | 'body'>): string {
    const nonce = [...crypto.getRandomValues(new Uint8Array(16))].map(byte => byte.toString(16).padStart(2, '0')).join('');
    const script = webview.asWebviewUri(vscode.Uri.joinPath(folder, 'review.js')).toString();
    const attribute = (text: string): string => text.replaceAll('&', '&amp;').replaceAll('"', '&quot;').replaceAll('<', '&lt;');
    return `<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; script-src 'nonce-${nonce}'; style-src 'nonce-${nonce}'; base-uri 'none'; form-action 'none'">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${attribute(title)}</title>
<style nonce="${nonce}">${styles}</style>
</head>
<body class="themed" data-subject="${attribute(JSON.stringify(subject))}">
<main class="review">${body}</main>
<script nonce="${nonce}" src="${script}"></script>
</body>
</html>
`;
}
