import { inWords } from '../../core/finding.js';
import { manualCitation } from '../../engines/heater/casing.js';
import { defineRule } from '../rule.js';
import { inCatalogue, reviewFix } from './heater-findings.js';
import { sensorFindings } from './sensor-findings.js';

export const sensorNotNeeded = defineRule({
    id: 'sensor-not-needed',
    family: 'heater',
    title: 'A remote sensor for a heater whose thermostat is built in',
    severity: 'warning',
    why: 'A heater with its thermostat built in has nothing to connect a sensor to; the hole and the cable would be made for nothing.',
    bad: `heater_model Inner { manual "Inner sheet (fictional)"; power 6 kW; supply 240 V single_phase; body 16" x 22"; depth 11"; sensor built_in }
heater stove on right { model Inner; from front 8"; guard yes; backing 1 1/2" }`,
    good: 'heater stove on right { model Tarn60; from front 8"; guard yes; backing 1 1/2" }',
    sources: [{ kind: 'manual', text: 'the sensor of the heater' }],
    isWaivable: true,
    fixes: 'review',
    check: input => sensorFindings(input, 'sensor-not-needed', ({ judged, block }) => ({
        at: block.head,
        message: `Heater ${judged.name} has its thermostat built in (${judged.manual.title}); the sensor has nothing to be connected to. Leave it out.`,
        citation: manualCitation(judged.manual), measured: inWords('a sensor'), required: inWords('none'), subject: judged.name, related: inCatalogue(judged, judged.model.values.sensor?.span),
        fixes: reviewFix('Leave the sensor out', [{ span: block.span, newText: '' }]),
    })),
});
