import { lengthFigure } from '../../core/finding.js';
import { inches, ticks, zero } from '../../core/length.js';
import { defineRule } from '../rule.js';

const citation = { kind: 'geometry', text: 'equal diagonals make a place square' } as const;
/** What a tape cannot tell apart. Common practice, no source. */
const reading = inches(0, 1, 8);

export const siteOutOfSquare = defineRule({
    id: 'site-out-of-square',
    family: 'site',
    title: 'The place is out of square',
    severity: 'info',
    why: 'A square room in a place that leans meets the building at one corner first. The crew needs to know which way it leans.',
    bad: 'site { width 96"; depth 108"; diagonals 145", 144"; ceiling 7\'6"; floor tile; free front, right }',
    good: 'site { width 96"; depth 108"; diagonals 144 1/2", 144 1/2"; ceiling 7\'6"; floor tile; free front, right }',
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    *check({ job, results, show }) {
        const lean = results.site?.fit?.outOfSquare;
        const diagonals = job.site?.values.diagonals;
        if (lean === undefined || !diagonals || Math.abs(lean) < reading) return;
        yield {
            at: diagonals.span,
            message: `The place is out of square: its back lies ${show(ticks(Math.abs(lean)))} to the ${lean > 0 ? 'right' : 'left'} of square (${citation.text}). Set the room out from one side and shim the other.`,
            citation, measured: lengthFigure(lean), required: lengthFigure(zero), subject: 'site.spare_width',
        };
    },
});
