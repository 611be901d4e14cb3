import type { Citation } from '../../core/citation.js';
import { showCitation } from '../../core/citation.js';
import { nameBlocks } from '../../assembly/naming.js';
import { inWords } from '../../core/finding.js';
import { strictest } from '../../rule-sets/index.js';
import { defineRule } from '../rule.js';
import { isWrongPlace } from './control-findings.js';
import { reviewFix } from './heater-findings.js';

export const controlInsideRoom = defineRule({
    id: 'control-inside-room',
    family: 'heater',
    title: 'A control stands in the hot room',
    severity: 'warning',
    why: 'In the heat switches fail and contacts weld; what is not built into the heater belongs outside.',
    bad: `heater_model Mute { manual "Mute sheet (fictional)"; power 6 kW; supply 240 V single_phase; body 16" x 22"; depth 11" }
heater stove on right { model Mute; from front 8"; guard yes; backing 1 1/2" }
control on front { stands inside; height 54"; timer 60 min }`,
    good: 'control on front { stands outside; height 54"; timer 60 min }',
    sources: [{ kind: 'standard', document: 'IEC 60364-7-703', edition: 'ed. 2.0 (2004)', clause: '703.537.5', text: 'Switchgear not built into the heater is outside the room.', fromMemory: true }, { kind: 'practice', text: 'controls outside the room' }],
    isWaivable: false,
    fixes: 'review',
    check: function* (input) {
        // A heater that could not be read may have a manual that says where its control goes.
        if (input.results.heaters.length !== input.job.heaters.length) return;
        // Where the manual says where the control goes, that has its own finding.
        const told = new Set(input.results.heaters.flatMap(({ controls }) => controls.problems.filter(isWrongPlace).map(({ name }) => name)));
        const clause = strictest(input.ruleSets, 'equipment.switchgear-in-room');
        const isForbidden = clause?.figure.value === false;
        const citation: Citation = isForbidden ? clause.clause.citation : { kind: 'practice', text: 'controls outside the room' };
        for (const { name, block } of nameBlocks(input.job.controls)) {
            const stands = block.values.stands;
            if (stands?.value !== 'inside' || told.has(name)) continue;
            yield {
                at: stands.span, severity: isForbidden ? 'error' : 'warning',
                message: `The control stands inside the room; outside is needed (${showCitation(citation)}). Put it outside, or ask the maker of the heater.`,
                citation, measured: inWords('inside'), required: inWords('outside'), subject: name, fixes: reviewFix('Put the control outside the room', [{ span: stands.span, newText: 'outside' }]),
            };
        }
    },
});
