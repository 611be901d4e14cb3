import { lengthFigure } from '../../core/finding.js';
import { minus, plus } from '../../core/length.js';
import { manualCitation } from '../../engines/heater/casing.js';
import { showRequired } from '../governing.js';
import { isRoomTooLow, neededRoomHeight } from '../room-height.js';
import { defineRule } from '../rule.js';
import { heaterFindings, inCatalogue, modelSpan, reviewFix, writable } from './heater-findings.js';

export const roomTooLowForHeater = defineRule({
    id: 'room-too-low-for-heater',
    family: 'heater',
    title: 'The room is lower than the manual of the heater allows',
    severity: 'error',
    why: 'Over the stones the air is far hotter than in the room; under a low ceiling the lining there can char.',
    bad: 'heater_model Tall { manual "Tall sheet (fictional)"; power 6 kW; supply 240 V single_phase; body 16" x 22"; depth 11"; room_height 82" }\nheater stove on right { model Tall; from front 8"; guard yes; backing 1 1/2" }',
    good: 'room { system Skerry; width 84"; depth 79 1/2"; height 84"; ceiling spans_left_to_right }',
    sources: [{ kind: 'manual', text: 'the least room height of the heater' }],
    isWaivable: false,
    fixes: 'review',
    check: input => heaterFindings(input, judged => {
        const { name, manual, model } = judged;
        const inside = input.results.inside;
        const height = input.job.room?.values.height;
        if (!inside || manual.roomHeight === undefined || inside.height >= manual.roomHeight || isRoomTooLow(input)) return undefined;
        const needed = height && (neededRoomHeight(input) ?? plus(height.value, minus(manual.roomHeight, inside.height)));
        return {
            at: height?.span ?? modelSpan(judged),
            message: `The room is ${input.show(inside.height)} high inside; heater ${name} needs ${showRequired(manual.roomHeight, input.job.unit)} (${manual.title}). ${needed === undefined ? 'Raise the room' : `Make the room ${writable(needed, input.job.unit)} high`} or choose a heater for a lower room.`,
            citation: manualCitation(manual), measured: lengthFigure(inside.height), required: lengthFigure(manual.roomHeight), subject: 'room.inside.height',
            related: inCatalogue(judged, model.values.room_height?.span),
            fixes: height && needed !== undefined ? reviewFix(`Set the height to ${writable(needed, input.job.unit)}`, [{ span: height.span, newText: writable(needed, input.job.unit) }]) : [],
        };
    }),
});
