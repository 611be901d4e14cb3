import { inWords } from '../../core/finding.js';
import { defineRule } from '../rule.js';

const citation = { kind: 'geometry', text: 'a fall has a height and a direction' } as const;

export const floorFallHalfStated = defineRule({
    id: 'floor-fall-half-stated',
    family: 'site',
    title: 'The fall of the floor is half stated',
    severity: 'warning',
    why: 'A sloping floor changes the length of every leg and the shims under the base. Without height and side the floor counts as level.',
    bad: 'site { width 96"; depth 108"; ceiling 7\'6"; floor tile; free front, right; floor_fall 1/2" }',
    good: 'site { width 96"; depth 108"; ceiling 7\'6"; floor tile; free front, right; floor_fall 1/2"; falls_to front }',
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    *check({ job, results }) {
        const site = job.site;
        for (const { kind } of results.site?.slope?.problems ?? []) {
            const given = kind === 'fall-direction-missing' ? site?.values.floor_fall : site?.values.falls_to;
            const missing = kind === 'fall-direction-missing' ? 'falls_to' : 'floor_fall';
            if (!given || !site?.isWhole || site.written.has(missing)) continue;
            yield {
                at: given.span,
                message: kind === 'fall-direction-missing'
                    ? `The floor falls, and the site does not say to which side (${citation.text}). Write falls_to and the side; until then the floor counts as level.`
                    : `The floor falls to one side, and the site does not say by how much (${citation.text}). Write floor_fall and the length; until then the floor counts as level.`,
                citation, measured: inWords('not stated'), required: inWords(missing),
            };
        }
    },
});
