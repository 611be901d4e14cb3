import { amount, type Finding } from '../../core/finding.js';
import { showCitation } from '../../core/citation.js';
import { iecCitations, zoneThreeCableC } from '../../rule-sets/iec-figures.js';
import { defineRule } from '../rule.js';
import { electrician, showTemperature } from './electrical-findings.js';
import { lightModelPlace, scope, zonedFitting } from './zone-findings.js';

export const zoneCableRatingTooLow = defineRule({
    id: 'zone-cable-rating-too-low',
    family: 'electrical',
    title: 'The cable of a luminaire in zone 3 is rated for too low a temperature',
    severity: 'error',
    why: 'The cable ends inside the hottest part of the room; ordinary insulation grows brittle there and bares the conductor.',
    bad: 'rules iec\nlight_model Glim { body 6" x 8"; depth 3"; rating 125 degC; cable_rating 105 degC; protection IPX4 }\nlight lamp on left { model Glim; from front 8"; height 62" }',
    good: 'rules iec\nlight_model Glim { body 6" x 8"; depth 3"; rating 125 degC; cable_rating 170 degC; protection IPX4 }\nlight lamp on left { model Glim; from front 8"; height 62" }',
    sources: [iecCitations.zoneThreeCable],
    isWaivable: true,
    fixes: 'none',
    *check(input): Generator<Finding> {
        for (const { name, kind, zones } of input.results.zones?.equipment ?? []) {
            const found = kind === 'light' && zones.includes(3) ? zonedFitting(input, name) : undefined;
            const ratingC = found?.fitting.cableRatingC;
            if (!found || ratingC === undefined || ratingC >= zoneThreeCableC) continue;
            yield {
                at: lightModelPlace(found),
                message: `The cable of ${found.name} is rated ${showTemperature(ratingC)} and reaches into zone 3; ${showTemperature(zoneThreeCableC)} is needed for insulation and sheath there (${showCitation(iecCitations.zoneThreeCable)}). Choose a luminaire with such a cable, or have it wired with one. ${electrician}`,
                citation: iecCitations.zoneThreeCable, measured: amount(ratingC, 'degC'), required: amount(zoneThreeCableC, 'degC'), subject: found.fitting.name,
                related: scope(input),
            };
        }
    },
});
