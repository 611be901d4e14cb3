import { lengthFigure } from '../../core/finding.js';
import { minus, plus } from '../../core/length.js';
import { showList } from '../../core/show.js';
import { replaceLength } from '../fixes.js';
import { isRoomTooLow, unmetHeights } from '../room-height.js';
import { showAtLeast } from '../rounding.js';
import { defineRule } from '../rule.js';

export const roomTooLow = defineRule({
    id: 'room-too-low',
    family: 'shell',
    title: 'The room is too low for several things in it',
    severity: 'error',
    why: 'Where the heater and the door both want a higher room, the height of the room is the cause. One height that serves everything is worth more than a message for each.',
    bad: 'room { system Skerry; width 84"; depth 79 1/2"; height 6\'0"; ceiling spans_left_to_right }',
    good: 'room { system Skerry; width 84"; depth 79 1/2"; height 6\'10 3/4"; ceiling spans_left_to_right }',
    sources: [{ kind: 'manual', text: 'the least room height of the heater' }, { kind: 'geometry', text: 'the frame of a door stands under the ceiling lining' }],
    isWaivable: false,
    fixes: 'review',
    *check(input) {
        const { job, results: { inside }, show } = input;
        const height = job.room?.values.height;
        const demands = unmetHeights(input);
        const [most] = demands.toSorted((a, b) => b.height - a.height);
        if (!inside || !height || !most || !isRoomTooLow(input)) return;
        const needed = plus(height.value, minus(most.height, inside.height));
        yield {
            at: height.span,
            message: `The room is ${show(inside.height)} high inside; ${showList(demands.map(({ words }) => words))}. Set the height to ${showAtLeast(needed, job.unit)} or more, or choose a lower door, bench and heater.`,
            citation: most.citation, measured: lengthFigure(inside.height), required: lengthFigure(most.height), subject: 'room.inside.height',
            related: demands.map(({ at, words }) => ({ at, message: `${words.charAt(0).toUpperCase()}${words.slice(1)}.` })),
            fixes: replaceLength('height', height.span, needed, job.unit),
        };
    },
});
