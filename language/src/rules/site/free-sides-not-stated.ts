import { inWords } from '../../core/finding.js';
import { walls, type Wall } from '../../core/geometry.js';
import { showList } from '../../core/show.js';
import { areFreeSidesUnstated } from '../free-sides.js';
import { defineRule, type RuleInput } from '../rule.js';
import { shellProblems } from '../shell/shell-findings.js';

const citation = { kind: 'practice', text: 'the closing panel needs a corner whose wall can swing outward by the engagement' } as const;

export const freeSidesNotStated = defineRule({
    id: 'free-sides-not-stated',
    family: 'site',
    title: 'The site names no side that stands free',
    severity: 'error',
    why: 'A side that is not named free counts as built in against the building. The last panel goes in only while a wall swings outward, ceiling panels are run in from a free side, and doors and vents open to one; with four sides built in none of that is possible.',
    bad: 'site { width 96"; depth 108"; ceiling 7\'6"; floor tile }',
    good: 'site { width 96"; depth 108"; ceiling 7\'6"; floor tile; free front, right }',
    sources: [citation],
    isWaivable: true,
    fixes: 'review',
    *check(input) {
        const { job, results: { shell, room } } = input;
        const { site } = job;
        if (!site || !shell || !areFreeSidesUnstated(job)) return;
        const isClosable = shellProblems(input, 'no-closing-corner').length === 0;
        const used = sidesInUse(input);
        const { insertAt } = site;
        yield {
            at: site.head, severity: isClosable ? 'warning' : 'error',
            message: isClosable
                ? `The site names no side that stands free; whether a door can open, a vent has air and ceiling panels can be run in is not judged (${citation.text}). Write the sides that stand clear of the building, such as free ${used.length > 0 ? used.join(', ') : 'front, right'}.`
                : `The site names no side that stands free, so all four count as built in and no corner can be closed last: the wall there has to swing outward by the engagement${room ? `, ${input.show(room.base.system.engagement)}` : ''} (common practice, no source). ` +
                    `Write the sides that stand clear of the building, such as free ${used.length > 0 ? used.join(', ') : 'front, right'}. If all four are built in there is no corner to close: put the room up clear of the building and slide it into place.`,
            citation, measured: inWords('no free side'), required: inWords('one free side or more'), subject: 'room.closing_corner',
            fixes: used.length > 0 && insertAt ? [{ title: `Write free ${used.join(', ')}`, safety: 'review', edits: [{ span: insertAt, newText: `; free ${used.join(', ')}` }] }] : [],
            related: used.length > 0 && job.room ? [{ at: job.room.head, message: `Doors, vents or clear floor of the job take the ${showList(used)} ${used.length > 1 ? 'sides' : 'side'} for free.` }] : [],
        };
    },
});

/** Sides the job already counts on: clear floor is stated before them, a door opens outward there, or a vent has its air from the room around. */
function sidesInUse({ job }: RuleInput): readonly Wall[] {
    const used = new Set<Wall | undefined>([
        ...(job.site?.values.clear?.value ?? []).map(({ wall }) => wall),
        ...job.doors.filter(({ values }) => values.swing?.value !== 'inward').map(({ walls: [wall] }) => wall?.value),
        ...job.vents.filter(({ values }) => values.air?.value === 'room').map(({ walls: [wall] }) => wall?.value),
    ]);
    return walls.filter(wall => used.has(wall));
}
