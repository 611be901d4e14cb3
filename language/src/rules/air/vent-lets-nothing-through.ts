import { inWords, type Finding } from '../../core/finding.js';
import { defineRule } from '../rule.js';
import { ventTitle } from './air-findings.js';

const citation = { kind: 'geometry', text: 'an opening has an area' } as const;

export const ventLetsNothingThrough = defineRule({
    id: 'vent-lets-nothing-through',
    family: 'air',
    title: 'A vent lets nothing through',
    severity: 'error',
    why: 'A grille with no free part, or an opening without a width or a height, is a wall.',
    bad: 'vent exhaust on front { size 8" x 4"; free 0; from left 8"; below_ceiling 3"; air room }',
    good: 'vent exhaust on front { size 8" x 4"; free 70; from left 8"; below_ceiling 3"; air room }',
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    *check({ job, show }): Generator<Finding> {
        for (const block of job.vents) {
            const { size, free } = block.values;
            const isNoHole = size && (size.value.width <= 0 || size.value.height <= 0);
            if (isNoHole) yield {
                at: size.span, citation, measured: inWords(`${show(size.value.width)} x ${show(size.value.height)}`), required: inWords('above zero'),
                message: `${ventTitle(block)} is ${show(size.value.width)} x ${show(size.value.height)}; both sides of an opening are above zero. Write its real size.`,
            };
            else if (free?.value === 0) yield {
                at: free.span, citation, measured: inWords('0 %'), required: inWords('above 0 %'),
                message: `${ventTitle(block)} has a grille with 0 % free; nothing passes it. Write the free part its maker states, or leave free out for an open hole.`,
            };
        }
    },
});
