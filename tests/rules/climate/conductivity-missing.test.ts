import { test } from 'vitest';
import { conductivityMissing as rule } from '../../../language/src/rules/climate/conductivity-missing.js';
import { checkFindings } from '../../support/check.js';

const odd = 'panel_system Odd { lining aspen_1x4_lining 3/4"; core stone_wool 2 1/2"; facing felt 1/2"; modules 24", 18", 12"; made_to_measure 6" to 23 7/8"; engagement 3/8"; corners front_and_back; plate larch_2x4; plate_set_in 1/8" }';
test('names the layer and where its figure belongs', () => checkFindings(rule, `
    material felt { kind other }
    ${odd}
    room {
        system Odd
        //     ^^^ info: Heat through the shell is not checked: facing felt has no conductivity. Write the one its maker states into its catalogue entry, in W/(m K).
        width 84"
        depth 79 1/2"
        height 7'0"
        ceiling spans_left_to_right
    }
`));
test('accepts a stated one, and woods by their species', () => checkFindings(rule, `
    material felt { kind other; conductivity 0.05 }
    ${odd}
    room { system Odd; width 84"; depth 79 1/2"; height 7'0"; ceiling spans_left_to_right }
`));
test('stays silent while it is being typed', () => checkFindings(rule, `
    material felt { kind other; conductivity }
    ${odd}
    room { system Odd; width 84"; depth 79 1/2"; height 7'0"; ceiling spans_left_to_right }
`));
