import { inWords } from '../../core/finding.js';
import { showBlock } from '../../model/block.js';
import { defineRule } from '../rule.js';
import { capital } from './thing-findings.js';

export const heaterMissing = defineRule({
    id: 'heater-missing',
    family: 'heater',
    title: 'The job has no heater',
    severity: 'warning',
    why: 'Clearances, the sensor, the circuit, the air and the volume all depend on the heater; without it none of them is looked at.',
    bad: '// without heater stove\n// without circuit stove_feed\n// without vent intake',
    good: 'heater stove on right { model Tarn60; from front 8"; guard yes; backing 1 1/2" }',
    sources: [{ kind: 'practice', text: 'a hot room is heated by a heater of its own' }],
    isWaivable: true,
    fixes: 'none',
    check: function* ({ job }) {
        if (!job.isWhole || !job.room || job.heaters.length > 0) return;
        yield {
            at: job.block.head,
            message: `${capital(showBlock(job.block))} has no heater, so clearances, sensor, circuit and air are not checked. Write a block such as heater stove on right { model …; from front …; guard yes }, its model named in a catalogue this file uses.`,
            citation: { kind: 'practice', text: 'a hot room is heated by a heater of its own' }, subject: 'heater', measured: inWords('none'), required: inWords('one heater'),
        };
    },
});
