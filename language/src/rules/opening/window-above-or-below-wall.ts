import { lengthFigure } from '../../core/finding.js';
import { minus, plus, zero } from '../../core/length.js';
import { replaceLength } from '../fixes.js';
import { defineRule } from '../rule.js';

const citation = { kind: 'geometry', text: 'glass lies between floor and ceiling lining' } as const;

export const windowAboveOrBelowWall = defineRule({
    id: 'window-above-or-below-wall',
    family: 'opening',
    title: 'A window runs into the floor or the ceiling',
    severity: 'error',
    why: 'The glass would lie below the finished floor or behind the ceiling panels.',
    bad: 'window view on left { model View18; from front 26"; sill 60" }',
    good: 'window view on left { model View18; from front 26"; sill 50" }',
    sources: [citation],
    isWaivable: true,
    fixes: 'review',
    *check({ results: { windows, inside }, show, job: { unit } }) {
        if (!inside) return;
        for (const { name, block: { values: { sill } }, model, problems } of windows) {
            for (const problem of problems) {
                if ((problem.kind !== 'above-the-ceiling' && problem.kind !== 'below-the-floor') || !sill) continue;
                const isHigh = problem.kind === 'above-the-ceiling';
                const nearest = isHigh ? minus(sill.value, problem.over) : plus(sill.value, problem.over);
                const fits = nearest >= zero;
                yield {
                    at: sill.span,
                    message: `The glass of window ${name} runs ${show(problem.over)} ${isHigh ? 'above the ceiling lining' : 'below the floor'}. ${fits ? `Set the sill to ${show(nearest)} or ${isHigh ? 'lower' : 'higher'}.` : 'Choose a window that is less high.'}`,
                    citation, measured: lengthFigure(problem.over), required: lengthFigure(zero), subject: name,
                    related: model.values.glass_size ? [{ at: model.values.glass_size.fact, message: 'The height of the glass stands here.' }] : [],
                    fixes: fits ? replaceLength('sill', sill.span, nearest, unit) : [],
                };
            }
        }
    },
});
