import { inWords, type Finding } from '../../core/finding.js';
import { overlap } from '../../core/geometry.js';
import { defineRule } from '../rule.js';
import { alongSpan, ventTitle } from './air-findings.js';

const citation = { kind: 'geometry', text: 'two openings do not share a piece of wall' } as const;

export const ventsOverlap = defineRule({
    id: 'vents-overlap',
    family: 'air',
    title: 'Two vents share a piece of wall',
    severity: 'error',
    why: 'They would be one hole; and its area would be counted twice.',
    bad: 'vent exhaust on front { size 8" x 4"; from left 8"; below_ceiling 3"; air room }\nvent second on front { role exhaust; size 8" x 4"; from left 12"; below_ceiling 3"; air room }',
    good: 'vent exhaust on front { size 8" x 4"; from left 8"; below_ceiling 3"; air room }\nvent second on front { role exhaust; size 6" x 4"; from left 16"; below_ceiling 3"; air room }',
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    *check({ results }): Generator<Finding> {
        const placed = [...results.air?.vents ?? []].flatMap(({ block, name, vent }) => vent ? [{ block, name, vent }] : []).sort((a, b) => a.block.span.start - b.block.span.start);
        for (const [i, { block, name, vent }] of placed.entries()) {
            const met = placed.slice(0, i).find(other => other.vent.wall === vent.wall && overlap(other.vent.box, vent.box));
            // An intake in an exhaust is a short circuit, which has a finding of its own.
            if (!met || (met.vent.role !== vent.role && met.vent.role !== undefined && vent.role !== undefined)) continue;
            yield {
                at: alongSpan(block),
                message: `${ventTitle(block)} overlaps ${ventTitle(met.block).replace('Vent', 'vent')} on the ${vent.wall} wall. Move one of the two, or write one vent of the whole size.`,
                citation, measured: inWords('overlapping'), required: inWords('apart'), subject: name,
                related: [{ at: met.block.head, message: 'The other vent is here.' }],
            };
        }
    },
});
