import { box, interval, type InsideSize, type Wall } from '../../core/geometry.js';
import { inches, plus, zero, type Length } from '../../core/length.js';
import type { Size } from '../../vocabulary/values.js';
import type { Thing, ThingKind } from './things.js';
import { inRoom, wallBox } from './wall-frame.js';
import { alongTheWall, upTheWall, type PlaceProblem, type WallHeight, type WallPlace } from './wall-place.js';

/** Anything fixed to a wall inside: a light, a sensor, the thermometer, a hook, a shelf. */
export interface FittingInput {
    readonly kind: ThingKind;
    readonly name: string;
    readonly wall: Wall;
    readonly place?: WallPlace;
    readonly height: WallHeight;
    /** On the wall; absent when the catalogue does not say: the fitting is then a point. */
    readonly size?: Size;
    /** How far it stands into the room. */
    readonly depth?: Length;
    readonly belongsTo?: string;
}

export interface PlacedFitting {
    readonly thing?: Thing;
    readonly problems: readonly PlaceProblem[];
}

/** Places a fitting on the lining of its wall. @returns no thing when its place or its height is not stated */
export function placeFitting(input: FittingInput, inside: InsideSize): PlacedFitting {
    const { kind, name, wall, belongsTo } = input;
    const along = alongTheWall(wall, input.place, input.size?.width ?? zero, inside);
    const up = upTheWall(wall, input.height, input.size?.height ?? zero, inside);
    const problems = [...along.problems, ...up.problems];
    if (!along.stretch || !up.stretch) return { problems };
    const solid = wallBox(along.stretch, up.stretch, interval(zero, input.depth ?? zero));
    return { thing: { kind, name, box: inRoom(wall, solid, inside), ...(belongsTo !== undefined && { belongsTo }) }, problems };
}

/** Thermometer below the ceiling when the job does not say. Common practice, no source. */
export const usualThermometerBelowCeiling = inches(6);

export interface DuckboardInput {
    readonly name: string;
    readonly fromLeft: Length;
    readonly fromFront: Length;
    /** Along the front. */
    readonly width: Length;
    /** To the back. */
    readonly depth: Length;
    /** Its height over the floor; zero when its slats are not known. */
    readonly thickness: Length;
}

/** A duckboard lying on the floor. */
export const duckboardThing = ({ name, fromLeft, fromFront, width, depth, thickness }: DuckboardInput): Thing => ({
    kind: 'duckboard', name,
    box: box(interval(fromLeft, plus(fromLeft, width)), interval(fromFront, plus(fromFront, depth)), interval(zero, thickness)),
});
