import { showCitation } from '../../core/citation.js';
import { inWords } from '../../core/finding.js';
import { governing } from '../governing.js';
import { defineRule } from '../rule.js';
import { inCatalogue, modelSpan } from './opening-findings.js';

export const doorNeedsAHandToOpen = defineRule({
    id: 'door-needs-a-hand-to-open',
    family: 'opening',
    title: 'A door with a lock or a latch',
    severity: 'error',
    why: 'Who is weak, dizzy or a child has to get out by leaning on the door; a latch that sticks or a lock that is turned holds them in the heat.',
    bad: 'door_model Trial { leaf 24" x 76"; clear 22 3/4" x 75"; section 30"; catch latch }\ndoor entry on front { model Trial; from left 23 7/8"; hinge left }',
    good: 'door_model Trial { leaf 24" x 76"; clear 22 3/4" x 75"; section 30"; catch roller }\ndoor entry on front { model Trial; from left 23 7/8"; hinge left }',
    sources: [{ kind: 'practice', text: 'no lock and no latch that needs a turn of the hand' }],
    isWaivable: false,
    fixes: 'none',
    *check({ results: { doors }, ruleSets }) {
        const rule = governing(ruleSets, 'door.latch');
        if (!rule) return;
        for (const door of doors) {
            const held = door.model.values.catch;
            if (held?.value !== 'latch' && held?.value !== 'lock') continue;
            yield {
                at: modelSpan(door),
                message: `Door ${door.name} is held by a ${held.value}; a catch that opens by a push is needed (${showCitation(rule.clause.citation)}). Choose a door with a roller or magnetic catch.`,
                citation: rule.clause.citation, measured: inWords(held.value), required: inWords('roller or magnetic catch'), subject: door.name,
                related: inCatalogue(door.model, held, 'The catch stands here.'),
            };
        }
    },
});
