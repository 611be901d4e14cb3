import { inWords } from '../../core/finding.js';
import { defineRule } from '../rule.js';
import { heaterFindings, inCatalogue, modelSpan } from './heater-findings.js';

export const heaterCannotPassDoor = defineRule({
    id: 'heater-cannot-pass-door',
    family: 'heater',
    title: 'The heater does not go through the door',
    severity: 'error',
    why: 'Heaters are changed during the life of a room; one that does not pass the door in any position comes out only with a wall.',
    bad: `heater_model Crate { manual "Crate sheet (fictional)"; power 6 kW; supply 240 V single_phase; body 24" x 26"; depth 23"; off_wall 2"; off_floor 8" }
heater stove on right { model Crate; from front 8"; guard yes; backing 1 1/2" }`,
    good: 'heater stove on right { model Tarn60; from front 8"; guard yes; backing 1 1/2" }',
    sources: [{ kind: 'geometry', text: 'a box passes an opening when its two smaller sizes fit' }],
    isWaivable: true,
    fixes: 'none',
    check: input => heaterFindings(input, judged => {
        const { removal, name } = judged;
        if (!removal || removal.passesDoor) return undefined;
        const [small, middle] = removal.smallerTwo;
        const pair = (a: typeof small, b: typeof small): string => `${input.show(a)} x ${input.show(b)}`;
        const has = pair(small, middle);
        const clear = pair(removal.clear.width, removal.clear.height);
        return {
            at: modelSpan(judged),
            message: `The two smaller sizes of heater ${name} are ${has}; the door is ${clear} clear. Choose a wider door or a smaller heater.`,
            citation: { kind: 'geometry', text: 'a box passes an opening when its two smaller sizes fit' }, measured: inWords(has), required: inWords(clear), subject: name,
            related: inCatalogue(judged, judged.model.values.body?.span),
        };
    }),
});
