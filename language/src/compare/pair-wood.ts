import type { ModelPanel, ModelPart } from '../exports/model-schema.js';
import { compareMarks } from '../renderings/cut-list.js';

/** Keys of one side and the other that are one and the same piece, changed or not; a piece of one side only has no other. */
export type Pair = readonly [a: string | undefined, b: string | undefined];

/**
 * Pairs the pieces of two sides. What is cut alike under one mark belongs together; then what is cut alike and stands in the same place under another
 * mark, then what is cut alike anywhere; then what has the same mark, and was cut otherwise. Changing the sides over gives the same pairs.
 */
export function pairWood<T extends ModelPanel | ModelPart>(a: ReadonlyMap<string, T>, b: ReadonlyMap<string, T>): readonly Pair[] {
    const [left, right] = [new Map(a), new Map(b)];
    const pairs: Pair[] = [];
    const take = (one: string, other: string): void => { pairs.push([one, other]); left.delete(one); right.delete(other); };
    const takeAlike = (says: (row: T) => string): void => {
        const others = byWhat(right, says);
        for (const [what, marks] of byWhat(left, says)) marks.forEach((mark, i) => { const other = others.get(what)?.[i]; if (other !== undefined) take(mark, other); });
    };
    takeAlike(row => `${row.mark} ${cutOf(row)}`);
    takeAlike(row => `${placeOf(row)} ${cutOf(row)}`);
    takeAlike(cutOf);
    for (const mark of [...left.keys()]) if (right.has(mark)) take(mark, mark);
    return [...pairs, ...[...left.keys()].map((mark): Pair => [mark, undefined]), ...[...right.keys()].map((mark): Pair => [undefined, mark])];
}

function byWhat<T>(rows: ReadonlyMap<string, T>, says: (row: T) => string): ReadonlyMap<string, readonly string[]> {
    const found = new Map<string, string[]>();
    for (const [mark, row] of [...rows].sort(([x], [y]) => compareMarks(x, y))) {
        const same = found.get(says(row));
        if (same) same.push(mark); else found.set(says(row), [mark]);
    }
    return found;
}

/** Everything a saw or a panel bench is set to, and nothing else. */
export function cutOf(row: ModelPanel | ModelPart): string {
    if ('side' in row) return JSON.stringify([row.kind, ...[row.cover, row.overall, row.height, row.thickness].map(({ ticks }) => ticks), row.tongue ?? '', row.cutOuts.map(cutOut => [cutOut.what, cutOut.width.ticks, cutOut.height.ticks, cutOut.fromLeftEdge.ticks, cutOut.overFinishedFloor.ticks])]);
    const notches = row.notches.map(({ side, measuredFrom, from, length, depth, toward }) => [side, measuredFrom, from.ticks, length.ticks, depth.ticks, toward ?? '']);
    return JSON.stringify([row.part, row.count, row.stock ?? '', row.nominal ?? '', row.section.thickness.ticks, row.section.width.ticks, row.length.ticks, row.allowance?.ticks ?? 0, row.endsDegrees.left, row.endsDegrees.right, row.endsDegrees.across ?? '', notches, row.cut]);
}

const placeOf = (row: ModelPanel | ModelPart): string => 'side' in row ? row.side : row.place?.wall ?? row.goesTo;
