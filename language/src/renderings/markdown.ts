import { printable } from './printable.js';
import type { Table, TablesDocument } from './tables-document.js';

/** The document as Markdown with pipe tables; every text of a job is escaped, so that a name cannot make a heading, a link or HTML. */
export function documentMarkdown(document: TablesDocument): string {
    const { title, subtitle, revision, tables, notes, cautions, everyPage, whenEmpty } = document;
    const list = (heading: string, lines: readonly string[]): string[] =>
        lines.length === 0 ? [] : [`## ${heading}`, '', ...lines.map(line => `- ${escapeMarkdown(line)}`), ''];
    return [
        `# ${escapeMarkdown(title)}`, '',
        ...(subtitle === undefined && revision === undefined ? [] : [[revision === undefined ? '' : `Revision ${escapeMarkdown(revision)}`, subtitle === undefined ? '' : escapeMarkdown(subtitle)].filter(text => text !== '').join(' · '), '']),
        ...list('Cautions', cautions),
        ...tables.flatMap(table => [`## ${escapeMarkdown(table.caption)}`, '', tableMarkdown(table), '', ...(everyPage === undefined ? [] : [`*${escapeMarkdown(everyPage)}*`, ''])]),
        ...(tables.length === 0 && whenEmpty !== undefined ? [escapeMarkdown(whenEmpty), ''] : []),
        ...list('Notes', notes),
    ].join('\n').replace(/\n+$/, '\n');
}

export function tableMarkdown({ columns, rows, footer = [] }: Table): string {
    const line = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;
    const isPerColumn = footer.length === columns.length;
    return [
        line(columns.map(({ label }) => escapeMarkdown(label))),
        line(columns.map(({ align }) => align === 'end' ? '---:' : '---')),
        ...rows.map(({ cells }) => line(cells.map(({ text }) => escapeMarkdown(text)))),
        ...(isPerColumn ? [line(footer.map(escapeMarkdown))] : footer.filter(text => text !== '').flatMap(text => ['', escapeMarkdown(text)])),
    ].join('\n');
}

/** Text as it stands, in a paragraph or a cell: everything Markdown or HTML would read as a mark is escaped, line breaks become spaces. */
export function escapeMarkdown(text: string): string {
    return printable(text.replaceAll(/\s*[\r\n]+\s*/g, ' '))
        .replaceAll(/[\\`*[\]<>|~&]/g, '\\$&')
        // an underscore between letters marks nothing and stays readable
        .replaceAll(/(?<![\p{L}\p{N}])_|_(?![\p{L}\p{N}])/gu, '\\_')
        .replace(/^(\s*)(#|[-+](?=\s)|\d+(?=[.)]\s))/, (_, space: string, mark: string) => /\d/.test(mark) ? `${space}${mark}` : `${space}\\${mark}`)
        .replace(/^(\s*\d+)([.)])(?=\s)/, '$1\\$2');
}
