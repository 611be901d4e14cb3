/** One table: sorted by its headers, filtered, walked with the arrow keys, each row leading to its source. */
import type { TablesDocument } from '../tables-document.js';
import { element } from './elements.js';
import { matches, nextSort, sortedRows, type Sort } from './sorting.js';

type Table = TablesDocument['tables'][number];
/** Whose text a place stands in. A table that compares nothing has one side: now. */
export type Side = 'before' | 'now';

export interface TableEvents {
    readonly onGoTo: (row: number, options: { readonly side: Side; readonly moveFocus: boolean }) => void;
    readonly onSort: (sort: Sort | undefined, column: string) => void;
    /** The arrow keys ran off the table's end; the next table, if any, takes them. */
    readonly onLeave: (direction: 'up' | 'down') => void;
}

/** Characters past which any cell may break into lines; shorter ones keep a row one line high. */
const longText = 48;

export class TableView {
    readonly root: HTMLElement;
    readonly #table: Table;
    readonly #events: TableEvents;
    readonly #rows: readonly HTMLTableRowElement[];
    readonly #body: HTMLTableSectionElement;
    readonly #headers: readonly HTMLTableCellElement[];
    readonly #count: HTMLElement;
    readonly #nothing: HTMLElement;
    #sort: Sort | undefined;

    constructor(table: Table, sort: Sort | undefined, hintId: string, events: TableEvents) {
        this.#table = table;
        this.#events = events;
        this.#sort = sort;
        this.#count = element('span', { class: 'count' });
        this.#nothing = element('p', { class: 'nothing', text: 'No row matches the filter.' });
        this.#headers = table.columns.map((column, index) => this.#header(column, index));
        this.#rows = table.rows.map((row, index) => this.#row(row, index));
        this.#body = element('tbody');
        const captionId = `caption-${table.id}`;
        const caption = element('caption', {
            children: [element('span', { class: 'across', children: [element('span', { class: 'caption', text: table.caption, attributes: { id: captionId } }), this.#count] })],
        });
        const grid = element('table', {
            // A grid, because the rows take the arrow keys: as a plain table a screen reader would keep them for itself.
            attributes: { role: 'grid', 'aria-readonly': 'true', 'aria-labelledby': captionId, 'aria-describedby': hintId },
            children: [caption, element('thead', { children: [element('tr', { children: this.#headers })] }), this.#body, ...this.#footer()],
        });
        this.#body.addEventListener('keydown', event => this.#key(event));
        this.#body.addEventListener('click', event => this.#press(event, false));
        this.#body.addEventListener('dblclick', event => this.#press(event, true));
        this.#body.addEventListener('focusin', event => this.#rove(this.#rowOf(event.target)));
        this.root = element('section', { class: 'sheet', attributes: { 'data-table': table.id }, children: [element('div', { class: 'scroll', children: [grid] }), this.#nothing] });
        this.#order();
    }

    /** Shows the rows that hold every word of the filter. @returns how many are shown. */
    filter(text: string): number {
        for (const [index, row] of this.#table.rows.entries()) {
            const shown = this.#rows[index];
            if (shown) shown.hidden = !matches(row, text);
        }
        const visible = this.#visible();
        const [all, left] = [this.#rows.length, visible.length];
        this.#count.textContent = left === all ? rowCount(all) : `${left} of ${rowCount(all)}`;
        this.#nothing.hidden = left > 0 || all === 0;
        if (!visible.some(row => row.tabIndex === 0)) this.#rove(visible[0]);
        return left;
    }

    /** Lights up the rows made by the source under the cursor. */
    mark(rows: readonly number[]): void {
        for (const [index, row] of this.#rows.entries()) {
            if (rows.includes(index)) row.setAttribute('aria-current', 'true');
            else row.removeAttribute('aria-current');
        }
        const first = rows[0];
        if (first !== undefined) this.#rows[first]?.scrollIntoView({ block: 'nearest' });
    }

    /** @returns a name for the row that holds the keyboard which still fits after the list is made again, or `undefined`. */
    focusedRow(): string | undefined {
        const index = this.#rows.findIndex(row => row === document.activeElement);
        return index < 0 ? undefined : this.#nameOf(index);
    }

    focusRow(name: string): boolean {
        const row = this.#rows[this.#rows.findIndex((_, index) => this.#nameOf(index) === name)];
        if (!row || row.hidden) return false;
        row.focus();
        return true;
    }

    /** @returns whether there was a row to give the keyboard to. */
    enter(from: 'first' | 'last'): boolean {
        const visible = this.#visible();
        const row = from === 'first' ? visible[0] : visible.at(-1);
        row?.focus();
        return row !== undefined;
    }

    #header(column: Table['columns'][number], index: number): HTMLTableCellElement {
        const press = element('button', { text: column.label, attributes: { type: 'button' } });
        press.addEventListener('click', () => {
            this.#sort = nextSort(this.#sort, index);
            this.#order();
            this.#events.onSort(this.#sort, column.label);
        });
        return element('th', { class: column.align, attributes: { scope: 'col' }, children: [press] });
    }

    #row(row: Table['rows'][number], index: number): HTMLTableRowElement {
        const made = element('tr', {
            class: row.at ?? row.before ? 'leads' : '',
            attributes: { 'data-row': String(index) },
            children: row.cells.map((cell, index) => this.#cell(cell, index)),
        });
        made.tabIndex = -1;
        return made;
    }

    #cell({ text, place }: Table['rows'][number]['cells'][number], index: number): HTMLTableCellElement {
        const column = this.#table.columns[index];
        const look = column?.align ?? 'start';
        const children = heldText(text);
        if (index === 0) return element('th', { class: look, children, attributes: { scope: 'row' } });
        const mayBreak = text.length > longText || (column?.isProse === true && text.length > longText / 2);
        const made = element('td', { class: mayBreak ? `${look} long` : look, children });
        if (column?.side) made.dataset['side'] = column.side;
        // Out of the order of Tab: the row is in it, and the arrow keys lead from the row to its places.
        if (column?.side && place !== undefined) made.append(element('button', { class: 'place', text: place, attributes: { type: 'button', tabindex: '-1', 'aria-label': `${column.label}: ${place}` } }));
        return made;
    }

    #footer(): HTMLElement[] {
        const { footer = [], columns } = this.#table;
        if (footer.length === 0) return [];
        const cells = footer.length === columns.length
            ? [element('tr', { children: footer.map((text, index) => element('td', { class: columns[index]?.align ?? 'start', text })) })]
            : footer.map(text => element('tr', {
                children: [element('td', { attributes: { colspan: String(columns.length) }, children: [element('span', { class: 'across', text })] })],
            }));
        return [element('tfoot', { children: cells })];
    }

    #order(): void {
        const held = document.activeElement;
        this.#body.append(...sortedRows(this.#table.rows, this.#sort).flatMap(index => this.#rows[index] ?? []));
        // Moving a row that holds the keyboard drops it; hand it back.
        if (held instanceof HTMLElement && this.#body.contains(held)) held.focus();
        for (const [index, header] of this.#headers.entries()) {
            header.setAttribute('aria-sort', this.#sort?.column === index ? this.#sort.direction : 'none');
        }
    }

    #key(event: KeyboardEvent): void {
        if (event.altKey || event.ctrlKey || event.metaKey) return;
        const visible = this.#visible();
        const at = visible.findIndex(row => row === this.#rowOf(event.target));
        const own = visible[at];
        if (!own) return;
        const stops = [own, ...own.querySelectorAll<HTMLElement>('button.place')];
        const stop = stops.findIndex(one => one === document.activeElement);
        const sideways = (to: number): void => {
            event.preventDefault();
            stops[Math.max(0, Math.min(to, stops.length - 1))]?.focus();
        };
        const go = (to: number): void => {
            event.preventDefault();
            if (to < 0) this.#events.onLeave('up');
            else if (to >= visible.length) this.#events.onLeave('down');
            else visible[to]?.focus();
        };
        switch (event.key) {
            case 'ArrowDown': return go(at + 1);
            case 'ArrowUp': return go(at - 1);
            case 'PageDown': return go(Math.min(at + 10, visible.length - 1));
            case 'PageUp': return go(Math.max(at - 10, 0));
            case 'Home': return go(0);
            case 'End': return go(visible.length - 1);
            case 'ArrowRight': return sideways(stop + 1);
            case 'ArrowLeft': return sideways(stop - 1);
            case 'Enter':
                event.preventDefault();
                this.#goTo(own, { side: event.shiftKey ? 'before' : this.#sideOf(event.target), moveFocus: true });
                break;
            default:
        }
    }

    #press(event: MouseEvent, moveFocus: boolean): void {
        const row = this.#rowOf(event.target);
        // Someone marking text to copy it is not asking for the source.
        if (!row || (!moveFocus && document.getSelection()?.isCollapsed === false)) return;
        row.focus({ preventScroll: true });
        this.#goTo(row, { side: this.#sideOf(event.target), moveFocus });
    }

    /** What is on one side only leads there, whichever was asked for. */
    #goTo(row: HTMLTableRowElement, { side, moveFocus }: { readonly side: Side; readonly moveFocus: boolean }): void {
        const index = Number(row.dataset['row']);
        const shown = this.#table.rows[index];
        if (!shown?.at && !shown?.before) return;
        this.#events.onGoTo(index, { side: !shown.before ? 'now' : !shown.at ? 'before' : side, moveFocus });
    }

    #sideOf(target: EventTarget | null): Side {
        return target instanceof Element && target.closest<HTMLElement>('td[data-side]')?.dataset['side'] === 'before' ? 'before' : 'now';
    }

    #rove(row: HTMLTableRowElement | undefined): void {
        if (!row) return;
        for (const other of this.#rows) other.tabIndex = -1;
        row.tabIndex = 0;
    }

    #rowOf(target: EventTarget | null): HTMLTableRowElement | undefined {
        return (target instanceof Element ? target.closest<HTMLTableRowElement>('tr[data-row]') : null) ?? undefined;
    }

    #visible(): HTMLTableRowElement[] {
        return [...this.#body.querySelectorAll<HTMLTableRowElement>('tr[data-row]')].filter(row => !row.hidden);
    }

    #nameOf(index: number): string {
        const name = (at: number): string => this.#table.rows[at]?.cells[0]?.text ?? '';
        const before = this.#table.rows.slice(0, index).filter((_, at) => name(at) === name(index)).length;
        return `${name(index)}#${before}`;
    }
}

/**
 * Text that breaks where it may: a fraction stays with its whole inches, a figure with its unit and a mark with its number. Read alone at the start of a
 * line, each is another length or another part.
 */
const heldText = (text: string): readonly Node[] => text.split(/((?:≈|\b)\d+ \d+\/\d+["']?|\b[\d.]+ (?:mm|cm|m|kg|A|V|W|kW)\b|\b[A-Z0-9]+(?:-[A-Z0-9]+)+\b)/)
    .map((part, index) => index % 2 === 1 ? element('span', { class: 'whole', text: part }) : document.createTextNode(part));

function rowCount(count: number): string {
    return count === 1 ? '1 row' : `${count} rows`;
}
