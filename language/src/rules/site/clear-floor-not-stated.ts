import { inWords, lengthFigure } from '../../core/finding.js';
import { showAtLeast } from '../rounding.js';
import { defineRule } from '../rule.js';

const citation = { kind: 'geometry', text: 'the leaf opens to 90 degrees' } as const;

export const clearFloorNotStated = defineRule({
    id: 'clear-floor-not-stated',
    family: 'site',
    title: 'The site does not say how much floor is clear before the door',
    severity: 'info',
    why: 'A side that stands free may still have a wall a foot away. Whether the door opens is judged by the floor that is clear before it.',
    bad: 'site { width 96"; depth 108"; ceiling 7\'6"; floor tile; free front, right }',
    good: 'site { width 96"; depth 108"; ceiling 7\'6"; floor tile; free front, right; clear front 40" }',
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    *check({ job, results }) {
        const site = job.site;
        if (!site?.isWhole || site.written.has('clear')) return;
        for (const { door, onSite } of results.site?.doors ?? []) {
            if (onSite.status !== 'not_stated' || !door.door) continue;
            yield {
                at: site.head,
                message: `The site does not say how much floor is clear before the ${door.door.wall} side; door ${door.name} needs ${showAtLeast(onSite.needed, job.unit)} (${citation.text}). Measure it and write clear ${door.door.wall} and the length.`,
                citation, measured: inWords('not stated'), required: lengthFigure(onSite.needed), subject: door.name,
            };
        }
    },
});
