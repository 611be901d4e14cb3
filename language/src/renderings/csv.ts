/**
 * Comma-separated values as RFC 4180 has them: fields divided by commas, records ended by CRLF, a field in quotes only when it holds a quote, a
 * comma or a line break. A figure given as a number is written with a point; text that a spreadsheet would take for a formula is disarmed.
 */
export type CsvField = string | number | undefined;

/** The text of a table, its header record first. A record shorter than the header is a defect and throws. */
export function toCsv(header: readonly string[], records: readonly (readonly CsvField[])[]): string {
    const wrong = records.find(record => record.length !== header.length);
    if (wrong) throw new Error(`A record has ${wrong.length} fields under a header of ${header.length}`);
    return [header, ...records].map(record => `${record.map(field).join(',')}\r\n`).join('');
}

function field(value: CsvField): string {
    if (value === undefined) return '';
    if (typeof value === 'number') return String(value);
    const text = disarm(value);
    return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/**
 * Spreadsheets run a text that begins with = + - @ (or a tab or line break before one) as a formula, and names and titles come from files other people
 * wrote. An apostrophe in front makes it text again; it is the one character added, and only in front of those.
 */
const disarm = (text: string): string => /^[=+\-@\t\r\n]/.test(text) ? `'${text}` : text;
