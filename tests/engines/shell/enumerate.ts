/**
 * Exhaustive search for the best division of a run, written apart from the engine: it lists whole sequences of panels and compares them,
 * and shares nothing with the engine but the exact lengths.
 */
import { minus, sum, ticks, zero, type Length } from '../../../language/src/core/length.js';
import type { Interval } from '../../../language/src/core/geometry.js';

export interface Problem {
    readonly run: Length;
    /** Strip hidden at each end and least width of the end panel; zeros where the run ends against its neighbour. */
    readonly leftCovered: Length;
    readonly leftLeast: Length;
    readonly rightCovered: Length;
    readonly rightLeast: Length;
    readonly modules: readonly Length[];
    readonly toMeasure?: { readonly from: Length; readonly to: Length };
    readonly sections: readonly Interval[];
    /** Open intervals a joint should not lie in. */
    readonly soft: readonly Interval[];
}

/** A negative width stands for a panel made to measure: -18" is 18" made to measure. */
export type Filling = readonly Length[];

export interface Listed {
    readonly fillings: readonly Filling[];
    readonly figures: readonly [toMeasure: number, panels: number, broken: number, narrowest: number, toMeasureAtEnds: number];
}

interface Gap { readonly start: Length; readonly length: Length; readonly isFirst: boolean; readonly isLast: boolean }

function gaps({ run, sections }: Problem): Gap[] {
    const ordered = [...sections].sort((a, b) => a.from - b.from);
    const starts = [zero, ...ordered.map(section => section.to)];
    const ends = [...ordered.map(section => section.from), run];
    return starts.map((start, index) => ({ start, length: minus(ends[index]!, start), isFirst: index === 0, isLast: index === starts.length - 1 }));
}

/** Whether the end panels of the filling are wide enough for the corners the gap lies at. */
function cornersAreWide(problem: Problem, gap: Gap, filling: Filling): boolean {
    const widths = filling.map(Math.abs);
    const atLeft = gap.isFirst ? problem.leftLeast : 0;
    const atRight = gap.isLast ? problem.rightLeast : 0;
    if (widths.length === 0) return atLeft === 0 && atRight === 0;
    if (widths.length === 1 && gap.isFirst && gap.isLast) {
        return widths[0]! >= problem.leftLeast + problem.rightCovered && widths[0]! >= problem.rightLeast + problem.leftCovered;
    }
    return widths[0]! >= atLeft && widths.at(-1)! >= atRight;
}

/** Every sequence of at most `most` panels with at most one made to measure that fills the gap; nothing is left out for being worse. */
export function everyFilling(problem: Problem, gap: Gap, most: number): Filling[] {
    const found: Filling[] = [];
    const go = (soFar: Length[], rest: number, hasOwn: boolean): void => {
        if (rest === 0 && cornersAreWide(problem, gap, soFar)) found.push([...soFar]);
        if (rest <= 0 || soFar.length === most) return;
        for (const width of problem.modules) go([...soFar, width], rest - width, hasOwn);
        if (hasOwn || !problem.toMeasure) return;
        // The made-to-measure panel takes what the modules after it leave over.
        const after = (tail: Length[], tailSum: number): void => {
            const own = rest - tailSum;
            if (own >= problem.toMeasure!.from && own <= problem.toMeasure!.to) {
                const whole = [...soFar, -own as Length, ...tail];
                if (cornersAreWide(problem, gap, whole)) found.push(whole);
            }
            if (own <= problem.toMeasure!.from || soFar.length + 1 + tail.length >= most) return;
            for (const width of problem.modules) after([...tail, width], tailSum + width);
        };
        after([], 0);
    };
    go([], gap.length, false);
    return found;
}

function figures(problem: Problem, fillings: readonly Filling[]): Listed['figures'] {
    const all = gaps(problem);
    let broken = 0;
    const ends: number[] = [];
    fillings.forEach((filling, index) => {
        let at: number = all[index]!.start;
        for (const width of filling) { at += Math.abs(width); ends.push(at); }
        if (index < problem.sections.length) ends.push([...problem.sections].sort((a, b) => a.from - b.from)[index]!.to);
    });
    for (const joint of new Set(ends)) if (joint !== problem.run) broken += problem.soft.filter(zone => joint > zone.from && joint < zone.to).length;
    for (const section of problem.sections) {
        const isEdgeAlready = ends.includes(section.from) || section.from === 0;
        if (!isEdgeAlready) broken += problem.soft.filter(zone => section.from > zone.from && section.from < zone.to).length;
    }
    const flat = fillings.flat();
    const atEnds = fillings.reduce((total, filling) => total + (filling.length > 0 && filling[0]! < 0 ? 1 : 0) + (filling.length > 0 && filling.at(-1)! < 0 ? 1 : 0), 0);
    return [flat.filter(width => width < 0).length, flat.length, broken, flat.length === 0 ? Infinity : Math.min(...flat.map(Math.abs)), atEnds];
}

/** True when `a` is to be preferred to `b`. */
function isBetter(a: Listed, b: Listed): boolean {
    for (const [index, isWanted] of [[0, 'small'], [1, 'small'], [2, 'small'], [3, 'large'], [4, 'small']] as const) {
        const difference = a.figures[index] - b.figures[index];
        if (difference !== 0) return isWanted === 'small' ? difference < 0 : difference > 0;
    }
    const [left, right] = [a.fillings.flat().map(Math.abs), b.fillings.flat().map(Math.abs)];
    for (let index = 0; index < left.length; index++) if (left[index] !== right[index]) return left[index]! > right[index]!;
    return false;
}

function bestOf(problem: Problem, candidates: Iterable<readonly Filling[]>): Listed | undefined {
    let best: Listed | undefined;
    for (const fillings of candidates) {
        const listed = { fillings, figures: figures(problem, fillings) };
        if (!best || isBetter(listed, best)) best = listed;
    }
    return best;
}

/** Lists every division of the run whose gaps hold at most `most` panels each. For short runs. */
export function enumerateEverything(problem: Problem, most: number): Listed | undefined {
    const choices = gaps(problem).map(gap => everyFilling(problem, gap, most));
    const products = choices.reduce<Filling[][]>((soFar, options) => soFar.flatMap(head => options.map(option => [...head, option])), [[]]);
    return bestOf(problem, products);
}

/**
 * The best division of a run without sections, for long runs: for each count of made-to-measure panels and of panels, from few to many,
 * lists every mixture of modules and every order of it, and stops at the first count that closes. That is exhaustive because these two
 * counts come first in the order of preference.
 */
export function enumerateByCount(problem: Problem): Listed | undefined {
    const gap = gaps(problem)[0]!;
    const smallest = Math.min(...problem.modules);
    for (const own of problem.toMeasure ? [0, 1] : [0]) {
        for (let panels = 1; (panels - own) * smallest <= problem.run; panels++) {
            const candidates: Filling[][] = [];
            for (const mixture of mixtures(problem.modules, panels - own, problem.run)) {
                const rest = minus(problem.run, sum(...mixture));
                const isWanted = own === 0 ? rest === 0 : rest >= problem.toMeasure!.from && rest <= problem.toMeasure!.to;
                if (!isWanted) continue;
                for (const order of orders(own === 0 ? mixture : [...mixture, ticks(0 - rest)])) {
                    if (cornersAreWide(problem, gap, order)) candidates.push([order]);
                }
            }
            const best = bestOf(problem, candidates);
            if (best) return best;
        }
    }
    return undefined;
}

function* mixtures(modules: readonly Length[], count: number, limit: number, from = 0): Generator<Length[]> {
    if (count === 0) { yield []; return; }
    for (let index = from; index < modules.length; index++) {
        const width = modules[index]!;
        if (width > limit) continue;
        for (const rest of mixtures(modules, count - 1, limit - width, index)) yield [width, ...rest];
    }
}

/** Every different order of the widths. */
function* orders(widths: readonly Length[]): Generator<Length[]> {
    if (widths.length === 0) { yield []; return; }
    for (const first of new Set(widths)) {
        const index = widths.indexOf(first);
        for (const rest of orders([...widths.slice(0, index), ...widths.slice(index + 1)])) yield [first, ...rest];
    }
}

/** Fewest panels made to measure in any division whose gaps hold at most `most` panels each; `undefined` when some gap cannot be filled. */
export function fewestToMeasure(problem: Problem, most: number, known: Map<string, number>): number | undefined {
    let total = 0;
    for (const gap of gaps(problem)) {
        const name = [gap.length, gap.isFirst && problem.leftLeast, gap.isLast && problem.rightLeast, gap.isFirst && gap.isLast].join();
        let fewest = known.get(name);
        if (fewest === undefined) {
            fewest = gap.length < 0 ? Infinity : Math.min(Infinity, ...everyFilling(problem, gap, most).map(filling => filling.filter(width => width < 0).length));
            known.set(name, fewest);
        }
        total += fewest;
    }
    return Number.isFinite(total) ? total : undefined;
}
