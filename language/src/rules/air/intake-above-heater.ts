import { lengthFigure, type Finding } from '../../core/finding.js';
import { practice } from '../../rule-sets/documents.js';
import { showCitation } from '../../core/citation.js';
import { isVentAstray } from '../astray.js';
import { defineRule } from '../rule.js';
import { governs, heightSpan, isOpen, ventTitle } from './air-findings.js';

const citation = practice('Where nothing but the heat moves the air, it comes in low by the heater.');

export const intakeAboveHeater = defineRule({
    id: 'intake-above-heater',
    family: 'air',
    title: 'The intake is above the top of the heater',
    severity: 'info',
    why: 'The heater draws on air that comes in below its top. Air from above it is used where a fan pulls the air out low, and falls past the heater where none does.',
    bad: 'vent intake on right { size 8" x 4"; from front 30"; bottom 50"; air outdoors }',
    good: 'vent intake on right { size 8" x 4"; from front 30"; bottom 20"; air outdoors }',
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    *check(input): Generator<Finding> {
        const heater = input.results.heaters.find(({ heater: placed }) => placed)?.heater;
        if (!governs(input, 'vent.intake-place') || !heater) return;
        const intakes = (input.results.air?.vents ?? []).filter(({ vent, block }) => vent?.role === 'intake' && isOpen(block));
        const high = intakes.flatMap(({ block, name, vent, position }) => vent && position?.isBelowHeaterTop === false ? [{ block, name, vent }] : []);
        const [first] = high;
        if (!first || high.length < intakes.length || intakes.some(isVentAstray)) return;
        yield {
            at: heightSpan(first.block),
            message: `${ventTitle(first.block)} has its lower edge ${input.show(first.vent.lowerEdge)} over the floor; the top of heater ${heater.name} is at ${input.show(heater.onWall.v.to)}, and air that only the heat moves comes in below that (${showCitation(citation)}). Lower it, unless a fan draws the air out.`,
            citation, measured: lengthFigure(first.vent.lowerEdge), required: lengthFigure(heater.onWall.v.to), subject: `${first.name}.lower_edge`,
        };
    },
});
