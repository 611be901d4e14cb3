import { plus, ticks, zero, type Length } from '../../core/length.js';

/** Closed range of widths: both ends may be made. */
export interface WidthRange {
    readonly from: Length;
    readonly to: Length;
}

/** Panel widths a system offers for one kind of panel. All widths are cover widths. */
export interface WidthOffer {
    /** Whole modules, any order, each above zero. */
    readonly modules: readonly Length[];
    /** Absent when the system makes no panel to measure. */
    readonly madeToMeasure?: WidthRange;
}

/** An unbroken piece of a run between two fixed things (corner or section), to be filled with panels. */
export interface Stretch {
    /** Where it starts in the run, and its length. */
    readonly start: Length;
    readonly length: Length;
    /** Least width of the first, of the last, and of a panel that is both; zero when nothing limits it. */
    readonly leastFirst: Length;
    readonly leastLast: Length;
    readonly leastOnly: Length;
    /** True when two things may stand edge to edge here: at a through corner they may not, and a whole run is never empty. */
    readonly mayBeEmpty: boolean;
}

export interface StretchPanel {
    readonly width: Length;
    readonly isMadeToMeasure: boolean;
}

/** Best figures of one stretch in the order of preference, before the whole run is looked at. */
export interface StretchBest {
    readonly madeToMeasure: number;
    readonly panels: number;
    readonly broken: number;
    /** `undefined` when the stretch has no panel. */
    readonly narrowest: Length | undefined;
}

/** How many soft rules a joint at a place in the run breaks. */
export type JointCost = (at: Length) => number;

/**
 * Finds the fewest made-to-measure panels, then the fewest panels, then the fewest broken soft rules, then the widest narrowest panel
 * with which a stretch closes.
 * @returns `undefined` when it does not close
 */
export function bestOfStretch(stretch: Stretch, offer: WidthOffer, cost: JointCost): StretchBest | undefined {
    if (stretch.length === 0) {
        return stretch.mayBeEmpty ? { madeToMeasure: 0, panels: 0, broken: 0, narrowest: undefined } : undefined;
    }
    const sums = moduleSums(offer.modules, stretch.length);
    for (const madeToMeasure of offer.madeToMeasure ? [0, 1] : [0]) {
        for (let panels = 1; ; panels++) {
            if (sums(panels - madeToMeasure).size === 0) break;
            const key = search(stretch, offer, sums, cost, widestNarrowest).best(panels, madeToMeasure);
            if (key) return { madeToMeasure, panels, broken: key[0], narrowest: ticks(-key[1]) };
        }
    }
    return undefined;
}

/**
 * The panels of a stretch left to right, once the figures of `bestOfStretch` and the narrowest panel of the WHOLE run are known: made to
 * measure away from the stretch's ends, then the larger width first.
 * @param narrowest no panel may be narrower; at most the stretch's own widest narrowest
 */
export function panelsOfStretch(stretch: Stretch, offer: WidthOffer, cost: JointCost, best: StretchBest, narrowest: Length): readonly StretchPanel[] {
    if (best.panels === 0) return [];
    const range = offer.madeToMeasure;
    const limited: WidthOffer = {
        modules: offer.modules.filter(width => width >= narrowest),
        ...(range && { madeToMeasure: { from: ticks(Math.max(range.from, narrowest)), to: range.to } }),
    };
    return search(stretch, limited, moduleSums(limited.modules, stretch.length), cost, awayFromEnds).first(best.panels, best.madeToMeasure);
}

/** Two figures to make small, the first before the second. */
type Key = readonly [broken: number, second: number];
const isLess = (a: Key, b: Key): boolean => a[0] < b[0] || (a[0] === b[0] && a[1] < b[1]);

/** The second figure: its value when nothing is left to place, and with one more panel. It may only grow or stay when the rest grows. */
interface SecondFigure {
    readonly empty: number;
    readonly with: (panel: StretchPanel, endsTouched: number, rest: number) => number;
}
const widestNarrowest: SecondFigure = { empty: -Infinity, with: (panel, _ends, rest) => Math.max(0 - panel.width, rest) };
const awayFromEnds: SecondFigure = { empty: 0, with: (panel, ends, rest) => rest + (panel.isMadeToMeasure ? ends : 0) };

/** Distinct sums of exactly `count` modules, at most `limit`, found once for each count. */
export function moduleSums(modules: readonly Length[], limit: Length): (count: number) => ReadonlySet<number> {
    const widths = [...new Set(modules)].filter(width => width > 0);
    const levels: Set<number>[] = [new Set([0])];
    return count => {
        while (levels.length <= count) {
            const level = new Set<number>();
            for (const sum of levels.at(-1) ?? []) for (const width of widths) if (sum + width <= limit) level.add(sum + width);
            levels.push(level);
        }
        return levels[count] ?? new Set();
    };
}

/**
 * Search from the left over (position, panels left, made-to-measure left). A made-to-measure panel's width follows from the modules still
 * to come, so every position is a sum of modules from one of the two ends and the states stay few.
 */
function search(stretch: Stretch, offer: WidthOffer, sums: (count: number) => ReadonlySet<number>, cost: JointCost, second: SecondFigure) {
    const end = stretch.length;
    const modules = [...new Set(offer.modules)].filter(width => width > 0).sort((a, b) => b - a);
    const widest = modules[0] ?? 0;
    const narrowest = modules.at(-1) ?? 0;
    const range = offer.madeToMeasure;
    const known: Map<number, Key | undefined>[] = [];

    const isWideEnough = (at: number, width: number, left: number): boolean => {
        if (at === 0 && left === 1) return width >= stretch.leastOnly;
        if (at === 0) return width >= stretch.leastFirst;
        return left > 1 || width >= stretch.leastLast;
    };
    const options = (at: number, left: number, madeToMeasure: number): StretchPanel[] => {
        const found: StretchPanel[] = [];
        if (left > madeToMeasure) for (const width of modules) if (at + width <= end && isWideEnough(at, width, left)) found.push({ width, isMadeToMeasure: false });
        if (madeToMeasure === 1 && range) {
            for (const rest of sums(left - 1)) {
                const width = end - at - rest;
                if (width >= range.from && width <= range.to && width > 0 && isWideEnough(at, width, left)) found.push({ width: ticks(width), isMadeToMeasure: true });
            }
        }
        return found;
    };
    const canEnd = (at: number, left: number, madeToMeasure: number): boolean => {
        if (madeToMeasure === 0) return sums(left).has(end - at);
        return range !== undefined && end - at - (left - 1) * widest <= range.to && end - at - (left - 1) * narrowest >= range.from;
    };
    const keyOf = (at: number, left: number, madeToMeasure: number, panel: StretchPanel): Key | undefined => {
        const next = at + panel.width;
        const rest = bestFrom(next, left - 1, madeToMeasure - (panel.isMadeToMeasure ? 1 : 0));
        if (!rest) return undefined;
        const ends = (at === 0 ? 1 : 0) + (next === end ? 1 : 0);
        return [rest[0] + (next === end ? 0 : cost(plus(stretch.start, ticks(next)))), second.with(panel, ends, rest[1])];
    };
    const bestFrom = (at: number, left: number, madeToMeasure: number): Key | undefined => {
        if (left === 0) return at === end ? [0, second.empty] : undefined;
        if (!canEnd(at, left, madeToMeasure)) return undefined;
        const knownHere = known[2 * left + madeToMeasure] ??= new Map<number, Key | undefined>();
        if (knownHere.has(at)) return knownHere.get(at);
        let best: Key | undefined;
        for (const panel of options(at, left, madeToMeasure)) {
            const key = keyOf(at, left, madeToMeasure, panel);
            if (key && (!best || isLess(key, best))) best = key;
        }
        knownHere.set(at, best);
        return best;
    };
    /** Larger width first wherever several panels lead to the best. */
    const first = (panels: number, madeToMeasure: number): readonly StretchPanel[] => {
        const chosen: StretchPanel[] = [];
        let at = zero;
        let toMeasure = madeToMeasure;
        for (let left = panels; left > 0; left--) {
            const best = bestFrom(at, left, toMeasure);
            const panel = options(at, left, toMeasure).sort((a, b) => b.width - a.width).find(option => {
                const key = keyOf(at, left, toMeasure, option);
                return key !== undefined && best !== undefined && !isLess(key, best) && !isLess(best, key);
            });
            if (!panel) throw new Error(`A stretch of ${end} ticks closed and then did not, at ${at}`);
            chosen.push(panel);
            at = plus(at, panel.width);
            if (panel.isMadeToMeasure) toMeasure -= 1;
        }
        return chosen;
    };
    return { best: (panels: number, madeToMeasure: number) => bestFrom(0, panels, madeToMeasure), first };
}
