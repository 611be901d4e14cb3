import { lengthFigure } from '../../core/finding.js';
import { defineRule } from '../rule.js';
import { inCatalogue, modelSpan } from './opening-findings.js';

const citation = { kind: 'geometry', text: 'the leaf open at 90 degrees stands in its frame by its own thickness' } as const;

export const clearWiderThanLeafLeaves = defineRule({
    id: 'clear-wider-than-leaf-leaves',
    family: 'opening',
    title: 'The clear width of a door is more than its open leaf leaves',
    severity: 'error',
    why: 'The clear width is judged by accessibility rules and the way in; a leaf as wide as the opening does not leave all of it.',
    bad: 'door_model Trial { leaf 24" x 76"; clear 23" x 75"; section 30"; catch roller }\ndoor entry on front { model Trial; from left 23 7/8"; hinge left }',
    good: 'door_model Trial { leaf 24" x 76"; clear 22 3/4" x 75"; section 30"; catch roller }\ndoor entry on front { model Trial; from left 23 7/8"; hinge left }',
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    *check({ results: { doors }, show }) {
        for (const door of doors) {
            for (const problem of door.problems) {
                if (problem.kind !== 'clear-wider-than-leaf-leaves') continue;
                yield {
                    at: modelSpan(door),
                    message: `The clear width of door ${door.name} is stated as ${show(problem.stated)}; the leaf and its two gaps less the thickness of the open leaf leave ${show(problem.atMost)}. Mend the clear opening or the leaf of the door model.`,
                    citation, measured: lengthFigure(problem.stated), required: lengthFigure(problem.atMost), subject: `${door.name}.clear_width`,
                    related: inCatalogue(door.model, door.model.values.clear, 'The clear opening stands here.'),
                };
            }
        }
    },
});
