import { amount, type Finding } from '../../core/finding.js';
import { showNumber } from '../../core/show.js';
import { showCitation } from '../../core/citation.js';
import { woodShrinkage } from '../../engines/climate/wood.js';
import { defineRule } from '../rule.js';
import { systemSpan, wholeClimate } from './climate-findings.js';

export const tongueLeavesGroove = defineRule({
    id: 'tongue-leaves-groove',
    family: 'climate',
    title: 'In hot service the lining boards shrink out of their grooves',
    severity: 'warning',
    why: 'A board fixed in its middle draws its whole shrinkage out of one joint; when the tongue leaves the groove, the gap shows the barrier and lets steam behind.',
    bad: 'stock broad { section 3/4" x 5 1/2"; cover 5 7/16"; species "aspen"; lengths 8\' }\npanel_system Odd { lining broad 3/4"; core stone_wool 2 1/2"; facing spruce_board 1/2"; modules 24", 18", 12"; made_to_measure 6" to 23 7/8"; engagement 3/8"; corners front_and_back; plate larch_2x4; plate_set_in 1/8" }\nroom { system Odd; width 84"; depth 79 1/2"; height 7\'0"; ceiling spans_left_to_right }',
    good: 'stock broad { section 3/4" x 5 1/2"; cover 5 1/4"; species "aspen"; lengths 8\' }\npanel_system Odd { lining broad 3/4"; core stone_wool 2 1/2"; facing spruce_board 1/2"; modules 24", 18", 12"; made_to_measure 6" to 23 7/8"; engagement 3/8"; corners front_and_back; plate larch_2x4; plate_set_in 1/8" }\nroom { system Odd; width 84"; depth 79 1/2"; height 7\'0"; ceiling spans_left_to_right }',
    sources: [woodShrinkage],
    isWaivable: true,
    fixes: 'none',
    *check(input): Generator<Finding> {
        const climate = wholeClimate(input);
        const lining = climate?.lining;
        // Boards without a tongue are not held by one.
        if (!lining || lining.board.tongueM <= 0 || lining.tongueLeftM > 0) return;
        const { shop, service } = climate.moisture;
        yield {
            at: systemSpan(input),
            message: `From ${showNumber(shop, 1)} % in the shop to ${showNumber(service, 1)} % in hot service a lining board shrinks by ${showNumber(-lining.changeM * 1000, 2)} mm; its tongue is ${showNumber(lining.board.tongueM * 1000, 2)} mm long (${showCitation(woodShrinkage)}). Choose narrower boards, a longer tongue, or dry the boards further before they are fitted.`,
            citation: woodShrinkage, measured: amount(-lining.changeM * 1000, 'mm'), required: amount(lining.board.tongueM * 1000, 'mm'), subject: 'room.tongue_left',
        };
    },
});
