import { neighbours, type InsideSize, type Interval, type Wall } from '../../core/geometry.js';
import { half, minus, plus, sum, ticks, type Length } from '../../core/length.js';
import type { Section } from '../parts/part.js';
import { alongWallOpening, isPlaced } from './opening-place.js';
import type { ShellInput } from './shell-input.js';
import type { ShellProblem, WallShell } from './shell-result.js';
import { outsideLength, runsThrough, type WallThickness } from './wall-run.js';

/** One piece of a base plate, laid flat under a wall. */
export interface BasePlate {
    /** `BASE-FRONT`; `BASE-FRONT-1` and so on, left to right seen from inside, when the plate is in several pieces. */
    readonly mark: string;
    readonly wall: Wall;
    readonly section: Section;
    readonly length: Length;
    /** In the wall's u and w: w is negative outside the lining. */
    readonly along: Interval;
    readonly across: Interval;
    /** Doors whose threshold it is. */
    readonly thresholdFor: readonly string[];
}

/**
 * Base plates of one wall: butt corners that run through on the same walls as the panels, outer edge set in from the facing. Lengths come from
 * the set-in and the plate's width; T has no part in them. A plate longer than its stock is spliced under a panel, not under a panel joint and
 * not in a doorway.
 */
export function basePlatesOf(input: ShellInput, shell: WallShell, thickness: WallThickness, inside: InsideSize): { readonly plates: readonly BasePlate[]; readonly problems: readonly ShellProblem[] } {
    const { wall } = shell;
    const { section, setIn, longestPiece } = input.system.plate;
    const leftT = thickness[neighbours[wall].left];
    const inset = (isThrough: boolean): Length => isThrough ? setIn : plus(setIn, section.width);
    const from = minus(inset(runsThrough(input, wall, 'left')), leftT);
    const to = minus(outsideLength(input, wall), sum(inset(runsThrough(input, wall, 'right')), leftT));
    if (to <= from) return { plates: [], problems: [] };
    const outer = minus(setIn, thickness[wall]);
    const across: Interval = { from: outer, to: plus(outer, section.width) };

    const doors = input.openings.filter(opening => opening.wall === wall && opening.kind === 'door' && isPlaced(opening)).map(opening => ({ opening, clear: alongWallOpening(opening, inside).clear }));
    const cutOuts = doors.filter(({ opening }) => opening.plate === 'cut_out').map(({ opening, clear }) => opening.cutOut ?? clear);
    const whole = withoutDoorways({ from, to }, cutOuts);
    const thresholds = doors.filter(({ opening }) => opening.plate === 'threshold');
    const problems: ShellProblem[] = [];
    const pieces = whole.flatMap(piece => {
        const spliced = splice(piece, longestPiece, shell.joints.map(joint => joint.at), thresholds.map(({ clear }) => clear));
        if (spliced) return spliced;
        problems.push({ kind: 'plate-cannot-be-spliced', wall, mark: `BASE-${wall.toUpperCase()}`, length: minus(piece.to, piece.from), longestPiece: longestPiece ?? minus(piece.to, piece.from) });
        return [piece];
    });
    return {
        plates: pieces.map((along, index): BasePlate => ({
            mark: `BASE-${wall.toUpperCase()}${pieces.length > 1 ? `-${index + 1}` : ''}`, wall, section, length: minus(along.to, along.from), along, across,
            thresholdFor: thresholds.filter(({ clear }) => clear.from < along.to && along.from < clear.to).map(({ opening }) => opening.name),
        })),
        problems,
    };
}

function withoutDoorways(plate: Interval, doorways: readonly Interval[]): readonly Interval[] {
    return [...doorways].sort((a, b) => a.from - b.from).reduce<readonly Interval[]>((pieces, doorway) => pieces.flatMap(piece => [
        { from: piece.from, to: ticks(Math.min(piece.to, doorway.from)) },
        { from: ticks(Math.max(piece.from, doorway.to)), to: piece.to },
    ].filter(part => part.from < part.to)), [plate]);
}

/** More pieces than this is a slip in the stock list, not a plate. */
const mostPieces = 50;

/** Cuts a plate into the fewest pieces the stock allows, each splice as far as can be from the next panel joint; `undefined` when there is no place for a splice. */
function splice(plate: Interval, longestPiece: Length | undefined, joints: readonly Length[], doorways: readonly Interval[]): readonly Interval[] | undefined {
    const length = minus(plate.to, plate.from);
    if (longestPiece === undefined || length <= longestPiece) return [plate];
    if (longestPiece <= 0) return undefined;
    const least = Math.ceil(length / longestPiece);
    for (let count = least; count <= Math.min(least + 2, mostPieces); count++) {
        const cuts: Length[] = [];
        for (let index = 1; index < count; index++) {
            const previous = cuts.at(-1) ?? plate.from;
            const earliest = ticks(Math.max(previous + 1, plate.to - (count - index) * longestPiece));
            const cut = bestSplice({ from: earliest, to: ticks(Math.min(plate.to - 1, previous + longestPiece)) }, joints, doorways);
            if (cut === undefined) break;
            cuts.push(cut);
        }
        if (cuts.length < count - 1) continue;
        const ends = [plate.from, ...cuts, plate.to];
        return ends.slice(1).map((to, index) => ({ from: ends[index] ?? plate.from, to }));
    }
    return undefined;
}

/** The place in a closed window farthest from every panel joint and outside every doorway; the later of equals, so that pieces are long. */
function bestSplice(window: Interval, joints: readonly Length[], doorways: readonly Interval[]): Length | undefined {
    if (window.to < window.from) return undefined;
    const sorted = [...joints].sort((a, b) => a - b);
    const middles = sorted.slice(1).map((joint, index) => plus(sorted[index] ?? joint, half(minus(joint, sorted[index] ?? joint))));
    const places = [window.from, window.to, ...middles, ...doorways.flatMap(({ from, to }) => [from, to])]
        .filter(place => window.from <= place && place <= window.to && !doorways.some(({ from, to }) => from < place && place < to));
    const clearance = (place: Length): number => Math.min(Infinity, ...sorted.map(joint => Math.abs(joint - place)));
    const [best] = places.filter(place => clearance(place) > 0).sort((a, b) => clearance(b) - clearance(a) || b - a);
    return best;
}
