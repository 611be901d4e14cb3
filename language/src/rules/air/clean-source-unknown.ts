import { inWords, type Finding } from '../../core/finding.js';
import { defineRule } from '../rule.js';
import { ventTitle } from './air-findings.js';

const citation = { kind: 'practice', text: 'fresh air comes from a clean source' } as const;

export const cleanSourceUnknown = defineRule({
    id: 'clean-source-unknown',
    family: 'air',
    title: 'Where the intake takes its air from is not known',
    severity: 'info',
    why: 'Air from a garage, a shaft or a boiler room would be breathed hot and deep. Whoever builds the room has to know where its air comes from.',
    bad: 'vent intake on right { size 8" x 4"; behind stove; bottom 4" }',
    good: 'vent intake on right { size 8" x 4"; behind stove; bottom 4"; air outdoors }',
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    *check({ results }): Generator<Finding> {
        for (const { block, vent, name } of results.air?.vents ?? []) {
            const isUnknown = vent && results.air?.paths.unknownSources.includes(vent);
            if (!isUnknown || !block.isWhole) continue;
            yield {
                at: block.values.air?.span ?? block.head,
                message: `${ventTitle(block)} does not say where its air comes from; a clean source is needed (common practice, no source). Look on site, and write air outdoors or air room.`,
                citation, measured: inWords('unknown'), required: inWords('outdoors or a clean room'), subject: name,
            };
        }
    },
});
