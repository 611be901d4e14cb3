import { inWords } from '../../core/finding.js';
import type { Block } from '../../model/block.js';
import { defineRule } from '../rule.js';

const citation = { kind: 'practice', text: 'a room is designed for a measured place' } as const;

export const siteNotFullyMeasured = defineRule({
    id: 'site-not-fully-measured',
    family: 'site',
    title: 'The site leaves out what some checks need',
    severity: 'info',
    why: 'A check that lacks its figure says nothing, and silence looks like soundness. What was not measured is named here once, with what to write.',
    bad: 'site { width 96"; depth 108"; ceiling 7\'6"; floor tile; free front, right }',
    good: 'site { width 96"; depth 108"; ceiling 7\'6"; floor tile; free front, right; doorway 32" x 80" }',
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    *check({ job }) {
        const { site } = job;
        if (!job.isWhole || !job.room || !site?.isWhole) return;
        // Facts a site cannot do without are asked for first.
        if (!site.values.width || !site.values.depth || !site.values.ceiling) return;
        const gaps = unmeasured(site);
        if (gaps.length === 0) return;
        yield {
            at: site.head,
            message: `The site was not measured in full: ${gaps.map(({ what }) => what).join('; ')} (common practice, no source). ${gaps.map(({ write }) => write).join(' ')}`,
            citation, measured: inWords(`without ${gaps.map(({ facts }) => facts).join(', ')}`), required: inWords(gaps.map(({ facts }) => facts).join(', ')), subject: 'site',
        };
    },
});

interface Gap { readonly facts: string; readonly what: string; readonly write: string }
const wayIn = ['doorway', 'corridor', 'stairs', 'lift_car'] as const;

/** Checks that are off for want of a fact. Facts whose absence has a rule of its own (free sides, clear floor, supply, capacity) are left to it. */
function unmeasured({ written, values }: Block<'site'>): readonly Gap[] {
    const half = (one: string, other: string): readonly [string, string] | undefined => written.has(one) === written.has(other) ? undefined : written.has(one) ? [other, one] : [one, other];
    const [lift, drain] = [half('lift_car', 'lift_car_height'), half('drain_from_left', 'drain_from_front')];
    return [
        ...(wayIn.some(key => written.has(key)) ? [] : [{
            facts: 'doorway', what: 'no doorway, corridor, stairs or lift car is given, so whether the panels can be carried in is not checked',
            write: 'Write doorway and the narrowest opening on the way in, such as doorway 32" x 80".',
        }]),
        ...(lift ? [{ facts: lift[0], what: `${lift[1]} is given without ${lift[0]}, so whether the panels go into the lift car is not checked`, write: `Write ${lift[0]} as well.` }] : []),
        ...(drain ? [{ facts: drain[0], what: `${drain[1]} is given without ${drain[0]}, so whether plate and legs miss the drain is not checked`, write: `Write ${drain[0]} as well.` }] : []),
        ...(values.diagonals?.value.length === 1 ? [{ facts: 'diagonals', what: 'one diagonal is given, so whether the place is square is not checked', write: 'Write both diagonals, such as diagonals 144 1/2", 144 1/4".' }] : []),
    ];
}
