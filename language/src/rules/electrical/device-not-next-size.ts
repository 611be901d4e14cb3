import { amount, type Finding } from '../../core/finding.js';
import { showCitation } from '../../core/citation.js';
import { isAtMost } from '../../engines/electrical/index.js';
import { showA } from '../../engines/electrical/steps.js';
import { ratingsCitation } from '../../engines/electrical/us-tables.js';
import { defineRule } from '../rule.js';
import { circuitName, deviceFix, electrician, statedDevices } from './electrical-findings.js';

export const deviceNotNextSize = defineRule({
    id: 'device-not-next-size',
    family: 'electrical',
    title: 'The overcurrent device to be fitted is not the next standard size',
    severity: 'warning',
    why: 'The conductor and the ground of the schedule are chosen for the next standard size above the load; another device would need them looked at again.',
    bad: 'circuit stove_feed { feeds stove; device 40 A; disconnect_in_sight yes; segment wall { length 20\'; ambient 86 degF } }',
    good: 'circuit stove_feed { feeds stove; device 35 A; disconnect_in_sight yes; segment wall { length 20\'; ambient 86 degF } }',
    sources: [ratingsCitation],
    isWaivable: true,
    fixes: 'review',
    *check(input): Generator<Finding> {
        for (const { circuit, device, nextA, step } of statedDevices(input)) {
            const needed = circuit.result.designCurrentA;
            const limit = circuit.heater.model.values.max_device?.value ?? Infinity;
            // Below the load and above the manual's largest, other rules speak.
            if (needed === undefined || device.value === nextA || !isAtMost(needed, device.value) || device.value > limit) continue;
            yield {
                at: device.span,
                message: `The device of ${circuitName(circuit)} is ${showA(device.value)}; ${showA(nextA)} is the next standard size over ${showA(needed)} (${showCitation(step.citation)}), and the schedule's conductors are chosen for it. Fit ${showA(nextA)}, or have the conductors checked for ${showA(device.value)}. ${electrician}`,
                citation: step.citation, measured: amount(device.value, 'A'), required: amount(nextA, 'A'), subject: `${circuit.heater.name}.device`,
                fixes: deviceFix(device.span, nextA),
            };
        }
    },
});
