import { lengthFigure } from '../../core/finding.js';
import { usualThermometerBelowCeiling } from '../../engines/fittings/placed-fitting.js';
import { showRequired } from '../governing.js';
import { defineRule } from '../rule.js';
import { nearEnough, reviewFix, writable } from './heater-findings.js';

export const thermometerFarFromPractice = defineRule({
    id: 'thermometer-far-from-practice',
    family: 'heater',
    title: 'The thermometer hangs higher or lower than usual',
    severity: 'hint',
    why: 'Temperatures of rooms are compared by thermometers at one height; lower down a thermometer shows less.',
    bad: 'thermometer on left { from front 30"; below_ceiling 14" }',
    good: 'thermometer on left { from front 30"; below_ceiling 7" }',
    sources: [{ kind: 'practice', text: 'a thermometer 6 in below the ceiling' }],
    isWaivable: true,
    fixes: 'review',
    check: function* ({ job, show }) {
        const height = job.thermometer?.values.below_ceiling;
        if (!height || Math.abs(height.value - usualThermometerBelowCeiling) <= nearEnough) return;
        yield {
            at: height.span,
            message: `The thermometer is ${show(height.value)} below the ceiling; ${showRequired(usualThermometerBelowCeiling, job.unit)} is usual (common practice, no source).`,
            citation: { kind: 'practice', text: 'a thermometer 6 in below the ceiling' }, measured: lengthFigure(height.value), required: lengthFigure(usualThermometerBelowCeiling), subject: 'thermometer',
            fixes: reviewFix(`Hang it ${writable(usualThermometerBelowCeiling, job.unit)} below the ceiling`, [{ span: height.span, newText: writable(usualThermometerBelowCeiling, job.unit) }]),
        };
    },
});
