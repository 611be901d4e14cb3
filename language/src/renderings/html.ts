import { printable } from './printable.js';
import type { Table, TablesDocument } from './tables-document.js';

/** Colours come from the reader's own system, so that light, dark and high contrast all read; on paper it is black on white. */
const styles = `
:root { color-scheme: light dark; }
body { font: 11pt/1.4 system-ui, sans-serif; margin: 1.5rem auto; max-width: 70rem; padding: 0 1rem 3rem; }
h1 { font-size: 1.5em; margin-bottom: 0; }
h2 { font-size: 1.1em; margin: 1.6em 0 .4em; }
table { border-collapse: collapse; width: 100%; }
th, td { border-bottom: 1px solid currentColor; padding: .2em .6em .2em 0; text-align: start; vertical-align: top; }
th.end, td.end { text-align: end; }
.every-page { font-weight: bold; }
@media print {
  body { margin: 0; max-width: none; padding: 0; color: #000; background: #fff; }
  thead { display: table-header-group; }
  tr { break-inside: avoid; }
  h2 { break-after: avoid; }
  @page { margin: 15mm 15mm 22mm; }
  footer.every-page { position: fixed; bottom: -12mm; left: 0; right: 0; font-size: 9pt; }
}
`;

/** The document as one page that needs nothing beside it: no script, no font, no address. What must stand on every page stands below each table and is fixed to the foot of each printed page. */
export function documentHtml(documents: readonly TablesDocument[], language = 'en'): string {
    const [first] = documents;
    const every = [...new Set(documents.flatMap(({ everyPage }) => everyPage ?? []))];
    return [
        '<!DOCTYPE html>', `<html lang="${language}">`, '<head>', '<meta charset="utf-8">', '<meta name="viewport" content="width=device-width, initial-scale=1">',
        `<title>${escapeHtml(documents.length > 1 ? 'Electrical schedules' : first?.title ?? 'Nothing to show')}</title>`, `<style>${styles}</style>`, '</head>', '<body>',
        ...documents.flatMap(article),
        ...every.map(text => `<footer class="every-page">${escapeHtml(text)}</footer>`),
        '</body>', '</html>', '',
    ].join('\n');
}

function article({ title, subtitle, revision, tables, notes, cautions, everyPage, whenEmpty }: TablesDocument): readonly string[] {
    const list = (heading: string, lines: readonly string[]): string[] => lines.length === 0 ? [] : [`<h2>${heading}</h2>`, '<ul>', ...lines.map(line => `<li>${escapeHtml(line)}</li>`), '</ul>'];
    const head = [revision === undefined ? undefined : `Revision ${revision}`, subtitle].filter(text => text !== undefined).join(' · ');
    return [
        '<article>', `<h1>${escapeHtml(title)}</h1>`, ...(head === '' ? [] : [`<p>${escapeHtml(head)}</p>`]),
        ...list('Cautions', cautions),
        ...tables.flatMap(table => [...tableHtml(table), ...(everyPage === undefined ? [] : [`<p class="every-page">${escapeHtml(everyPage)}</p>`])]),
        ...(tables.length === 0 && whenEmpty !== undefined ? [`<p>${escapeHtml(whenEmpty)}</p>`] : []),
        ...list('Notes', notes), '</article>',
    ];
}

function tableHtml({ caption, columns, rows, footer = [] }: Table): readonly string[] {
    const row = (tag: 'td' | 'th', texts: readonly string[]): string =>
        `<tr>${texts.map((text, i) => `<${tag}${tag === 'th' ? ' scope="col"' : ''}${columns[i]?.align === 'end' ? ' class="end"' : ''}>${escapeHtml(text)}</${tag}>`).join('')}</tr>`;
    const isPerColumn = footer.length === columns.length;
    return [
        `<h2>${escapeHtml(caption)}</h2>`, '<table>', `<thead>${row('th', columns.map(({ label }) => label))}</thead>`, '<tbody>', ...rows.map(({ cells }) => row('td', cells.map(({ text }) => text))), '</tbody>',
        ...(isPerColumn ? [`<tfoot>${row('td', footer)}</tfoot>`] : []), '</table>',
        ...(isPerColumn ? [] : footer.filter(text => text !== '').map(text => `<p>${escapeHtml(text)}</p>`)),
    ];
}

/** Text as it stands: nothing a job says becomes a tag, an attribute or an entity. */
export const escapeHtml = (text: string): string => printable(text).replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;').replaceAll('\'', '&#39;');
