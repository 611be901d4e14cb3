import type { Finding } from '../../core/finding.js';
import { lengthFigure } from '../../core/finding.js';
import { showCitation } from '../../core/citation.js';
import { minus, plus } from '../../core/length.js';
import type { Clearance } from '../../engines/heater/clearances.js';
import type { JudgedHeater } from '../../assembly/heater-judgement.js';
import { showRequired } from '../governing.js';
import { defineRule, type RuleInput } from '../rule.js';
import { heaterFindings, inCatalogue, modelSpan, reviewFix, writable } from './heater-findings.js';
import { clearanceFinding, shortClearances } from './thing-findings.js';

export const clearanceAboveTooSmall = defineRule({
    id: 'clearance-above-too-small',
    family: 'heater',
    title: 'Too little room over the heater',
    severity: 'error',
    why: 'The hottest air of the room rises from the stones; what is over them has to be as far off as the manual states.',
    bad: 'fitting peg on right { what hook; size 4" x 2"; depth 3"; from front 14"; bottom 60" }',
    good: 'fitting peg on right { what hook; size 4" x 2"; depth 3"; from front 14"; bottom 75" }',
    sources: [{ kind: 'manual', text: 'the clearance over the heater' }],
    isWaivable: false,
    fixes: 'review',
    check: input => heaterFindings(input, judged => shortClearances(input, judged).filter(({ direction, collides }) => direction === 'above' && !collides)
        .map(found => found.thing.kind === 'ceiling' ? ceilingFinding(input, judged, found) : clearanceFinding(input, judged, found))),
});

/** The ceiling moves with the height of the room. Silent where the least room height of the same manual asks for as much or more. */
function ceilingFinding({ results: { inside }, job, show }: RuleInput, judged: JudgedHeater, { measured, required }: Clearance): Finding | undefined {
    if (!inside || !required) return undefined;
    const { name, manual, model } = judged;
    const missing = minus(required.value, measured);
    if (manual.roomHeight !== undefined && inside.height < manual.roomHeight && plus(inside.height, missing) <= manual.roomHeight) return undefined;
    const height = job.room?.values.height;
    const needed = height && plus(height.value, missing);
    return {
        at: height?.span ?? modelSpan(judged),
        message: `The ceiling is ${show(measured)} above heater ${name}; ${showRequired(required.value, job.unit)} is needed (${showCitation(required.citation)}). ${needed === undefined ? 'Raise the room' : `Make the room ${writable(needed, job.unit)} high`} or choose a lower heater.`,
        citation: required.citation, measured: lengthFigure(measured), required: lengthFigure(required.value), subject: `${name}.clearance.above`,
        related: inCatalogue(judged, model.values.clear_above?.span),
        fixes: height && needed !== undefined ? reviewFix(`Set the height to ${writable(needed, job.unit)}`, [{ span: height.span, newText: writable(needed, job.unit) }]) : [],
    };
}
