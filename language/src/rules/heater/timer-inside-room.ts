import { inWords } from '../../core/finding.js';
import { showCitation } from '../../core/citation.js';
import { nameBlocks } from '../../assembly/naming.js';
import { strictest } from '../../rule-sets/index.js';
import { defineRule } from '../rule.js';
import { electricHeater, isWrongPlace } from './control-findings.js';
import { heaterFindings, inCatalogue, modelSpan, reviewFix } from './heater-findings.js';

export const timerInsideRoom = defineRule({
    id: 'timer-inside-room',
    family: 'heater',
    title: 'The timer is in the room and not outside it',
    severity: 'error',
    why: 'From inside a bather can set the timer again and again; outside, somebody has to leave the heat to do it.',
    bad: `heater_model Knob { manual "Knob sheet (fictional)"; power 6 kW; supply 240 V single_phase; body 16" x 22"; depth 11"; control on_heater; timer 60 min }
rules us_commercial
heater stove on right { model Knob; from front 8"; guard yes; backing 1 1/2" }
// without control`,
    good: 'rules us_commercial\ncontrol on front { stands outside; height 54"; timer 60 min }',
    sources: [{ kind: 'standard', document: 'IMC', edition: '2018', clause: '914.4.1', text: 'The timer control is outside the room.' }],
    isWaivable: true,
    fixes: 'review',
    check: input => heaterFindings(input, judged => {
        const { controls, name, model } = judged;
        if (controls.isTimerOutside !== false) return undefined;
        const timed = nameBlocks(input.job.controls).find(({ block: { values } }) => values.timer && values.stands && values.stands.value !== 'outside');
        // A control that its own manual wants elsewhere has its finding, and moving it moves the timer.
        if (timed && controls.problems.some(problem => isWrongPlace(problem) && problem.name === timed.name)) return undefined;
        const isApart = timed?.block.values.stands?.value === 'inside';
        const clause = strictest(input.ruleSets, 'timer.place', { without: isApart ? electricHeater : [...electricHeater, 'timer_apart'] });
        if (!clause) return undefined;
        const { citation } = clause.clause;
        const stands = timed?.block.values.stands;
        return {
            at: stands?.span ?? modelSpan(judged),
            message: `The timer of heater ${name} is ${isApart ? 'inside the room' : 'on the heater'}; outside the room is needed (${showCitation(citation)}). Put a control with the timer outside, or choose a heater made for one.`,
            citation, measured: inWords(isApart ? 'inside' : 'on the heater'), required: inWords('outside'), subject: name,
            related: stands ? [] : inCatalogue(judged, model.values.control?.span),
            fixes: stands && judged.manual.control !== 'on_heater' ? reviewFix('Put the control outside the room', [{ span: stands.span, newText: 'outside' }]) : [],
        };
    }),
});
