import { lengthFigure } from '../../core/finding.js';
import { showAtLeast, showAtMost } from '../rounding.js';
import { defineRule } from '../rule.js';
import { missingHeadroom, showTerm } from './headroom-findings.js';

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
    *check(input) {
        const { job } = input;
        const missing = missingHeadroom(input);
        const ceiling = job.site?.values.ceiling;
        if (!missing || missing.isTight || !ceiling) return;
        const { governing, available } = missing;
        yield {
            at: ceiling.span,
            message: `The place is ${showAtMost(available, job.unit)} high; ${showAtLeast(governing.height, job.unit)} is needed to put the room up, because ${showTerm(governing)} (${citation.text}). Make the room lower, or its ceiling of other panels.`,
            citation, measured: lengthFigure(available), required: lengthFigure(governing.height), subject: 'room.assembly_headroom',
            related: job.room?.values.height ? [{ at: job.room.values.height.span, message: 'The height of the room stands here.' }] : [],
        };
    },
});
