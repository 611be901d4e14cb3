import { isInPlume } from '../../engines/heater/controls.js';
import { sensorPractice } from '../../engines/heater/sensor.js';
import { inWords, lengthFigure } from '../../core/finding.js';
import { showRequired } from '../governing.js';
import { defineRule } from '../rule.js';
import { heaterFindings, placeSpan } from './heater-findings.js';

export const thermometerInPlume = defineRule({
    id: 'thermometer-in-plume',
    family: 'heater',
    title: 'The thermometer hangs in the hot air over the heater',
    severity: 'warning',
    why: 'Over the heater and close beside it the air is far hotter than where people sit, so the thermometer would show what nobody feels.',
    bad: 'thermometer on right { from front 30" }',
    good: 'thermometer on right { from front 36" }',
    sources: [{ kind: 'practice', text: 'a thermometer clear of the plume of the heater' }],
    isWaivable: true,
    fixes: 'none',
    check: input => heaterFindings(input, ({ heater, name, clearances }) => {
        const { results: { fittings, inside }, job } = input;
        const thing = fittings.find(({ block }) => block === job.thermometer)?.thing;
        // The column is taken as wide as practice keeps a sensor off the side of a heater.
        const spread = sensorPractice.beside;
        if (!heater || !inside || !thing || !job.thermometer || !isInPlume(thing, heater, spread, inside)) return undefined;
        if (clearances.some(one => one.thing === thing && one.status === 'short')) return undefined;
        return {
            at: placeSpan(job.thermometer),
            message: `The thermometer hangs over heater ${name} or less than ${showRequired(spread, job.unit)} beside it; farther away is usual (common practice, no source). Hang it on another wall, near the heads of the bathers.`,
            citation: { kind: 'practice', text: 'a thermometer clear of the plume of the heater' }, measured: inWords('in the plume of the heater'), required: lengthFigure(spread), subject: 'thermometer',
        };
    }),
});
