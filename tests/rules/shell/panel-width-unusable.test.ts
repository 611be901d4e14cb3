import { test } from 'vitest';
import { panelWidthUnusable as rule } from '../../../language/src/rules/shell/panel-width-unusable.js';
import { checkFindings } from '../../support/check.js';

test('reports the widths of the system', () => checkFindings(rule, `
    panel_system Odd {
        lining aspen_1x4_lining 3/4"; core stone_wool 2 1/2"; facing spruce_board 1/2"; engagement 3/8"; corners front_and_back; plate larch_2x4; plate_set_in 1/8"
        modules   24", 18", 1/2"
        //        ^^^^^^^^^^^^^^ error: Panel system Odd offers 1/2"; 1" is the least a panel can be (common practice, no source). Take it out; the other widths are used.
    }
    room { system Odd; width 84"; depth 79 1/2"; height 7'0"; ceiling spans_left_to_right }
`));

test('accepts 1"', () => checkFindings(rule, `
    panel_system Odd { lining aspen_1x4_lining 3/4"; barrier foil_barrier; core stone_wool 2 1/2"; facing spruce_board 1/2"; engagement 3/8"; corners front_and_back; plate larch_2x4; plate_set_in 1/8"; made_to_measure 6" to 23 7/8"; modules 24", 1" }
    room { system Odd; width 84"; depth 79 1/2"; height 7'0"; ceiling spans_left_to_right }
`));

test('stays silent while the widths are being typed', () => checkFindings(rule, `
    panel_system Odd {
        lining aspen_1x4_lining 3/4"; core stone_wool 2 1/2"; engagement 3/8"; corners front_and_back; plate larch_2x4; plate_set_in 1/8"
        modules 24", 1/
    }
    room { system Odd; width 84"; depth 79 1/2"; height 7'0" }
`));
