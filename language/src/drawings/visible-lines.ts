import type { Box, Interval } from '../core/geometry.js';
import type { Solid } from '../scene/scene.js';

/** A point of the room in whole ticks: x, y, z. */
export type Point3 = readonly [number, number, number];
/** Where the eye is, seen from the room: each component -1, 0 or 1. `[0, 0, 1]` looks down on it; `[1, -1, 1]` stands before its right front corner, above. */
export type Sight = readonly [number, number, number];

/** A straight piece of an edge. */
export interface Edge {
    readonly solid: Solid;
    /** 0, 1 or 2: the axis it runs along. */
    readonly axis: number;
    readonly from: Point3;
    readonly to: Point3;
}

const axesOf = (one: Box): readonly [Interval, Interval, Interval] => [one.x, one.y, one.z];

/**
 * The lines of a group of solids as seen along one direction, those that something stands before left out. Exact: every edge is cut where a solid begins or
 * ends to hide it, in whole ticks, because all faces are square to the axes and the sight runs along whole numbers; there is no sampling and no order of
 * painting. Lines that fall upon each other in the picture are drawn once, by the edge nearest to the eye.
 * @param solids hide each other, unless they are open
 * @param asHidden solids whose hidden pieces are wanted too, for dashes
 */
export function visibleLines(solids: readonly Solid[], sight: Sight, asHidden: (solid: Solid) => boolean = () => false): { readonly visible: readonly Edge[]; readonly hidden: readonly Edge[] } {
    const screens = solids.filter(({ isOpen }) => isOpen !== true).flatMap(({ boxes }) => boxes.map(axesOf));
    const visible: Edge[] = [];
    const hidden: Edge[] = [];
    for (const solid of solids) for (const edge of edgesOf(solid)) {
        // an edge along the line of sight is a point
        if (sight.every((part, axis) => axis === edge.axis || part === 0)) continue;
        const start = edge.from[edge.axis] ?? 0;
        const whole: Stretch = { from: start, to: edge.to[edge.axis] ?? 0 };
        const shaded = screens.flatMap(screen => shadow(edge, screen, sight));
        const open = minusAll([whole], shaded);
        for (const stretch of open) visible.push(part(edge, stretch));
        if (asHidden(solid)) for (const stretch of minusAll([whole], open)) hidden.push(part(edge, stretch));
    }
    const drawn = new Map<string, Stretch[]>();
    const nearestFirst = (edges: readonly Edge[]): readonly Edge[] => [...edges].sort((a, b) => nearness(b, sight) - nearness(a, sight));
    return { visible: once(nearestFirst(visible), sight, drawn), hidden: once(nearestFirst(hidden), sight, drawn) };
}

/** How far toward the eye an edge begins. */
const nearness = ({ from }: Edge, sight: Sight): number => from[0] * sight[0] + from[1] * sight[1] + from[2] * sight[2];

interface Stretch { readonly from: number; readonly to: number }

function part({ solid, axis, from }: Edge, stretch: Stretch): Edge {
    const at = (value: number): Point3 => [axis === 0 ? value : from[0], axis === 1 ? value : from[1], axis === 2 ? value : from[2]];
    return { solid, axis, from: at(stretch.from), to: at(stretch.to) };
}

/** The stretch of an edge that a box stands before: where some step toward the eye lies inside the box. Faces do not hide. */
function shadow({ axis, from }: Edge, screen: readonly [Interval, Interval, Interval], sight: Sight): Stretch[] {
    let [nearest, farthest] = [0, Infinity];
    for (const other of [0, 1, 2]) {
        if (other === axis) continue;
        const [at, step, side] = [from[other] ?? 0, sight[other] ?? 0, screen[other]];
        if (!side) continue;
        if (step === 0) { if (at <= side.from || at >= side.to) return []; continue; }
        nearest = Math.max(nearest, step > 0 ? side.from - at : at - side.to);
        farthest = Math.min(farthest, step > 0 ? side.to - at : at - side.from);
    }
    if (nearest >= farthest) return [];
    const [along, step] = [screen[axis], sight[axis] ?? 0];
    if (!along) return [];
    if (step === 0) return [{ from: along.from, to: along.to }];
    return [step > 0 ? { from: along.from - farthest, to: along.to - nearest } : { from: along.from + nearest, to: along.to + farthest }];
}

function minusAll(whole: readonly Stretch[], gone: readonly Stretch[]): readonly Stretch[] {
    return gone.reduce<readonly Stretch[]>((left, { from, to }) => left.flatMap(one => to <= one.from || from >= one.to ? [one]
        : [{ from: one.from, to: from }, { from: to, to: one.to }].filter(piece => piece.from < piece.to)), whole);
}

/**
 * The edges of a body of several boxes, without the seams between them: a line is an edge where the four quarters round it are not filled two and two
 * side by side.
 */
export function edgesOf(solid: Solid): readonly Edge[] {
    const body = solid.boxes.map(axesOf);
    const edges: Edge[] = [];
    for (const axis of [0, 1, 2]) {
        const [b, c] = axis === 0 ? [1, 2] : axis === 1 ? [0, 2] : [0, 1];
        const lines = new Map<string, { readonly at: readonly [number, number]; readonly stretches: Stretch[] }>();
        for (const one of body) for (const p of ends(one[b])) for (const q of ends(one[c])) {
            const line = lines.get(`${p} ${q}`) ?? { at: [p, q] as const, stretches: [] };
            line.stretches.push(one[axis] as Stretch);
            lines.set(`${p} ${q}`, line);
        }
        for (const { at: [p, q], stretches } of lines.values()) {
            const cuts = [...new Set([...stretches, ...body.map(one => one[axis] as Stretch)].flatMap(({ from, to }) => [from, to]))].sort((m, n) => m - n);
            let open: Stretch | undefined;
            for (const [i, from] of cuts.entries()) {
                const to = cuts[i + 1];
                const isEdge = to !== undefined && isEdgeAt(body, axis, [b, c], [p, q], (from + to) / 2);
                if (isEdge) open = { from: open?.from ?? from, to };
                if (!isEdge && open) { edges.push(edge(solid, axis, [b, c], [p, q], open)); open = undefined; }
            }
        }
    }
    return edges;
}

const ends = (side: Interval | undefined): readonly number[] => side ? side.from === side.to ? [side.from] : [side.from, side.to] : [];

function isEdgeAt(body: readonly (readonly [Interval, Interval, Interval])[], axis: number, [b, c]: readonly number[], [p, q]: readonly number[], middle: number): boolean {
    if (b === undefined || c === undefined || p === undefined || q === undefined) return false;
    const along = body.filter(one => { const side = one[axis]; return side !== undefined && side.from < middle && middle < side.to; });
    // a plane has no inside; its outline is its edges
    if (along.some(one => [b, c].some(other => one[other]?.from === one[other]?.to))) return true;
    const filled = ([up, right]: readonly [number, number]): boolean => along.some(one => {
        const [first, second] = [one[b], one[c]];
        return first !== undefined && second !== undefined && (up > 0 ? first.from <= p && p < first.to : first.from < p && p <= first.to)
            && (right > 0 ? second.from <= q && q < second.to : second.from < q && q <= second.to);
    });
    const [one, two, three, four] = [filled([-1, -1]), filled([1, -1]), filled([1, 1]), filled([-1, 1])];
    const count = Number(one) + Number(two) + Number(three) + Number(four);
    return count === 1 || count === 3 || (count === 2 && one === three);
}

function edge(solid: Solid, axis: number, [b, c]: readonly number[], [p, q]: readonly number[], { from, to }: Stretch): Edge {
    const at = (value: number): Point3 => [0, 1, 2].map(i => i === axis ? value : i === b ? p : i === c ? q : 0) as unknown as Point3;
    return { solid, axis, from: at(from), to: at(to) };
}

/** Drops what falls upon a line drawn before. The line of the picture and the place along it are whole numbers, so nothing is compared nearly. */
function once(edges: readonly Edge[], sight: Sight, drawn: Map<string, Stretch[]>): readonly Edge[] {
    return edges.flatMap(one => {
        const { key, shift } = lineOf(one, sight);
        const before = drawn.get(key) ?? [];
        drawn.set(key, before);
        const along: Stretch = { from: (one.from[one.axis] ?? 0) - shift, to: (one.to[one.axis] ?? 0) - shift };
        const left = minusAll([along], before);
        before.push(along);
        return left.map(({ from, to }) => part(one, { from: from + shift, to: to + shift }));
    });
}

/** Which line of the picture an edge lies on, and what its own axis is off by there: a point is moved along the sight until it meets the plane through the origin. */
function lineOf({ axis, from }: Edge, sight: Sight): { readonly key: string; readonly shift: number } {
    const others = [0, 1, 2].filter(other => other !== axis);
    const steep = others.find(other => sight[other] !== 0);
    const rest = others.find(other => other !== steep);
    if (steep === undefined || rest === undefined) return { key: `${axis}`, shift: 0 };
    const steps = (from[steep] ?? 0) * (sight[steep] ?? 0);
    return { key: `${axis} ${(from[rest] ?? 0) - steps * (sight[rest] ?? 0)}`, shift: steps * (sight[axis] ?? 0) };
}
