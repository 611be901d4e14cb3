import { amount } from '../../core/finding.js';
import { showA } from '../../engines/electrical/steps.js';
import { necCitations } from '../../rule-sets/nec.js';
import { defineRule } from '../rule.js';
import { circuitFindings, circuitName, circuitPlace, electrician } from './electrical-findings.js';

const who = { manual: 'the heater\'s manual allows', conductor: 'its conductor allows', elements: 'the elements of the heater allow' } as const;

export const existingDeviceTooLarge = defineRule({
    id: 'existing-device-too-large',
    family: 'electrical',
    title: 'The existing overcurrent device is larger than the circuit allows',
    severity: 'error',
    why: 'A device above what the manual, the conductor or the elements allow does not open before something overheats.',
    bad: 'circuit stove_feed { feeds stove; disconnect_in_sight yes; existing_device 50 A; existing_conductor awg_6 }',
    good: 'circuit stove_feed { feeds stove; disconnect_in_sight yes; existing_device 40 A; existing_conductor awg_8 }',
    sources: [{ kind: 'manual', text: 'the largest device the heater\'s manual allows' }, necCitations.elementSetDevice],
    isWaivable: true,
    fixes: 'none',
    check: input => circuitFindings(input, 'existing-device-too-large', ({ problem, circuit, source }) => {
        const { deviceA } = circuit.result;
        const cure = deviceA !== undefined && deviceA <= problem.allowedA ? `Have it replaced by a ${showA(deviceA)} device.` : 'Have the device and the conductor replaced.';
        return {
            at: circuitPlace(circuit, 'existing_device'),
            message: `The existing device of ${circuitName(circuit)} is ${showA(problem.deviceA)}; ${showA(problem.allowedA)} is the most ${who[problem.because]} (${source}). ${cure} ${electrician}`,
            measured: amount(problem.deviceA, 'A'), required: amount(problem.allowedA, 'A'), subject: `${circuit.heater.name}.device`,
        };
    }),
});
