import { inWords } from '../../core/finding.js';
import { showList } from '../../core/show.js';
import type { CornerName } from '../../engines/shell/shell-input.js';
import { areFreeSidesUnstated } from '../free-sides.js';
import { defineRule } from '../rule.js';
import { shellProblems } from './shell-findings.js';

const citation = { kind: 'practice', text: 'the closing panel needs a corner whose wall can swing outward by the engagement' } as const;

export const closingCornerAgainstBuilding = defineRule({
    id: 'closing-corner-against-building',
    family: 'shell',
    title: 'The corner to be closed last stands against the building',
    severity: 'error',
    why: 'Panels lock into each other, so the last one goes in only while a neighbouring wall swings outward by the engagement on its unfastened plate. A wall that stands against the building cannot.',
    bad: 'room { system Skerry; width 84"; depth 79 1/2"; height 7\'0"; ceiling spans_left_to_right; closing_corner back_left }',
    good: 'room { system Skerry; width 84"; depth 79 1/2"; height 7\'0"; ceiling spans_left_to_right; closing_corner front_right }',
    sources: [citation],
    isWaivable: true,
    fixes: 'review',
    *check(input) {
        const named = input.job.room?.values.closing_corner;
        // Where no side is named free at all, that is the one cause, and another rule's.
        if (!named || areFreeSidesUnstated(input.job)) return;
        for (const { reason } of shellProblems(input, 'no-closing-corner')) {
            if (reason.kind !== 'named-corner-stands-against-the-building') continue;
            const possible = reason.considered.filter(corner => corner.can === 'close').map(({ corner }) => corner);
            yield {
                at: named.span,
                message: `The ${show(reason.corner)} corner cannot be closed last: its ${reason.swings} wall stands against the building and cannot swing outward (common practice, no source). ${possible.length > 0 ? `${capital(showList(possible.map(show), 'or'))} can be.` : 'Leave one side free.'}`,
                citation, measured: inWords(`the ${reason.swings} wall against the building`), required: inWords(possible.map(show).join(' or ')), subject: 'room.closing_corner',
                fixes: possible.map(corner => ({ title: `Close the ${show(corner)} corner last`, safety: 'review' as const, edits: [{ span: named.span, newText: corner }] })),
            };
        }
    },
});
const show = (corner: CornerName): string => corner.replace('_', ' ');
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
