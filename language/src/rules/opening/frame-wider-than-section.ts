import { lengthFigure } from '../../core/finding.js';
import { longest, plus, times } from '../../core/length.js';
import { showList } from '../../core/show.js';
import { defineRule } from '../rule.js';
import { inCatalogue, modelSpan } from './opening-findings.js';

const citation = { kind: 'geometry', text: 'a door comes in its wall section with its whole frame' } as const;

export const frameWiderThanSection = defineRule({
    id: 'frame-wider-than-section',
    family: 'opening',
    title: 'The frame of a door is wider than its section',
    severity: 'error',
    why: 'The door is built into a section of wall in the shop; a jamb past its edge would stand in the next panel.',
    bad: 'door_model Trial { leaf 24" x 76"; clear 22 3/4" x 75"; section 26"; catch roller; frame_width 1 1/2" }\ndoor entry on front { model Trial; from left 23 7/8"; hinge left }',
    good: 'door_model Trial { leaf 24" x 76"; clear 22 3/4" x 75"; section 30"; catch roller; frame_width 1 1/2" }\ndoor entry on front { model Trial; from left 23 7/8"; hinge left }',
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    *check({ results: { doors }, show }) {
        for (const door of doors) {
            const past = door.problems.flatMap(problem => problem.kind === 'frame-wider-than-section' ? [problem] : []);
            const [first, ...more] = past;
            const section = door.model.values.section;
            if (!first || !section) continue;
            const over = longest(first.over, ...more.map(problem => problem.over));
            // The section is centred on the clear opening, so it grows on both sides.
            const least = plus(section.value, times(over, 2));
            yield {
                at: modelSpan(door),
                message: `The frame of door ${door.name} stands ${showList(past.map(problem => `${show(problem.over)} past its section toward the ${problem.toward} wall`))}; a section of ${show(least)} is needed. Mend the section or the frame of the door model.`,
                citation, measured: lengthFigure(section.value), required: lengthFigure(least), subject: door.name,
                related: inCatalogue(door.model, section, 'The section stands here.'),
            };
        }
    },
});
