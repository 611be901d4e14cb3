import { amount, type Finding } from '../../core/finding.js';
import { showCitation } from '../../core/citation.js';
import { showBoth, showLength } from '../../core/show.js';
import { practice } from '../../rule-sets/documents.js';
import { defineRule } from '../rule.js';
import { electrician, showTemperature } from './electrical-findings.js';
import { highLights } from './light-findings.js';

export const lightRatingTooLow = defineRule({
    id: 'light-rating-too-low',
    family: 'electrical',
    title: 'A light high in the room is rated for too low a temperature',
    severity: 'warning',
    why: 'The air under the ceiling is the hottest in the room, hotter than the thermostat says; a luminaire not made for it cracks, drips or shorts.',
    bad: 'light lamp on left { model Ember; from front 8"; height 68"; rating 90 degC }',
    good: 'light lamp on left { model Ember; from front 8"; height 50"; rating 90 degC }',
    sources: [practice('A light stays out of the top 0.3 m or is rated 125 °C.')],
    isWaivable: true,
    fixes: 'none',
    *check(input): Generator<Finding> {
        for (const { light, title, fitting, below, layer, rating, highest } of highLights(input)) {
            const { ratingC } = fitting;
            if (ratingC === undefined || ratingC >= rating.figure.celsius) continue;
            yield {
                at: (light.values.rating ?? light.values.model)?.span ?? light.head,
                message: `${title} is rated ${showTemperature(ratingC)} and ends ${showLength(below, input.job.unit, 'drawing')} below the ceiling; ${showTemperature(rating.figure.celsius)} is needed in the top ${showBoth(layer.figure.value, 'mm')} (${showCitation(rating.clause.citation)}). Choose one with that rating, or place its underside no higher than ${showLength(highest, input.job.unit, 'drawing')}. ${electrician}`,
                citation: rating.clause.citation, measured: amount(ratingC, 'degC'), required: amount(rating.figure.celsius, 'degC'), subject: fitting.name,
            };
        }
    },
});
