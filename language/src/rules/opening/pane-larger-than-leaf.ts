import { inWords } from '../../core/finding.js';
import { defineRule } from '../rule.js';
import { inCatalogue, modelSpan } from './opening-findings.js';

const citation = { kind: 'geometry', text: 'a pane lies inside its leaf' } as const;

export const paneLargerThanLeaf = defineRule({
    id: 'pane-larger-than-leaf',
    family: 'opening',
    title: 'The pane of a door is larger than its leaf',
    severity: 'error',
    why: 'The glass area goes into the heat the room loses; a pane that does not fit is a slip of a figure.',
    bad: 'door_model Trial { leaf 24" x 76"; clear 22 3/4" x 75"; section 30"; catch roller; glass safety; pane 60" x 16" }\ndoor entry on front { model Trial; from left 23 7/8"; hinge left }',
    good: 'door_model Trial { leaf 24" x 76"; clear 22 3/4" x 75"; section 30"; catch roller; glass safety; pane 16" x 60" }\ndoor entry on front { model Trial; from left 23 7/8"; hinge left }',
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    *check({ results: { doors }, show }) {
        for (const door of doors) {
            const { pane, leaf } = door.model.values;
            if (!pane || !leaf || (pane.value.width <= leaf.value.width && pane.value.height <= leaf.value.height)) continue;
            const [small, large] = [pane, leaf].map(({ value: { width, height } }) => `${show(width)} x ${show(height)}`);
            yield {
                at: modelSpan(door),
                message: `The pane of door ${door.name} is ${small ?? ''} and its leaf ${large ?? ''}, so the pane does not fit into it. Mend the pane in the door model; width comes first.`,
                citation, measured: inWords(small ?? ''), required: inWords(large ?? ''), subject: door.name,
                related: inCatalogue(door.model, pane, 'The pane stands here.'),
            };
        }
    },
});
