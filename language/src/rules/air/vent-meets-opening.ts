import { inWords, type Finding } from '../../core/finding.js';
import { intervalsOverlap, neighbours, type Wall } from '../../core/geometry.js';
import { distanceFrom } from '../../engines/fittings/wall-place.js';
import type { Opening } from '../../engines/openings/door.js';
import type { Block } from '../../model/block.js';
import { defineRule, type RuleInput } from '../rule.js';
import { alongSpan, ventTitle } from './air-findings.js';

const citation = { kind: 'geometry', text: 'two openings do not share a piece of wall' } as const;

export const ventMeetsOpening = defineRule({
    id: 'vent-meets-opening',
    family: 'air',
    title: 'A vent lies in a door or a window',
    severity: 'error',
    why: 'Where the door or the window is there is no wall to cut the vent into.',
    bad: 'vent exhaust on front { size 8" x 4"; from left 30"; bottom 40"; air room }',
    good: 'vent exhaust on front { size 8" x 4"; from left 8"; below_ceiling 3"; air room }',
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    *check(input): Generator<Finding> {
        const others = openings(input);
        for (const { block, name, vent } of input.results.air?.vents ?? []) {
            if (!vent) continue;
            const met = others.find(({ wall, opening }) => wall === vent.wall && intervalsOverlap(opening.u, vent.onWall.u) && intervalsOverlap(opening.v, vent.onWall.v));
            const from = block.values.from?.value.wall ?? neighbours[vent.wall].left;
            const inside = input.results.inside;
            const near = met && inside && distanceFrom(vent.wall, from, met.opening.u, inside);
            if (!met || near === undefined) continue;
            const far = near + met.opening.u.to - met.opening.u.from as typeof near;
            yield {
                at: alongSpan(block),
                message: `${ventTitle(block)} lies in ${met.name}, which takes the ${vent.wall} wall from ${input.show(near)} to ${input.show(far)}, measured from the ${from} wall. Move it clear of that.`,
                citation, measured: inWords('overlapping'), required: inWords('apart'), subject: name,
                related: [{ at: met.block.head, message: `${met.name.charAt(0).toUpperCase()}${met.name.slice(1)} is here.` }],
            };
        }
    },
});

interface Taken { readonly name: string; readonly block: Block; readonly wall: Wall; readonly opening: Opening }
/** Doors with their frame opening and windows with their trim. */
const openings = ({ results }: RuleInput): readonly Taken[] => [
    ...results.doors.flatMap(({ name, block, door }): Taken[] => door ? [{ name: `door ${name}`, block, wall: door.wall, opening: door.frameOpening }] : []),
    ...results.windows.flatMap(({ name, block, window }): Taken[] => window ? [{ name: `window ${name}`, block, wall: window.wall, opening: window.trim?.outer ?? window.glass }] : []),
];
