import { feet, inches, longest, minus, plus, shortest, sum, ticks, zero, type Length } from '../../core/length.js';
import { intervalsOverlap, type Interval } from '../../core/geometry.js';
import { hasTooManyMixtures } from './mixtures.js';
import { bestOfStretch, panelsOfStretch, type JointCost, type Stretch, type WidthOffer } from './stretch.js';

/** One end of a run. At a through corner the neighbouring wall's end covers a strip of the end panel and the panel has a least width. */
export interface RunEnd {
    /** Strip of the end panel's inside face hidden by the neighbouring wall: its T; zero when the run ends against that wall. */
    readonly covered: Length;
    /** Least cover width of the end panel (T + 3" at a through corner); zero when nothing limits it. */
    readonly least: Length;
}

/** A door or window section: indivisible, at a fixed place. */
export interface FixedSection {
    readonly name: string;
    /** Its left edge in the run, seen from inside, and its cover width. */
    readonly from: Length;
    readonly width: Length;
    /** The end of the run its place is measured from; the other end may move without moving it. */
    readonly measuredFrom: 'left' | 'right';
}

/** A place where a joint is not wanted: breaking it is a matter of preference, never of closing. The joint breaks it strictly inside. */
export interface SoftRule {
    readonly kind: 'fastening-zone' | 'ledger-end' | 'leg-fastening';
    readonly name: string;
    readonly zone: Interval;
}

/** One wall or ceiling run, all places measured from its left end as seen from inside. */
export interface RunInput {
    readonly run: Length;
    readonly left: RunEnd;
    readonly right: RunEnd;
    readonly sections: readonly FixedSection[];
    readonly offer: WidthOffer;
    readonly softRules: readonly SoftRule[];
}

export interface RunPiece {
    readonly kind: 'module' | 'made_to_measure' | 'section';
    /** Name of the section; absent for panels. */
    readonly section?: string;
    readonly at: Interval;
    readonly width: Length;
}

export interface BrokenSoftRule {
    readonly rule: SoftRule;
    readonly joint: Length;
}

/** The figures a division is preferred by, in order; `broken` counts joints between panels, the fixed joints beside sections included. */
export interface DivisionScore {
    readonly madeToMeasure: number;
    readonly panels: number;
    readonly broken: number;
    /** `undefined` when sections alone fill the run. */
    readonly narrowest: Length | undefined;
    /** Ends of made-to-measure panels that lie at a corner or an opening. */
    readonly madeToMeasureAtEnds: number;
}

export type StretchFault =
    /** A corner panel would be narrower than its least width. */
    | { readonly kind: 'corner-panel-too-narrow'; readonly least: Length }
    /** No panel offered is that narrow. */
    | { readonly kind: 'narrower-than-any-panel'; readonly narrowest: Length }
    /** Modules reach `reached`; what is left over is no width the system makes. */
    | { readonly kind: 'rest-cannot-be-made'; readonly reached: Length; readonly rest: Length };

export type DivisionFault =
    | { readonly kind: 'run-has-no-length' }
    /** Longer than any room this trade makes: a slip of the pen, not worth dividing. */
    | { readonly kind: 'run-too-long'; readonly limit: Length }
    | { readonly kind: 'no-panels-offered' }
    /** So many narrow, unrelated module widths that their mixtures cannot be searched. */
    | { readonly kind: 'too-many-mixtures' }
    | { readonly kind: 'section-over-corner'; readonly section: string; readonly end: 'left' | 'right'; readonly by: Length }
    | { readonly kind: 'sections-overlap'; readonly first: string; readonly second: string; readonly by: Length }
    | { readonly kind: 'stretch-does-not-close'; readonly at: Interval; readonly before?: string; readonly after?: string; readonly fault: StretchFault };

export type Division =
    | { readonly closes: true; readonly pieces: readonly RunPiece[]; readonly joints: readonly Length[]; readonly score: DivisionScore; readonly broken: readonly BrokenSoftRule[] }
    | { readonly closes: false; readonly faults: readonly DivisionFault[] };

/** Narrower widths in an offer are left out: a lining board is never ripped under 1", so there is no such panel. Common practice, no source. */
export const leastPanelWidth: Length = inches(1);
/** Longest run that is divided. */
export const longestRun: Length = feet(50);

/**
 * Divides a run into sections, modules and at most one made-to-measure panel in each unbroken stretch; cover widths sum to the run exactly.
 * Preferred in this order: fewest made to measure; fewest panels; fewest broken soft rules; widest narrowest panel; made to measure away from
 * corners and openings; then the widths read left to right as seen from inside, the larger first.
 * @returns the pieces left to right, or every fault found; never throws on sizes a designer may write
 */
export function divideRun(given: RunInput): Division {
    const input: RunInput = { ...given, offer: soundOffer(given.offer) };
    const sections = sectionsLeftToRight(input);
    const faults = placingFaults(input, sections);
    if (faults.length > 0) return { closes: false, faults };

    const cost: JointCost = at => input.softRules.filter(rule => breaks(rule, at)).length;
    const stretches = stretchesOf(input);
    const bests = stretches.map(stretch => bestOfStretch(stretch, input.offer, cost));
    const open = stretches.flatMap((stretch, index) => bests[index] ? [] : [stretchFault(stretch, input.offer, sections[index - 1], sections[index])]);
    if (open.length > 0) return { closes: false, faults: open };

    const found = bests.filter(best => best !== undefined);
    const [firstNarrow, ...otherNarrow] = found.flatMap(best => best.narrowest ?? []);
    const narrowest = firstNarrow === undefined ? undefined : shortest(firstNarrow, ...otherNarrow);
    const pieces: RunPiece[] = [];
    let atEnds = 0;
    stretches.forEach((stretch, index) => {
        const best = found[index];
        let at = stretch.start;
        const panels = best ? panelsOfStretch(stretch, input.offer, cost, best, narrowest ?? zero) : [];
        panels.forEach((panel, position) => {
            if (panel.isMadeToMeasure) atEnds += (position === 0 ? 1 : 0) + (position === panels.length - 1 ? 1 : 0);
            pieces.push({ kind: panel.isMadeToMeasure ? 'made_to_measure' : 'module', at: { from: at, to: plus(at, panel.width) }, width: panel.width });
            at = plus(at, panel.width);
        });
        const section = sections[index];
        if (section) pieces.push({ kind: 'section', section: section.name, at: sectionInterval(section), width: section.width });
    });
    const joints = pieces.slice(1).map(piece => piece.at.from);
    const broken = joints.flatMap(joint => input.softRules.filter(rule => breaks(rule, joint)).map(rule => ({ rule, joint })));
    return {
        closes: true, pieces, joints, broken,
        score: {
            madeToMeasure: found.reduce((total, best) => total + best.madeToMeasure, 0),
            panels: found.reduce((total, best) => total + best.panels, 0),
            broken: broken.length, narrowest, madeToMeasureAtEnds: atEnds,
        },
    };
}

/** The offer without widths that are no panel. */
export function soundOffer({ modules, madeToMeasure }: WidthOffer): WidthOffer {
    const from = ticks(Math.max(madeToMeasure?.from ?? 0, leastPanelWidth));
    return {
        modules: modules.filter(width => width >= leastPanelWidth),
        ...(madeToMeasure && from <= madeToMeasure.to && { madeToMeasure: { from, to: madeToMeasure.to } }),
    };
}

/** True when a joint lies strictly inside the rule's zone: a joint on its edge passes. */
export const breaks = (rule: SoftRule, joint: Length): boolean => rule.zone.from < joint && joint < rule.zone.to;

export const sectionInterval = (section: FixedSection): Interval => ({ from: section.from, to: plus(section.from, section.width) });

/**
 * Sections in the order their middles stand, so that sections that overlap have the same order in the mirror; of two with one middle, the one measured
 * from the left stands left, and equal ones keep the order given.
 */
export function sectionsLeftToRight(input: RunInput): readonly FixedSection[] {
    const twiceMiddle = (section: FixedSection): Length => plus(section.from, sectionInterval(section).to);
    const side = ({ measuredFrom }: FixedSection): 0 | 1 => measuredFrom === 'left' ? 0 : 1;
    return [...input.sections].sort((a, b) => twiceMiddle(a) - twiceMiddle(b) || side(a) - side(b));
}

/** The unbroken stretches between corners and sections, left to right; one more than there are sections, some of no length. */
export function stretchesOf(input: RunInput): readonly Stretch[] {
    const sections = sectionsLeftToRight(input);
    return Array.from({ length: sections.length + 1 }, (_, index) => {
        const before = sections[index - 1];
        const after = sections[index];
        const start = before ? sectionInterval(before).to : zero;
        const leastFirst = before ? zero : input.left.least;
        const leastLast = after ? zero : input.right.least;
        return {
            start, length: minus(after ? after.from : input.run, start), leastFirst, leastLast,
            leastOnly: before || after ? ticks(Math.max(leastFirst, leastLast)) : onlyPanelLeast(input),
            mayBeEmpty: sections.length > 0 && leastFirst === 0 && leastLast === 0,
        };
    });
}

/** A panel that is both corner panels of a run shows between the two strips what a corner panel has to show beside one. */
function onlyPanelLeast({ left, right }: RunInput): Length {
    return ticks(Math.max(sum(left.least, right.covered), sum(right.least, left.covered)));
}

function placingFaults(input: RunInput, sections: readonly FixedSection[]): readonly DivisionFault[] {
    if (input.run <= 0) return [{ kind: 'run-has-no-length' }];
    if (input.run > longestRun) return [{ kind: 'run-too-long', limit: longestRun }];
    if (input.offer.modules.length === 0 && !input.offer.madeToMeasure) return [{ kind: 'no-panels-offered' }];
    if (hasTooManyMixtures(input.offer, input.run)) return [{ kind: 'too-many-mixtures' }];
    const faults: DivisionFault[] = [];
    for (const section of sections) {
        const { from, to } = sectionInterval(section);
        if (from < input.left.covered) faults.push({ kind: 'section-over-corner', section: section.name, end: 'left', by: minus(input.left.covered, from) });
        const limit = minus(input.run, input.right.covered);
        if (to > limit) faults.push({ kind: 'section-over-corner', section: section.name, end: 'right', by: minus(to, limit) });
    }
    sections.forEach((first, index) => {
        for (const second of sections.slice(index + 1)) {
            const [a, b] = [sectionInterval(first), sectionInterval(second)];
            if (intervalsOverlap(a, b)) faults.push({ kind: 'sections-overlap', first: first.name, second: second.name, by: minus(shortest(a.to, b.to), longest(a.from, b.from)) });
        }
    });
    return faults;
}

function stretchFault(stretch: Stretch, offer: WidthOffer, before: FixedSection | undefined, after: FixedSection | undefined): DivisionFault {
    return {
        kind: 'stretch-does-not-close', at: { from: stretch.start, to: plus(stretch.start, stretch.length) },
        ...(before && { before: before.name }), ...(after && { after: after.name }), fault: whyOpen(stretch, offer),
    };
}

function whyOpen(stretch: Stretch, offer: WidthOffer): StretchFault {
    const least = ticks(Math.max(stretch.leastFirst, stretch.leastLast));
    if (stretch.length < least) return { kind: 'corner-panel-too-narrow', least };
    const narrowest = ticks(Math.min(...offer.modules, offer.madeToMeasure?.from ?? Infinity));
    if (stretch.length < narrowest) return { kind: 'narrower-than-any-panel', narrowest };
    const reached = largestSum(offer.modules, stretch.length);
    return { kind: 'rest-cannot-be-made', reached, rest: minus(stretch.length, reached) };
}

/** Largest sum of modules that is at most `limit`. */
function largestSum(modules: readonly Length[], limit: Length): Length {
    const seen = new Set<number>([0]);
    for (const sumSoFar of seen) for (const width of modules) if (sumSoFar + width <= limit) seen.add(sumSoFar + width);
    return ticks(Math.max(...seen));
}
