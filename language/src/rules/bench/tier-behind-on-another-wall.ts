import { inWords } from '../../core/finding.js';
import { showList } from '../../core/show.js';
import { defineRule } from '../rule.js';
import { benchFindings } from './bench-findings.js';
import { tiersBehind } from './tier-findings.js';

const citation = { kind: 'geometry', text: 'a tier and the one behind it share a wall' } as const;

export const tierBehindOnAnotherWall = defineRule({
    id: 'tier-behind-on-another-wall',
    family: 'bench',
    title: 'A bench stands in front of one on another wall',
    severity: 'error',
    why: 'Where the bench stands off its wall follows from the tier behind it; beside a bench of another wall it stands at the wall.',
    bad: 'bench lower on back { build Slatted; top 18"; depth 16"; in_front_of side }\nbench side on left { build Slatted; top 30"; depth 16"; from front 0"; length 20" }',
    good: 'bench lower on back { build Slatted; top 18"; depth 16"; in_front_of upper }',
    sources: [citation],
    isWaivable: true,
    fixes: 'review',
    check: input => benchFindings(input, 'in-front-of-other-wall', ({ problem: { behind, walls, wallsBehind }, block, name }) => {
        const stated = block.values.in_front_of;
        if (!stated) return undefined;
        const other = input.results.benches?.blocks.get(behind);
        const { cure, fixes } = tiersBehind(block, name, input);
        return {
            at: stated.span,
            message: `Bench ${behind} stands on ${wallsOf(wallsBehind)} and bench ${name}, said to stand in front of it, on ${wallsOf(walls)}; a tier behind on the same wall is needed. ${cure}`,
            citation, measured: inWords(showList(wallsBehind)), required: inWords(showList(walls, 'or')), subject: name,
            related: other ? [{ at: other.head, message: `Bench ${behind} stands here.` }] : [],
            fixes,
        };
    }),
});

const wallsOf = (walls: readonly string[]): string => `the ${showList(walls)} wall${walls.length > 1 ? 's' : ''}`;
