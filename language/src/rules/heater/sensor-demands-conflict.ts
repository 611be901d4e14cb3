import { inWords, lengthFigure } from '../../core/finding.js';
import { showCitation } from '../../core/citation.js';
import { defineRule } from '../rule.js';
import { heaterFindings, inCatalogue, modelSpan } from './heater-findings.js';
import { sensorHeightSpan, showBand } from './sensor-findings.js';

export const sensorDemandsConflict = defineRule({
    id: 'sensor-demands-conflict',
    family: 'heater',
    title: 'Manual and code want the sensor at heights that do not meet',
    severity: 'warning',
    why: 'No height satisfies both; the manual the heater was listed by prevails in this job, and the local authority is the one who decides.',
    bad: `heater_model Deep { manual "Deep sheet (fictional)"; power 6 kW; supply 240 V single_phase; body 16" x 22"; depth 11"; off_wall 2"; off_floor 8"; sensor on_wall_over_heater; sensor_below_ceiling 8" to 12" }
heater stove on right { model Deep; from front 8"; guard yes; backing 1 1/2" }`,
    good: 'heater stove on right { model Tarn60; from front 8"; guard yes; backing 1 1/2" }',
    sources: [{ kind: 'manual', text: 'the place of the sensor' }, { kind: 'standard', document: 'IRC', edition: '2018', clause: 'M1902.4', text: 'A remote sensing element is within 6 in (152 mm) of the ceiling.' }],
    isWaivable: false,
    fixes: 'none',
    check: input => heaterFindings(input, judged => (judged.sensor?.height?.conflicts ?? []).map(({ prevails, against }) => {
        const wanted = judged.sensor?.height?.from[0] ?? prevails;
        const block = input.job.sensors.find(sensor => sensor === judged.sensorFitting?.block);
        return {
            at: block ? sensorHeightSpan(block) : modelSpan(judged),
            message: `Heater ${judged.name} wants its sensor ${showBand(wanted, input)} below the ceiling (${showCitation(wanted.citation)}), and ${showBand(against, input)} is wanted too (${showCitation(against.citation)}); the two do not meet. The manual prevails here; ask the local authority, who decides.`,
            citation: against.citation, measured: inWords(`${showBand(wanted, input)} below the ceiling`), required: lengthFigure(against.range.to), subject: `${judged.name}.sensor_band`, related: inCatalogue(judged, judged.model.values.sensor_below_ceiling?.span),
        };
    })),
});
