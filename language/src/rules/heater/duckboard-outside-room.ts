import { lengthFigure } from '../../core/finding.js';
import { zero } from '../../core/length.js';
import { outsideRoom } from '../../engines/fittings/things.js';
import { defineRule } from '../rule.js';
import { capital, thingWords } from './thing-findings.js';

export const duckboardOutsideRoom = defineRule({
    id: 'duckboard-outside-room',
    family: 'heater',
    title: 'A duckboard reaches through a wall',
    severity: 'error',
    why: 'It would not go in between the linings.',
    bad: 'duckboard mat { from_left 10"; from_front 4"; width 24"; depth 70"; slat alder_1x4 }',
    good: 'duckboard mat { from_left 10"; from_front 4"; width 24"; depth 24"; slat alder_1x4 }',
    sources: [{ kind: 'geometry', text: 'a duckboard lies between the linings' }],
    isWaivable: true,
    fixes: 'none',
    check: function* ({ results: { fittings, inside }, show }) {
        if (!inside) return;
        for (const { thing, block, name } of fittings) {
            if (thing?.kind !== 'duckboard') continue;
            const over = outsideRoom(thing, inside);
            if (over <= 0) continue;
            yield {
                at: block.head,
                message: `${capital(thingWords(thing))} reaches ${show(over)} into a wall. Move or shorten it by ${show(over)} or more.`,
                citation: { kind: 'geometry', text: 'a duckboard lies between the linings' }, measured: lengthFigure(over), required: lengthFigure(zero), subject: name,
            };
        }
    },
});
