import { inches, type Length } from '../core/length.js';
import { showList } from '../core/show.js';
import type { StockBoard, StockPlan } from '../engines/stock/request.js';
import { showBoardLength, showCut, type Scale } from './show-figures.js';
import type { PlannedStock } from './stock-tasks.js';

export type WithPlan = PlannedStock & { readonly plan: StockPlan };
export const hasPlan = (one: PlannedStock): one is WithPlan => one.plan !== undefined;

/** A board with its number; boards are numbered through all stocks of a job, so that a number is chalked on one board only. */
export interface NumberedBoard {
    readonly number: number;
    readonly board: StockBoard;
}
export interface NumberedPlan {
    readonly one: WithPlan;
    readonly boards: readonly NumberedBoard[];
}

export function numberBoards(planned: readonly PlannedStock[]): readonly NumberedPlan[] {
    let last = 0;
    return planned.filter(hasPlan).map(one => ({ one, boards: one.plan.boards.map(board => ({ board, number: ++last })) }));
}

/** One stop of the saw. */
export interface SawStop {
    readonly letter: string;
    /** Exact lengths that are one figure on the saw's scale, longest first; nearly always one. */
    readonly lengths: readonly [Length, ...Length[]];
    readonly pieces: number;
}

/** The stops of one stock, longest first: one letter, one figure on the scale. Lengths that differ by less than the scale shows are cut at one stop. */
export function sawStops({ boards }: Pick<StockPlan, 'boards'>, unit: Scale): readonly SawStop[] {
    const pieces = new Map<Length, number>();
    for (const { length } of boards.flatMap(({ cuts }) => cuts)) pieces.set(length, (pieces.get(length) ?? 0) + 1);
    const byFigure = new Map<string, { lengths: [Length, ...Length[]]; pieces: number }>();
    for (const [length, count] of [...pieces].sort(([a], [b]) => b - a)) {
        const figure = showCut(length, unit).replace('≈', '');
        const known = byFigure.get(figure);
        if (!known) byFigure.set(figure, { lengths: [length], pieces: count });
        else { known.lengths.push(length); known.pieces += count; }
    }
    return [...byFigure.values()].map((stop, index) => ({ letter: stopName(index), ...stop }));
}

/** Letters by the lengths they stand for. */
export const stopLetters = (plan: Pick<StockPlan, 'boards'>, unit: Scale): ReadonlyMap<Length, string> =>
    new Map(sawStops(plan, unit).flatMap(({ letter, lengths }) => lengths.map(length => [length, letter] as const)));

/** Stops are named A to Z, then AA: a saw operator reads letters off a sheet faster than a second row of numbers. */
export function stopName(index: number): string {
    const letter = String.fromCharCode(65 + index % 26);
    return index < 26 ? letter : stopName(Math.floor(index / 26) - 1) + letter;
}

/** Offcut under which a board is as good as used up: less than squaring its two ends takes. Common practice, no source. */
export const tightOffcut = inches(0, 1, 2);

/** Whether a board has to be full length and square at both ends as it comes: nothing is trimmed and next to nothing is left. */
export const isTight = ({ trimTotal, offcut }: Pick<StockBoard, 'trimTotal' | 'offcut'>): boolean => trimTotal === 0 && offcut < tightOffcut;

/** What stands at a board that has to be perfect. */
export const boardCaution = (board: StockBoard, unit: Scale): string | undefined => !isTight(board) ? undefined
    : `Must be ${showBoardLength(board.stockLength, unit)} in full and square at both ends: ${board.offcut === 0 ? 'nothing is left' : `only ${showCut(board.offcut, unit)} is left`} for trimming. Measure it before the first cut.`;

/** What a saw operator has to be warned of before the first cut. */
export function planWarnings({ one, boards }: NumberedPlan): readonly string[] {
    // trim and offcut are where a board's bad end goes; a board with neither has to be perfect
    const tight = boards.filter(({ board }) => isTight(board)).map(({ number }) => String(number));
    if (tight.length === 0) return [];
    const isAll = boards.every(({ board }) => !isTight(board) || board.offcut === 0);
    const [which, its] = tight.length === 1 ? ['board', 'its'] : ['boards', 'their'];
    return [`Warning: ${which} ${showList(tight)} ${tight.length === 1 ? 'is' : 'are'} used up with no end trim and ${isAll ? 'no offcut' : 'next to no offcut'}, so one that is short, split or out of square at an end spoils ${its} last piece. ` +
        `Measure ${tight.length === 1 ? 'it' : 'them'} before the first cut${one.stock === undefined ? '' : `, or give ${one.stock} an end_trim in the catalogue`}.`];
}
