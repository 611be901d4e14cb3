import { manualCitation } from '../../engines/heater/casing.js';
import { inWords, lengthFigure, type Finding } from '../../core/finding.js';
import { showRequired } from '../governing.js';
import { defineRule } from '../rule.js';
import { heaterFindings } from './heater-findings.js';
import { isLeaf, placeOfBoth, thingWords } from './thing-findings.js';

export const guardMeetsThing = defineRule({
    id: 'guard-meets-thing',
    family: 'heater',
    title: 'The guard of the heater and another thing stand in one place',
    severity: 'error',
    why: 'The guard stands as far off the casing as the manual states, and nothing else can stand there.',
    bad: `heater_model Broad { manual "Broad sheet (fictional)"; power 6 kW; supply 240 V single_phase; body 16" x 22"; depth 11"; off_wall 2"; off_floor 8"; clear_side 4"; clear_front 4"; clear_above 45"; guard required; guard_offset 6" }
heater stove on right { model Broad; from front 15"; guard yes; backing 1 1/2" }`,
    good: 'heater stove on right { model Tarn60; from front 15"; guard yes; backing 1 1/2" }',
    sources: [{ kind: 'geometry', text: 'two things cannot stand in one place' }, { kind: 'manual', text: 'the distance of the guard from the casing' }],
    isWaivable: false,
    fixes: 'none',
    check: input => heaterFindings(input, function* (judged): Generator<Finding> {
        const told = new Set<string>();
        for (const problem of judged.guardProblems) {
            if (problem.kind !== 'guard-meets') continue;
            const { thing } = problem;
            // What is too near the casing itself has its own finding, and its cure clears the guard too.
            const isTooNear = judged.clearances.some(one => one.status === 'short' && one.thing.kind === thing.kind && one.thing.name === thing.name);
            if (isTooNear || isLeaf(thing) || told.has(thing.name) || !judged.guard) continue;
            told.add(thing.name);
            yield {
                ...placeOfBoth(input, judged, thing),
                message: `The guard of heater ${judged.name} stands where ${thingWords(thing)} is; it stays ${showRequired(judged.guard.offset, input.job.unit)} off the casing (${judged.manual.title}). Move one of them.`,
                citation: manualCitation(judged.manual), measured: inWords(`meets ${thingWords(thing)}`), required: lengthFigure(judged.guard.offset), subject: `${judged.name}.guard`,
            };
        }
    }),
});
