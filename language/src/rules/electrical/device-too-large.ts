import { amount, type Finding } from '../../core/finding.js';
import { showCitation, type Citation } from '../../core/citation.js';
import { showA } from '../../engines/electrical/steps.js';
import { defineRule } from '../rule.js';
import { circuitName, deviceFix, electrician, statedDevices } from './electrical-findings.js';

export const deviceTooLarge = defineRule({
    id: 'device-too-large',
    family: 'electrical',
    title: 'The overcurrent device to be fitted is larger than the heater\'s manual allows',
    severity: 'error',
    why: 'Above the manual\'s largest device nothing opens before the heater\'s own wiring overheats.',
    bad: 'circuit stove_feed { feeds stove; device 50 A; disconnect_in_sight yes; segment wall { length 20\'; ambient 86 degF } }',
    good: 'circuit stove_feed { feeds stove; device 35 A; disconnect_in_sight yes; segment wall { length 20\'; ambient 86 degF } }',
    sources: [{ kind: 'manual', text: 'the largest device the heater\'s manual allows' }],
    isWaivable: true,
    fixes: 'review',
    *check(input): Generator<Finding> {
        for (const { circuit, device, nextA } of statedDevices(input)) {
            const limit = circuit.heater.model.values.max_device;
            // When the load itself asks for more than the manual allows, no device cures it and another rule says so.
            if (!limit || device.value <= limit.value || nextA > limit.value) continue;
            const citation: Citation = { kind: 'manual', text: `${circuit.manual.manual}, maximum overcurrent device` };
            yield {
                at: device.span,
                message: `The device of ${circuitName(circuit)} is ${showA(device.value)}; ${showA(limit.value)} is the most the heater's manual allows (${showCitation(citation)}). ${showA(nextA)} is enough for the load. ${electrician}`,
                citation, measured: amount(device.value, 'A'), required: amount(limit.value, 'A'), subject: `${circuit.heater.name}.device`,
                related: [{ at: limit.span, message: 'The largest device stands here.' }],
                fixes: deviceFix(device.span, nextA),
            };
        }
    },
});
