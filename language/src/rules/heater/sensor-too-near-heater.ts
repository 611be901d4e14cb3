import { lengthFigure } from '../../core/finding.js';
import { showCitation } from '../../core/citation.js';
import { minus } from '../../core/length.js';
import { showRequired } from '../governing.js';
import { defineRule } from '../rule.js';
import { inCatalogue, nearEnough, placeSpan, reviewFix, writable } from './heater-findings.js';
import { besideOnSideWall, moveSensorEdits, sensorFindings, sensorSpot } from './sensor-findings.js';

export const sensorTooNearHeater = defineRule({
    id: 'sensor-too-near-heater',
    family: 'heater',
    title: 'The sensor is too near the side of the heater',
    severity: 'error',
    why: 'In the hot air that rises from the heater the sensor reads more than the room has, and the room stays cold; its manual states how far beside it the sensor goes.',
    bad: `heater_model Aside { manual "Aside sheet (fictional)"; power 6 kW; supply 240 V single_phase; body 16" x 22"; depth 11"; off_wall 2"; off_floor 8"; sensor on_side_wall; sensor_from_side 12" }
heater stove on right { model Aside; from front 8"; guard yes; backing 1 1/2" }
sensor on front { from right 7"; below_ceiling 5" }`,
    good: `heater_model Aside { manual "Aside sheet (fictional)"; power 6 kW; supply 240 V single_phase; body 16" x 22"; depth 11"; off_wall 2"; off_floor 8"; sensor on_side_wall; sensor_from_side 12" }
heater stove on right { model Aside; from front 12"; guard yes; backing 1 1/2" }
sensor on front { from right 7"; below_ceiling 5" }`,
    sources: [{ kind: 'manual', text: 'the place of the sensor' }, { kind: 'practice', text: 'sensor 12 in from the side of the heater' }],
    isWaivable: false,
    fixes: 'review',
    check: input => sensorFindings(input, 'sensor-too-near-heater', ({ judged, place, problem: { measured, required }, block }) => {
        const { citation, value } = required;
        const isPractice = citation.kind === 'practice';
        const isOnRightWall = !place.problems.some(({ kind }) => kind === 'sensor-on-wrong-wall');
        if (!isOnRightWall || (isPractice && measured + nearEnough >= value)) return undefined;
        const spot = sensorSpot(judged, input);
        const edits = spot ? moveSensorEdits(block, spot, input) : [];
        const side = besideOnSideWall(judged, block, minus(value, measured), input);
        const farEnough = spot && `The ${spot.wall} wall at ${writable(spot.distance, input.job.unit)} from the ${spot.from} wall is far enough.`;
        const cures = [side?.why, farEnough, side?.move].filter(words => words);
        return {
            at: placeSpan(block), severity: isPractice ? 'info' : 'error',
            message: `The sensor is ${input.show(measured)} from the side of heater ${judged.name}${side?.measuredAlong ?? ''}; ${showRequired(value, input.job.unit)} is needed (${showCitation(citation)}). ${cures.length > 0 ? cures.join(' ') : 'Move the heater or the sensor.'}`,
            citation, measured: lengthFigure(measured), required: lengthFigure(value), subject: `${judged.name}.sensor_band`,
            related: inCatalogue(judged, judged.model.values.sensor_from_side?.span),
            fixes: [...spot ? reviewFix(`Move the sensor to ${writable(spot.distance, input.job.unit)} from the ${spot.from} wall${block.walls[0]?.value === spot.wall ? '' : ` on the ${spot.wall} wall`}`, edits) : [], ...side?.fixes ?? []],
        };
    }),
});
