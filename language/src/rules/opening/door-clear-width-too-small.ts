import { showCitation } from '../../core/citation.js';
import { lengthFigure } from '../../core/finding.js';
import { ada } from '../../rule-sets/documents.js';
import { governing, showRequired } from '../governing.js';
import { defineRule } from '../rule.js';
import { inCatalogue, modelSpan } from './opening-findings.js';

export const doorClearWidthTooSmall = defineRule({
    id: 'door-clear-width-too-small',
    family: 'opening',
    title: 'The clear width of a door is too small',
    severity: 'error',
    why: 'What passes is the clear width with the leaf open at 90 degrees, which is less than the leaf is wide.',
    bad: 'rules us_accessible\ndoor entry on front { model Leaf24; from left 23 7/8"; hinge left }',
    good: 'rules us_accessible\ndoor entry on front { model Wide36; from left 21"; hinge left }',
    sources: [ada.fromMemory('404.2.3', 'A clear doorway of 32 in with the leaf open at 90°.'), { kind: 'practice', text: 'a doorway of 600 mm or more' }],
    isWaivable: true,
    fixes: 'none',
    *check({ results: { doors }, ruleSets, show, job: { unit } }) {
        const rule = governing(ruleSets, 'door.clear-width');
        if (!rule) return;
        const { citation } = rule.clause;
        for (const assembled of doors) {
            const { door, name, model } = assembled;
            if (!door || door.clearWidth >= rule.figure.value) continue;
            const isPractice = citation.kind === 'practice';
            yield {
                at: modelSpan(assembled),
                message: `The clear width of door ${name} is ${show(door.clearWidth)}; ${showRequired(rule.figure.value, unit)} is ${isPractice ? 'usual' : 'needed'} (${showCitation(citation)}). Choose a wider door.`,
                citation, measured: lengthFigure(door.clearWidth), required: lengthFigure(rule.figure.value), subject: `${name}.clear_width`,
                related: inCatalogue(model, model.values.clear, 'The clear opening stands here.'),
                ...(isPractice && { severity: 'info' as const }),
            };
        }
    },
});
