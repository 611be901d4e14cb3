import { freeCircleOf, turningSpaceOf } from '../../assembly/access.js';
import { showCitation } from '../../core/citation.js';
import { inWords, lengthFigure } from '../../core/finding.js';
import { showList } from '../../core/show.js';
import { ada } from '../../rule-sets/documents.js';
import { showAtMost } from '../rounding.js';
import { defineRule } from '../rule.js';
import { showRequired } from '../governing.js';
import { removalsThatCure, turningDemand } from './turning-findings.js';

export const noTurningSpace = defineRule({
    id: 'no-turning-space',
    family: 'bench',
    title: 'Nowhere on the floor can a wheelchair turn',
    severity: 'error',
    why: 'Who comes in forward has to go out forward, and to come to stand beside the bench.',
    bad: 'rules us_accessible',
    good: 'rules us_accessible\nroom { system Skerry; width 84"; depth 91 1/2"; height 7\'0"; ceiling spans_left_to_right }\n// without bench upper\nbench lower on back { build Slatted; top 18"; depth 16"; is_accessible yes }',
    sources: [ada.fromMemory('304.3 by 612.3', 'Turning space of 60 in within the room, as a circle or a T.')],
    isWaivable: true,
    fixes: 'none',
    *check(input) {
        const { job: { room, unit }, results: { floor } } = input;
        const demand = turningDemand(input);
        if (!demand || !floor || !room) return;
        const { circle, t, ask } = demand;
        const found = turningSpaceOf({ ...floor, ...ask });
        if (found.circle || found.t) return;
        const largest = freeCircleOf(floor)?.diameter;
        const cures = removalsThatCure(input, ask);
        const benches = cures.filter(({ kind }) => kind === 'bench');
        const advice = cures.length === 0 ? 'Make the room larger, or set benches and heater so that the floor is in one piece.'
            : `Without ${showList(cures.map(({ kind, name }) => `${kind} ${name}`), 'or')} there would be one: shorten or move ${cures.length === 1 ? 'it' : 'one of them'}${benches.length > 0 ? `; a bench that is readily removed may stand in it (${showCitation(ada('612.2, exception', ''))})` : ''}.`;
        yield {
            at: room.head,
            message: `The largest circle free on the floor is ${largest === undefined ? 'none' : `${showAtMost(largest, unit)} across`}; a turning space of ${showRequired(circle.figure.value, unit)} across is needed${t ? `, or a T with arms ${showRequired(t.arm, unit)} wide in a square of ${showRequired(t.square, unit)}` : ''} (${showCitation(circle.clause.citation)}). ${advice}`,
            citation: circle.clause.citation, measured: largest === undefined ? inWords('no free floor') : lengthFigure(largest), required: lengthFigure(circle.figure.value), subject: 'room.turning_circle',
            related: cures.map(({ at }) => ({ at, message: 'Without this there would be room to turn.' })),
        };
    },
});
