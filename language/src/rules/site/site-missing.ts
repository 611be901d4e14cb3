import { inWords } from '../../core/finding.js';
import { defineRule } from '../rule.js';

const citation = { kind: 'practice', text: 'a room is designed for a measured place' } as const;

export const siteMissing = defineRule({
    id: 'site-missing',
    family: 'site',
    title: 'The job does not say where the room is built',
    severity: 'info',
    why: 'Whether the room fits, can be put up, can be carried in and wired is judged against the measured place. Without it none of that is checked.',
    bad: '// without site',
    good: 'site { width 96"; depth 108"; ceiling 7\'6"; floor tile; free front, right; clear front 40"; doorway 32" x 80"; supply 240 V single_phase; capacity 60 A }',
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    *check({ job }) {
        if (!job.isWhole || !job.room || job.site) return;
        yield { at: job.block.head, message: 'The job has no site, so fit, headroom, way in, floor and supply are not checked (common practice, no source). Write the measured place, as site { width …; depth …; ceiling …; floor …; free …; doorway …; supply …; capacity … }.', citation, measured: inWords('none'), required: inWords('a measured place') };
    },
});
