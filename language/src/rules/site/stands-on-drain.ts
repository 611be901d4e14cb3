import { inWords } from '../../core/finding.js';
import { showList } from '../../core/show.js';
import { defineRule } from '../rule.js';

const citation = { kind: 'practice', text: 'plate and legs miss the drain' } as const;

export const standsOnDrain = defineRule({
    id: 'stands-on-drain',
    family: 'site',
    title: 'A base plate or a leg stands on the floor drain',
    severity: 'warning',
    why: 'Water has to get out, and a leg on a grating stands on nothing.',
    bad: 'site { width 96"; depth 108"; ceiling 7\'6"; floor tile; free front, right; drain_from_left 3"; drain_from_front 60" }',
    good: 'site { width 96"; depth 108"; ceiling 7\'6"; floor tile; free front, right; drain_from_left 40"; drain_from_front 50" }',
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    *check({ job, results }) {
        const on = results.site?.onDrain ?? [];
        const at = job.site?.values.drain_from_left?.span;
        if (on.length === 0 || !at) return;
        yield {
            at,
            message: `${showList(on.map(({ name }) => name))} would stand on the floor drain, taken as 4" wide; plate and legs have to miss it (common practice, no source). Move the room or the bench.`,
            citation, measured: inWords(showList(on.map(({ name }) => name))), required: inWords('nothing on the drain'),
        };
    },
});
