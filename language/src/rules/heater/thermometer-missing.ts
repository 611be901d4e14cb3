import { inWords } from '../../core/finding.js';
import { defineRule } from '../rule.js';

export const thermometerMissing = defineRule({
    id: 'thermometer-missing',
    family: 'heater',
    title: 'The room has no thermometer',
    severity: 'info',
    why: 'Bathers read from it whether the room is ready or too hot; it is a part of the job and has its place.',
    bad: '// without thermometer',
    good: 'thermometer on left { from front 30" }',
    sources: [{ kind: 'practice', text: 'a thermometer 6 in below the ceiling, clear of the plume' }],
    isWaivable: true,
    fixes: 'none',
    check: function* ({ job }) {
        if (!job.isWhole || job.thermometer || job.heaters.length === 0) return;
        yield {
            at: job.block.head,
            message: 'The room has no thermometer; one is usual (common practice, no source). Write a block such as thermometer on left { from front … }: it goes 6" below the ceiling, away from the heater.',
            citation: { kind: 'practice', text: 'a thermometer 6 in below the ceiling, clear of the plume' }, subject: 'thermometer', measured: inWords('none'), required: inWords('one thermometer'),
        };
    },
});
