import { inWords, lengthFigure } from '../../core/finding.js';
import type { WayInPart } from '../../engines/shell/way-in.js';
import { showList } from '../../core/show.js';
import { defineRule } from '../rule.js';

const citation = { kind: 'geometry', text: 'a panel passes a doorway when its two smaller dimensions fit' } as const;
const properties = { doorway: 'doorway', turn: 'corridor', stairs: 'stairs', liftCar: 'lift_car' } as const satisfies Record<WayInPart, string>;
const names = { doorway: 'doorway', turn: 'turn of the corridor', stairs: 'stairs', liftCar: 'lift car' } as const satisfies Record<WayInPart, string>;

export const panelDoesNotPassWayIn = defineRule({
    id: 'panel-does-not-pass-way-in',
    family: 'site',
    title: 'A panel does not pass the way in',
    severity: 'error',
    why: 'A room that cannot be carried to its place is not built. The narrowest doorway, the tightest turn, stairs and lift decide how large a panel may be.',
    bad: 'site { width 96"; depth 108"; ceiling 7\'6"; floor tile; free front, right; doorway 20" x 24" }',
    good: 'site { width 96"; depth 108"; ceiling 7\'6"; floor tile; free front, right; doorway 32" x 80" }',
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    *check({ job, results, show }) {
        for (const part of ['doorway', 'turn', 'stairs', 'liftCar'] as const) {
            const stopped = (results.site?.blocked ?? []).filter(({ at }) => at.includes(part)).map(({ panel }) => panel);
            const given = job.site?.values[properties[part]];
            const [largest] = stopped.toSorted((a, b) => b.overall - a.overall);
            if (!given || !largest) continue;
            yield {
                at: given.span,
                message: `${stopped.length === 1 ? `Panel ${largest.mark}` : `${stopped.length} panels, among them ${largest.mark}`} of ${show(largest.overall)} x ${show(largest.height)} x ${show(largest.thickness)}, ${stopped.length === 1 ? 'does' : 'do'} not pass the ${names[part]} (${citation.text}). Find another way in, or divide the walls into narrower panels.`,
                citation, measured: lengthFigure(largest.overall), required: inWords(`through the ${names[part]}`), subject: 'room.panels',
                related: job.room ? [{ at: job.room.head, message: `Stopped are ${showList(stopped.map(({ mark }) => mark))}.` }] : [],
            };
        }
    },
});
