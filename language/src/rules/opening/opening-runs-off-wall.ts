import { lengthFigure } from '../../core/finding.js';
import { insideRun } from '../../core/geometry.js';
import { minus, plus, zero } from '../../core/length.js';
import { exactText, replaceValue } from '../fixes.js';
import { defineRule } from '../rule.js';
import { inCatalogue, modelSpan, openingsOf, placeFact, placeText } from './opening-findings.js';

const citation = { kind: 'geometry', text: 'an opening lies between the linings its wall ends at' } as const;

export const openingRunsOffWall = defineRule({
    id: 'opening-runs-off-wall',
    family: 'opening',
    title: 'A door or window runs off its wall',
    severity: 'error',
    why: 'Part of the opening would lie in the next wall or outside the room.',
    bad: 'door entry on front { model Leaf24; hinge left; from left 60" }',
    good: 'door entry on front { model Leaf24; hinge left; from left 23 7/8" }',
    sources: [citation],
    isWaivable: true,
    fixes: 'review',
    *check(input) {
        const { show, job: { unit }, results: { inside } } = input;
        for (const opening of openingsOf(input)) {
            const { name, block, model, problems, word } = opening;
            const what = word === 'door' ? `The clear opening of door ${name}` : `The glass of window ${name}`;
            const off = problems.flatMap(problem => problem.kind === 'runs-off-the-wall' ? [problem] : []);
            const place = placeFact(block);
            const [first, second] = off;
            if (!first || !inside || !place) continue;
            const run = insideRun(first.wall, inside);
            const size = 'clear' in model.values ? model.values.clear : 'glass_size' in model.values ? model.values.glass_size : undefined;
            if (second || (size && size.value.width > run)) {
                yield {
                    at: modelSpan(opening),
                    message: `${what} is ${size ? show(size.value.width) : 'wider'} wide; the ${first.wall} wall has ${show(run)} between its linings. Choose a narrower model or a wider room.`,
                    citation, ...(size && { measured: lengthFigure(size.value.width) }), required: lengthFigure(run), subject: name,
                    related: inCatalogue(model, size, 'Its size stands here.'),
                };
                continue;
            }
            const { given: { span, value: { wall, distance } }, isCentre } = place;
            const nearest = first.past === wall ? plus(distance, first.over) : minus(distance, first.over);
            const text = exactText(nearest, unit);
            yield {
                at: span,
                message: `${what} runs ${show(first.over)} past the lining of the ${first.past} wall. Its ${isCentre ? 'middle' : 'near edge'} lies ${show(nearest)} ${first.past === wall ? 'at least' : 'at most'} from the ${wall} wall.`,
                citation, measured: lengthFigure(first.over), required: lengthFigure(zero), subject: name,
                fixes: text === undefined ? [] : [replaceValue(`Set it ${text} from the ${wall} wall`, span, placeText(wall, text, isCentre))],
            };
        }
    },
});
