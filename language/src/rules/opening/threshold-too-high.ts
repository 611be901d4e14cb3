import { showCitation } from '../../core/citation.js';
import { lengthFigure } from '../../core/finding.js';
import { ada } from '../../rule-sets/documents.js';
import { replaceLength } from '../fixes.js';
import { governing, showRequired } from '../governing.js';
import { defineRule } from '../rule.js';
import { inCatalogue, modelSpan } from './opening-findings.js';

export const thresholdTooHigh = defineRule({
    id: 'threshold-too-high',
    family: 'opening',
    title: 'A threshold is too high',
    severity: 'error',
    why: 'A wheelchair does not roll over it, and bare wet feet catch on it.',
    bad: 'rules us_accessible\ndoor entry on front { model Wide36; from left 21"; hinge left; threshold 1 1/2" }',
    good: 'rules us_accessible\ndoor entry on front { model Wide36; from left 21"; hinge left; threshold 1/2" }',
    sources: [ada.fromMemory('404.2.5', 'A threshold of 1/2 in at most.')],
    isWaivable: true,
    fixes: 'review',
    *check({ results: { doors }, ruleSets, show, job: { unit } }) {
        const rule = governing(ruleSets, 'door.threshold');
        if (!rule) return;
        const most = rule.figure.value;
        for (const assembled of doors) {
            const { door, name, model, block: { values: { threshold } } } = assembled;
            if (door?.threshold.kind !== 'raised' || door.threshold.height <= most) continue;
            const { height } = door.threshold;
            yield {
                at: threshold?.span ?? modelSpan(assembled),
                message: `The threshold of door ${name} is ${show(height)} high; ${showRequired(most, unit, 'most')} at most is needed (${showCitation(rule.clause.citation)}). Lower it, or cut the base plate out under the door.`,
                citation: rule.clause.citation, measured: lengthFigure(height), required: lengthFigure(most), subject: name,
                related: threshold ? [] : inCatalogue(model, model.values.threshold, 'The threshold stands here.'),
                fixes: threshold ? replaceLength('threshold', threshold.span, most, unit) : [],
            };
        }
    },
});
