import { lengthFigure } from '../../core/finding.js';
import { showCitation } from '../../core/citation.js';
import { showRequired } from '../governing.js';
import { defineRule } from '../rule.js';
import { inCatalogue } from './heater-findings.js';
import { sensorFindings } from './sensor-findings.js';

export const sensorCableTooLong = defineRule({
    id: 'sensor-cable-too-long',
    family: 'heater',
    title: 'The cable of the sensor is longer than the manual allows',
    severity: 'error',
    why: 'A longer cable changes what the thermostat reads; its manual states how long it was tried.',
    bad: 'sensor on right { centre from front 16"; below_ceiling 5"; cable 14\' }',
    good: 'sensor on right { centre from front 16"; below_ceiling 5"; cable 12\' }',
    sources: [{ kind: 'manual', text: 'the longest sensor cable' }],
    isWaivable: false,
    fixes: 'none',
    check: input => sensorFindings(input, 'sensor-cable-too-long', ({ judged, problem: { measured, required }, block }) => ({
        at: block.values.cable?.span ?? block.head,
        message: `The cable of the sensor is ${input.show(measured)} long; ${showRequired(required.value, input.job.unit, 'most')} is the most for heater ${judged.name} (${showCitation(required.citation)}). Run it a shorter way or bring control and heater nearer.`,
        citation: required.citation, measured: lengthFigure(measured), required: lengthFigure(required.value), subject: `${judged.name}.sensor_band`,
        related: inCatalogue(judged, judged.model.values.sensor_cable?.span),
    })),
});
