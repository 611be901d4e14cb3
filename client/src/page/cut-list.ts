/** The cut-list page: shows what the extension sends, and sends back what the person asks for. */
import type { PageCondition, ToPage } from '../page-protocol.js';
import type { PageMessage, Subject, TablesDocument } from '../tables-document.js';
import { button, element, foldingList } from './elements.js';
import type { Sort } from './sorting.js';
import { TableView } from './table-view.js';

/** What the page keeps while its tab is hidden or the window reloads. The subject lets the extension find the list again. */
interface Kept extends Partial<Subject> {
    readonly filter?: string;
    readonly sorts?: Readonly<Record<string, Sort>>;
    readonly folded?: readonly string[];
}

declare function acquireVsCodeApi(): { postMessage(message: PageMessage): void; getState(): Kept | undefined; setState(state: Kept): void };

const host = acquireVsCodeApi();
const hintId = 'row-keys';

let kept: Kept = host.getState() ?? {};
let picture: { readonly number: number; readonly document: TablesDocument } | undefined;
let workingTimer: ReturnType<typeof setTimeout> | undefined;
let views: ReadonlyMap<string, TableView> = new Map();

const heading = element('header');
const filterField = element('input', {
    attributes: { type: 'search', id: 'filter', placeholder: 'Filter rows', 'aria-label': 'Filter rows', autocomplete: 'off', spellcheck: 'false' },
});
const saveButton = button('Save CSV', () => host.postMessage({ type: 'saveCsv' }), { class: 'primary' });
const refreshButton = button('Refresh', () => host.postMessage({ type: 'refresh' }));
const cancelButton = button('Cancel', () => host.postMessage({ type: 'cancel' }));
const logButton = button('Show Log', () => host.postMessage({ type: 'showLog' }));
const hint = element('p', {
    class: 'hint', attributes: { id: hintId },
    text: 'Arrow keys move from row to row. Enter shows the line that made the row.',
});
const banner = element('div', { class: 'banner' });
const bannerText = element('span', { attributes: { role: 'status' } });
const said = element('p', { class: 'said', attributes: { role: 'status' } });
const sheets = element('div', { class: 'sheets' });
const tools = element('div', {
    class: 'tools', attributes: { role: 'group', 'aria-label': 'List tools' },
    children: [filterField, saveButton, refreshButton, said],
});
banner.append(bannerText, cancelButton, logButton);
document.getElementById('page')?.append(heading, tools, banner, sheets);

filterField.value = kept.filter ?? '';
filterField.addEventListener('input', () => {
    keep({ filter: filterField.value });
    const left = applyFilter();
    say(filterField.value.trim() === '' ? '' : left === 1 ? '1 row matches.' : `${left} rows match.`);
});
filterField.addEventListener('keydown', event => {
    if (event.key !== 'ArrowDown') return;
    event.preventDefault();
    enterFrom(0, 'down');
});

window.addEventListener('message', (event: MessageEvent<ToPage>) => receive(event.data));
showCondition('working', 'Working out the cut list…');
host.postMessage({ type: 'ready' });

function receive(message: ToPage): void {
    switch (message.type) {
        case 'picture':
            keep(message.subject);
            picture = { number: message.number, document: message.document };
            showPicture(message.document);
            break;
        case 'condition':
            showConditionCalmly(message.condition, message.message);
            break;
        case 'said':
            say(message.message);
            break;
        case 'sourceSelected':
            if (message.picture !== picture?.number) break;
            for (const [id, view] of views) view.mark(message.rows.filter(place => place.table === id).map(place => place.row));
            break;
        default:
            message satisfies never;
    }
}

function showPicture(shown: TablesDocument): void {
    const focused = [...views].flatMap(([id, view]) => {
        const row = view.focusedRow();
        return row === undefined ? [] : [{ id, row }];
    })[0];
    heading.replaceChildren(
        element('h1', { text: shown.title }),
        ...(shown.revision === undefined ? [] : [element('p', { class: 'revision', text: `Revision ${shown.revision}` })]),
        ...(shown.subtitle === undefined ? [] : [element('p', { class: 'subtitle', text: shown.subtitle })]),
    );
    const made = shown.tables.map((table, index): [string, TableView] => [table.id, new TableView(table, kept.sorts?.[table.id], hintId, {
        onGoTo: (row, { moveFocus }) => {
            if (picture) host.postMessage({ type: 'goTo', picture: picture.number, table: table.id, row, moveFocus });
        },
        onSort: (sort, words) => {
            const others = Object.entries(kept.sorts ?? {}).filter(([id]) => id !== table.id);
            keep({ sorts: Object.fromEntries(sort ? [...others, [table.id, sort]] : others) });
            say(words);
        },
        onLeave: direction => enterFrom(index + (direction === 'down' ? 1 : -1), direction),
    })]);
    views = new Map(made);
    const hasSource = shown.tables.some(table => table.rows.some(row => row.at));
    sheets.replaceChildren(
        ...section('Cautions', shown.cautions, 'cautions'),
        ...(hasSource ? [hint] : []),
        ...made.map(([, view]) => view.root),
        ...(made.length === 0 ? [element('p', { class: 'nothing', text: 'There is nothing to cut in this job yet.' })] : []),
        ...section('Notes', shown.notes, 'notes'),
    );
    saveButton.disabled = shown.csv.length === 0;
    applyFilter();
    // Focusing a row while the person types in the editor would take the keyboard from them.
    if (focused && document.hasFocus()) views.get(focused.id)?.focusRow(focused.row);
}

function section(title: string, lines: readonly string[], name: string): HTMLElement[] {
    if (lines.length === 0) return [];
    const open = !(kept.folded ?? []).includes(name);
    return [foldingList(title, lines, name, {
        open,
        onToggle: isOpen => keep({ folded: [...(kept.folded ?? []).filter(other => other !== name), ...(isOpen ? [] : [name])] }),
    })];
}

/** A refresh that is over at once should not make the page jump, so a list already shown waits before it says so. */
function showConditionCalmly(condition: PageCondition, message: string): void {
    clearTimeout(workingTimer);
    if (condition === 'working' && picture && document.body.dataset['condition'] !== 'working') {
        workingTimer = setTimeout(() => showCondition(condition, message), 300);
    } else {
        showCondition(condition, message);
    }
}

function showCondition(condition: PageCondition, message: string): void {
    document.body.dataset['condition'] = condition;
    banner.hidden = condition === 'fresh';
    bannerText.textContent = message;
    cancelButton.hidden = condition !== 'working';
    logButton.hidden = condition !== 'failed';
    refreshButton.disabled = condition === 'working';
    tools.hidden = picture === undefined && condition === 'working';
    if (picture === undefined) saveButton.disabled = true;
    if (condition === 'failed' && heading.childElementCount === 0) heading.append(element('h1', { text: 'Cut List and Stock Plan' }));
}

function applyFilter(): number {
    let left = 0;
    for (const view of views.values()) left += view.filter(filterField.value.trim());
    return left;
}

function enterFrom(start: number, direction: 'up' | 'down'): void {
    const all = [...views.values()];
    for (let at = start; at >= 0 && at < all.length; at += direction === 'down' ? 1 : -1) {
        if (all[at]?.enter(direction === 'down' ? 'first' : 'last')) return;
    }
}

function say(words: string): void {
    said.textContent = words;
}

function keep(change: Kept): void {
    kept = { ...kept, ...change };
    host.setState(kept);
}
