import { lengthFigure } from '../../core/finding.js';
import { defineRule } from '../rule.js';
import { inCatalogue, modelSpan } from './opening-findings.js';

const citation = { kind: 'geometry', text: 'the clear opening lies inside the frame' } as const;

export const clearHigherThanFrame = defineRule({
    id: 'clear-higher-than-frame',
    family: 'opening',
    title: 'The clear height of a door is more than its frame has',
    severity: 'error',
    why: 'Leaf and gaps make the height of the frame; more cannot be clear.',
    bad: 'door_model Trial { leaf 24" x 76"; clear 22 3/4" x 77"; section 30"; catch roller }\ndoor entry on front { model Trial; from left 23 7/8"; hinge left }',
    good: 'door_model Trial { leaf 24" x 76"; clear 22 3/4" x 75"; section 30"; catch roller }\ndoor entry on front { model Trial; from left 23 7/8"; hinge left }',
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    *check({ results: { doors }, show }) {
        for (const door of doors) {
            for (const problem of door.problems) {
                if (problem.kind !== 'clear-higher-than-frame') continue;
                yield {
                    at: modelSpan(door),
                    message: `The clear height of door ${door.name} is stated as ${show(problem.stated)}; leaf and gaps make a frame ${show(problem.atMost)} high. Mend the clear opening or the leaf of the door model.`,
                    citation, measured: lengthFigure(problem.stated), required: lengthFigure(problem.atMost), subject: door.name,
                    related: inCatalogue(door.model, door.model.values.clear, 'The clear opening stands here.'),
                };
            }
        }
    },
});
