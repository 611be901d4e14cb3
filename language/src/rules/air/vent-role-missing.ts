import { inWords } from '../../core/finding.js';
import type { Fix } from '../../core/finding.js';
import { defineRule } from '../rule.js';
import { ventFindings } from './air-findings.js';

const citation = { kind: 'geometry', text: 'areas are added up by what an opening is for' } as const;

export const ventRoleMissing = defineRule({
    id: 'vent-role-missing',
    family: 'air',
    title: 'What a vent is for is not stated',
    severity: 'warning',
    why: 'An opening without a purpose counts neither as intake nor as exhaust, so nothing about the air of the room can be judged.',
    bad: 'vent north on front { size 8" x 4"; from left 2"; below_ceiling 3"; air room }',
    good: 'vent north on front { role exhaust; size 8" x 4"; from left 2"; below_ceiling 3"; air room }',
    sources: [citation],
    isWaivable: true,
    fixes: 'review',
    check: input => ventFindings(input, 'vent-role-missing', ({ block, title, name }) => {
        if (!block.isWhole || block.written.has('role')) return undefined;
        const at = block.insertAt;
        return {
            at: block.head, citation, measured: inWords('not stated'), required: inWords('intake or exhaust'), subject: name,
            message: `${title} is neither named intake nor exhaust and states no role, so it counts as neither. Add role intake or role exhaust.`,
            fixes: at ? (['intake', 'exhaust'] as const).map((role): Fix => ({ title: `Make it an ${role}`, safety: 'review', edits: [{ span: at, newText: `; role ${role}` }] })) : [],
        };
    }),
});
