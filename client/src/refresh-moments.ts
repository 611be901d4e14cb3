/** When a shown list is due again, by the person's own setting. */
import * as vscode from 'vscode';

/** Long enough that a word typed at an ordinary pace asks once. */
const quietMs = 400;

export interface RefreshListener {
    /** The list should be made again. */
    readonly onDue: () => void;
    /** The document no longer says what the list shows, and no refresh is on its way. */
    readonly onEdited: () => void;
}

/**
 * @param setting the person's own choice, such as `cutList.refresh`.
 * @param uri the document the list is made from. Saving any Hotroom file counts, for a job may use a catalogue in another.
 */
export function refreshMoments(uri: vscode.Uri, setting: string, listener: RefreshListener): vscode.Disposable {
    let timer: ReturnType<typeof setTimeout> | undefined;
    const soon = (): void => {
        clearTimeout(timer);
        timer = setTimeout(listener.onDue, quietMs);
    };
    const isOurs = (other: vscode.Uri): boolean => other.toString() === uri.toString();
    return vscode.Disposable.from(
        new vscode.Disposable(() => clearTimeout(timer)),
        vscode.workspace.onDidChangeTextDocument(event => {
            if (!isOurs(event.document.uri) || event.contentChanges.length === 0) return;
            if (mode(setting) === 'onType') soon();
            else listener.onEdited();
        }),
        vscode.languages.onDidChangeDiagnostics(event => {
            if (mode(setting) === 'onType' && event.uris.some(isOurs)) soon();
        }),
        vscode.workspace.onDidSaveTextDocument(document => {
            if (mode(setting) !== 'off' && document.languageId === 'hotroom') soon();
        }),
    );
}

export type RefreshMode = 'onType' | 'onSave' | 'off';

export function mode(setting: string): RefreshMode {
    const set = vscode.workspace.getConfiguration('hotroom').get<string>(setting);
    return set === 'onType' || set === 'off' ? set : 'onSave';
}
