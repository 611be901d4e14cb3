import { lengthFigure } from '../../core/finding.js';
import { defineRule } from '../rule.js';
import { showTerm } from './headroom-findings.js';

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
    *check({ job, results, show }) {
        const headroom = results.shell?.result.headroom;
        const ceiling = job.site?.values.ceiling;
        if (headroom?.verdict !== 'tight' || headroom.available === undefined || !ceiling) return;
        yield {
            at: ceiling.span,
            message: `The place is ${show(headroom.available)} high and ${show(headroom.required)} is needed to put the room up, because ${showTerm(headroom.governing)}; the shortfall is under 1/16" (common practice, no source). Tell the crew to keep shims low.`,
            citation, measured: lengthFigure(headroom.available), required: lengthFigure(headroom.required), subject: 'room.assembly_headroom',
        };
    },
});
