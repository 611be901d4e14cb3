import { amount } from '../../core/finding.js';
import { isRoomOverfull } from '../astray.js';
import { defineRule } from '../rule.js';
import { heaterFindings, inCatalogue, modelSpan } from './heater-findings.js';
import { judgeVolume } from './volume-findings.js';

export const roomVolumeAboveRange = defineRule({
    id: 'room-volume-above-range',
    family: 'heater',
    title: 'The room is larger than the heater is made for',
    severity: 'error',
    why: 'A heater in too large a room runs all the time and does not reach bathing temperature; its manual states the range its safety was tested for.',
    bad: 'heater stove on right { model Tarn45; from front 8"; guard yes; backing 1 1/2" }',
    good: 'heater stove on right { model Tarn60; from front 8"; guard yes; backing 1 1/2" }',
    sources: [{ kind: 'manual', text: 'the volume range of the heater' }, { kind: 'practice', text: 'about 1.2 m3 for each m2 of uninsulated glass, stone, tile or log' }],
    isWaivable: false,
    fixes: 'none',
    check: input => heaterFindings(input, judged => {
        const volume = judgeVolume(judged);
        if (!volume || judged.sizing.status !== 'room_too_large' || isRoomOverfull(input)) return undefined;
        // The room itself is inside the range: only the allowance, which nobody published, takes it out.
        const isByAllowance = volume.inside <= volume.declared.to;
        return {
            at: modelSpan(judged), severity: isByAllowance ? 'warning' : 'error',
            message: `${volume.text} Choose a larger heater${isByAllowance ? ', less glass or stone,' : ''} or a smaller room.`,
            citation: volume.citation, measured: amount(volume.effective, 'm3'), required: amount(volume.declared.to, 'm3'), subject: `${judged.name}.effective_volume`,
            related: inCatalogue(judged, judged.model.values.volume?.span),
        };
    }),
});
