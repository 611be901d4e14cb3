import { lengthFigure } from '../../core/finding.js';
import { showList } from '../../core/show.js';
import { areFreeSidesUnstated } from '../free-sides.js';
import { showAtLeast, showAtMost } from '../rounding.js';
import { defineRule } from '../rule.js';

const citation = { kind: 'geometry', text: 'the leaf opens to 90 degrees' } as const;

export const doorCannotOpenOnSite = defineRule({
    id: 'door-cannot-open-on-site',
    family: 'site',
    title: 'The door cannot open where the room stands',
    severity: 'error',
    why: 'The door is the way out. It has to open to 90 degrees into room the place really has.',
    bad: 'site { width 96"; depth 108"; ceiling 7\'6"; floor tile; free front, right; clear front 20" }',
    good: 'site { width 96"; depth 108"; ceiling 7\'6"; floor tile; free front, right; clear front 24" }',
    sources: [citation],
    isWaivable: false,
    fixes: 'none',
    *check({ job, results }) {
        for (const { door, onSite } of results.site?.doors ?? []) {
            if (onSite.status !== 'cannot_open' || !door.door) continue;
            // No side is named free and no floor stated clear: that the side is built in is a guess then.
            if (areFreeSidesUnstated(job) && onSite.obstructions.length === 0 && !job.site?.values.clear?.value.some(({ wall }) => wall === door.door?.wall)) continue;
            const clear = job.site?.values.clear;
            const isShort = onSite.clear !== undefined && onSite.clear < onSite.needed;
            const wall = door.door.wall;
            const hits = showList(onSite.obstructions.map(({ name }) => name));
            yield {
                at: isShort && clear ? clear.span : door.block.values.hinge?.span ?? door.block.head,
                message: isShort
                    ? `There is ${showAtMost(onSite.clear ?? onSite.needed, job.unit)} of clear floor before the ${wall} side; door ${door.name} needs ${showAtLeast(onSite.needed, job.unit)} to open to 90 degrees (${citation.text}). Put the door in another wall, or keep that floor clear.`
                    : `Door ${door.name} hits ${hits} before it is open to 90 degrees (${citation.text}). Hinge it on the other side, or move it.`,
                citation, ...(onSite.clear !== undefined && { measured: lengthFigure(onSite.clear) }), required: lengthFigure(onSite.needed), subject: door.name,
                ...(isShort && { related: [{ at: door.block.head, message: 'The door stands here.' }] }),
            };
        }
    },
});
