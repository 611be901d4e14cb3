import { inWords, type Finding } from '../../core/finding.js';
import { showConflict } from '../../rule-sets/index.js';
import { imc, practice } from '../../rule-sets/documents.js';
import { defineRule } from '../rule.js';
import { alongSpan, exhausts, governs, placeWords, ventTitle } from './air-findings.js';
import { isAt } from './exhaust-not-in-place.js';

export const exhaustPlaceDisputed = defineRule({
    id: 'exhaust-place-disputed',
    family: 'air',
    title: 'A published text and practice want the exhaust at different places',
    severity: 'info',
    why: 'One published text has the opening near the top of the door, good practice low and across the room. Who designs to one should know of the other.',
    bad: 'rules us_commercial, good_practice\nvent exhaust on front { size 8" x 4"; from left 8"; below_ceiling 3"; air room }',
    good: 'rules us_commercial\nvent exhaust on front { size 8" x 4"; from left 8"; below_ceiling 3"; air room }',
    sources: [imc('914.5', 'The opening is near the top of the door into the room.'), practice('Exhaust low on the opposite wall or under the bench.')],
    isWaivable: true,
    fixes: 'none',
    *check(input): Generator<Finding> {
        const rule = governs(input, 'vent.opening-place');
        const placed = exhausts(input).flatMap(vent => vent.exhaust ? [{ ...vent, exhaust: vent.exhaust }] : []);
        const kept = rule && placed.find(({ exhaust }) => isAt(exhaust, rule.figure.value));
        // While the governing place is missed there is a finding about that, and it tells of the other place too.
        if (!rule || !kept) return;
        for (const conflict of rule.conflicts) {
            // What the job has decided is recorded with its reason.
            if (conflict.kind === 'decided') continue;
            const other = conflict.other.clause.figure.value;
            if (placed.some(({ exhaust }) => isAt(exhaust, other))) continue;
            yield {
                at: alongSpan(kept.block),
                message: `${ventTitle(kept.block)} is ${placeWords(rule.figure.value)}. ${showConflict(conflict, input.job.unit)} One opening cannot be at both; a second exhaust could serve the other.`,
                citation: conflict.other.clause.citation, measured: inWords(placeWords(rule.figure.value)), required: inWords(placeWords(other)), subject: `${kept.name}.lower_edge`,
            };
        }
    },
});
