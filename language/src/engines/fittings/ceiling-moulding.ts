import { extent, insideRun, interval, walls, type InsideSize, type Wall } from '../../core/geometry.js';
import { inches, minus, plus, splitEvenly, ticks, zero, type Length } from '../../core/length.js';
import { nominalFor } from '../parts/lumber.js';
import { squareEnds, type Part, type Section } from '../parts/part.js';

export interface MouldingInput {
    readonly stock: string;
    readonly section: Section;
    /** Longest length the stock comes in. */
    readonly longest?: Length;
    /** What is left on for the cut on site. */
    readonly allowance?: Length;
    readonly inside: InsideSize;
    /** The wall whose moulding holds the door in line. */
    readonly doorWall?: Wall;
}

/** What a moulding ships longer than its wall. Common practice, no source. */
export const usualAllowance = inches(2);

const what = 'inside ceiling moulding';
export const isMoulding = (part: Pick<Part, 'what'>): boolean => part.what === what;

/** Which mouldings run through, said wherever a list has mouldings. Common practice, no source. */
export const mouldingPractice = 'Ceiling mouldings: the one of the door wall and the one across from it run through, wall to wall; the other two stand between them and are shorter by the thickness of both. ' +
    'Flat stock is butted square; a profiled moulding is coped to the two that run through. No published source: common practice, chosen by this tool.';

/**
 * The ceiling moulding inside, one run per wall in the order front, left, back, right. Two run through, the door wall's and the one across from it (front and
 * back when there is no door); the others butt between them, so each is two thicknesses shorter than its wall. All of it is cut on site: panels are set up within
 * their tolerance, so the run under the ceiling is known only when they stand. A run longer than the stock gets equal pieces. Where nothing is left between
 * two mouldings there is none. Common practice, no source.
 */
export function ceilingMouldings({ stock, section, longest, allowance = usualAllowance, inside, doorWall }: MouldingInput): readonly Part[] {
    const nominal = nominalFor(section);
    const first = doorWall ?? 'front';
    return walls.flatMap((wall): Part[] => {
        const whole = insideRun(wall, inside);
        const isThrough = runsAlongFront(wall) === runsAlongFront(first);
        const stretch = isThrough ? interval(zero, whole) : interval(section.thickness, minus(whole, section.thickness));
        const run = extent(stretch);
        if (run <= 0) return [];
        const usable = longest === undefined ? undefined : longest - allowance;
        const count = usable === undefined || usable <= 0 || run <= usable ? 1 : Math.ceil(run / usable);
        const { share, rest } = splitEvenly(run, count);
        const align = wall === doorWall ? '; it goes on after the door is aligned and holds it in line' : '';
        const joint = count > 1 ? `, ${count} pieces butted` : '';
        const between = `between the moulding of the ${first} wall and the one across from it`;
        return [{
            mark: `${wall.toUpperCase()}-MOULDING-1`,
            what,
            count,
            material: { stock },
            ...(nominal && { nominal }),
            section,
            length: plus(ticks(share + (rest > 0 ? 1 : 0)), allowance),
            allowance,
            ends: squareEnds,
            notches: [],
            cut: 'site',
            goesTo: `${wall} wall under the ceiling${joint}, ${isThrough ? 'runs through, both ends against the linings' : `${between}, both ends butted square against them (coped where the moulding is profiled)`}`,
            place: { wall, stretches: [stretch], run: whole, between: 'linings' },
            measure: isThrough ? `lining to lining along the ${wall} wall, under the ceiling${joint}${align}`
                : `${between} once those two are up, along the ${wall} wall, under the ceiling${joint}`,
        }];
    });
}

const runsAlongFront = (wall: Wall): boolean => wall === 'front' || wall === 'back';
