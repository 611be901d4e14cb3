import type { Finding } from '../../core/finding.js';
import { lengthFigure } from '../../core/finding.js';
import { showCitation } from '../../core/citation.js';
import type { Clearance } from '../../engines/heater/clearances.js';
import type { JudgedHeater } from '../../assembly/heater-judgement.js';
import { showRequired } from '../governing.js';
import { defineRule, type RuleInput } from '../rule.js';
import { heaterFindings, inCatalogue, modelSpan } from './heater-findings.js';
import { clearanceFinding, shortClearances } from './thing-findings.js';

export const clearanceBelowTooSmall = defineRule({
    id: 'clearance-below-too-small',
    family: 'heater',
    title: 'Too little room under the heater',
    severity: 'error',
    why: 'A heater warms what is under it, and embers of bark and broken stones fall there; its manual states how far a floor that burns and other things stay off.',
    bad: 'fitting box on right { what shelf; size 20" x 4"; depth 8"; from front 6"; bottom 1" }',
    good: 'fitting box on right { what shelf; size 20" x 1"; depth 8"; from front 6"; bottom 1" }',
    sources: [{ kind: 'manual', text: 'the clearance under the heater' }],
    isWaivable: false,
    fixes: 'review',
    check: input => heaterFindings(input, judged => shortClearances(input, judged).filter(({ direction, collides }) => direction === 'below' && !collides)
        .map(found => found.thing.kind === 'floor' ? floorFinding(input, judged, found) : clearanceFinding(input, judged, found))),
});

/** Where the heater hangs is its own manual's word, so only the floor can change. */
function floorFinding({ job, show }: RuleInput, judged: JudgedHeater, { measured, required }: Clearance): Finding | undefined {
    if (!required) return undefined;
    const { name, model } = judged;
    return {
        at: job.site?.values.floor?.span ?? modelSpan(judged),
        message: `The floor burns and is ${show(measured)} below heater ${name}; ${showRequired(required.value, job.unit)} is needed (${showCitation(required.citation)}). Lay a floor that does not burn under the heater as its manual describes, or choose another heater.`,
        citation: required.citation, measured: lengthFigure(measured), required: lengthFigure(required.value), subject: `${name}.clearance.below`,
        related: inCatalogue(judged, model.values.clear_below?.span),
    };
}
