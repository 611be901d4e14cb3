import type { Results } from '../../assembly/results.js';
import { extent, insideRun, interval, neighbours, walls, type Interval, type Wall } from '../../core/geometry.js';
import { isMetric, showLength, type LengthUnit } from '../../core/show.js';
import { inches, mm, ticks, zero, type Length } from '../../core/length.js';
import { onWall, type WallBox } from '../../engines/fittings/wall-frame.js';
import type { ThingKind } from '../../engines/fittings/things.js';
import type { Job } from '../../model/job.js';
import type { Scene } from '../../scene/scene.js';
import type { Draft } from '../draft.js';
import { point, type Point } from '../drawing.js';
import type { Rectangle } from '../projection.js';

export const viewNames = [
    'plan', 'elevation-front', 'elevation-left', 'elevation-back', 'elevation-right', 'section-across', 'section-along', 'base', 'ceiling', 'benches', 'bench-fronts', 'bench-sections', 'heater', 'heater-side', 'axonometric', 'exploded',
] as const;
export type ViewName = typeof viewNames[number];

export interface ViewInput {
    readonly job: Job;
    readonly results: Results;
    readonly scene: Scene;
    readonly unit: LengthUnit;
}

/** One picture of a view, with all that is drawn round it. */
export interface Figure {
    readonly caption: string;
    /** What its solids fill, in ticks of the picture. */
    readonly picture: Rectangle;
    /** Not to scale: an axonometric picture is measured along no sheet. */
    readonly isPictorial?: boolean;
    draw(draft: Draft): void;
}

export interface View {
    readonly name: ViewName;
    readonly title: string;
    readonly figures: readonly Figure[];
    /** What a reader of this view has to know beside the picture. */
    readonly notes: readonly string[];
}

/** A length as drawings write it: 1/16" or 0.5 mm, with ≈ before a figure that is not the value, and a fraction of an inch set off from the feet before it. */
export const shower = (unit: LengthUnit) => (length: Length): string => showLength(length, unit, 'drawing').replace(/'(\d+\/)/, '\' $1');

/** A named thing on a wall, in the wall's frame seen from inside. */
export interface OnWall { readonly kind: ThingKind; readonly name: string; readonly at: WallBox; readonly words: string }

/** What is fixed to or let into one wall: openings, heaters, guards, vents and fittings. Benches are not of it. */
export function thingsOn(wall: Wall, { results, scene }: ViewInput): readonly OnWall[] {
    const { inside } = scene;
    return results.things.filter(({ kind }) => !notOnWalls.has(kind)).flatMap(({ kind, name, box }): readonly OnWall[] => {
        const at = onWall(wall, box, inside);
        const touches = kind === 'heater' || kind === 'guard' ? at.w.from >= 0 && isOwnWall(results, name, wall) : at.w.from <= 0 && at.w.to >= 0 && at.u.to >= 0 && at.u.from <= insideRun(wall, inside);
        return touches ? [{ kind, name, at, words: wordsOf(kind, name) }] : [];
    });
}
const notOnWalls: ReadonlySet<ThingKind> = new Set(['wall', 'ceiling', 'floor', 'bench', 'rest', 'trim', 'duckboard']);
const isOwnWall = ({ heaters }: Results, name: string, wall: Wall): boolean => heaters.some(({ heater, name: own }) => heater?.wall === wall && (name === own || name === `${own} guard`));

const wordsOf = (kind: ThingKind, name: string): string => name === kind || name.startsWith(`${kind}_`) || kind === 'other' ? name.replaceAll('_', ' ') : kind === 'guard' ? name : `${kind.replaceAll('_', ' ')} ${name.replaceAll('_', ' ')}`;

export const isPoint = ({ from, to }: Interval): boolean => from === to;
export const middleOf = ({ from, to }: Interval): Length => ticks(Math.floor((from + to) / 2));
export const wallInterval = (wall: Wall, { scene }: ViewInput): Interval => interval(zero, insideRun(wall, scene.inside));

/** The side of a plan a wall lies at. */
export const sideOf = { front: 'bottom', back: 'top', left: 'left', right: 'right' } as const;

/** A point of the plan from a place along a wall and a distance from its lining into the room; negative lies in the wall or outside. */
export function planPoint(wall: Wall, u: number, w: number, { inside: { width, depth } }: Scene): Point {
    switch (wall) {
        case 'front': return point(width - u, w);
        case 'back': return point(u, depth - w);
        case 'left': return point(w, u);
        case 'right': return point(width - w, depth - u);
    }
}

/** A wall in words for a caption: what lies left and right of it. */
export const endsOf = (wall: Wall): string => `${neighbours[wall].left} wall at the left, ${neighbours[wall].right} wall at the right`;
export const otherWalls = (wall: Wall): readonly Wall[] => walls.filter(other => other !== wall);
export const roomFor = (at: Interval): boolean => extent(at) > 0;

/**
 * A cutting plane near a place that goes between parts and not along one: legs, bearers, ledgers and joints are seen then, and not cut lengthwise.
 * @param axis 0 cuts across x, 1 across y
 */
export function planeNear(wanted: number, axis: 0 | 1, { scene, unit }: ViewInput): Length {
    const grid = isMetric(unit) ? mm(5) : inches(0, 1, 2);
    const side = axis === 0 ? 'x' : 'y';
    const size = axis === 0 ? scene.inside.width : scene.inside.depth;
    const narrow = scene.solids.filter(({ kind, layer }) => /bearer|leg|ledger|slat|rail|jamb/.test(kind) || layer === 'walls').flatMap(({ boxes }) => boxes.map(one => one[side])).filter(({ from, to }) => (to - from) * 6 < size);
    const faces = scene.solids.flatMap(({ boxes }) => boxes.flatMap(one => [one[side].from, one[side].to]));
    const step = Math.ceil(size / 64 / grid) * grid;
    for (let i = 0; i < 20; i++) for (const way of [1, -1]) {
        const at = Math.round(wanted / grid) * grid + way * i * step;
        if (at > 0 && at < size && !narrow.some(({ from, to }) => from <= at && at <= to) && !faces.includes(ticks(at))) return ticks(at);
    }
    return ticks(Math.round(wanted));
}
