import { lengthFigure, type Fix } from '../../core/finding.js';
import { neighbours } from '../../core/geometry.js';
import { minus, plus, zero, type Length } from '../../core/length.js';
import type { WindowProblem } from '../../engines/openings/window.js';
import type { Span } from '../../core/span.js';
import type { AssembledWindow } from '../../assembly/openings.js';
import { exactText, replaceLength, replaceValue } from '../fixes.js';
import { defineRule, type RuleInput } from '../rule.js';
import { inCatalogue, placeFact, placeText } from './opening-findings.js';

type TrimProblem = Extract<WindowProblem, { readonly kind: 'trim-does-not-fit' }>;
const citation = { kind: 'geometry', text: 'trim lies on the lining all round the glass' } as const;

export const windowTrimDoesNotFit = defineRule({
    id: 'window-trim-does-not-fit',
    family: 'opening',
    title: 'The trim of a window does not fit on its wall',
    severity: 'warning',
    why: 'The trim would have to be ripped or left out on one side, and covers the edge of the lining on the others.',
    bad: 'window view on left { model View18; from front 26"; sill 1" }',
    good: 'window view on left { model View18; from front 26"; sill 40" }',
    sources: [citation],
    isWaivable: true,
    fixes: 'review',
    *check(input) {
        for (const window of input.results.windows) {
            for (const problem of window.problems) {
                if (problem.kind !== 'trim-does-not-fit') continue;
                const { at, cure, fixes } = cureOf(problem, window, input);
                const where = problem.at === 'floor' || problem.at === 'ceiling' ? problem.at : `${neighbours[window.window?.wall ?? 'front'][problem.at]} wall`;
                yield {
                    at,
                    message: `The trim of window ${window.name} runs ${input.show(problem.over)} past the ${where}. ${cure}`,
                    citation, measured: lengthFigure(problem.over), required: lengthFigure(zero), subject: window.name,
                    related: inCatalogue(window.model, window.model.values.trim, 'The trim stands here.'),
                    fixes,
                };
            }
        }
    },
});

/** The nearest sill or place that leaves room for the trim. */
function cureOf({ at, over }: TrimProblem, { block, window }: AssembledWindow, { show, job: { unit } }: RuleInput): { readonly at: Span; readonly cure: string; readonly fixes: readonly Fix[] } {
    const sill = block.values.sill;
    if ((at === 'floor' || at === 'ceiling') && sill) {
        const nearest: Length = at === 'floor' ? plus(sill.value, over) : minus(sill.value, over);
        return { at: sill.span, cure: `Set the sill to ${show(nearest)} or ${at === 'floor' ? 'higher' : 'lower'}.`, fixes: replaceLength('sill', sill.span, nearest, unit) };
    }
    const place = placeFact(block);
    if (!place || !window || at === 'floor' || at === 'ceiling') return { at: block.head, cure: 'Move the window.', fixes: [] };
    const { given: { span, value: { wall, distance } }, isCentre } = place;
    const isNear = neighbours[window.wall][at] === wall;
    const nearest = isNear ? plus(distance, over) : minus(distance, over);
    const text = exactText(nearest, unit);
    return {
        at: span, cure: `Set it ${show(nearest)} or ${isNear ? 'more' : 'less'} from the ${wall} wall.`,
        fixes: text === undefined ? [] : [replaceValue(`Set it ${text} from the ${wall} wall`, span, placeText(wall, text, isCentre))],
    };
}
