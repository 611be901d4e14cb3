import { showCitation } from '../../core/citation.js';
import { inWords } from '../../core/finding.js';
import { isFree } from '../../engines/benches/end-floor.js';
import { insideSwingHits } from '../../engines/site/door-opens.js';
import { ada } from '../../rule-sets/documents.js';
import { accessibleClause, accessibleFloors } from '../bench/accessible-findings.js';
import { defineRule } from '../rule.js';

export const doorSwingsIntoBenchFloor = defineRule({
    id: 'door-swings-into-bench-floor',
    family: 'opening',
    title: 'The door swings into the clear floor of the accessible bench',
    severity: 'error',
    why: 'A wheelchair that stands beside the bench keeps the door from opening, and nobody gets in or out.',
    bad: 'rules us_accessible\n// without bench upper\nbench lower on left { build Slatted; top 18"; depth 20"; length 42"; from back 0"; is_accessible yes }\ndoor entry on front { model Leaf24; from left 23 7/8"; hinge left; swing inward }',
    good: 'rules us_accessible\n// without bench upper\nbench lower on left { build Slatted; top 18"; depth 20"; length 42"; from back 0"; is_accessible yes }\ndoor entry on front { model Leaf24; from left 23 7/8"; hinge left; swing outward }',
    sources: [ada('612.2', 'The door does not swing into the clear floor space of the bench.')],
    isWaivable: true,
    fixes: 'none',
    *check(input) {
        const { results: { doors, inside } } = input;
        const rule = accessibleClause(input, 'door.into-bench-floor-space');
        if (!rule || rule.figure.value || !inside) return;
        for (const { name: bench, block: benchBlock, floors } of accessibleFloors(input)) {
            const free = floors.filter(isFree);
            for (const { door, name, block } of doors) {
                // Floor at one end is enough: the door may take that at the other.
                if (!door || free.length === 0 || free.some(({ box }) => insideSwingHits(door, [{ kind: 'other', name: bench, box }], inside).length === 0)) continue;
                yield {
                    at: block.values.swing?.span ?? block.head,
                    message: `Door ${name} swings into the clear floor at the end of accessible bench ${bench}; that has to stay free of the door (${showCitation(rule.clause.citation)}). Let the door open outward, or keep the floor at the other end clear.`,
                    citation: rule.clause.citation, measured: inWords('in the sweep of the leaf'), required: inWords('free of the door'), subject: name,
                    related: [{ at: benchBlock.head, message: 'The accessible bench stands here.' }],
                };
            }
        }
    },
});
