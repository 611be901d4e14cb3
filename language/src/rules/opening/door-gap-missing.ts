import { inWords, lengthFigure } from '../../core/finding.js';
import { zero } from '../../core/length.js';
import { defineRule } from '../rule.js';
import { inCatalogue, modelSpan } from './opening-findings.js';

const citation = { kind: 'practice', text: 'a gap round the leaf, 1/8 in at top and sides and 1/2 in at the bottom where the catalogue states none' } as const;

export const doorGapMissing = defineRule({
    id: 'door-gap-missing',
    family: 'opening',
    title: 'A door leaf without a gap round it',
    severity: 'warning',
    why: 'A wooden leaf grows as it takes up moisture and then sticks in its frame; under it air comes in.',
    bad: 'door_model Trial { leaf 24" x 76"; clear 22 1/2" x 75"; section 30"; catch roller; bottom_gap 0" }\ndoor entry on front { model Trial; from left 23 7/8"; hinge left }',
    good: 'door_model Trial { leaf 24" x 76"; clear 22 1/2" x 75"; section 30"; catch roller; bottom_gap 1/2" }\ndoor entry on front { model Trial; from left 23 7/8"; hinge left }',
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    *check({ results: { doors }, show }) {
        for (const assembled of doors) {
            const { name, model, door } = assembled;
            if (!door) continue;
            const { bottom_gap: bottomGap, gap } = model.values;
            const sides = [
                { where: 'at the bottom', value: door.gaps.bottom, fact: bottomGap },
                { where: 'at the top and the sides', value: door.gaps.sides, fact: gap },
            ].filter(({ value }) => value <= zero);
            for (const { where, value, fact } of sides) {
                yield {
                    at: modelSpan(assembled),
                    message: `The leaf of door ${name} has a gap of ${show(value)} ${where}; some is needed (common practice, no source). Mend the gap in the door model.`,
                    citation, measured: lengthFigure(value), required: inWords('a gap above zero'), subject: `${name}.under_leaf`,
                    related: inCatalogue(model, fact, 'The gap stands here.'),
                };
            }
        }
    },
});
