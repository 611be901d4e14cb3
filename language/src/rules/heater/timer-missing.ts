import type { Citation } from '../../core/citation.js';
import { showCitation } from '../../core/citation.js';
import { inWords } from '../../core/finding.js';
import { clausesOf } from '../../rule-sets/index.js';
import { defineRule } from '../rule.js';
import { heaterFindings, lacks, modelSpan } from './heater-findings.js';

export const timerMissing = defineRule({
    id: 'timer-missing',
    family: 'heater',
    title: 'No timer switches the heater off',
    severity: 'warning',
    why: 'A heater that is forgotten runs on, and a towel dried over it has started many a fire; a timer ends it.',
    bad: `heater_model Mute { manual "Mute sheet (fictional)"; power 6 kW; supply 240 V single_phase; body 16" x 22"; depth 11"; control outside }
heater stove on right { model Mute; from front 8"; guard yes; backing 1 1/2" }
control on front { stands outside; height 54" }`,
    good: 'control on front { stands outside; height 54"; timer 60 min }',
    sources: [{ kind: 'standard', document: 'CSA C22.1', edition: '2021', clause: '62-222 4)', text: 'A timed cut-off controls the heater.' }, { kind: 'practice', text: 'a timer for the heater' }],
    isWaivable: true,
    fixes: 'none',
    check: input => heaterFindings(input, judged => {
        const { controls, model, name, manual } = judged;
        const isWritten = input.job.controls.some(control => control.written.has('timer') || !control.isWhole);
        if (!input.job.isWhole || isWritten || !lacks(model, 'timer') || !controls.problems.some(({ kind }) => kind === 'timer-missing')) return undefined;
        const demand = clausesOf(input.ruleSets, 'timer.required').find(({ clause }) => clause.figure.value);
        const citation: Citation = demand?.clause.citation ?? { kind: 'practice', text: 'a timer for the heater' };
        const [control] = input.job.controls;
        return {
            at: control?.head ?? modelSpan(judged), severity: demand ? 'error' : 'warning',
            message: `No timer is stated for heater ${name}, neither at a control nor by ${manual.title}; one is needed (${showCitation(citation)}). Write timer and its longest time at the control, such as timer 60 min.`,
            citation, subject: name, measured: inWords('none'), required: inWords('a timer'),
        };
    }),
});
