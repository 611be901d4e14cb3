/** The commands that compare a job with something else. Each asks what it has to and opens a page. */
import * as vscode from 'vscode';
import { ExecuteCommandRequest, type LanguageClient } from 'vscode-languageclient/node';
import { jobAtLine, jobsInText } from './jobs-in-text.js';
import { documentOf } from './open-document.js';
import { comparisonKind } from './page-kinds.js';
import type { Register } from './register.js';
import { jobListSchema, type ComparisonSubject, type ListedJob, type Subject } from './tables-document.js';
import type { TablesPanels } from './tables-panel.js';

/** @returns the registrations; dispose of them to take the commands away. */
export function registerComparisons(register: Register, client: LanguageClient, panels: TablesPanels): vscode.Disposable {
    const compare = (choose: (subject: Subject) => Promise<ComparisonSubject['with'] | undefined> | ComparisonSubject['with']) => async (argument: unknown): Promise<void> => {
        const subject = await subjectOf(argument);
        const other = subject && await choose(subject);
        if (subject && other) panels.show({ kind: comparisonKind, subject: { ...subject, with: other } });
    };
    return vscode.Disposable.from(
        register('hotroom.compareWithLastCommit', compare(() => ({ kind: 'last-commit' }))),
        register('hotroom.compareWithBranchBase', compare(() => ({ kind: 'branch-base' }))),
        register('hotroom.compareWithRevision', compare(chooseRevision)),
        register('hotroom.compareWithJob', compare(async subject => chooseJob(subject, await jobsInSight(client)))),
        register('hotroom.compareWithFile', compare(async subject => chooseFile(subject, await jobsInSight(client)))),
    );
}

/** The job under the cursor of a file that has several; the whole file above the first of them, and when it is chosen in the explorer. */
async function subjectOf(argument: unknown): Promise<Subject | undefined> {
    const document = await documentOf(argument);
    if (!document) return undefined;
    const uri = document.uri.toString();
    const jobs = jobsInText(document.getText());
    const editor = vscode.window.activeTextEditor;
    const here = editor?.document === document && jobs.length > 1 ? jobAtLine(jobs, editor.selection.active.line) : undefined;
    return here ? { uri, job: here.name } : { uri };
}

async function chooseRevision(): Promise<ComparisonSubject['with'] | undefined> {
    const revision = await vscode.window.showInputBox({
        title: 'Compare with a Revision', prompt: 'A branch, a tag or a commit, as git knows it', placeHolder: 'HEAD~1',
        validateInput: text => text.trim() === '' ? 'Write the name of a revision.' : undefined,
    });
    return revision === undefined ? undefined : { kind: 'revision', name: revision.trim() };
}

async function jobsInSight(client: LanguageClient): Promise<readonly ListedJob[]> {
    return jobListSchema.parse(await client.sendRequest(ExecuteCommandRequest.type, { command: 'hotroom.server.jobs', arguments: [] }));
}

const sameUri = (a: string, b: string): boolean => vscode.Uri.parse(a, true).toString() === vscode.Uri.parse(b, true).toString();

async function chooseJob(subject: Subject, jobs: readonly ListedJob[]): Promise<ComparisonSubject['with'] | undefined> {
    const own = subject.job ?? jobs.find(({ uri }) => sameUri(uri, subject.uri))?.job;
    const others = jobs.filter(({ uri, job }) => !sameUri(uri, subject.uri) || job !== own);
    if (others.length === 0) {
        void vscode.window.showInformationMessage('There is no other job in the open folders to compare with.');
        return undefined;
    }
    const picked = await vscode.window.showQuickPick(
        others.map(one => ({ label: one.title ?? one.job, description: one.job, detail: vscode.workspace.asRelativePath(vscode.Uri.parse(one.uri, true)), one })),
        { title: 'Compare with Another Job', placeHolder: 'With which job?', matchOnDescription: true, matchOnDetail: true },
    );
    return picked && { kind: 'file', uri: picked.one.uri, job: picked.one.job };
}

async function chooseFile(subject: Subject, jobs: readonly ListedJob[]): Promise<ComparisonSubject['with'] | undefined> {
    const files = [...new Set(jobs.map(({ uri }) => uri))].filter(uri => !sameUri(uri, subject.uri));
    const elsewhere = { label: 'Choose Another File…', description: 'from disk', uri: undefined };
    const picked = await vscode.window.showQuickPick(
        [...files.map(uri => ({ label: vscode.workspace.asRelativePath(vscode.Uri.parse(uri, true)), description: jobs.filter(one => one.uri === uri).map(({ job }) => job).join(', '), uri })), elsewhere],
        { title: 'Compare with Another File', placeHolder: 'With which file?', matchOnDescription: true },
    );
    if (!picked) return undefined;
    if (picked.uri !== undefined) return { kind: 'file', uri: picked.uri };
    const [file] = await vscode.window.showOpenDialog({ filters: { 'Hotroom files': ['hotroom'] }, title: 'Compare with Another File', openLabel: 'Compare' }) ?? [];
    return file && { kind: 'file', uri: file.toString() };
}
