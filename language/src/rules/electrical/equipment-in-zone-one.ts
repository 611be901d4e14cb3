import { inWords } from '../../core/finding.js';
import { showCitation } from '../../core/citation.js';
import { showBoth, showLength } from '../../core/show.js';
import { iecCitations, zoneOneOffset } from '../../rule-sets/iec-figures.js';
import { defineRule } from '../rule.js';
import { capital, electrician } from './electrical-findings.js';
import { wallPlace, zoneFindings } from './zone-findings.js';

export const equipmentInZoneOne = defineRule({
    id: 'equipment-in-zone-one',
    family: 'electrical',
    title: 'Electrical equipment stands in zone 1, beside the heater',
    severity: 'error',
    why: 'Around the heater, from floor to ceiling, only the heater and what belongs to it is built for the heat there.',
    bad: 'rules iec\nlight lamp on right { model Ember; from front 30"; height 50" }',
    good: 'rules iec\nlight lamp on right { model Ember; from front 1109.6 mm; height 50" }',
    sources: [iecCitations.zoneOneEquipment, iecCitations.zoneOne],
    isWaivable: true,
    fixes: 'none',
    check: input => zoneFindings(input, 'not-of-the-heater', (problem, found) => ({
        at: wallPlace(found),
        message: `${capital(found.name)} stands in zone 1, less than ${showBoth(zoneOneOffset, 'mm')} from the heater on plan; only the heater and what belongs to it may (${showCitation(problem.citation)}). Move it ${showLength(zoneOneOffset, 'mm')} or more away from the casing. ${electrician}`,
        measured: inWords('in zone 1'), required: inWords('outside zone 1'), subject: found.fitting.name,
    })),
});
