import * as vscode from 'vscode';

/**
 * The documents the language server is told of: files, new texts, and whatever the open folders are made of. A file as it was in another revision is read
 * only and lies beside none of its catalogues, so it is shown and not checked.
 */
export function documentSelector(): { language: string; scheme: string }[] {
    const folders = (vscode.workspace.workspaceFolders ?? []).map(({ uri }) => uri.scheme);
    return [...new Set(['file', 'untitled', 'vscode-vfs', 'vscode-remote', ...folders])].map(scheme => ({ language: 'hotroom', scheme }));
}
