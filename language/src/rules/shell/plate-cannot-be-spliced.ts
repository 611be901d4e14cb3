import { defineRule } from '../rule.js';
import { measuredAgainst, shellProblems } from './shell-findings.js';

const citation = { kind: 'practice', text: 'a plate joint does not stand under a panel joint nor in a doorway' } as const;
const system = (length: string): string => `stock short_plate { section 1 1/2" x 3 1/2"; lengths ${length}; treated durable }\npanel_system Low { lining aspen_1x4_lining 3/4"; core stone_wool 2 1/2"; facing spruce_board 1/2"; engagement 3/8"; corners front_and_back; plate short_plate; plate_set_in 1/8"; made_to_measure 6" to 23 7/8"; modules 24", 18", 12" }\nroom { system Low; width 84"; depth 79 1/2"; height 7'0"; ceiling spans_left_to_right }\ndoor entry on front { model Leaf24; from left 23 7/8"; hinge left; threshold 1/2" }`;

export const plateCannotBeSpliced = defineRule({
    id: 'plate-cannot-be-spliced',
    family: 'shell',
    title: 'The stock of the base plate is too short for its wall',
    severity: 'error',
    why: 'A plate longer than its stock is spliced under a panel, not under a panel joint and not in a doorway. With stock this short there is no such place.',
    bad: system('18"'),
    good: system('8\''),
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    *check(input) {
        const problems = shellProblems(input, 'plate-cannot-be-spliced');
        const [first] = problems;
        const plate = input.results.room?.system.values.plate;
        if (!first || !plate) return;
        yield {
            at: plate.value.block?.values.lengths?.span ?? plate.span,
            message: `The base plate ${first.mark} is ${input.show(first.length)} and its stock is at most ${input.show(first.longestPiece)}; it cannot be spliced clear of panel joints and doorways (common practice, no source). Name a longer stock.`,
            citation, ...measuredAgainst(first.longestPiece, first.length), subject: 'room.panels', related: [{ at: plate.span, message: 'The plate names its stock here.' }],
        };
    },
});
