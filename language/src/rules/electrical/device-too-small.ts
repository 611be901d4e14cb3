import { amount, type Finding } from '../../core/finding.js';
import { showCitation } from '../../core/citation.js';
import { isAtMost } from '../../engines/electrical/index.js';
import { showA } from '../../engines/electrical/steps.js';
import { necCitations } from '../../rule-sets/nec.js';
import { defineRule } from '../rule.js';
import { circuitName, deviceFix, electrician, statedDevices } from './electrical-findings.js';

export const deviceTooSmall = defineRule({
    id: 'device-too-small',
    family: 'electrical',
    title: 'The overcurrent device to be fitted is too small for the heater',
    severity: 'error',
    why: 'A device below the continuous load trips while the room heats up.',
    bad: 'circuit stove_feed { feeds stove; device 30 A; disconnect_in_sight yes; segment wall { length 20\'; ambient 86 degF } }',
    good: 'circuit stove_feed { feeds stove; device 35 A; disconnect_in_sight yes; segment wall { length 20\'; ambient 86 degF } }',
    sources: [necCitations.continuousDevice],
    isWaivable: true,
    fixes: 'review',
    *check(input): Generator<Finding> {
        for (const { circuit, device, nextA, step } of statedDevices(input)) {
            const needed = circuit.result.designCurrentA;
            if (needed === undefined || isAtMost(needed, device.value)) continue;
            const citation = circuit.family === 'us' ? necCitations.continuousDevice : step.citation;
            yield {
                at: device.span,
                message: `The device of ${circuitName(circuit)} is ${showA(device.value)}; ${showA(needed)} or more is needed (${showCitation(citation)}). The next standard size is ${showA(nextA)}. ${electrician}`,
                citation, measured: amount(device.value, 'A'), required: amount(needed, 'A'), subject: `${circuit.heater.name}.device`,
                fixes: deviceFix(device.span, nextA),
            };
        }
    },
});
