import { lengthFigure } from '../../core/finding.js';
import { showAtLeast, showAtMost } from '../rounding.js';
import { defineRule } from '../rule.js';
import { missingHeadroom, showTerm } from './headroom-findings.js';

const citation = { kind: 'geometry', text: 'panels need height while they are put up' } as const;

export const headroomTight = defineRule({
    id: 'headroom-tight',
    family: 'site',
    title: 'The height to put the room up is tight',
    severity: 'info',
    why: 'A shortfall of less than 1/16" is found in shims and tolerance; the crew should know before it starts.',
    bad: 'site { width 96"; depth 108"; ceiling 7\'2 13/16"; floor tile; free front, right }',
    good: 'site { width 96"; depth 108"; ceiling 7\'2 7/8"; floor tile; free front, right }',
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    *check(input) {
        const { job } = input;
        const missing = missingHeadroom(input);
        const ceiling = job.site?.values.ceiling;
        if (!missing || !missing.isTight || !ceiling) return;
        const { governing, available } = missing;
        yield {
            at: ceiling.span,
            message: `The place is ${showAtMost(available, job.unit)} high and ${showAtLeast(governing.height, job.unit)} is needed to put the room up, because ${showTerm(governing)}; the shortfall is under 1/16" (common practice, no source). Tell the crew to keep shims low.`,
            citation, measured: lengthFigure(available), required: lengthFigure(governing.height), subject: 'room.assembly_headroom',
        };
    },
});
