import { inWords } from '../../core/finding.js';
import { manualCitation } from '../../engines/heater/casing.js';
import { defineRule } from '../rule.js';
import { inCatalogue, placeSpan, reviewFix, writable } from './heater-findings.js';
import { moveSensorEdits, sensorFindings, sensorSpot } from './sensor-findings.js';

export const sensorNotOverHeater = defineRule({
    id: 'sensor-not-over-heater',
    family: 'heater',
    title: 'The sensor is not over the heater',
    severity: 'error',
    why: 'The thermostat was tried with its sensor in the hot air over the heater; beside it the room grows hotter than meant.',
    bad: 'sensor on right { centre from front 30"; below_ceiling 5"; cable 9\' }',
    good: 'sensor on right { centre from front 24"; below_ceiling 5"; cable 9\' }',
    sources: [{ kind: 'manual', text: 'the place of the sensor' }],
    isWaivable: false,
    fixes: 'review',
    check: input => sensorFindings(input, 'sensor-not-over-heater', ({ judged, place, block }) => {
        const { name, manual, model } = judged;
        const spot = sensorSpot(judged, input);
        const beside = place.fromSide !== undefined && place.fromSide > 0 ? `${input.show(place.fromSide)} beside heater ${name}` : `partly beside heater ${name}`;
        return {
            at: placeSpan(block),
            message: `The sensor is ${beside}; over it is needed (${manual.title}).${spot ? ` ${writable(spot.distance, input.job.unit)} from the ${spot.from} wall is over it.` : ''}`,
            citation: manualCitation(manual), measured: inWords(beside), required: inWords('over the heater'), subject: `${name}.sensor_band`,
            related: inCatalogue(judged, model.values.sensor?.span),
            fixes: spot ? reviewFix(`Move the sensor to ${writable(spot.distance, input.job.unit)} from the ${spot.from} wall`, moveSensorEdits(block, spot, input)) : [],
        };
    }),
});
