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
 * @param uri the document the list is made from. Saving any Hotroom file counts, for a job may use a catalogue in another.
 */
export function refreshMoments(uri: vscode.Uri, listener: RefreshListener): vscode.Disposable {
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
            if (mode() === 'onType') soon();
            else listener.onEdited();
        }),
        vscode.languages.onDidChangeDiagnostics(event => {
            if (mode() === 'onType' && event.uris.some(isOurs)) soon();
        }),
        vscode.workspace.onDidSaveTextDocument(document => {
            if (mode() !== 'off' && document.languageId === 'hotroom') soon();
        }),
    );
}

type RefreshMode = 'onType' | 'onSave' | 'off';

function mode(): RefreshMode {
    const set = vscode.workspace.getConfiguration('hotroom').get<string>('cutList.refresh');
    return set === 'onType' || set === 'off' ? set : 'onSave';
}
