import { amount, type Finding } from '../../core/finding.js';
import { inSquareInches } from '../../core/length.js';
import { showList } from '../../core/show.js';
import { defineRule } from '../rule.js';
import { isOpen, showArea } from './air-findings.js';

const citation = { kind: 'practice', text: 'what the exhaust draws beyond the intake comes in under the door' } as const;

export const noAirUnderDoor = defineRule({
    id: 'no-air-under-door',
    family: 'air',
    title: 'The exhaust relies on air under the door, and there is none',
    severity: 'info',
    why: 'An exhaust larger than the intake draws the rest from somewhere; the gap under the leaf is the usual way, and a tight one is none.',
    bad: 'door_model Tight24 { leaf 24" x 76"; clear 22 1/4" x 74 3/4"; section 30"; catch roller; bottom_gap 0" }\ndoor entry on front { model Tight24; from left 23 7/8"; hinge left }\nvent exhaust on front { size 8" x 6"; from left 8"; below_ceiling 3"; air room }',
    good: 'door_model Loose24 { leaf 24" x 76"; clear 22 1/4" x 74 3/4"; section 30"; catch roller; bottom_gap 1/2" }\ndoor entry on front { model Loose24; from left 23 7/8"; hinge left }\nvent exhaust on front { size 8" x 6"; from left 8"; below_ceiling 3"; air room }',
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    *check(input): Generator<Finding> {
        const { results, job } = input;
        const paths = results.air?.paths;
        const [first] = results.doors;
        if (!paths || !first || job.vents.some(vent => !vent.isWhole || !isOpen(vent)) || results.doors.some(({ door }) => !door)) return;
        if (paths.lacks.length > 0 || paths.free.exhaust <= paths.free.intake || paths.underDoorsTotal > 0n) return;
        yield {
            at: first.block.values.model?.span ?? first.block.head,
            message: `Nothing is open under door ${showList(results.doors.map(({ name }) => name))}; the free exhaust is ${showArea(paths.free.exhaust, input)} and the free intake ${showArea(paths.free.intake, input)}, and what is missing comes in under the door (common practice, no source). Leave a gap under the leaf, or enlarge the intake.`,
            citation, measured: amount(0, 'in2'), required: amount(inSquareInches(paths.free.exhaust) - inSquareInches(paths.free.intake), 'in2'), subject: 'air.under_doors',
            related: [{ at: first.model.values.bottom_gap?.span ?? first.model.head, message: 'The gap under the leaf is stated here.' }],
        };
    },
});
