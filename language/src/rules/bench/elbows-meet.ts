import { amount } from '../../core/finding.js';
import { bodyCitation } from '../../rule-sets/anthropometry.js';
import { defineRule } from '../rule.js';
import { stretchSpan } from './bench-findings.js';
import { cited, judgedFits, showMeasure, whereMeant } from './sitter-findings.js';

export const elbowsMeet = defineRule({
    id: 'elbows-meet',
    family: 'bench',
    title: 'The largest the room is meant for do not sit side by side without touching',
    severity: 'info',
    why: 'The count of seats goes by a usual length for each; people who are broader than that touch.',
    bad: 'room { system Skerry; width 84"; depth 79 1/2"; height 7\'0"; ceiling spans_left_to_right; fits p95_man }',
    good: 'room { system Skerry; width 84"; depth 79 1/2"; height 7\'0"; ceiling spans_left_to_right; fits p5_woman }',
    sources: [bodyCitation('elbow_breadth', 'p95_man')],
    isWaivable: true,
    fixes: 'none',
    *check(input) {
        for (const { block, name, fit: { seats, seatsByElbows }, sitters: { elbows } } of judgedFits(input)) {
            if (seatsByElbows >= seats) continue;
            yield {
                at: stretchSpan(block),
                message: `Bench ${name} counts ${seats} seats; ${seatsByElbows} people sit on it without touching when each takes ${showMeasure(elbows, input)}. Count on ${seatsByElbows}, or make it longer.`,
                citation: cited(elbows), measured: amount(seatsByElbows, ''), required: amount(seats, ''), subject: `${name}.seats`, related: whereMeant(input),
            };
        }
    },
});
