import { inWords } from '../../core/finding.js';
import { defineRule } from '../rule.js';

export const severalHeaters = defineRule({
    id: 'several-heaters',
    family: 'heater',
    title: 'More than one heater in the room',
    severity: 'warning',
    why: 'Sensors and the volume range are judged by one heater; whether two may heat one room only their manuals and their maker can say.',
    bad: 'heater second on left { model Tarn60; from front 8"; guard yes; backing 1 1/2" }',
    good: 'heater stove on right { model Tarn60; from front 8"; guard yes; backing 1 1/2" }',
    sources: [{ kind: 'manual', text: 'the manuals of the heaters' }],
    isWaivable: true,
    fixes: 'none',
    check: function* ({ job }) {
        const [first, ...more] = job.heaters;
        if (!first) return;
        for (const heater of more) {
            yield {
                at: heater.head,
                message: `Heater ${heater.name?.value ?? ''} is one more in the room. Each is held to the whole volume, and sensors are judged for ${first.name?.value ?? 'the first'} alone; follow the manuals and ask the makers whether they may heat one room.`,
                citation: { kind: 'manual', text: 'the manuals of the heaters' }, measured: inWords(`${job.heaters.length} heaters`), required: inWords('one heater'), related: [{ at: first.head, message: 'The first heater is here.' }],
            };
        }
    },
});
