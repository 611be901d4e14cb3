import { inWords } from '../../core/finding.js';
import { defineRule } from '../rule.js';
import { inCatalogue, modelSpan, openingsOf } from './opening-findings.js';

const citation = { kind: 'practice', text: 'every pane is safety glass' } as const;

export const paneNotSafetyGlass = defineRule({
    id: 'pane-not-safety-glass',
    family: 'opening',
    title: 'A pane that is not safety glass',
    severity: 'error',
    why: 'Heat, splashed water and a stumble break glass, and who is behind it wears nothing.',
    bad: 'window_model Trial { glass_size 18" x 24"; section 24"; glass plain }\nwindow view on left { model Trial; from front 26"; sill 40" }',
    good: 'window_model Trial { glass_size 18" x 24"; section 24"; glass safety }\nwindow view on left { model Trial; from front 26"; sill 40" }',
    sources: [citation],
    isWaivable: false,
    fixes: 'none',
    *check(input) {
        for (const opening of openingsOf(input)) {
            const { name, model, word } = opening;
            const glass = model.values.glass;
            const pane = 'pane' in model.values ? model.values.pane : undefined;
            // A glass that is being typed is not missing.
            const isSilent = !glass && (model.written.has('glass') || !model.isWhole);
            const isPlain = glass?.value === 'plain';
            const isUnsaid = pane !== undefined && glass?.value !== 'safety' && !isPlain && !isSilent;
            if (!isPlain && !isUnsaid) continue;
            yield {
                at: modelSpan(opening),
                message: `The pane of ${word} ${name} is ${isPlain ? 'plain glass' : 'not said to be safety glass'}; safety glass is needed (common practice, no source; the local code has its own rules on glass). ` +
                    (isPlain ? `Choose a ${word} with safety glass.` : 'Write glass safety in the model if it is, or choose another.'),
                citation, measured: inWords(isPlain ? 'plain' : 'not said'), required: inWords('safety'), subject: name,
                related: inCatalogue(model, glass ?? pane, `The ${glass ? 'glass' : 'pane'} stands here.`),
            };
        }
    },
});
