import { lengthFigure } from '../../core/finding.js';
import { bodyCitation } from '../../rule-sets/anthropometry.js';
import { defineRule } from '../rule.js';
import { cited, judgedFits, showMeasure, whereMeant } from './sitter-findings.js';

export const feetHang = defineRule({
    id: 'feet-hang',
    family: 'bench',
    title: 'The feet of the smallest the room is meant for do not reach down',
    severity: 'info',
    why: 'Legs that hang press the thighs on the front edge, and feet in the air stay cold.',
    bad: 'room { system Skerry; width 84"; depth 79 1/2"; height 7\'0"; ceiling spans_left_to_right; fits p5_woman }',
    good: 'room { system Skerry; width 84"; depth 79 1/2"; height 7\'0"; ceiling spans_left_to_right; fits p95_man }\nbench lower on back { build Slatted; top 18 1/2"; depth 16"; in_front_of upper }',
    sources: [bodyCitation('popliteal_height', 'p5_woman')],
    isWaivable: true,
    fixes: 'none',
    *check(input) {
        for (const { layout: { comfort: { rise, climbFrom }, isAccessible }, block, name, fit, sitters: { lowerLeg } } of judgedFits(input)) {
            if (fit.feetShort === 0) continue;
            yield {
                at: block.values.top?.span ?? block.head,
                message: `Bench ${name} is ${input.show(rise)} above ${climbFrom === undefined ? 'the floor' : `bench ${climbFrom}`}; feet reach down ${showMeasure(lowerLeg, input, 'most')}. Set something for feet before it${isAccessible ? '; the height of an accessible seat stays' : ', or lower the bench'}.`,
                citation: cited(lowerLeg), measured: lengthFigure(rise), required: lengthFigure(lowerLeg.length), subject: `${name}.rise`, related: whereMeant(input),
            };
        }
    },
});
