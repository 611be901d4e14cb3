import { inWords, type Finding } from '../../core/finding.js';
import { showCitation, type Citation } from '../../core/citation.js';
import { iecCitations } from '../../rule-sets/iec-figures.js';
import type { RuleInput } from '../rule.js';
import { defineRule } from '../rule.js';
import { capital, electrician } from './electrical-findings.js';
import { lightModelPlace, scope, zonedFitting, type ZonedFitting } from './zone-findings.js';

export const waterProtectionTooLow = defineRule({
    id: 'water-protection-too-low',
    family: 'electrical',
    title: 'Equipment in the room is not protected against water enough',
    severity: 'error',
    why: 'Water is thrown on the stones and splashes; the second figure of the IP code tells what a housing keeps out.',
    bad: 'rules iec\nlight_model Glim { body 6" x 8"; depth 3"; rating 125 degC; cable_rating 180 degC; protection none }\nlight lamp on left { model Glim; from front 8"; height 62" }',
    good: 'rules iec\nlight_model Glim { body 6" x 8"; depth 3"; rating 125 degC; cable_rating 180 degC; protection IPX4 }\nlight lamp on left { model Glim; from front 8"; height 62" }',
    sources: [iecCitations.ingress],
    isWaivable: true,
    fixes: 'none',
    *check(input): Generator<Finding> {
        const { zones } = input.results;
        if (!zones) return;
        for (const problem of zones.problems) {
            const found = problem.kind === 'water-protection-too-low' ? zonedFitting(input, problem.name) : undefined;
            if (found && problem.kind === 'water-protection-too-low') yield finding(input, found, `IPX${problem.waterDigit}`, `IPX${problem.required}`, problem.citation);
        }
        // A catalogue that says `none` has stated something: no figure at all, which is less than any.
        for (const { name, zones: stands } of zones.equipment) {
            const found = stands.length > 0 ? zonedFitting(input, name) : undefined;
            if (found?.light?.values.model?.value.block?.values.protection?.value === 'none') yield finding(input, found, 'none', 'IPX4', iecCitations.ingress);
        }
    },
});

const finding = (input: RuleInput, found: ZonedFitting, measured: string, required: string, citation: Citation): Finding => ({
    at: lightModelPlace(found),
    message: `${capital(found.name)} has ${measured === 'none' ? 'no protection against water' : `a protection of ${measured}`}; ${required} or more is needed in the room (${showCitation(citation)}). Choose one that has it. ${electrician}`,
    citation, measured: inWords(measured), required: inWords(required), subject: found.fitting.name, related: scope(input),
});
