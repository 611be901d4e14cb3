/** The candidate most like `word`, when one is like enough to be meant; ties go to the earlier candidate. */
export function nearestName(word: string, candidates: Iterable<string>): string | undefined {
    let best: string | undefined;
    let bestCost = Infinity;
    const typed = word.toLowerCase();
    for (const candidate of candidates) {
        const cost = editDistance(typed, candidate.toLowerCase());
        if (cost < bestCost) [best, bestCost] = [candidate, cost];
    }
    return bestCost <= Math.max(1, Math.floor(word.length / 3)) ? best : undefined;
}

/** Edits between two words: insert, delete, replace, or swap of neighbours, each counting one. */
export function editDistance(a: string, b: string): number {
    const rows: number[][] = [Array.from({ length: b.length + 1 }, (_, j) => j)];
    for (let i = 1; i <= a.length; i++) {
        const row = [i];
        const above = rows[i - 1] ?? [];
        for (let j = 1; j <= b.length; j++) {
            const same = a[i - 1] === b[j - 1];
            let cost = Math.min((above[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, (above[j - 1] ?? 0) + (same ? 0 : 1));
            if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) cost = Math.min(cost, (rows[i - 2]?.[j - 2] ?? 0) + 1);
            row.push(cost);
        }
        rows.push(row);
    }
    return rows[a.length]?.[b.length] ?? 0;
}
