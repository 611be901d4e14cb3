import { inWords, type Finding } from '../../core/finding.js';
import { iso10456 } from '../../engines/climate/sources.js';
import { spoken } from '../../core/show.js';
import { lacks } from '../heater/heater-findings.js';
import { defineRule } from '../rule.js';
import { systemSpan, wholeClimate } from './climate-findings.js';

export const conductivityMissing = defineRule({
    id: 'conductivity-missing',
    family: 'climate',
    title: 'A layer has no thermal conductivity',
    severity: 'info',
    why: 'Loss, warm-up and the place of the dew point cannot be worked out through a layer nobody knows; a guess would look like a result.',
    bad: 'material felt { kind other }\npanel_system Odd { lining aspen_1x4_lining 3/4"; core stone_wool 2 1/2"; facing felt 1/2"; modules 24", 18", 12"; made_to_measure 6" to 23 7/8"; engagement 3/8"; corners front_and_back; plate larch_2x4; plate_set_in 1/8" }\nroom { system Odd; width 84"; depth 79 1/2"; height 7\'0"; ceiling spans_left_to_right }',
    good: 'material felt { kind other; conductivity 0.05 }\npanel_system Odd { lining aspen_1x4_lining 3/4"; core stone_wool 2 1/2"; facing felt 1/2"; modules 24", 18", 12"; made_to_measure 6" to 23 7/8"; engagement 3/8"; corners front_and_back; plate larch_2x4; plate_set_in 1/8" }\nroom { system Odd; width 84"; depth 79 1/2"; height 7\'0"; ceiling spans_left_to_right }',
    sources: [iso10456('table 3', 'Design values of materials, for those whose maker states none.')],
    isWaivable: true,
    fixes: 'none',
    *check(input): Generator<Finding> {
        for (const { role, name, block } of wholeClimate(input)?.shell.lacks ?? []) {
            if (!block || !lacks(block, 'conductivity')) continue;
            yield {
                at: systemSpan(input),
                message: `Heat through the shell is not checked: ${spoken(role)} ${name} has no conductivity. Write the one its maker states into its catalogue entry, in W/(m K).`,
                citation: iso10456('table 3', 'Design values of materials.'), measured: inWords('not stated'), required: inWords('its conductivity in W/(m K)'), subject: 'room.transmission_loss',
                related: [{ at: block.head, message: `${name} is described here.` }],
            };
        }
    },
});
