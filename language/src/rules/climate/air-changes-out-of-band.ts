import { amount, inWords, type Finding } from '../../core/finding.js';
import { showNumber } from '../../core/show.js';
import { showCitation } from '../../core/citation.js';
import { governing } from '../governing.js';
import { defineRule } from '../rule.js';
import { areVentsSound, isVolumeSound, wholeClimate } from './climate-findings.js';

/** The flow of a stack is known to about a quarter: openings, wind and a fan elsewhere in the house are not. */
const band = 1.25;

export const airChangesOutOfBand = defineRule({
    id: 'air-changes-out-of-band',
    family: 'climate',
    title: 'The warm room changes its air too seldom or too often',
    severity: 'info',
    why: 'Too little fresh air makes people faint; too much carries away the heat and the steam.',
    bad: 'vent intake on right { size 2" x 1"; behind stove; bottom 4"; air outdoors }\nvent exhaust on front { size 2" x 1"; from left 3"; bottom 4"; air room }',
    good: 'vent exhaust on front { size 8" x 4"; from left 3"; bottom 4"; air room }',
    sources: [{ kind: 'practice', text: '3 to 8 air changes an hour' }],
    isWaivable: true,
    fixes: 'none',
    *check(input): Generator<Finding> {
        const air = wholeClimate(input)?.air;
        const [least, most] = [governing(input.ruleSets, 'air.changes-minimum'), governing(input.ruleSets, 'air.changes-maximum')];
        const vents = input.results.air?.vents ?? [];
        const [first] = vents;
        // A missing opening has a finding of its own.
        if (!air || !least || !most || !first || (input.results.air?.paths.lacks.length ?? 0) > 0 || !areVentsSound(input) || !input.results.heaters.every(({ name }) => isVolumeSound(input, name))) return;
        const { changes } = air.hot;
        const isLow = changes < least.figure.perHour / band;
        if (!isLow && changes <= most.figure.perHour * band) return;
        const range = `${showNumber(least.figure.perHour, 1)} to ${showNumber(most.figure.perHour, 1)}`;
        yield {
            at: first.block.head,
            message: `The warmth of the room drives ${showNumber(changes, 1)} air changes an hour through its openings; ${range} are wanted (${showCitation(least.clause.citation)}). ${isLow ? 'Let the used air out higher up or through larger openings, or state a fan.' : 'Make the openings smaller or fit slides to them.'}`,
            citation: least.clause.citation, measured: amount(changes, 'per h'), required: inWords(`${range} per h`), subject: 'air.changes_hot',
        };
    },
});
