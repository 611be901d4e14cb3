import { insideRun, interval, type InsideSize, type Interval, type Wall } from '../../core/geometry.js';
import { area, half, minus, plus, type Area, type Length } from '../../core/length.js';
import type { Size } from '../../vocabulary/values.js';
import { alongTheWall, upTheWall, type PlaceProblem, type WallPlace } from '../fittings/wall-place.js';
import type { Opening } from './door.js';

export interface WindowInput {
    readonly name: string;
    readonly wall: Wall;
    /** Of the clear glass. */
    readonly place?: WallPlace;
    /** From the finished floor to the lower edge of the clear glass. */
    readonly sill: Length;
    readonly glass: Size;
    readonly section: Length;
    /** Finished section of the inside trim, lying flat on the lining round the glass. */
    readonly trim?: { readonly stock: string; readonly thickness: Length; readonly width: Length };
}

export type WindowProblem =
    | PlaceProblem
    | { readonly kind: 'glass-wider-than-section'; readonly glass: Length; readonly section: Length }
    /** The trim runs past the floor, the ceiling or a neighbouring wall's lining by `over`. */
    | { readonly kind: 'trim-does-not-fit'; readonly at: 'floor' | 'ceiling' | 'left' | 'right'; readonly over: Length };

export interface WindowInWall {
    readonly name: string;
    readonly wall: Wall;
    /** Inside length of its wall, lining to lining. */
    readonly wallRun: Length;
    /** The clear glass; `v.from` is the sill and `v.to` the head. */
    readonly glass: Opening;
    readonly glassArea: Area;
    /** Centred on the clear glass. */
    readonly section: Interval;
    readonly trim?: { readonly stock: string; readonly thickness: Length; readonly width: Length; readonly outer: Opening };
}

/** Places a window by its clear glass. @returns no window when nothing says where it is */
export function placeWindow(input: WindowInput, inside: InsideSize): { readonly window?: WindowInWall; readonly problems: readonly WindowProblem[] } {
    const { wall, glass } = input;
    const along = alongTheWall(wall, input.place, glass.width, inside);
    const up = upTheWall(wall, { bottom: input.sill }, glass.height, inside);
    const problems: WindowProblem[] = [...along.problems, ...up.problems];
    if (!along.stretch || !up.stretch) return { problems };
    if (glass.width > input.section) problems.push({ kind: 'glass-wider-than-section', glass: glass.width, section: input.section });
    const sectionFrom = minus(along.stretch.from, half(minus(input.section, glass.width)));
    const clear: Opening = { u: along.stretch, v: up.stretch };
    const trim = input.trim && { ...input.trim, outer: ringRound(clear, input.trim.width) };
    if (trim && problems.length === 0) problems.push(...trimProblems(trim.outer, wall, inside));
    const window: WindowInWall = {
        name: input.name, wall, wallRun: insideRun(wall, inside), glass: clear, glassArea: area(glass.width, glass.height),
        section: interval(sectionFrom, plus(sectionFrom, input.section)),
        ...(trim && { trim }),
    };
    return { window, problems };
}

const ringRound = ({ u, v }: Opening, width: Length): Opening => ({
    u: interval(minus(u.from, width), plus(u.to, width)),
    v: interval(minus(v.from, width), plus(v.to, width)),
});

function trimProblems(outer: Opening, wall: Wall, inside: InsideSize): WindowProblem[] {
    const run = wall === 'front' || wall === 'back' ? inside.width : inside.depth;
    const over: readonly (readonly ['floor' | 'ceiling' | 'left' | 'right', number])[] = [
        ['floor', 0 - outer.v.from], ['ceiling', outer.v.to - inside.height], ['left', 0 - outer.u.from], ['right', outer.u.to - run],
    ];
    return over.filter(([, length]) => length > 0).map(([at, length]) => ({ kind: 'trim-does-not-fit', at, over: length as Length }));
}
