import { inWords, type Finding } from '../../core/finding.js';
import { defineRule } from '../rule.js';
import { ventTitle } from './air-findings.js';

const citation = { kind: 'geometry', text: 'one opening has one place' } as const;
/** The first of each pair is read, the second is not. */
const pairs = [['from', 'centre'], ['bottom', 'below_ceiling']] as const;

export const ventPlacedTwice = defineRule({
    id: 'vent-placed-twice',
    family: 'air',
    title: 'The place of a vent is given in two ways',
    severity: 'warning',
    why: 'Only one of the two is read; when the other is changed later, nothing moves.',
    bad: 'vent exhaust on front { size 8" x 4"; from left 8"; bottom 60"; below_ceiling 3"; air room }',
    good: 'vent exhaust on front { size 8" x 4"; from left 8"; below_ceiling 3"; air room }',
    sources: [citation],
    isWaivable: true,
    fixes: 'safe',
    *check({ job }): Generator<Finding> {
        for (const block of job.vents) {
            for (const [read, unread] of pairs) {
                const [kept, idle] = [block.values[read], block.values[unread]];
                if (!kept || !idle) continue;
                yield {
                    at: idle.span,
                    message: `${ventTitle(block)} gives both ${read} and ${unread}; only ${read} is read. Remove one of the two.`,
                    citation, measured: inWords('both'), required: inWords(`${read} alone`), related: [{ at: kept.span, message: `The ${read} that is read stands here.` }],
                    fixes: [{ title: `Remove ${unread}`, safety: 'safe', edits: [{ span: idle.fact, newText: '' }] }],
                };
            }
        }
    },
});
