import { turningSpaceOf } from '../../assembly/access.js';
import { showCitation } from '../../core/citation.js';
import { inWords } from '../../core/finding.js';
import { ada } from '../../rule-sets/documents.js';
import { defineRule } from '../rule.js';
import { turningDemand } from './turning-findings.js';

export const turningSpaceUnderDoor = defineRule({
    id: 'turning-space-under-door',
    family: 'bench',
    title: 'The only turning space is where the door swings',
    severity: 'info',
    why: 'A door may swing through it; but who turns there has to keep it shut, and nobody can come to help.',
    bad: 'rules us_accessible\nroom { system Skerry; width 84"; depth 91 1/2"; height 7\'0"; ceiling spans_left_to_right }\n// without bench upper\nbench lower on back { build Slatted; top 18"; depth 16"; is_accessible yes }\ndoor entry on front { model Leaf24; from left 23 7/8"; hinge left; swing inward }',
    good: 'rules us_accessible\nroom { system Skerry; width 84"; depth 91 1/2"; height 7\'0"; ceiling spans_left_to_right }\n// without bench upper\nbench lower on back { build Slatted; top 18"; depth 16"; is_accessible yes }',
    sources: [ada.fromMemory('304.4', 'Doors may swing into turning spaces unless something else says otherwise.')],
    isWaivable: true,
    fixes: 'none',
    *check(input) {
        const { job, results: { floor, doors } } = input;
        const demand = turningDemand(input);
        if (!demand || !floor) return;
        const found = turningSpaceOf({ ...floor, ...demand.ask });
        if (!found.isSwept || (!found.circle && !found.t)) return;
        const cite = ada.fromMemory('304.4', 'Doors may swing into turning spaces.');
        for (const { door, name, block } of doors) {
            if (door?.swing.side !== 'inside') continue;
            yield {
                at: block.values.swing?.span ?? block.head,
                message: `Door ${name} swings through the only turning space of the room. That is allowed (${showCitation(cite)}), but nobody can come in to help who turns there. Let the door open outward.`,
                citation: cite, measured: inWords('in the sweep of the leaf'), required: inWords('allowed'), subject: name,
                related: job.room ? [{ at: job.room.head, message: 'The room has no other place to turn.' }] : [],
            };
        }
    },
});
