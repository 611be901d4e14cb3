import { lengthFigure } from '../../core/finding.js';
import { showCitation } from '../../core/citation.js';
import { defineRule } from '../rule.js';
import { nearEnough, reviewFix, writable } from './heater-findings.js';
import { sensorFindings, sensorHeightEdits, sensorHeightSpan, showBand } from './sensor-findings.js';

export const sensorTooLow = defineRule({
    id: 'sensor-too-low',
    family: 'heater',
    title: 'The sensor is too far below the ceiling',
    severity: 'error',
    why: 'Lower down the air is cooler, so the thermostat lets the room under the ceiling grow hotter than its limit.',
    bad: 'sensor on right { centre from front 16"; below_ceiling 8"; cable 9\' }',
    good: 'sensor on right { centre from front 16"; below_ceiling 6"; cable 9\' }',
    sources: [{ kind: 'manual', text: 'the place of the sensor' }, { kind: 'standard', document: 'IRC', edition: '2018', clause: 'M1902.4', text: 'A remote sensing element is within 6 in (152 mm) of the ceiling.' }],
    isWaivable: false,
    fixes: 'review',
    check: input => sensorFindings(input, 'sensor-too-low', ({ judged, place, problem: { measured, required }, block }) => {
        const { range } = required;
        // The demand that set this end of the band; the other end may be somebody else's.
        const { citation } = place.height?.from.find(demand => demand.range.to === range.to) ?? required;
        const isPractice = citation.kind === 'practice';
        if (!place.height || (isPractice && Math.abs(measured - range.to) <= nearEnough)) return undefined;
        const { chosen } = place.height;
        return {
            at: sensorHeightSpan(block), severity: isPractice ? 'hint' : 'error',
            message: `The sensor of heater ${judged.name} is ${input.show(measured)} below the ceiling; ${showBand(required, input)} is needed (${showCitation(citation)}). Raise it to ${writable(chosen, input.job.unit)} below the ceiling.`,
            citation, measured: lengthFigure(measured), required: lengthFigure(range.to), subject: `${judged.name}.sensor_band`,
            fixes: reviewFix(`Set the sensor ${writable(chosen, input.job.unit)} below the ceiling`, sensorHeightEdits(block, chosen, input)),
        };
    }),
});
