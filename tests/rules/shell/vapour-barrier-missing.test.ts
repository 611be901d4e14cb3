import { test } from 'vitest';
import { vapourBarrierMissing as rule } from '../../../language/src/rules/shell/vapour-barrier-missing.js';
import { checkFindings } from '../../support/check.js';

test('reports the system the room uses', () => checkFindings(rule, `
    panel_system Bare { lining aspen_1x4_lining 3/4"; core stone_wool 2 1/2"; facing spruce_board 1/2"; engagement 3/8"; corners front_and_back; plate larch_2x4; plate_set_in 1/8"; made_to_measure 6" to 23 7/8"; modules 24", 18", 12" }
    room {
        system    Bare
        //        ^^^^ warning: Panel system Bare has no vapour barrier; one is needed on the warm side of the insulation (common practice, no source). Write barrier at the panel system.
        width     84"
        depth     79 1/2"
        height    7'0"
    }
`));

test('accepts a barrier', () => checkFindings(rule, `
    panel_system Bare { lining aspen_1x4_lining 3/4"; barrier foil_barrier; core stone_wool 2 1/2"; facing spruce_board 1/2"; engagement 3/8"; corners front_and_back; plate larch_2x4; plate_set_in 1/8"; made_to_measure 6" to 23 7/8"; modules 24", 18", 12" }
    room { system Bare; width 84"; depth 79 1/2"; height 7'0" }
`));

test('stays silent while the barrier is being typed', () => checkFindings(rule, `
    panel_system Bare { lining aspen_1x4_lining 3/4"; barrier; core stone_wool 2 1/2"; facing spruce_board 1/2"; engagement 3/8"; corners front_and_back; plate larch_2x4; plate_set_in 1/8"; made_to_measure 6" to 23 7/8"; modules 24", 18", 12" }
    room { system Bare; width 84"; depth 79 1/2"; height 7'0" }
`));
