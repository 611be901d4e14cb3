import { lengthFigure } from '../../core/finding.js';
import { insideRun } from '../../core/geometry.js';
import { half, minus, plus, zero, type Length } from '../../core/length.js';
import { defineRule } from '../rule.js';
import { alongSpan, setLength, ventFindings } from './air-findings.js';

const citation = { kind: 'geometry', text: 'an opening lies between the two ends of its wall' } as const;

export const ventRunsOffWall = defineRule({
    id: 'vent-runs-off-wall',
    family: 'air',
    title: 'A vent reaches past the end of its wall',
    severity: 'error',
    why: 'Part of the opening would be cut into the neighbouring wall.',
    bad: 'vent exhaust on front { size 8" x 4"; from left 80"; below_ceiling 3"; air room }',
    good: 'vent exhaust on front { size 8" x 4"; from left 8"; below_ceiling 3"; air room }',
    sources: [citation],
    isWaivable: true,
    fixes: 'review',
    check: input => ventFindings(input, 'runs-off-the-wall', ({ problem, block, title, name }) => {
        const { size, from, centre } = block.values;
        const { inside } = input.results;
        const place = from ?? centre;
        if (!size || !inside || !place) return undefined;
        // Distances of the near edge, or of the middle, that keep it on the wall, whichever end they are measured from.
        const shift: Length = from ? zero : half(size.value.width);
        const most = minus(insideRun(problem.wall, inside), size.value.width);
        const [least, greatest] = [plus(zero, shift), plus(most, shift)];
        const fits = most >= 0;
        return {
            at: alongSpan(block),
            message: `${title} reaches ${input.show(problem.over)} into the ${problem.past} wall. ${fits ? `${input.show(least)} to ${input.show(greatest)} ${from ? '' : 'to its middle '}from the ${place.value.wall} wall keeps it on its own.` : `It is wider than the wall, which is ${input.show(insideRun(problem.wall, inside))} long inside.`}`,
            citation, measured: lengthFigure(problem.over), required: lengthFigure(zero), subject: name,
            fixes: fits ? setLength(place.span, place.value.distance < least ? least : greatest, 'Set the distance to', input, `${from ? '' : 'from '}${place.value.wall} `) : [],
        };
    }),
});
