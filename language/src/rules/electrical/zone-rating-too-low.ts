import { amount } from '../../core/finding.js';
import { showCitation } from '../../core/citation.js';
import { iecCitations } from '../../rule-sets/iec-figures.js';
import { defineRule } from '../rule.js';
import { capital, electrician, showTemperature } from './electrical-findings.js';
import { ratingPlace, zoneFindings } from './zone-findings.js';

export const zoneRatingTooLow = defineRule({
    id: 'zone-rating-too-low',
    family: 'electrical',
    title: 'Equipment in zone 3 is rated for too low a temperature',
    severity: 'error',
    why: 'From 1 m above the floor up the air is hot enough to ruin ordinary luminaires, and what is ruined in there can give a shock or burn.',
    bad: 'rules iec\nlight lamp on left { model Ember; from front 8"; height 62"; rating 105 degC }',
    good: 'rules iec\nlight lamp on left { model Ember; from front 8"; height 62"; rating 125 degC }',
    sources: [iecCitations.zoneThreeEquipment],
    isWaivable: true,
    fixes: 'none',
    check: input => zoneFindings(input, 'rating-too-low', (problem, found) => ({
        at: ratingPlace(found),
        message: `${capital(found.name)} is rated ${showTemperature(problem.ratingC)} and reaches into zone 3; ${showTemperature(problem.requiredC)} is needed there (${showCitation(problem.citation)}). Choose one with that rating, or place it wholly below 1 m. ${electrician}`,
        measured: amount(problem.ratingC, 'degC'), required: amount(problem.requiredC, 'degC'), subject: found.fitting.name,
    })),
});
