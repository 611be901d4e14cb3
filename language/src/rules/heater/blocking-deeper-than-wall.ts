import { lengthFigure } from '../../core/finding.js';
import { defineRule } from '../rule.js';
import { heaterFindings, reviewFix, writable } from './heater-findings.js';

export const blockingDeeperThanWall = defineRule({
    id: 'blocking-deeper-than-wall',
    family: 'heater',
    title: 'The blocking of the heater is thicker than the wall takes',
    severity: 'error',
    why: 'The blocking stands between lining and facing; thicker wood would push the facing off.',
    bad: 'heater stove on right { model Tarn60; from front 8"; guard yes; backing 3" }',
    good: 'heater stove on right { model Tarn60; from front 8"; guard yes; backing 2 1/2" }',
    sources: [{ kind: 'geometry', text: 'the layers of the wall' }],
    isWaivable: true,
    fixes: 'review',
    check: input => heaterFindings(input, ({ screw, name, block }) => {
        const problem = screw?.problems.find(({ kind }) => kind === 'backing-deeper-than-wall');
        const backing = block.values.backing;
        if (problem?.kind !== 'backing-deeper-than-wall' || !backing) return undefined;
        const room = writable(problem.room, input.job.unit);
        return {
            at: backing.span,
            message: `The blocking of heater ${name} is ${input.show(problem.backing)} thick; between lining and facing there is ${room}. Make it ${room} or thinner.`,
            citation: { kind: 'geometry', text: 'the layers of the wall' }, measured: lengthFigure(problem.backing), required: lengthFigure(problem.room), subject: `${name}.fastening_height`,
            fixes: reviewFix(`Set the blocking to ${room}`, [{ span: backing.span, newText: writable(problem.room, input.job.unit) }]),
        };
    }),
});
