/** Finds the jobs of a document well enough to let a person choose one. The language server alone decides what a job is. */

export interface JobHeader {
    readonly name: string;
    readonly title: string | undefined;
    /** Zero-based line of the header. */
    readonly line: number;
}

// A header opens its line, and its brace or `is` stands on the same line, so a line is enough to recognise one.
const header = /^\s*job\s+([\p{L}_][\p{L}\p{N}_]*(?:-[\p{L}\p{N}_]+)*)\s*(?:"((?:[^"\\]|\\.)*)")?/u;

/**
 * @param text a whole document.
 * @returns its job headers in the order written; headers inside comments are not counted.
 */
export function jobsInText(text: string): readonly JobHeader[] {
    return text.split(/\r\n|\n|\r/).flatMap((content, line) => {
        const found = header.exec(content);
        const name = found?.[1];
        return name === undefined ? [] : [{ name, title: found?.[2]?.replace(/\\(.)/g, '$1'), line }];
    });
}

/**
 * @param jobs headers in the order written.
 * @param line zero-based line of the cursor.
 * @returns the last job that starts at or before the line.
 */
export function jobAtLine(jobs: readonly JobHeader[], line: number): JobHeader | undefined {
    return jobs.filter(job => job.line <= line).at(-1);
}
