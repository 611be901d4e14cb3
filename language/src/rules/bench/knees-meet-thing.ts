import { inWords, lengthFigure } from '../../core/finding.js';
import { showList } from '../../core/show.js';
import { bodyCitation } from '../../rule-sets/anthropometry.js';
import { defineRule } from '../rule.js';
import { cited, judgedFits, showMeasure, whereMeant } from './sitter-findings.js';

export const kneesMeetThing = defineRule({
    id: 'knees-meet-thing',
    family: 'bench',
    title: 'The knees of the largest the room is meant for meet something',
    severity: 'info',
    why: 'Who leans back has the knees before the front edge; there they need room, from a hot guard above all.',
    bad: 'room { system Skerry; width 84"; depth 79 1/2"; height 7\'0"; ceiling spans_left_to_right; fits p95_man }\nbench lower on left { build Slatted; top 18"; depth 16" }\nbench upper on right { build Slatted; top 20"; depth 58" }\n// without heater stove',
    good: 'room { system Skerry; width 84"; depth 79 1/2"; height 7\'0"; ceiling spans_left_to_right; fits p50_man }',
    sources: [bodyCitation('buttock_knee_length', 'p95_man')],
    isWaivable: true,
    fixes: 'none',
    *check(input) {
        const { results: { benches, heaters } } = input;
        for (const { block, name, fit: { atKnees }, sitters: { knees } } of judgedFits(input)) {
            if (atKnees.length === 0) continue;
            const named = [...new Set(atKnees.map(thing => thing.kind === 'wall' ? `the ${thing.name} wall` : thing.kind === 'bench' || thing.kind === 'heater' ? `${thing.kind} ${thing.name}` : thing.name))];
            yield {
                at: block.values.depth?.span ?? block.head,
                message: `Who leans back on bench ${name} meets ${showList(named)} with the knees; they need ${showMeasure(knees, input)} from the rear edge. Move one of the two, or make the bench deeper.`,
                citation: cited(knees), measured: inWords(`${showList(named)} in the way`), required: lengthFigure(knees.length), subject: name,
                related: [...whereMeant(input), ...atKnees.flatMap(thing => {
                    const other = benches?.blocks.get(thing.name) ?? heaters.find(heater => heater.name === thing.name || heater.name === thing.belongsTo)?.block;
                    return other ? [{ at: other.head, message: 'Knees meet this.' }] : [];
                })],
            };
        }
    },
});
