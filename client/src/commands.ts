/** The commands a person can run. Each works on the open job file, or on a file and job handed to it by a lens or a link. */
import * as vscode from 'vscode';
import type { LanguageClient } from 'vscode-languageclient/node';
import { saveCsv } from './csv-files.js';
import { registerComparisons } from './comparison-commands.js';
import { jobAtLine, jobsInText } from './jobs-in-text.js';
import { documentOf } from './open-document.js';
import { cutListKind } from './page-kinds.js';
import type { ReviewPanels } from './review-panel.js';
import type { Register } from './register.js';
import { subjectSchema, type Subject } from './tables-document.js';
import type { TablesPanels } from './tables-panel.js';
import type { TablesRequests } from './tables-request.js';

export interface CommandParts {
    readonly client: LanguageClient;
    readonly log: vscode.LogOutputChannel;
    readonly requests: TablesRequests;
    readonly panels: TablesPanels;
    readonly reviews: ReviewPanels;
}

/** @returns the registrations; dispose of them to take the commands away. */
export function registerCommands(parts: CommandParts): vscode.Disposable {
    const { client, log, requests, panels, reviews } = parts;
    const register: Register = (name, run) =>
        vscode.commands.registerCommand(name, async (argument: unknown) => {
            try {
                await run(argument);
            } catch (error) {
                log.error(error instanceof Error ? error : String(error));
                void showTrouble(error instanceof Error ? error.message : String(error));
            }
        });
    return vscode.Disposable.from(
        register('hotroom.showCutList', async argument => {
            const subject = await chooseSubject(argument);
            if (subject) panels.show({ kind: cutListKind, subject });
        }),
        register('hotroom.saveCutListCsv', async argument => {
            const panel = argument === undefined ? panels.active() : undefined;
            if (panel) return panel.saveCsv();
            const subject = await chooseSubject(argument);
            if (subject) await saveWithoutPage(subject, requests);
        }),
        register('hotroom.showReview', async argument => {
            const subject = await chooseSubject(argument, 'Review Report');
            if (subject) await reviews.show(subject);
        }),
        register('hotroom.saveReview', async argument => {
            const subject = await chooseSubject(argument, 'Review Report');
            if (subject) await reviews.save(subject);
        }),
        register('hotroom.cancel', () => requests.cancelAll()),
        register('hotroom.restartServer', async () => {
            log.info('The language server is restarted by command.');
            if (client.needsStop()) await client.restart();
            else await client.start();
        }),
        register('hotroom.showLog', () => log.show()),
        registerComparisons(register, client, panels),
    );
}

async function saveWithoutPage(subject: Subject, requests: TablesRequests): Promise<void> {
    const never = new vscode.CancellationTokenSource();
    const answer = await requests.ask({ kind: cutListKind, subject }, never.token);
    never.dispose();
    switch (answer.kind) {
        case 'document': {
            if (answer.document.stale === true && !(await confirmStale())) return;
            const saved = await saveCsv(answer.document, vscode.Uri.parse(subject.uri, true));
            if (saved) vscode.window.setStatusBarMessage(`Saved ${vscode.workspace.asRelativePath(saved)}`, 5000);
            break;
        }
        case 'refused':
        case 'failed':
            await showTrouble(answer.message);
            break;
        case 'cancelled':
            break;
        default:
            answer satisfies never;
    }
}

/** A list on paper outlives its warning, so an outdated one is only written on purpose. */
async function confirmStale(): Promise<boolean> {
    const save = 'Save It Anyway';
    const answer = await vscode.window.showWarningMessage(
        'The file has errors, and this is the list as it was last made without them.',
        { modal: true },
        save,
    );
    return answer === save;
}

async function chooseSubject(argument: unknown, title = 'Cut List and Stock Plan'): Promise<Subject | undefined> {
    const given = subjectSchema.safeParse(argument);
    if (given.success && given.data.job !== undefined) return given.data;
    const document = await documentOf(given.success ? given.data.uri : argument);
    if (!document) return undefined;
    const uri = document.uri.toString();
    const jobs = jobsInText(document.getText());
    if (jobs.length < 2) return { uri };
    const editor = vscode.window.activeTextEditor;
    const here = editor?.document === document ? jobAtLine(jobs, editor.selection.active.line) : undefined;
    // The job being worked on comes first, so that Enter alone chooses it.
    const ordered = here ? [here, ...jobs.filter(job => job !== here)] : jobs;
    const picked = await vscode.window.showQuickPick(
        ordered.map(job => ({ label: job.title ?? job.name, description: job.title === undefined ? '' : job.name, job })),
        { title, placeHolder: 'Which job?', matchOnDescription: true },
    );
    return picked ? { uri, job: picked.job.name } : undefined;
}

async function showTrouble(message: string): Promise<void> {
    const showLog = 'Show Log';
    if (await vscode.window.showErrorMessage(message, showLog) === showLog) await vscode.commands.executeCommand('hotroom.showLog');
}
