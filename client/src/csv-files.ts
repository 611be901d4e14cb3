/** Saves the comma-separated files that come with a cut list where the person says. */
import * as vscode from 'vscode';
import type { TablesDocument } from './tables-document.js';

/**
 * @param document the list as shown.
 * @param source the job file; the save dialog opens beside it.
 * @returns the place written to, or `undefined` when the person changed their mind.
 * @throws when the file cannot be written.
 */
export async function saveCsv(document: TablesDocument, source: vscode.Uri): Promise<vscode.Uri | undefined> {
    const file = await chooseFile(document);
    if (file === undefined) return undefined;
    // A name from the server is a name only: it never chooses the folder.
    const name = file.fileName.replace(/[\\/:*?"<>|]/g, '-');
    const defaultUri = source.scheme === 'untitled'
        ? vscode.Uri.joinPath(vscode.workspace.workspaceFolders?.[0]?.uri ?? source.with({ scheme: 'file', path: '/' }), name)
        : vscode.Uri.joinPath(source, '..', name);
    const target = await vscode.window.showSaveDialog({ defaultUri, filters: { 'Comma-separated values': ['csv'] }, title: 'Save Cut List as CSV' });
    if (target === undefined) return undefined;
    await vscode.workspace.fs.writeFile(target, new TextEncoder().encode(file.text));
    return target;
}

async function chooseFile(document: TablesDocument): Promise<TablesDocument['csv'][number] | undefined> {
    if (document.csv.length < 2) {
        if (document.csv.length === 0) void vscode.window.showInformationMessage('This job has no list to save yet.');
        return document.csv[0];
    }
    const picked = await vscode.window.showQuickPick(
        document.csv.map(file => ({ label: file.fileName, file })),
        { title: 'Save as CSV', placeHolder: 'Which list?' },
    );
    return picked?.file;
}
