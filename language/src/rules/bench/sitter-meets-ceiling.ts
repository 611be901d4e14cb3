import { lengthFigure } from '../../core/finding.js';
import { bodyCitation } from '../../rule-sets/anthropometry.js';
import { defineRule } from '../rule.js';
import { cited, judgedFits, showMeasure, whereMeant } from './sitter-findings.js';

export const sitterMeetsCeiling = defineRule({
    id: 'sitter-meets-ceiling',
    family: 'bench',
    title: 'The tallest the room is meant for do not sit upright under the ceiling',
    severity: 'info',
    why: 'A head at the ceiling is in the hottest air of the room, and nobody sits bent for a quarter of an hour.',
    bad: 'room { system Skerry; width 84"; depth 79 1/2"; height 6\'6"; ceiling spans_left_to_right; fits p95_man }',
    good: 'room { system Skerry; width 84"; depth 79 1/2"; height 7\'0"; ceiling spans_left_to_right; fits p95_man }',
    sources: [bodyCitation('sitting_height', 'p95_man')],
    isWaivable: true,
    fixes: 'none',
    *check(input) {
        for (const { layout: { comfort: { headClearance } }, block, name, fit, sitters: { height } } of judgedFits(input)) {
            if (fit.headShort === 0) continue;
            yield {
                at: block.values.top?.span ?? block.head,
                message: `Over bench ${name} there are ${input.show(headClearance)} to the ceiling; ${showMeasure(height, input)} is needed to sit upright. Lower the bench, or make the room higher.`,
                citation: cited(height), measured: lengthFigure(headClearance), required: lengthFigure(height.length), subject: `${name}.head_clearance`, related: whereMeant(input),
            };
        }
    },
});
