import { lengthFigure } from '../../core/finding.js';
import { bodyCitation } from '../../rule-sets/anthropometry.js';
import { defineRule } from '../rule.js';
import { cited, judgedFits, showMeasure, whereMeant } from './sitter-findings.js';

export const seatDeeperThanThighs = defineRule({
    id: 'seat-deeper-than-thighs',
    family: 'bench',
    title: 'A seat is deeper than the thighs of the smallest the room is meant for',
    severity: 'info',
    why: 'Who leans back then has the front edge in the calf, or sits on the edge without a back. A bench to lie on may be deeper.',
    bad: 'room { system Skerry; width 84"; depth 79 1/2"; height 7\'0"; ceiling spans_left_to_right; fits p5_woman }',
    good: 'room { system Skerry; width 84"; depth 79 1/2"; height 7\'0"; ceiling spans_left_to_right; fits p95_man }',
    sources: [bodyCitation('buttock_popliteal_length', 'p5_woman')],
    isWaivable: true,
    fixes: 'none',
    *check(input) {
        for (const { layout: { depth, isAccessible }, block, name, fit, sitters: { thigh } } of judgedFits(input)) {
            if (fit.seatOver === 0) continue;
            yield {
                at: block.values.depth?.span ?? block.head,
                message: `Bench ${name} is ${input.show(depth)} deep; ${showMeasure(thigh, input, 'most')} is the most with which they lean back. ${isAccessible ? 'Add a back rest before the wall; the depth of an accessible seat stays' : 'Make it less deep, add a back rest before the wall, or leave it so where people lie'}.`,
                citation: cited(thigh), measured: lengthFigure(depth), required: lengthFigure(thigh.length), subject: name, related: whereMeant(input),
            };
        }
    },
});
