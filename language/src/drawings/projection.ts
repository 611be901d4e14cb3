import { box, interval, type Box, type InsideSize, type Wall } from '../core/geometry.js';
import { ticks } from '../core/length.js';
import { common } from '../scene/boxes.js';
import type { Solid } from '../scene/scene.js';
import { point, type Layer, type LineStyle, type Point, type Stroke } from './drawing.js';
import { visibleLines, type Point3, type Sight } from './visible-lines.js';

/** A way of looking: where the eye is, and where a point of the room comes to lie in the picture. */
export interface Frame {
    readonly sight: Sight;
    readonly project: (at: Point3) => Point;
}

/** From above, front wall at the bottom. */
export const planFrame: Frame = { sight: [0, 0, 1], project: ([x, y]) => point(x, y) };
/** One wall as seen from inside the room: its own u to the right, height up. */
export const wallFrames = ({ width, depth }: InsideSize): Readonly<Record<Wall, Frame>> => ({
    front: { sight: [0, 1, 0], project: ([x, , z]) => point(width - x, z) },
    back: { sight: [0, -1, 0], project: ([x, , z]) => point(x, z) },
    left: { sight: [1, 0, 0], project: ([, y, z]) => point(y, z) },
    right: { sight: [-1, 0, 0], project: ([, y, z]) => point(depth - y, z) },
});

const cosine30 = Math.sqrt(3) / 2;
/** Isometric projection, the three axes at 120 degrees and in one scale (ISO 5456-3, from memory), from before the right front corner and above it. */
export const isometricFrame: Frame = { sight: [1, -1, 1], project: ([x, y, z]) => point((x + y) * cosine30, z + (y - x) / 2) };

/** What is left of solids inside a box: a view that begins at a cutting plane. */
export const clipped = (solids: readonly Solid[], keep: Box): readonly Solid[] => solids.flatMap(solid => {
    const boxes = solid.isOpen === true ? solid.boxes.filter(one => touches(one, keep)) : solid.boxes.flatMap(one => common(one, keep) ?? []);
    return boxes.length > 0 ? [{ ...solid, boxes }] : [];
});
const touches = (a: Box, b: Box): boolean => (['x', 'y', 'z'] as const).every(axis => a[axis].from <= b[axis].to && b[axis].from <= a[axis].to);

/** Room enough for everything on three axes; a cut narrows one of them. */
export const everywhere: Box = (() => { const all = interval(ticks(-1e14), ticks(1e14)); return box(all, all, all); })();

export interface Rectangle { readonly left: number; readonly right: number; readonly bottom: number; readonly top: number }
/** The rectangle a box fills in the picture; of an oblique one the smallest round it. */
export function rectangleOf(frame: Frame, { x, y, z }: Box): Rectangle {
    const corners = [x.from, x.to].flatMap(px => [y.from, y.to].flatMap(py => [z.from, z.to].map(pz => frame.project([px, py, pz]))));
    return aroundPoints(corners);
}
export function aroundPoints(points: readonly Point[]): Rectangle {
    return {
        left: Math.min(...points.map(({ x }) => x)), right: Math.max(...points.map(({ x }) => x)),
        bottom: Math.min(...points.map(({ y }) => y)), top: Math.max(...points.map(({ y }) => y)),
    };
}
export const around = (all: readonly Rectangle[]): Rectangle => aroundPoints(all.flatMap(({ left, right, bottom, top }) => [point(left, bottom), point(right, top)]));
export const middle = ({ left, right, bottom, top }: Rectangle): Point => point((left + right) / 2, (bottom + top) / 2);

export interface Look {
    /** Solids whose hidden edges are dashed. */
    readonly asHidden?: (solid: Solid) => boolean;
    /** The plane the picture begins at: what lies in it is cut. */
    readonly cut?: { readonly axis: 0 | 1 | 2; readonly at: number };
}

/** The lines of a picture. */
export function strokesOf(solids: readonly Solid[], frame: Frame, { asHidden, cut }: Look = {}): readonly Stroke[] {
    const { visible, hidden } = visibleLines(solids, frame.sight, asHidden);
    const stroke = (style: LineStyle) => ({ solid, from, to }: (typeof visible)[number]): Stroke =>
        ({ kind: 'line', layer: solid.layer, style, from: frame.project(from), to: frame.project(to), of: solid.id });
    return [
        ...visible.map(edge => stroke(cut && edge.solid.isOpen !== true && edge.from[cut.axis] === cut.at && edge.to[cut.axis] === cut.at ? 'cut' : 'visible')(edge)),
        ...hidden.map(stroke('hidden')),
    ];
}

/** Faces that lie in the cutting plane, with the solid they are of. */
export function cutFaces(solids: readonly Solid[], frame: Frame, { axis, at }: NonNullable<Look['cut']>): readonly { readonly solid: Solid; readonly face: Rectangle }[] {
    const side = (['x', 'y', 'z'] as const)[axis];
    const isNear = frame.sight[axis] > 0;
    return solids.filter(({ isOpen }) => isOpen !== true).flatMap(solid => solid.boxes
        .filter(one => (isNear ? one[side].to : one[side].from) === at).map(one => ({ solid, face: rectangleOf(frame, one) })));
}

/**
 * Hatching of cut faces: thin lines at 45 degrees, solids in turn one way and the other, wood closer than panels (ISO 128-3:2020 on hatching of cuts, from memory).
 * @param pitch distance of the lines along the horizontal for panels, in ticks
 */
export function hatching(faces: readonly { readonly solid: Solid; readonly face: Rectangle }[], pitch: number): readonly Stroke[] {
    const turns = new Map<string, boolean>();
    return faces.flatMap(({ solid, face: { left, right, bottom, top } }) => {
        if (!turns.has(solid.id)) turns.set(solid.id, turns.size % 2 === 0);
        const step = solid.layer === 'walls' || solid.layer === 'ceiling' ? pitch : Math.round(pitch * 0.55);
        const rises = turns.get(solid.id) === true;
        const strokes: Stroke[] = [];
        // lines y = x - c that rise, y = c - x that fall
        const [low, high] = rises ? [left - top, right - bottom] : [left + bottom, right + top];
        for (let c = Math.ceil((low + 1) / step) * step; c < high; c += step) {
            const [from, to] = rises ? [Math.max(left, bottom + c), Math.min(right, top + c)] : [Math.max(left, c - top), Math.min(right, c - bottom)];
            if (to > from) strokes.push({ kind: 'line', layer: 'hatch' satisfies Layer, style: 'thin', from: point(from, rises ? from - c : c - from), to: point(to, rises ? to - c : c - to), of: solid.id });
        }
        return strokes;
    });
}
