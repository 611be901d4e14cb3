import { showCitation } from '../../core/citation.js';
import { inWords } from '../../core/finding.js';
import { governing } from '../governing.js';
import { defineRule } from '../rule.js';
import { inCatalogue, modelSpan } from './opening-findings.js';

export const doorHandleMetalInside = defineRule({
    id: 'door-handle-metal-inside',
    family: 'opening',
    title: 'A metal handle inside the door',
    severity: 'warning',
    why: 'Metal at the temperature of the room burns a bare hand; wood does not.',
    bad: 'door_model Trial { leaf 24" x 76"; clear 22 3/4" x 75"; section 30"; catch roller; handle_inside metal }\ndoor entry on front { model Trial; from left 23 7/8"; hinge left }',
    good: 'door_model Trial { leaf 24" x 76"; clear 22 3/4" x 75"; section 30"; catch roller; handle_inside wood }\ndoor entry on front { model Trial; from left 23 7/8"; hinge left }',
    sources: [{ kind: 'practice', text: 'wood where the door is touched' }],
    isWaivable: true,
    fixes: 'none',
    *check({ results: { doors }, ruleSets }) {
        const rule = governing(ruleSets, 'door.handle');
        if (!rule) return;
        for (const door of doors) {
            const handle = door.model.values.handle_inside;
            if (handle?.value !== 'metal') continue;
            yield {
                at: modelSpan(door),
                message: `The inside handle of door ${door.name} is metal; wood is needed where it is touched (${showCitation(rule.clause.citation)}). Choose a door with a wooden handle.`,
                citation: rule.clause.citation, measured: inWords('metal'), required: inWords('wood'), subject: door.name,
                related: inCatalogue(door.model, handle, 'The handle stands here.'),
            };
        }
    },
});
