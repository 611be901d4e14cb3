import { inWords, type Finding } from '../../core/finding.js';
import { showList } from '../../core/show.js';
import { areFreeSidesUnstated } from '../free-sides.js';
import { defineRule } from '../rule.js';
import { ventTitle } from './air-findings.js';

const citation = { kind: 'geometry', text: 'a side that stands against the building has no room before it' } as const;

export const ventOnClosedSide = defineRule({
    id: 'vent-on-closed-side',
    family: 'air',
    title: 'A vent opens into the gap between room and building',
    severity: 'warning',
    why: 'A side that stands against the building leaves an inch of dead air: nothing comes in there, and moist air that goes out wets the building behind.',
    bad: 'vent exhaust on back { size 8" x 4"; from left 8"; bottom 4"; air room }',
    good: 'vent exhaust on back { size 8" x 4"; from left 8"; bottom 4"; air outdoors }',
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    *check({ job, results }): Generator<Finding> {
        const { site } = job;
        if (!site?.isWhole || !results.site || areFreeSidesUnstated(job)) return;
        const free = site.values.free?.value ?? [];
        for (const block of job.vents) {
            const [wall] = block.walls;
            const { air } = block.values;
            if (!wall || air?.value !== 'room' || results.site.sides[wall.value] === 'free') continue;
            yield {
                at: air.span,
                message: `${ventTitle(block)} is on the ${wall.value} wall, which stands against the building; air of the room around has no way to it there. ${free.length > 0 ? `Move it to a side that stands free (${showList(free)})` : 'Move it to a side that stands free'}, or lead it outdoors through the building and write air outdoors.`,
                citation, measured: inWords(`on the ${wall.value} wall`), required: inWords('a free side, or air outdoors'), ...(block.name && { subject: block.name.value }),
                related: [{ at: site.values.free?.span ?? site.head, message: 'The sides that stand free are named here.' }],
            };
        }
    },
});
