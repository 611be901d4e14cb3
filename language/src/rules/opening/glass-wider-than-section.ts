import { lengthFigure } from '../../core/finding.js';
import { defineRule } from '../rule.js';
import { inCatalogue, modelSpan } from './opening-findings.js';

const citation = { kind: 'geometry', text: 'glass lies inside its wall section' } as const;

export const glassWiderThanSection = defineRule({
    id: 'glass-wider-than-section',
    family: 'opening',
    title: 'The glass of a window is wider than its section',
    severity: 'error',
    why: 'The window is built into a section of wall in the shop; glass past its edge would lie in the next panel.',
    bad: 'window_model Trial { glass_size 26" x 24"; section 24"; glass safety }\nwindow view on left { model Trial; from front 20"; sill 40" }',
    good: 'window_model Trial { glass_size 18" x 24"; section 24"; glass safety }\nwindow view on left { model Trial; from front 26"; sill 40" }',
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    *check({ results: { windows }, show }) {
        for (const window of windows) {
            for (const problem of window.problems) {
                if (problem.kind !== 'glass-wider-than-section') continue;
                yield {
                    at: modelSpan(window),
                    message: `The glass of window ${window.name} is ${show(problem.glass)} wide and its section ${show(problem.section)}; the section has to hold the glass. Mend the window model.`,
                    citation, measured: lengthFigure(problem.glass), required: lengthFigure(problem.section), subject: window.name,
                    related: inCatalogue(window.model, window.model.values.section, 'The section stands here.'),
                };
            }
        }
    },
});
