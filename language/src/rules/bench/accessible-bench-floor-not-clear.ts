import { showCitation } from '../../core/citation.js';
import { inWords } from '../../core/finding.js';
import { showList } from '../../core/show.js';
import { isFree, type EndFloor } from '../../engines/benches/end-floor.js';
import { ada } from '../../rule-sets/documents.js';
import { showFigure } from '../../rule-sets/index.js';
import { defineRule } from '../rule.js';
import { accessibleClause, accessibleFloors } from './accessible-findings.js';
import { stretchSpan } from './bench-findings.js';

export const accessibleBenchFloorNotClear = defineRule({
    id: 'accessible-bench-floor-not-clear',
    family: 'bench',
    title: 'No clear floor at the end of the accessible bench',
    severity: 'error',
    why: 'A wheelchair has to stand beside the end of the seat for someone to move over.',
    bad: 'rules us_accessible\nbench lower on left { build Slatted; top 18"; depth 20"; is_accessible yes }\n// without bench upper',
    good: 'rules us_accessible\nbench lower on left { build Slatted; top 18"; depth 20"; length 42"; from back 0"; is_accessible yes }\n// without bench upper',
    sources: [ada('903.2', 'The clear floor space is at the end of the bench, parallel to its short axis.'), ada('305.3', 'Clear floor space of 30 in by 48 in.')],
    isWaivable: true,
    fixes: 'none',
    *check(input) {
        const { show, job: { unit } } = input;
        const space = accessibleClause(input, 'floor.clear-space');
        const place = accessibleClause(input, 'floor.clear-space-place');
        if (!space || !place) return;
        for (const { block, name, floors } of accessibleFloors(input)) {
            if (floors.length === 0 || floors.some(isFree)) continue;
            const says = ({ end, beyond, inTheWay }: EndFloor): string =>
                `at its ${end} end ${[...beyond > 0 ? [`${show(beyond)} is missing to the wall`] : [], ...inTheWay.length > 0 ? [`${showList([...new Set(inTheWay.map(thing => `${thing.kind} ${thing.name}`))])} stands in it`] : []].join(' and ')}`;
            const cite = `${showCitation(place.clause.citation)} and ${space.clause.citation.kind === 'standard' ? space.clause.citation.clause : ''}`;
            yield {
                at: stretchSpan(block),
                message: `Accessible bench ${name} has no clear floor of ${showFigure(space.figure, unit)} beside an end: ${floors.map(says).join('; ')}. One is needed (${cite}). Shorten the bench, or move what stands there.`,
                citation: place.clause.citation, measured: inWords('none clear'), required: inWords(showFigure(space.figure, unit)), subject: name,
                related: floors.flatMap(({ inTheWay }) => inTheWay).flatMap(thing => {
                    const other = input.results.benches?.blocks.get(thing.name) ?? input.results.heaters.find(heater => heater.name === thing.name)?.block;
                    return other ? [{ at: other.head, message: 'This stands in the floor at one end.' }] : [];
                }),
            };
        }
    },
});
