import { inWords } from '../../core/finding.js';
import { showList } from '../../core/show.js';
import type { CornerName } from '../../engines/shell/shell-input.js';
import { defineRule } from '../rule.js';
import { shellProblems } from './shell-findings.js';

const citation = { kind: 'practice', text: 'the closing panel needs a corner whose wall can swing outward by the engagement' } as const;

export const closingCornerAgainstBuilding = defineRule({
    id: 'closing-corner-against-building',
    family: 'shell',
    title: 'No corner is free to take the closing panel',
    severity: 'error',
    why: 'Panels lock into each other, so the last one goes in only while a neighbouring wall swings outward by the engagement on its unfastened plate. A wall that stands against the building cannot.',
    bad: 'site { width 96"; depth 108"; ceiling 7\'6"; floor tile }',
    good: 'site { width 96"; depth 108"; ceiling 7\'6"; floor tile; free front, right }',
    sources: [citation],
    isWaivable: true,
    fixes: 'review',
    *check(input) {
        const { room, site } = input.job;
        for (const { reason } of shellProblems(input, 'no-closing-corner')) {
            const named = room?.values.closing_corner;
            const possible = reason.considered.filter(corner => corner.can === 'close').map(({ corner }) => corner);
            const at = reason.kind === 'named-corner-stands-against-the-building' ? named?.span : site?.values.free?.span ?? site?.head ?? room?.head;
            if (!at) continue;
            yield {
                at,
                message: reason.kind === 'named-corner-stands-against-the-building'
                    ? `The ${show(reason.corner)} corner cannot be closed last: its ${reason.swings} wall stands against the building and cannot swing outward (common practice, no source). ${possible.length > 0 ? `${capital(showList(possible.map(show), 'or'))} can be.` : 'Leave one side free.'}`
                    : 'No corner can be closed last: every wall that would swing outward stands against the building (common practice, no source). Leave at least one side of the room free while it is put up, or slide the closed room into place.',
                citation, required: inWords(possible.map(show).join(' or ')), subject: 'room.closing_corner',
                fixes: named && reason.kind === 'named-corner-stands-against-the-building'
                    ? possible.map(corner => ({ title: `Close the ${show(corner)} corner last`, safety: 'review' as const, edits: [{ span: named.span, newText: corner }] })) : [],
            };
        }
    },
});
const show = (corner: CornerName): string => corner.replace('_', ' ');
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
