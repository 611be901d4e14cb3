import { test } from 'vitest';
import { ceilingDoesNotClose as rule } from '../../../language/src/rules/shell/ceiling-does-not-close.js';
import { checkFindings, checkFix } from '../../support/check.js';

test('reports the size its panels lie side by side over', () => checkFindings(rule, `
    panel_system Stiff { lining aspen_1x4_lining 3/4"; barrier foil_barrier; core stone_wool 2 1/2"; facing spruce_board 1/2"; engagement 3/8"; corners front_and_back; plate larch_2x4; plate_set_in 1/8"; modules 24", 18" }
    room {
        system    Stiff
        width     84"
        depth     79 1/2"
        //        ^^^^^^^ 💡 error: The ceiling does not close: its panels lie side by side over 79 1/2", and no sum of the widths the system offers is that. The nearest outside depth with which it does is 84" or 78"; or let it span the other way.
        height    7'0"
        ceiling   spans_left_to_right
    }
`));

test('accepts 84" of 24" and 18" panels', () => checkFindings(rule, `
    panel_system Stiff { lining aspen_1x4_lining 3/4"; barrier foil_barrier; core stone_wool 2 1/2"; facing spruce_board 1/2"; engagement 3/8"; corners front_and_back; plate larch_2x4; plate_set_in 1/8"; modules 24", 18" }
    room { system Stiff; width 84"; depth 79 1/2"; height 7'0"; ceiling spans_front_to_back }
`));

test('stays silent while the depth is being typed', () => checkFindings(rule, `
    panel_system Stiff { lining aspen_1x4_lining 3/4"; barrier foil_barrier; core stone_wool 2 1/2"; facing spruce_board 1/2"; engagement 3/8"; corners front_and_back; plate larch_2x4; plate_set_in 1/8"; modules 24", 18" }
    room {
        system Stiff
        width 84"
        depth
        height 7'0"
    }
`));

test('a fix sets the nearest depth', () => checkFix(rule, `
    panel_system Stiff { lining aspen_1x4_lining 3/4"; barrier foil_barrier; core stone_wool 2 1/2"; facing spruce_board 1/2"; engagement 3/8"; corners front_and_back; plate larch_2x4; plate_set_in 1/8"; modules 24", 18" }
    room { system Stiff; width 84"; depth 79 1/2"; height 7'0"; ceiling spans_left_to_right }
`, `
    room { system Stiff; width 84"; depth 84"; height 7'0"; ceiling spans_left_to_right }
`));
