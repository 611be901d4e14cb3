import { inWords, type Finding } from '../../core/finding.js';
import { showCitation } from '../../core/citation.js';
import { ventPractice } from '../../engines/ventilation/air-paths.js';
import { practice } from '../../rule-sets/documents.js';
import { defineRule } from '../rule.js';
import { alongSpan, ventTitle } from './air-findings.js';

export const airShortCircuit = defineRule({
    id: 'air-short-circuit',
    family: 'air',
    title: 'Air goes from the intake to the exhaust without passing the room',
    severity: 'warning',
    why: 'Air takes the shortest way: what comes in beside the exhaust leaves at once, and the bathers get none of it.',
    bad: 'vent exhaust on right { size 8" x 4"; from front 30"; bottom 4"; air room }',
    good: 'vent exhaust on right { size 8" x 4"; from front 40"; below_ceiling 3"; air room }',
    sources: [practice('Intake and exhaust on one wall, near each other or both high or both low.')],
    isWaivable: true,
    fixes: 'none',
    *check(input): Generator<Finding> {
        const vents = input.results.air?.vents ?? [];
        for (const { intake, exhaust, apart, why, citation } of input.results.air?.shortCircuits ?? []) {
            const out = vents.find(({ vent }) => vent === exhaust)?.block;
            const into = vents.find(({ vent }) => vent === intake)?.block;
            if (!out || !into) continue;
            const how = {
                too_near: `is ${input.show(apart)} from vent ${intake.name} on the ${exhaust.wall} wall; ${input.show(ventPractice.shortCircuit)} or more, one low and one high, keeps them apart`,
                both_high: `and vent ${intake.name} are both high on the ${exhaust.wall} wall; one low and one high, or two walls, keep them apart`,
                both_low: `and vent ${intake.name} are both low on the ${exhaust.wall} wall; one low and one high, or two walls, keep them apart`,
            }[why];
            yield {
                at: alongSpan(out),
                message: `${ventTitle(out)} ${how} (${showCitation(citation)}). Move the exhaust across the room.`,
                citation, measured: inWords(why === 'too_near' ? input.show(apart) : why.replace('_', ' ')), required: inWords('apart, or on two walls'), subject: exhaust.name,
                related: [{ at: into.head, message: 'The intake is here.' }],
            };
        }
    },
});
