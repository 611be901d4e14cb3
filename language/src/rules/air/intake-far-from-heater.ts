import { lengthFigure, type Finding } from '../../core/finding.js';
import { showCitation } from '../../core/citation.js';
import { showLength } from '../../core/show.js';
import { practice } from '../../rule-sets/documents.js';
import { isVentAstray } from '../astray.js';
import { defineRule } from '../rule.js';
import { alongSpan, governs, isOpen, nearHeater, ventTitle } from './air-findings.js';

export const intakeFarFromHeater = defineRule({
    id: 'intake-far-from-heater',
    family: 'air',
    title: 'The intake is far from the heater',
    severity: 'info',
    why: 'Fresh air that comes in at the heater is warm before it reaches anybody; elsewhere it lies cold on the floor.',
    bad: 'vent intake on left { size 8" x 4"; from front 8"; bottom 4"; air outdoors }',
    good: 'vent intake on right { size 8" x 4"; from front 40"; bottom 4"; air outdoors }',
    sources: [practice('Intake near or above the heater.')],
    isWaivable: true,
    fixes: 'none',
    *check(input): Generator<Finding> {
        const rule = governs(input, 'vent.intake-place');
        const intakes = (input.results.air?.vents ?? []).filter(({ vent, block }) => vent?.role === 'intake' && isOpen(block));
        const far = intakes.flatMap(({ block, name, position }) => position?.toHeater === undefined ? [] : [{ block, name, away: position.toHeater }]);
        const [first] = far;
        if (!rule || !first || intakes.some(isVentAstray) || far.some(({ away }) => away <= nearHeater)) return;
        yield {
            at: alongSpan(first.block),
            message: `${ventTitle(first.block)} is ${showLength(first.away, input.job.unit, 'drawing')} from the heater; near it is the usual place, read as within ${input.show(nearHeater)} (${showCitation(rule.clause.citation)}). Move it to the heater, or behind it.`,
            citation: rule.clause.citation, measured: lengthFigure(first.away), required: lengthFigure(nearHeater), subject: first.name,
        };
    },
});
