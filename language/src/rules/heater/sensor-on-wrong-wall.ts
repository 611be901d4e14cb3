import { spoken } from '../../core/show.js';
import { inWords } from '../../core/finding.js';
import { manualCitation } from '../../engines/heater/casing.js';
import { neighbours } from '../../core/geometry.js';
import { defineRule } from '../rule.js';
import { inCatalogue, reviewFix } from './heater-findings.js';
import { moveSensorEdits, sensorFindings, sensorSpot } from './sensor-findings.js';

export const sensorOnWrongWall = defineRule({
    id: 'sensor-on-wrong-wall',
    family: 'heater',
    title: 'The sensor is not on the wall its manual wants it on',
    severity: 'error',
    why: 'The thermostat was tried with its sensor in one place; elsewhere it lets the room grow hotter than it shows.',
    bad: 'sensor on left { centre from front 16"; below_ceiling 5"; cable 9\' }',
    good: 'sensor on right { centre from front 16"; below_ceiling 5"; cable 9\' }',
    sources: [{ kind: 'manual', text: 'the place of the sensor' }],
    isWaivable: false,
    fixes: 'review',
    check: input => sensorFindings(input, 'sensor-on-wrong-wall', ({ judged, problem, block }) => {
        const { name, manual, model, heater } = judged;
        if (!heater) return undefined;
        const { left, right } = neighbours[heater.wall];
        const wanted = problem.wanted === 'on_wall_over_heater' ? `the ${heater.wall} wall, over it` : `a wall beside it, ${left} or ${right}`;
        const spot = sensorSpot(judged, input);
        return {
            at: block.walls[0]?.span ?? block.head,
            message: `The sensor of heater ${name} is on the ${problem.wall} wall; ${wanted}, is needed (${manual.title}).`,
            citation: manualCitation(manual), measured: inWords(problem.wall), required: inWords(spoken(problem.wanted)), subject: `${name}.sensor_band`,
            related: inCatalogue(judged, model.values.sensor?.span), fixes: spot ? reviewFix(`Move the sensor to the ${spot.wall} wall`, moveSensorEdits(block, spot, input)) : [],
        };
    }),
});
