import { amount } from '../../core/finding.js';
import { isRoomOverfull } from '../astray.js';
import { isRoomTooLow } from '../room-height.js';
import { defineRule } from '../rule.js';
import { heaterFindings, inCatalogue, modelSpan } from './heater-findings.js';
import { judgeVolume } from './volume-findings.js';

export const roomVolumeBelowRange = defineRule({
    id: 'room-volume-below-range',
    family: 'heater',
    title: 'The room is smaller than the heater is made for',
    severity: 'error',
    why: 'A heater in too small a room scorches what stands near it before the thermostat acts; its manual states the range its safety was tested for.',
    bad: 'heater stove on right { model Fell150; from front 8"; guard yes; backing 1 1/2" }',
    good: 'heater stove on right { model Tarn60; from front 8"; guard yes; backing 1 1/2" }',
    sources: [{ kind: 'manual', text: 'the volume range of the heater' }],
    isWaivable: false,
    fixes: 'none',
    check: input => heaterFindings(input, judged => {
        const volume = judgeVolume(judged);
        if (!volume || judged.sizing.status !== 'room_too_small' || isRoomOverfull(input) || isRoomTooLow(input)) return undefined;
        return {
            at: modelSpan(judged),
            message: `${volume.text} Choose a smaller heater or a larger room.`,
            citation: volume.citation, measured: amount(volume.effective, 'm3'), required: amount(volume.declared.from, 'm3'), subject: `${judged.name}.effective_volume`,
            related: inCatalogue(judged, judged.model.values.volume?.span),
        };
    }),
});
