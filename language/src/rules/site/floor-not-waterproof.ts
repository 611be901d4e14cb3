import { inWords } from '../../core/finding.js';
import { defineRule } from '../rule.js';

const citation = { kind: 'practice', text: 'tile, concrete, vinyl or another waterproof floor' } as const;

export const floorNotWaterproof = defineRule({
    id: 'floor-not-waterproof',
    family: 'site',
    title: 'The floor under the room is not waterproof',
    severity: 'warning',
    why: 'Bathers pour water and carry it out. Wood and carpet under a hot room rot and burn.',
    bad: 'site { width 96"; depth 108"; ceiling 7\'6"; floor carpet; free front, right }',
    good: 'site { width 96"; depth 108"; ceiling 7\'6"; floor vinyl; free front, right }',
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    *check({ job, results }) {
        const floor = job.site?.values.floor;
        if (!floor || results.site?.floor?.isWaterproof !== false) return;
        yield {
            at: floor.span,
            message: `The floor is ${floor.value}; tile, concrete, vinyl or another waterproof floor is needed (common practice, no source). Lay one before the room is built.`,
            citation, measured: inWords(floor.value), required: inWords('a waterproof floor'),
        };
    },
});
