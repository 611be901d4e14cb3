import * as vscode from 'vscode';

/** The editor title button hands over the file's address, a keybinding or the palette nothing. */
export async function documentOf(argument: unknown): Promise<vscode.TextDocument | undefined> {
    const uri = argument instanceof vscode.Uri ? argument : typeof argument === 'string' ? vscode.Uri.parse(argument, true) : undefined;
    const document = uri ? await vscode.workspace.openTextDocument(uri) : vscode.window.activeTextEditor?.document;
    return document?.languageId === 'hotroom' ? document : undefined;
}
