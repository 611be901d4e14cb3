import { lengthFigure } from '../../core/finding.js';
import { defineRule } from '../rule.js';
import { showTerm } from './headroom-findings.js';

const citation = { kind: 'geometry', text: 'panels need height while they are put up' } as const;

export const siteTooLowForAssembly = defineRule({
    id: 'site-too-low-for-assembly',
    family: 'site',
    title: 'The place is too low to put the room up',
    severity: 'error',
    why: 'Standing, the room may fit; but ceiling leaves rise while their joint is interlocked, and panels tilt up on a corner. The lowest measured height governs.',
    bad: 'site { width 96"; depth 108"; ceiling 7\'1"; floor tile; free front, right }',
    good: 'site { width 96"; depth 108"; ceiling 7\'3"; floor tile; free front, right }',
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    *check({ job, results, show }) {
        const headroom = results.shell?.result.headroom;
        const ceiling = job.site?.values.ceiling;
        if (headroom?.verdict !== 'short' || headroom.available === undefined || !ceiling) return;
        yield {
            at: ceiling.span,
            message: `The place is ${show(headroom.available)} high; ${show(headroom.required)} is needed to put the room up, because ${showTerm(headroom.governing)} (${citation.text}). Make the room lower, or its ceiling of other panels.`,
            citation, measured: lengthFigure(headroom.available), required: lengthFigure(headroom.required), subject: 'room.assembly_headroom',
            related: job.room?.values.height ? [{ at: job.room.values.height.span, message: 'The height of the room stands here.' }] : [],
        };
    },
});
