import { lengthFigure } from '../../core/finding.js';
import { showCitation } from '../../core/citation.js';
import { defineRule } from '../rule.js';
import { nearEnough, reviewFix, writable } from './heater-findings.js';
import { sensorFindings, sensorHeightEdits, sensorHeightSpan, showBand } from './sensor-findings.js';

export const sensorTooHigh = defineRule({
    id: 'sensor-too-high',
    family: 'heater',
    title: 'The sensor is too near the ceiling',
    severity: 'error',
    why: 'In the air that lies under the ceiling the thermostat cuts out before the room is warm; the manual states how far below it is tried.',
    bad: `heater stove on right { model Tarn80; from front 8"; guard yes; backing 1 1/2" }
sensor on front { from right 20"; below_ceiling 3" }`,
    good: `heater stove on right { model Tarn80; from front 8"; guard yes; backing 1 1/2" }
sensor on front { from right 20"; below_ceiling 4" }`,
    sources: [{ kind: 'manual', text: 'the place of the sensor' }, { kind: 'standard', document: 'IRC', edition: '2018', clause: 'M1902.4', text: 'A remote sensing element is within 6 in (152 mm) of the ceiling.' }],
    isWaivable: false,
    fixes: 'review',
    check: input => sensorFindings(input, 'sensor-too-high', ({ judged, place, problem: { measured, required }, block }) => {
        const { range } = required;
        // The demand that set this end of the band; the other end may be somebody else's.
        const { citation } = place.height?.from.find(demand => demand.range.from === range.from) ?? required;
        const isPractice = citation.kind === 'practice';
        if (!place.height || (isPractice && Math.abs(measured - range.from) <= nearEnough)) return undefined;
        const { chosen } = place.height;
        return {
            at: sensorHeightSpan(block), severity: isPractice ? 'hint' : 'error',
            message: `The sensor of heater ${judged.name} is ${input.show(measured)} below the ceiling; ${showBand(required, input)} is needed (${showCitation(citation)}). Lower it to ${writable(chosen, input.job.unit)} below the ceiling.`,
            citation, measured: lengthFigure(measured), required: lengthFigure(range.from), subject: `${judged.name}.sensor_band`,
            fixes: reviewFix(`Set the sensor ${writable(chosen, input.job.unit)} below the ceiling`, sensorHeightEdits(block, chosen, input)),
        };
    }),
});
