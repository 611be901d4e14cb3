import { showCitation } from '../../core/citation.js';
import { lengthFigure } from '../../core/finding.js';
import { ada } from '../../rule-sets/documents.js';
import { strictest } from '../../rule-sets/index.js';
import { nameBlocks } from '../../assembly/naming.js';
import { replaceLength } from '../fixes.js';
import { showRequired } from '../governing.js';
import { defineRule } from '../rule.js';

export const controlOutOfReach = defineRule({
    id: 'control-out-of-reach',
    family: 'heater',
    title: 'A control is out of reach from a wheelchair',
    severity: 'error',
    why: 'Who sits reaches neither as high nor as low as who stands.',
    bad: 'rules us_accessible\ncontrol on front { stands outside; height 54"; timer 60 min }',
    good: 'rules us_accessible\ncontrol on front { stands outside; height 44"; timer 60 min }',
    sources: [ada.fromMemory('308.2.1 by 309.3', 'Operable parts are at least 15 in and at most 48 in above the floor.')],
    isWaivable: true,
    fixes: 'review',
    *check({ job, ruleSets, show }) {
        const [low, high] = [strictest(ruleSets, 'control.reach-low'), strictest(ruleSets, 'control.reach-high')];
        for (const { name, block: { values: { height } } } of nameBlocks(job.controls)) {
            if (!height) continue;
            const passed = low && height.value < low.figure.value ? low : high && height.value > high.figure.value ? high : undefined;
            if (!passed) continue;
            const limit = passed.figure.value;
            const bound = passed === low ? 'least' : 'most';
            yield {
                at: height.span,
                message: `The middle of ${name === 'control' ? 'the control' : `control ${name}`} is ${show(height.value)} over the floor; ${showRequired(limit, job.unit, bound)} at ${bound} is needed within reach of a wheelchair (${showCitation(passed.clause.citation)}). Set it ${bound === 'least' ? 'higher' : 'lower'}.`,
                citation: passed.clause.citation, measured: lengthFigure(height.value), required: lengthFigure(limit), subject: name,
                fixes: replaceLength('height', height.span, limit, job.unit),
            };
        }
    },
});
