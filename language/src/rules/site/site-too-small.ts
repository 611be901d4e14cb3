import { lengthFigure } from '../../core/finding.js';
import { negate, plus } from '../../core/length.js';
import { areFreeSidesUnstated } from '../free-sides.js';
import { showAtLeast, showAtMost } from '../rounding.js';
import { defineRule } from '../rule.js';

const citation = { kind: 'practice', text: '1" to the building on a closed side, 2" where someone must reach' } as const;

export const siteTooSmall = defineRule({
    id: 'site-too-small',
    family: 'site',
    title: 'The room does not fit into its place',
    severity: 'error',
    why: 'The smallest of the measured sizes governs. Closed sides need a gap for shims and tolerance, and a place that is out of square takes its share.',
    bad: 'site { width 84 1/2"; depth 108"; ceiling 7\'6"; floor tile; free front }',
    good: 'site { width 86"; depth 108"; ceiling 7\'6"; floor tile; free front }',
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    *check({ job, results, show }) {
        for (const fit of results.site?.fit?.axes ?? []) {
            const measured = job.site?.values[fit.axis];
            const size = job.room?.values[fit.axis];
            // With no side named free the gaps are a guess; what does not fit without them fits nowhere.
            if (fit.fits || !measured || !size || (areFreeSidesUnstated(job) && plus(fit.outside, fit.outOfSquare) <= fit.available)) continue;
            const gaps = plus(fit.gaps[0], fit.gaps[1]);
            const lost = fit.outOfSquare > 0 ? ` and ${showAtLeast(fit.outOfSquare, job.unit)} lost out of square` : '';
            yield {
                at: size.span,
                message: `The room is ${show(fit.outside)} ${fit.axis === 'width' ? 'wide' : 'deep'} and its place ${showAtMost(fit.available, job.unit)} at the smallest; with gaps of ${show(gaps)} to the building${lost} ${showAtLeast(fit.required, job.unit)} is needed (common practice, no source). Make the room ${showAtLeast(negate(fit.spare), job.unit)} smaller, or leave a side free.`,
                citation, measured: lengthFigure(fit.available), required: lengthFigure(fit.required), subject: `site.spare_${fit.axis}`,
                related: [{ at: measured.span, message: `The ${fit.axis} of the place was measured here.` }],
            };
        }
    },
});
