import { amount, inWords, type Finding } from '../../core/finding.js';
import { showCitation } from '../../core/citation.js';
import { showBoth, showLength } from '../../core/show.js';
import { practice } from '../../rule-sets/documents.js';
import { defineRule } from '../rule.js';
import { electrician, showTemperature } from './electrical-findings.js';
import { highLights } from './light-findings.js';

export const lightRatingMissing = defineRule({
    id: 'light-rating-missing',
    family: 'electrical',
    title: 'What a light high in the room withstands is not stated',
    severity: 'info',
    why: 'A rating nobody wrote down is never taken as enough: the air under the ceiling is the hottest in the room.',
    bad: 'light_model Glim { body 6" x 8"; depth 3" }\nlight lamp on left { model Glim; from front 8"; height 68" }',
    good: 'light_model Glim { body 6" x 8"; depth 3"; rating 125 degC }\nlight lamp on left { model Glim; from front 8"; height 68" }',
    sources: [practice('A light stays out of the top 0.3 m or is rated 125 °C.')],
    isWaivable: true,
    fixes: 'none',
    *check(input): Generator<Finding> {
        for (const { light, title, fitting, below, layer, rating } of highLights(input)) {
            const model = light.values.model?.value.block;
            const isKnown = light.isWhole && (!light.values.model || model?.isWhole === true);
            if (fitting.ratingC !== undefined || !isKnown) continue;
            yield {
                at: light.values.model?.span ?? light.head,
                message: `${title} ends ${showLength(below, input.job.unit, 'drawing')} below the ceiling and states no rating; ${showTemperature(rating.figure.celsius)} is needed in the top ${showBoth(layer.figure.value, 'mm')} (${showCitation(rating.clause.citation)}). Add rating as its maker states it. ${electrician}`,
                citation: rating.clause.citation, measured: inWords('not stated'), required: amount(rating.figure.celsius, 'degC'), subject: fitting.name,
            };
        }
    },
});
