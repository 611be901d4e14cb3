/** From a row to the source that made it, and from the source to its rows. */
import * as vscode from 'vscode';
import type { Place, TablesDocument } from './tables-document.js';

/**
 * Shows a place in the editor, in the column where its file is open already when it is.
 * @param options `moveFocus` takes the keyboard there; `notIn` is the column the page itself stands in.
 */
export async function showPlace(place: Place, options: { readonly moveFocus: boolean; readonly notIn: vscode.ViewColumn | undefined }): Promise<void> {
    const uri = vscode.Uri.parse(place.uri, true);
    const document = await vscode.workspace.openTextDocument(uri);
    const selection = document.validateRange(rangeOf(place));
    const shown = vscode.window.visibleTextEditors.find(editor => editor.document.uri.toString() === uri.toString());
    const viewColumn = shown?.viewColumn ?? columnOfTab(uri) ?? columnBeside(options.notIn);
    const editor = await vscode.window.showTextDocument(document, { viewColumn, selection, preserveFocus: !options.moveFocus });
    editor.revealRange(selection, vscode.TextEditorRevealType.InCenterIfOutsideViewport);
}

/** Opens the editor's own view of both texts of a comparison, those of the compared file when it has rows on both sides. */
export async function showTexts(document: TablesDocument, { uri, notIn }: { readonly uri: vscode.Uri; readonly notIn: vscode.ViewColumn | undefined }): Promise<void> {
    const pairs = document.tables.flatMap(table => table.rows.flatMap(({ at, before }) => at && before && at.uri !== before.uri ? [{ at: vscode.Uri.parse(at.uri, true), before: vscode.Uri.parse(before.uri, true) }] : []));
    const pair = pairs.find(({ at }) => at.toString() === uri.toString()) ?? pairs[0];
    if (!pair) return;
    const name = pair.at.path.split('/').at(-1) ?? '';
    await vscode.commands.executeCommand('vscode.diff', pair.before, pair.at, `${name}: before and now`, { viewColumn: columnBeside(notIn) });
}

/** @returns the rows whose source holds the position, the narrowest source only: a whole bench should not light up for one slat. */
export function rowsAt(document: TablesDocument, uri: vscode.Uri, position: vscode.Position): { table: string; row: number }[] {
    const holding = document.tables.flatMap(table => table.rows.flatMap((row, index) => [row.at, row.before].flatMap(place => {
        if (!place || vscode.Uri.parse(place.uri, true).toString() !== uri.toString()) return [];
        const range = rangeOf(place);
        // Being anywhere on a one-line fact counts: people click beside a value as often as in it.
        const reach = range.isSingleLine ? range.start.line === position.line : range.contains(position);
        return reach ? [{ table: table.id, row: index, lines: range.end.line - range.start.line }] : [];
    })));
    const fewest = Math.min(...holding.map(found => found.lines));
    return holding.filter(found => found.lines === fewest).map(({ table, row }) => ({ table, row }));
}

function rangeOf(place: Place): vscode.Range {
    const { start, end } = place.range;
    return new vscode.Range(start.line, start.character, end.line, end.character);
}

const columnBeside = (page: vscode.ViewColumn | undefined): vscode.ViewColumn => page === vscode.ViewColumn.One ? vscode.ViewColumn.Two : vscode.ViewColumn.One;

function columnOfTab(uri: vscode.Uri): vscode.ViewColumn | undefined {
    for (const group of vscode.window.tabGroups.all) {
        const holds = group.tabs.some(tab => tab.input instanceof vscode.TabInputText && tab.input.uri.toString() === uri.toString());
        if (holds) return group.viewColumn;
    }
    return undefined;
}
