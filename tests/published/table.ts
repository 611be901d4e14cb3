import { expect, test } from 'vitest';

/**
 * One figure published outside the project against what the product computes for the same case. The rows are data, so the list of what is
 * checked, against what and how closely can be read off the tables.
 */
export interface PublishedRow {
    /** The document or data set, with its edition. */
    readonly source: string;
    /** Clause, table, equation or example in it. */
    readonly clause: string;
    readonly what: string;
    readonly published: number | string;
    readonly ours: () => number | string;
    /** Largest accepted difference, in the unit of the figure; 0 for text and for figures that must be equal. */
    readonly tolerance: number;
    readonly toleranceReason: string;
    /** The published figure was written down from memory of the document and still has to be compared with a copy of it. */
    readonly fromMemory?: true;
    /** Name of the function in `language/` that the row holds to account. */
    readonly checks: string;
}

/** Makes one test of each row. */
export function checkPublished(rows: readonly PublishedRow[]): void {
    test.each(rows.map(row => [`${row.source}, ${row.clause}: ${row.what}`, row] as const))('%s', (_title, row) => {
        const ours = row.ours();
        if (typeof row.published === 'string' || typeof ours === 'string') {
            expect(ours).toBe(row.published);
            return;
        }
        expect(Number.isFinite(ours), `not a number: ${ours}`).toBe(true);
        const difference = Math.abs(ours - row.published);
        expect(difference, `ours ${ours}, published ${row.published}, tolerance ${row.tolerance}: ${row.toleranceReason}`).toBeLessThanOrEqual(row.tolerance);
    });
}
