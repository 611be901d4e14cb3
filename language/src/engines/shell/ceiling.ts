import type { Interval, Wall } from '../../core/geometry.js';
import { longest, minus, rootUp, zero, type Length } from '../../core/length.js';
import { divideRun, type Division, type DivisionScore, type RunInput } from './division.js';
import { suggestForRun, type Suggestions } from './division-suggestions.js';
import { panelsOfRun } from './run-panels.js';
import type { CeilingSpan, ShellInput } from './shell-input.js';
import type { ShellJoint, ShellPanel, ShellProblem } from './shell-result.js';
import type { WidthOffer } from './stretch.js';
import { runEnd, type WallThickness } from './wall-run.js';

/** Ceiling panels lie on the wall tops over the whole outside rectangle. All places are measured from the outside front-left corner. */
export interface CeilingShell {
    readonly span: CeilingSpan;
    /** Axis the panels lie side by side along, and the axis their length runs along. */
    readonly acrossAxis: 'x' | 'y';
    /** From the left when they span front to back, from the back when they span left to right. Empty when the ceiling does not close. */
    readonly panels: readonly ShellPanel[];
    readonly joints: readonly CeilingJoint[];
    /** Strips of the underside that land on the walls, along x for left and right and along y for front and back: grooves stand over the wall they land on. */
    readonly bearing: Readonly<Record<Wall, Interval>>;
    readonly score?: DivisionScore;
    readonly suggestions: Suggestions;
}

export interface CeilingJoint extends ShellJoint {
    /** How far both leaves rise at this joint while it is interlocked. */
    readonly rise: Length;
}

export interface CeilingPanels {
    readonly shell: CeilingShell | undefined;
    readonly run: RunInput | undefined;
    readonly division: Division | undefined;
    readonly problems: readonly ShellProblem[];
}

/** The way ceiling panels span: as stated, else the shorter way; a square room has to state it. */
export function ceilingSpan({ width, depth, ceilingSpan: stated }: Pick<ShellInput, 'width' | 'depth' | 'ceilingSpan'>): CeilingSpan | undefined {
    if (stated) return stated;
    if (width === depth) return undefined;
    return width < depth ? 'left_to_right' : 'front_to_back';
}

export function ceilingPanels(input: ShellInput, thickness: WallThickness, ceilingThickness: Length, offer: WidthOffer): CeilingPanels {
    const span = ceilingSpan(input);
    if (!span) return { shell: undefined, run: undefined, division: undefined, problems: [{ kind: 'span-not-stated', size: input.width }] };
    const isAcrossWidth = span === 'front_to_back';
    const across = isAcrossWidth ? input.width : input.depth;
    const run: RunInput = {
        run: across, sections: [], softRules: [], offer,
        left: runEnd(true, isAcrossWidth ? thickness.left : thickness.back), right: runEnd(true, isAcrossWidth ? thickness.right : thickness.front),
    };
    const division = divideRun(run);
    const suggestions = suggestForRun(run, division);
    const made = division.closes
        ? panelsOfRun(run, division, {
            word: 'CEILING', height: isAcrossWidth ? input.depth : input.width, thickness: ceilingThickness, layers: input.ceilingLayers,
            engagement: input.system.engagement, chainStartsAt: 'left', origin: zero, sections: new Map(),
        })
        : { panels: [], joints: [] };
    // The division reads from the back; plan positions are measured from the front.
    const inPlan = ({ from, to }: Interval): Interval => isAcrossWidth ? { from, to } : { from: minus(across, to), to: minus(across, from) };
    const shell: CeilingShell = {
        span, acrossAxis: isAcrossWidth ? 'x' : 'y',
        panels: made.panels.map(panel => ({ ...panel, at: inPlan(panel.at) })),
        joints: made.joints.map((joint, index) => ({
            ...joint, at: isAcrossWidth ? joint.at : minus(across, joint.at),
            rise: interlockRise(made.panels[index + 1]?.cover ?? zero, made.panels[index]?.cover ?? zero, input.system.engagement),
        })),
        bearing: {
            front: { from: zero, to: thickness.front }, back: { from: minus(input.depth, thickness.back), to: input.depth },
            left: { from: zero, to: thickness.left }, right: { from: minus(input.width, thickness.right), to: input.width },
        },
        ...(division.closes && { score: division.score }), suggestions,
    };
    const faults = division.closes ? [] : division.faults.filter(fault => fault.kind === 'stretch-does-not-close');
    return { shell, run, division, problems: faults.map(fault => ({ kind: 'ceiling-does-not-close', run: across, fault, suggestions })) };
}

/**
 * Height both leaves are raised at a ceiling joint so that the tongue passes into the groove: the height of the triangle whose base is the two
 * cover widths and whose sides are the leaf with its tongue and the other leaf. The leaves turn about the previous joint or the wall edge.
 * With L = w1 + w2 and s = L + d/2: rise = (2/L) sqrt(s (s - w1 - d)(s - w2)(s - L)) (Heron's formula).
 * @param tongueLeaf w1, cover width of the leaf with the tongue
 * @param otherLeaf w2
 * @param engagement d
 * @returns the rise rounded up to a tick; zero when nothing engages or the leaves are not wider than half the engagement.
 * Two leaves of 24" with 3/8": 3.005".
 */
export function interlockRise(tongueLeaf: Length, otherLeaf: Length, engagement: Length): Length {
    const [w1, w2, d] = [BigInt(tongueLeaf), BigInt(otherLeaf), BigInt(engagement)];
    if (d <= 0n || 2n * w1 <= d || 2n * w2 <= d) return zero;
    const base = w1 + w2;
    // Each factor under the root is doubled to stay whole: 16 times the product, over 4 L squared.
    const over = 4n * base * base;
    const product = (2n * base + d) * (2n * w2 - d) * (2n * w1 + d) * d;
    return rootUp((product + over - 1n) / over);
}


/** The largest rise of any joint; zero for a ceiling of one panel. */
export const largestRise = (joints: readonly CeilingJoint[]): Length => longest(zero, ...joints.map(joint => joint.rise));
