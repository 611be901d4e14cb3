import { amount } from '../../core/finding.js';
import { showA } from '../../engines/electrical/steps.js';
import { necCitations } from '../../rule-sets/nec.js';
import { defineRule } from '../rule.js';
import { circuitFindings, circuitName, circuitPlace, electrician } from './electrical-findings.js';

export const existingDeviceTooSmall = defineRule({
    id: 'existing-device-too-small',
    family: 'electrical',
    title: 'The existing overcurrent device is too small for the heater',
    severity: 'error',
    why: 'It trips while the room heats up; and a larger device alone does not cure that, because it has to protect the conductor behind it.',
    bad: 'circuit stove_feed { feeds stove; disconnect_in_sight yes; existing_device 30 A; existing_conductor awg_8 }',
    good: 'circuit stove_feed { feeds stove; disconnect_in_sight yes; existing_device 35 A; existing_conductor awg_8 }',
    sources: [necCitations.continuousDevice],
    isWaivable: true,
    fixes: 'none',
    check: input => circuitFindings(input, 'existing-device-too-small', ({ problem, circuit, source }) => ({
        at: circuitPlace(circuit, 'existing_device'),
        message: `The existing device of ${circuitName(circuit)} is ${showA(problem.deviceA)}; ${showA(problem.neededA)} or more is needed (${source}).${next(circuit.result.deviceA)} The conductor behind it has to suit the new one. ${electrician}`,
        measured: amount(problem.deviceA, 'A'), required: amount(problem.neededA, 'A'), subject: `${circuit.heater.name}.device`,
    })),
});

const next = (deviceA: number | undefined): string => deviceA === undefined ? '' : ` The next standard size is ${showA(deviceA)}.`;
