import { inWords } from '../../core/finding.js';
import { defineRule } from '../rule.js';
import { ventFindings } from './air-findings.js';

const citation = { kind: 'geometry', text: 'an opening is cut where the plan says' } as const;

export const ventHeightMissing = defineRule({
    id: 'vent-height-missing',
    family: 'air',
    title: 'How high a vent stands is not stated',
    severity: 'error',
    why: 'High or low decides what the opening does; and the shop cuts it at one height.',
    bad: 'vent exhaust on front { size 8" x 4"; from left 8"; air room }',
    good: 'vent exhaust on front { size 8" x 4"; from left 8"; below_ceiling 3"; air room }',
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    check: input => ventFindings(input, 'height-missing', ({ block, title, name }) => {
        if (!block.isWhole || block.written.has('bottom') || block.written.has('below_ceiling')) return undefined;
        return { at: block.head, message: `${title} does not say how high it stands. Add bottom, from the floor to its lower edge, or below_ceiling, from the ceiling lining to its upper edge.`, citation, measured: inWords('not stated'), required: inWords('bottom or below_ceiling'), subject: name };
    }),
});
