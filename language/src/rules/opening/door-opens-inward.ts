import { showCitation } from '../../core/citation.js';
import { inWords } from '../../core/finding.js';
import { replaceValue } from '../fixes.js';
import { governing } from '../governing.js';
import { defineRule } from '../rule.js';

export const doorOpensInward = defineRule({
    id: 'door-opens-inward',
    family: 'opening',
    title: 'A door opens inward',
    severity: 'warning',
    why: 'Someone who has fallen before the door keeps it shut; a leaf that opens outward gives way to a push.',
    bad: 'door entry on front { model Leaf24; from left 23 7/8"; hinge left; swing inward }',
    good: 'door entry on front { model Leaf24; from left 23 7/8"; hinge left; swing outward }',
    sources: [{ kind: 'practice', text: 'the door opens outward' }],
    isWaivable: true,
    fixes: 'review',
    *check({ results: { doors }, ruleSets }) {
        const rule = governing(ruleSets, 'door.swing');
        if (!rule) return;
        for (const { name, block: { values: { swing } } } of doors) {
            if (swing?.value !== 'inward') continue;
            yield {
                at: swing.span,
                message: `Door ${name} opens inward; outward is needed (${showCitation(rule.clause.citation)}). Let it open outward, and keep that floor free.`,
                citation: rule.clause.citation, measured: inWords('inward'), required: inWords('outward'), subject: name,
                fixes: [replaceValue('Let it open outward', swing.span, 'outward')],
            };
        }
    },
});
