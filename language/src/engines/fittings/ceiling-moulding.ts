import { insideRun, walls, type InsideSize, type Wall } from '../../core/geometry.js';
import { inches, plus, splitEvenly, ticks, type Length } from '../../core/length.js';
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

/**
 * The ceiling moulding inside, one run per wall in the order front, left, back, right. All of it is cut on site: panels are set up within their tolerance, so
 * the run under the ceiling is known only when they stand. A wall longer than the stock gets equal pieces.
 */
export function ceilingMouldings({ stock, section, longest, allowance = usualAllowance, inside, doorWall }: MouldingInput): readonly Part[] {
    const nominal = nominalFor(section);
    return walls.map(wall => {
        const run = insideRun(wall, inside);
        const usable = longest === undefined ? undefined : longest - allowance;
        const count = usable === undefined || usable <= 0 || run <= usable ? 1 : Math.ceil(run / usable);
        const { share, rest } = splitEvenly(run, count);
        const align = wall === doorWall ? '; it goes on after the door is aligned and holds it in line' : '';
        const joint = count > 1 ? `, ${count} pieces butted` : '';
        return {
            mark: `${wall.toUpperCase()}-MOULDING-1`,
            what: 'inside ceiling moulding',
            count,
            material: { stock },
            ...(nominal && { nominal }),
            section,
            length: plus(ticks(share + (rest > 0 ? 1 : 0)), allowance),
            allowance,
            ends: squareEnds,
            notches: [],
            cut: 'site',
            goesTo: `${wall} wall, wall to wall under the ceiling${joint}`,
            measure: `lining to lining along the ${wall} wall, under the ceiling${joint}${align}`,
        };
    });
}
