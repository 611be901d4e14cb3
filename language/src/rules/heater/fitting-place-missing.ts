import { inWords } from '../../core/finding.js';
import { neighbours } from '../../core/geometry.js';
import { showList } from '../../core/show.js';
import type { PlaceProblem } from '../../engines/fittings/wall-place.js';
import type { AssembledFitting } from '../../assembly/fittings.js';
import { defineRule } from '../rule.js';
import { fittingWords } from './fitting-findings.js';
import { lacks } from './heater-findings.js';

export const fittingPlaceMissing = defineRule({
    id: 'fitting-place-missing',
    family: 'heater',
    title: 'A sensor, light or other fitting has no place on its wall',
    severity: 'error',
    why: 'Without its place it is neither kept off the heater nor drawn, and nobody knows where its cable comes through.',
    bad: 'sensor on right { cable 9\' }',
    good: 'sensor on right { centre from front 16"; below_ceiling 5"; cable 9\' }',
    sources: [{ kind: 'geometry', text: 'a place on a wall is a distance along it and a height' }],
    isWaivable: false,
    fixes: 'none',
    check: function* ({ results }) {
        for (const fitting of results.fittings) {
            const lack = missing(fitting);
            if (lack.length === 0) continue;
            yield {
                at: fitting.block.head,
                message: `${fittingWords(fitting)} has no place on its wall, so nothing is checked about it. Write ${showList(lack)}.`,
                citation: { kind: 'geometry', text: 'a place on a wall is a distance along it and a height' }, measured: inWords('not stated'), required: inWords('a place along the wall and a height'), subject: fitting.name,
            };
        }
    },
});

function missing({ block, problems }: AssembledFitting): readonly string[] {
    const find = (kind: PlaceProblem['kind']): PlaceProblem | undefined => problems.find(problem => problem.kind === kind);
    const place = find('place-missing');
    const ends = place && neighbours[place.wall];
    return [
        ...(ends && lacks(block, 'from', 'centre') ? [`from ${ends.left} or from ${ends.right} with a distance`] : []),
        ...(find('height-missing') && lacks(block, 'below_ceiling', 'height', 'bottom') ? ['its height'] : []),
    ];
}
