/** A page of tables: shows what the extension sends, and sends back what the person asks for. */
import type { PageCondition, ToPage } from '../page-protocol.js';
import type { ComparisonSubject, PageMessage, Subject, TablesDocument } from '../tables-document.js';
import { button, element, foldingList } from './elements.js';
import type { Sort } from './sorting.js';
import { TableView } from './table-view.js';

/** What the page keeps while its tab is hidden or the window reloads. The subject lets the extension find the list again. */
interface Kept {
    readonly filter?: string;
    readonly sorts?: Readonly<Record<string, Sort>>;
    readonly folded?: readonly string[];
}

declare function acquireVsCodeApi(): { postMessage(message: PageMessage): void; getState(): Kept | undefined; setState(state: Kept): void };

/** What a tool of the page does; each sends the message of its name. */
export type Tool = 'saveCsv' | 'copyMarkdown' | 'showTexts';
const toolTexts: Readonly<Record<Tool, string>> = { saveCsv: 'Save CSV', copyMarkdown: 'Copy as Markdown', showTexts: 'Show Texts Side by Side' };

/** In what one page of tables differs from another. */
export interface PageKind {
    /** Shown until there is a title. */
    readonly heading: string;
    readonly working: string;
    /** Said of a document without tables. */
    readonly nothing: string;
    readonly hint: string;
    /** Said when a table is in its first order again. */
    readonly order: string;
    readonly tools: readonly Tool[];
    /** Whether buttons lead to the tables. */
    readonly hasContents: boolean;
    readonly cautions: 'first' | 'last';
}

const hintId = 'row-keys';

export const startPage = (kind: PageKind): TablesPage => new TablesPage(kind);

class TablesPage {
    readonly #host = acquireVsCodeApi();
    readonly #kind: PageKind;
    readonly #heading = element('header');
    readonly #filterField = element('input', {
        attributes: { type: 'search', id: 'filter', placeholder: 'Filter rows', 'aria-label': 'Filter rows', autocomplete: 'off', spellcheck: 'false' },
    });
    readonly #toolButtons: ReadonlyMap<Tool, HTMLButtonElement>;
    readonly #refreshButton = button('Refresh', () => this.#host.postMessage({ type: 'refresh' }));
    readonly #cancelButton = button('Cancel', () => this.#host.postMessage({ type: 'cancel' }));
    readonly #logButton = button('Show Log', () => this.#host.postMessage({ type: 'showLog' }));
    readonly #hint: HTMLElement;
    readonly #banner = element('div', { class: 'banner' });
    readonly #bannerText = element('span', { attributes: { role: 'status' } });
    readonly #said = element('p', { class: 'said', attributes: { role: 'status' } });
    readonly #contents = element('nav', { class: 'contents', attributes: { 'aria-label': 'Contents' } });
    readonly #sheets = element('div', { class: 'sheets' });
    readonly #tools: HTMLElement;
    #kept: Kept;
    #picture: { readonly number: number; readonly document: TablesDocument } | undefined;
    #workingTimer: ReturnType<typeof setTimeout> | undefined;
    #views: ReadonlyMap<string, TableView> = new Map();

    constructor(kind: PageKind) {
        this.#kind = kind;
        this.#kept = this.#host.getState() ?? {};
        this.#hint = element('p', { class: 'hint', attributes: { id: hintId }, text: kind.hint });
        this.#toolButtons = new Map(kind.tools.map((tool, index) => [tool, button(toolTexts[tool], () => this.#host.postMessage({ type: tool }), index === 0 ? { class: 'primary' } : {})]));
        this.#tools = element('div', {
            class: 'tools', attributes: { role: 'group', 'aria-label': 'List tools' },
            children: [this.#filterField, ...this.#toolButtons.values(), this.#refreshButton, this.#said],
        });
        this.#banner.append(this.#bannerText, this.#cancelButton, this.#logButton);
        document.getElementById('page')?.append(this.#heading, this.#tools, this.#banner, this.#contents, this.#sheets);
        this.#contents.hidden = true;
        this.#filterField.value = this.#kept.filter ?? '';
        this.#filterField.addEventListener('input', () => {
            this.#keep({ filter: this.#filterField.value });
            const left = this.#applyFilter();
            this.#say(this.#filterField.value.trim() === '' ? '' : left === 1 ? '1 row matches.' : `${left} rows match.`);
        });
        this.#filterField.addEventListener('keydown', event => {
            if (event.key !== 'ArrowDown') return;
            event.preventDefault();
            this.#enterFrom(0, 'down');
        });
        window.addEventListener('message', (event: MessageEvent<ToPage>) => this.#receive(event.data));
        this.#showCondition('working', kind.working);
        this.#host.postMessage({ type: 'ready' });
    }

    #receive(message: ToPage): void {
        switch (message.type) {
            case 'picture':
                this.#keep(message.subject);
                this.#picture = { number: message.number, document: message.document };
                this.#showPicture(message.document);
                break;
            case 'condition':
                this.#showConditionCalmly(message.condition, message.message);
                break;
            case 'said':
                this.#say(message.message);
                break;
            case 'sourceSelected':
                if (message.picture !== this.#picture?.number) break;
                for (const [id, view] of this.#views) view.mark(message.rows.filter(place => place.table === id).map(place => place.row));
                break;
            default:
                message satisfies never;
        }
    }

    #showPicture(shown: TablesDocument): void {
        const focused = [...this.#views].flatMap(([id, view]) => {
            const row = view.focusedRow();
            return row === undefined ? [] : [{ id, row }];
        })[0];
        this.#heading.replaceChildren(
            element('h1', { text: shown.title }),
            ...(shown.revision === undefined ? [] : [element('p', { class: 'revision', text: `Revision ${shown.revision}` })]),
            ...(shown.subtitle === undefined ? [] : [element('p', { class: 'subtitle', text: shown.subtitle })]),
        );
        const made = shown.tables.map((table, index): [string, TableView] => [table.id, new TableView(table, this.#kept.sorts?.[table.id], hintId, {
            onGoTo: (row, { side, moveFocus }) => {
                if (this.#picture) this.#host.postMessage({ type: 'goTo', picture: this.#picture.number, table: table.id, row, side, moveFocus });
            },
            onSort: (sort, column) => {
                const others = Object.entries(this.#kept.sorts ?? {}).filter(([id]) => id !== table.id);
                this.#keep({ sorts: Object.fromEntries(sort ? [...others, [table.id, sort]] : others) });
                this.#say(sort ? `Sorted by ${column}, ${sort.direction}.` : this.#kind.order);
            },
            onLeave: direction => this.#enterFrom(index + (direction === 'down' ? 1 : -1), direction),
        })]);
        this.#views = new Map(made);
        const hasSource = shown.tables.some(table => table.rows.some(row => row.at ?? row.before));
        const cautions = this.#section('Cautions', shown.cautions, 'cautions');
        this.#sheets.replaceChildren(
            ...(this.#kind.cautions === 'first' ? cautions : []),
            ...(hasSource ? [this.#hint] : []),
            ...made.map(([, view]) => view.root),
            ...(made.length === 0 ? [element('p', { class: 'nothing', text: this.#kind.nothing })] : []),
            ...this.#section('Notes', shown.notes, 'notes'),
            ...(this.#kind.cautions === 'last' ? cautions : []),
        );
        this.#showContents(shown);
        this.#toolButtons.get('saveCsv')?.toggleAttribute('disabled', shown.csv.length === 0);
        this.#toolButtons.get('copyMarkdown')?.toggleAttribute('disabled', shown.markdown === undefined);
        this.#toolButtons.get('showTexts')?.toggleAttribute('disabled', !shown.tables.some(table => table.rows.some(({ at, before }) => at && before && at.uri !== before.uri)));
        this.#applyFilter();
        // Focusing a row while the person types in the editor would take the keyboard from them.
        if (focused && document.hasFocus()) this.#views.get(focused.id)?.focusRow(focused.row);
    }

    /** One button for each table, with its rows counted: what there is to do, at a glance. */
    #showContents({ tables }: TablesDocument): void {
        this.#contents.hidden = !this.#kind.hasContents || tables.length < 2;
        this.#contents.replaceChildren(...tables.map(({ id, caption, rows }) => button(`${caption} (${rows.length})`, () => {
            const view = this.#views.get(id);
            view?.root.scrollIntoView({ block: 'start' });
            view?.enter('first');
        }, { attributes: { 'data-table': id } })));
    }

    #section(title: string, lines: readonly string[], name: string): HTMLElement[] {
        if (lines.length === 0) return [];
        const open = !(this.#kept.folded ?? []).includes(name);
        return [foldingList(title, lines, name, {
            open,
            onToggle: isOpen => this.#keep({ folded: [...(this.#kept.folded ?? []).filter(other => other !== name), ...(isOpen ? [] : [name])] }),
        })];
    }

    /** A refresh that is over at once should not make the page jump, so a list already shown waits before it says so. */
    #showConditionCalmly(condition: PageCondition, message: string): void {
        clearTimeout(this.#workingTimer);
        if (condition === 'working' && this.#picture && document.body.dataset['condition'] !== 'working') {
            this.#workingTimer = setTimeout(() => this.#showCondition(condition, message), 300);
        } else {
            this.#showCondition(condition, message);
        }
    }

    #showCondition(condition: PageCondition, message: string): void {
        document.body.dataset['condition'] = condition;
        this.#banner.hidden = condition === 'fresh';
        this.#bannerText.textContent = message;
        this.#cancelButton.hidden = condition !== 'working';
        this.#logButton.hidden = condition !== 'failed';
        this.#refreshButton.disabled = condition === 'working';
        this.#tools.hidden = this.#picture === undefined && condition === 'working';
        if (this.#picture === undefined) for (const tool of this.#toolButtons.values()) tool.disabled = true;
        if ((condition === 'failed' || condition === 'refused') && this.#heading.childElementCount === 0) this.#heading.append(element('h1', { text: this.#kind.heading }));
    }

    #applyFilter(): number {
        let left = 0;
        for (const view of this.#views.values()) left += view.filter(this.#filterField.value.trim());
        return left;
    }

    #enterFrom(start: number, direction: 'up' | 'down'): void {
        const all = [...this.#views.values()];
        for (let at = start; at >= 0 && at < all.length; at += direction === 'down' ? 1 : -1) {
            if (all[at]?.enter(direction === 'down' ? 'first' : 'last')) return;
        }
    }

    #say(words: string): void {
        this.#said.textContent = words;
    }

    /** Other members of the state, such as the subject, stay as they are. */
    #keep(change: Kept | Subject | ComparisonSubject): void {
        this.#kept = { ...this.#kept, ...change };
        this.#host.setState(this.#kept);
    }
}
