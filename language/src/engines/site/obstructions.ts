import { box, distance, interval, overlap, type Box, type Wall } from '../../core/geometry.js';
import { half, minus, plus, zero, type Length } from '../../core/length.js';

/** Something of the building in the place: from the front-left corner of the place, z from the finished floor. */
export interface Obstruction { readonly name: string; readonly box: Box }

export interface ObstructionInput {
    readonly name: string;
    readonly fromLeft: Length;
    readonly fromFront: Length;
    readonly width: Length;
    readonly depth: Length;
    /** Absent when it stands on the floor. */
    readonly bottom?: Length;
    /** Absent when it reaches the building's ceiling. */
    readonly top?: Length;
}

export const placeObstruction = (input: ObstructionInput, ceiling: Length): Obstruction => ({
    name: input.name,
    box: box(
        interval(input.fromLeft, plus(input.fromLeft, input.width)),
        interval(input.fromFront, plus(input.fromFront, input.depth)),
        interval(input.bottom ?? zero, input.top ?? ceiling),
    ),
});

export interface StandInput {
    /** Clear size of the place, the smallest measured. */
    readonly site: { readonly width: Length; readonly depth: Length };
    /** Outside size of the room. */
    readonly room: { readonly width: Length; readonly depth: Length; readonly height: Length };
    readonly isFree: Readonly<Record<Wall, boolean>>;
    /** Gap wanted to the building on each closed side. */
    readonly gap: Readonly<Record<Wall, Length>>;
}

export interface RoomStand {
    /** From the place's left and front to the room's outside; absent where both sides are free, so that nothing says where the room stands. */
    readonly left?: Length;
    readonly front?: Length;
    /** The room's outside box in the frame of the place, when both are known. */
    readonly box?: Box;
}

/** Where the room stands in the place: its gap from a closed side; between two closed sides in the middle. */
export function standRoom({ site, room, isFree, gap }: StandInput): RoomStand {
    const along = (low: Wall, high: Wall, available: Length, size: Length): Length | undefined => {
        if (!isFree[low]) return isFree[high] ? gap[low] : half(minus(available, size));
        return isFree[high] ? undefined : minus(available, plus(gap[high], size));
    };
    const left = along('left', 'right', site.width, room.width);
    const front = along('front', 'back', site.depth, room.depth);
    return {
        ...(left !== undefined && { left }),
        ...(front !== undefined && { front }),
        ...(left !== undefined && front !== undefined && {
            box: box(interval(left, plus(left, room.width)), interval(front, plus(front, room.depth)), interval(zero, room.height)),
        }),
    };
}

export interface ObstructionGap {
    readonly obstruction: Obstruction;
    /** Shortest distance to the outside of the room, rounded up to a tick; zero when they touch or stand in the same place. */
    readonly gap: Length;
    readonly isInRoom: boolean;
}

/** Every obstruction against the room's outside box, in the order given. */
export const obstructionGaps = (room: Box, obstructions: readonly Obstruction[]): readonly ObstructionGap[] =>
    obstructions.map(obstruction => ({ obstruction, gap: distance(room, obstruction.box), isInRoom: overlap(room, obstruction.box) }));
