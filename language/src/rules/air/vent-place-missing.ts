import { inWords } from '../../core/finding.js';
import { defineRule } from '../rule.js';
import { ventFindings } from './air-findings.js';

const citation = { kind: 'geometry', text: 'an opening is cut where the plan says' } as const;

export const ventPlaceMissing = defineRule({
    id: 'vent-place-missing',
    family: 'air',
    title: 'Where a vent stands along its wall is not stated',
    severity: 'error',
    why: 'The opening is cut in the shop, in one panel at one place; the panel cannot be made without it.',
    bad: 'vent exhaust on front { size 8" x 4"; below_ceiling 3"; air room }',
    good: 'vent exhaust on front { size 8" x 4"; from left 8"; below_ceiling 3"; air room }',
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    check: input => ventFindings(input, 'place-missing', ({ block, title, name }) => {
        // A vent behind a heater that has no place itself waits for the heater.
        if (!block.isWhole || (['from', 'centre', 'behind'] as const).some(key => block.written.has(key))) return undefined;
        return { at: block.head, message: `${title} does not say where it stands along its wall. Add from or centre from with a neighbouring wall and a distance, or behind with a heater of that wall.`, citation, measured: inWords('not stated'), required: inWords('from, centre or behind'), subject: name };
    }),
});
