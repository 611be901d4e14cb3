const columns = [['what', 'work'], ['ours', 'ours'], ['peer', 'beside'], ['measured', 'ratio'], ['target', 'target'], ['verdict', '']];

/** Prints rows in columns as wide as their longest text. */
export function printTable(rows) {
    const texts = rows.map(row => ({ ...row, verdict: row.isMet === undefined ? '–' : row.isMet ? 'met' : 'NOT MET' }));
    const widths = columns.map(([key, title]) => Math.max(title.length, ...texts.map(row => row[key].length)));
    const line = cells => cells.map((cell, i) => cell.padEnd(widths[i])).join('  ').trimEnd();
    console.log(`\n${line(columns.map(([, title]) => title))}\n${line(widths.map(width => '-'.repeat(width)))}`);
    for (const row of texts) console.log(line(columns.map(([key]) => row[key])));
}
