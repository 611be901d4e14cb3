/** The language status item: whether the language server answers, its log, and a restart when it does not. */
import * as vscode from 'vscode';
import { State, type LanguageClient } from 'vscode-languageclient/node';

/** @returns the item together with what keeps it true. */
export function showServerStatus(client: LanguageClient): vscode.Disposable {
    const item = vscode.languages.createLanguageStatusItem('hotroom.server', { language: 'hotroom' });
    item.name = 'Hotroom';
    const show = (state: State): void => {
        item.busy = state === State.Starting;
        const answers = state === State.Running || state === State.Starting;
        item.severity = answers ? vscode.LanguageStatusSeverity.Information : vscode.LanguageStatusSeverity.Error;
        item.text = stateText(state);
        item.command = answers
            ? { command: 'hotroom.showLog', title: 'Show Log' }
            : { command: 'hotroom.restartServer', title: 'Restart' };
    };
    show(client.state);
    return vscode.Disposable.from(item, client.onDidChangeState(event => show(event.newState)));
}

function stateText(state: State): string {
    switch (state) {
        case State.Running: return 'Hotroom is ready';
        case State.Starting: return 'Hotroom is starting';
        case State.Stopped: return 'Hotroom has stopped';
        case State.StartFailed: return 'Hotroom did not start';
        default: return state satisfies never;
    }
}
