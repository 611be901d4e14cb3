import { inWords, lengthFigure } from '../../core/finding.js';
import { showList } from '../../core/show.js';
import { duckboardPractice } from '../../engines/fittings/duckboard.js';
import { defineRule } from '../rule.js';
import { replaceValue } from '../fixes.js';
import { showRequired } from '../governing.js';
import { writable } from './heater-findings.js';

export const duckboardSlatsDoNotFit = defineRule({
    id: 'duckboard-slats-do-not-fit',
    family: 'heater',
    title: 'No number of slats fills the duckboard with equal gaps',
    severity: 'warning',
    why: 'The first and the last slat lie flush and the gaps are equal; wider gaps catch toes, narrower ones hold water.',
    bad: 'duckboard mat { from_left 30"; from_front 4"; width 24"; depth 6 1/2"; slat alder_1x4 }',
    good: 'duckboard mat { from_left 30"; from_front 4"; width 24"; depth 7 3/4"; slat alder_1x4 }',
    sources: [{ kind: 'practice', text: 'gaps of 3/8 to 3/4 in between duckboard slats' }],
    isWaivable: true,
    fixes: 'review',
    check: function* ({ results: { fittings }, job, show }) {
        for (const { duckboardProblem: problem, name } of fittings) {
            const depth = job.duckboards.find(({ name: written }) => (written?.value ?? 'duckboard') === name)?.values.depth;
            if (!problem || !depth) continue;
            const nearest = problem.kind === 'no-slat-gap' ? problem.nearest : [];
            const limits = `${showRequired(duckboardPractice.leastGap, job.unit)} to ${showRequired(duckboardPractice.greatestGap, job.unit)}`;
            yield {
                at: depth.span,
                message: problem.kind === 'no-slat-gap'
                    ? `The duckboard is ${show(problem.depth)} deep, and no number of slats fills that with equal gaps of ${limits} (common practice, no source).${nearest.length > 0 ? ` The nearest depths that do are ${showList(nearest.map(length => writable(length, job.unit)))}.` : ''}`
                    : `The duckboard is ${show(problem.depth)} deep and too small for two slats of ${show(problem.slat)} and its bearers. Make it larger.`,
                citation: { kind: 'practice', text: 'gaps of 3/8 to 3/4 in between duckboard slats' }, measured: lengthFigure(problem.depth),
                required: inWords(nearest.length > 0 ? nearest.map(length => writable(length, job.unit)).join(' or ') : 'two slats'), subject: name,
                fixes: nearest.map(length => writable(length, job.unit)).filter(text => !text.startsWith('≈')).map(text => replaceValue(`Set the depth to ${text}`, depth.span, text)),
            };
        }
    },
});
