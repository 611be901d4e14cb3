import { inWords } from '../../core/finding.js';
import { defineRule } from '../rule.js';

const citation = { kind: 'practice', text: 'a hot room has benches' } as const;

export const benchMissing = defineRule({
    id: 'bench-missing',
    family: 'bench',
    title: 'A room without a bench',
    severity: 'info',
    why: 'Bathers sit high in the warm air; clearances, head room and parts of benches are not worked out.',
    bad: '// without bench upper\n// without bench lower',
    good: '// without bench lower',
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    *check({ job }) {
        if (!job.isWhole || job.benches.length > 0 || !job.room) return;
        yield {
            at: job.room.head,
            message: 'The job has no bench (common practice, no source). Write a block such as bench upper on back { build …; top …; depth … }, or leave it so if the benches come from elsewhere.',
            citation, measured: inWords('none'), required: inWords('one bench'),
        };
    },
});
