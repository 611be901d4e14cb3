import { amount } from '../../core/finding.js';
import { showCitation } from '../../core/citation.js';
import { strictest } from '../../rule-sets/index.js';
import { defineRule } from '../rule.js';
import { electricHeater, longestTimer, showMinutes } from './control-findings.js';
import { heaterFindings, inCatalogue, modelSpan, reviewFix } from './heater-findings.js';

export const timerTooLong = defineRule({
    id: 'timer-too-long',
    family: 'heater',
    title: 'The timer lets the heater run longer than allowed',
    severity: 'error',
    why: 'The longer a heater runs unseen, the longer something on it can char; the rules limit one setting of the timer.',
    bad: 'rules us_commercial\ncontrol on front { stands outside; height 54"; timer 90 min }',
    good: 'rules us_commercial\ncontrol on front { stands outside; height 54"; timer 60 min }',
    sources: [
        { kind: 'standard', document: 'IMC', edition: '2018', clause: '914.4.1', text: 'A timer runs 1 hour at most.' },
        { kind: 'standard', document: 'CSA C22.1', edition: '2021', clause: '62-222 4)', text: 'The timed cut-off runs 1 hour at most.' },
    ],
    isWaivable: true,
    fixes: 'review',
    check: input => heaterFindings(input, judged => {
        const limit = strictest(input.ruleSets, 'timer.duration', { without: electricHeater });
        const minutes = judged.controls.timerMinutes;
        if (!limit || minutes === undefined || minutes <= limit.figure.minutes) return undefined;
        const { citation, isUncertain } = limit.clause;
        const timer = longestTimer(input);
        const most = showMinutes(limit.figure.minutes);
        return {
            // A figure remembered without certainty is shown and not judged by.
            at: timer?.span ?? modelSpan(judged), severity: isUncertain ? 'info' : 'error',
            message: `The timer of heater ${judged.name} runs ${showMinutes(minutes)}; ${most} is the most (${showCitation(citation)}). ${isUncertain ? 'Compare this with a copy of the standard.' : timer ? 'Choose a shorter one.' : 'Write a control with a shorter timer.'}`,
            citation, measured: amount(minutes, 'min'), required: amount(limit.figure.minutes, 'min'), subject: judged.name,
            related: timer ? [] : inCatalogue(judged, judged.model.values.timer?.span),
            fixes: timer && !isUncertain ? reviewFix(`Set the timer to ${most}`, [{ span: timer.span, newText: most }]) : [],
        };
    }),
});
