import { inWords } from '../../core/finding.js';
import { manualCitation } from '../../engines/heater/casing.js';
import { defineRule } from '../rule.js';
import { addBlockAfter, heaterFindings, inCatalogue, reviewFix, writable } from './heater-findings.js';
import { sensorSpot, showBand } from './sensor-findings.js';

export const sensorMissing = defineRule({
    id: 'sensor-missing',
    family: 'heater',
    title: 'The heater has no temperature sensor',
    severity: 'error',
    why: 'A heater whose thermostat is not built in heats without end until its limiter trips when its sensor is not there.',
    bad: '// without sensor',
    good: 'sensor on right { centre from front 16"; below_ceiling 5"; cable 9\' }',
    sources: [{ kind: 'manual', text: 'the sensor of the heater' }],
    isWaivable: false,
    fixes: 'review',
    check: input => heaterFindings(input, judged => {
        const { sensor, name, manual, block, model } = judged;
        if (!input.job.isWhole || input.job.sensors.length > 0 || !sensor?.problems.some(({ kind }) => kind === 'sensor-missing') || !manual.sensor) return undefined;
        const spot = sensorSpot(judged, input);
        const band = sensor.height ? ` It goes ${showBand(sensor.height.band, input)} below the ceiling${spot ? ` on the ${spot.wall} wall` : ''}.` : '';
        const text = spot && `sensor on ${spot.wall} { centre from ${spot.from} ${writable(spot.distance, input.job.unit)}; below_ceiling ${writable(spot.belowCeiling, input.job.unit)} }`;
        return {
            at: block.head,
            message: `Heater ${name} has no sensor; its thermostat is not built in and needs one (${manual.title}).${band} Write ${text ?? 'a block such as sensor on right { centre from front …; below_ceiling … }'}.`,
            citation: manualCitation(manual), measured: inWords('none'), required: inWords(sensor.height ? `${showBand(sensor.height.band, input)} below the ceiling` : 'a sensor'), subject: `${name}.sensor_band`, related: inCatalogue(judged, model.values.sensor?.span),
            fixes: text ? reviewFix('Add the sensor where the manual and the rules want it', addBlockAfter(block, text)) : [],
        };
    }),
});
