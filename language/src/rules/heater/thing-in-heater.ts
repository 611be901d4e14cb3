import { inWords, lengthFigure } from '../../core/finding.js';
import { zero } from '../../core/length.js';
import { defineRule } from '../rule.js';
import { heaterFindings } from './heater-findings.js';
import { capital, cureOf, isLeaf, movesThatClear, placeOfBoth, shortClearances, thingWords } from './thing-findings.js';

export const thingInHeater = defineRule({
    id: 'thing-in-heater',
    family: 'heater',
    title: 'Something stands where the heater hangs',
    severity: 'error',
    why: 'Two things cannot stand in one place, and what touches a heater burns.',
    bad: 'heater stove on right { model Tarn60; from front 26"; guard yes; backing 1 1/2" }',
    good: 'heater stove on right { model Tarn60; from front 8"; guard yes; backing 1 1/2" }',
    sources: [{ kind: 'geometry', text: 'two things cannot stand in one place' }],
    isWaivable: false,
    fixes: 'review',
    check: input => heaterFindings(input, judged => shortClearances(input, judged).filter(({ collides, thing }) => collides && !isLeaf(thing)).map(({ thing }) => ({
        ...placeOfBoth(input, judged, thing),
        message: `${capital(thingWords(thing))} stands where heater ${judged.name} hangs. ${cureOf(input, judged, thing)}`.trimEnd(),
        citation: { kind: 'geometry', text: 'two things cannot stand in one place' }, measured: lengthFigure(zero), required: inWords('clear of the casing'), subject: judged.name,
        fixes: movesThatClear(input, judged, thing),
    }))),
});
