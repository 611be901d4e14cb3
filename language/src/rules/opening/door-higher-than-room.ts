import { lengthFigure } from '../../core/finding.js';
import { minus, plus } from '../../core/length.js';
import { isRoomTooLow, neededRoomHeight } from '../room-height.js';
import { showAtLeast } from '../rounding.js';
import { defineRule } from '../rule.js';
import { inCatalogue, modelSpan } from './opening-findings.js';

const citation = { kind: 'geometry', text: 'the frame of a door stands under the ceiling lining' } as const;

export const doorHigherThanRoom = defineRule({
    id: 'door-higher-than-room',
    family: 'opening',
    title: 'A door is higher than the room',
    severity: 'error',
    why: 'The head of the frame would lie in the ceiling panels.',
    bad: 'door_model Trial { leaf 24" x 79"; clear 22 3/4" x 75"; section 30"; catch roller; frame_width 1 1/2" }\ndoor entry on front { model Trial; from left 23 7/8"; hinge left }',
    good: 'door_model Trial { leaf 24" x 76"; clear 22 3/4" x 75"; section 30"; catch roller; frame_width 1 1/2" }\ndoor entry on front { model Trial; from left 23 7/8"; hinge left }',
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    *check(input) {
        const { results: { doors }, job, show } = input;
        if (isRoomTooLow(input)) return;
        for (const door of doors) {
            for (const problem of door.problems) {
                if (problem.kind !== 'door-higher-than-room') continue;
                const { top, room } = problem;
                const height = job.room?.values.height;
                yield {
                    at: modelSpan(door),
                    message: `The frame of door ${door.name} reaches ${show(top)} over the floor; the ceiling lining is at ${show(room)}. ` +
                        `Choose a lower door${height ? `, or set the height of the room to ${showAtLeast(neededRoomHeight(input) ?? plus(height.value, minus(top, room)), job.unit)} or more` : ''}.`,
                    citation, measured: lengthFigure(top), required: lengthFigure(room), subject: door.name,
                    related: [...height ? [{ at: height.span, message: 'The height of the room stands here.' }] : [], ...inCatalogue(door.model, door.model.values.leaf, 'The leaf stands here.')],
                };
            }
        }
    },
});
