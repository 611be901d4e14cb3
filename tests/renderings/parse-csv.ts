/**
 * Reads comma-separated values by the grammar of RFC 4180, section 2, knowing nothing of how we write them: records end in CRLF, a field in quotes may
 * hold commas, line breaks and doubled quotes, a field without quotes none of these. Throws on anything else.
 */
export function parseCsv(text: string): string[][] {
    const records: string[][] = [];
    let at = 0;
    while (at < text.length) {
        const record: string[] = [];
        for (;;) {
            if (text[at] === '"') {
                let field = '';
                at++;
                for (;;) {
                    if (at >= text.length) throw new Error('A quoted field does not end');
                    if (text[at] !== '"') field += text.charAt(at++);
                    else if (text[at + 1] === '"') { field += '"'; at += 2; }
                    else break;
                }
                at++;
                record.push(field);
            } else {
                const start = at;
                while (at < text.length && !',\r\n"'.includes(text[at]!)) at++;
                if (text[at] === '"') throw new Error('A quote inside a field without quotes');
                record.push(text.slice(start, at));
            }
            if (text[at] !== ',') break;
            at++;
        }
        if (text.slice(at, at + 2) !== '\r\n') throw new Error(`No CRLF at ${at}`);
        at += 2;
        records.push(record);
    }
    return records;
}
