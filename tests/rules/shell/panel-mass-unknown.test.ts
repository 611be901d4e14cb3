import { test } from 'vitest';
import { panelMassUnknown as rule } from '../../../language/src/rules/shell/panel-mass-unknown.js';
import { checkFindings } from '../../support/check.js';

test('reports the system the room uses', () => checkFindings(rule, `
    material mystery { kind insulation }
    panel_system Light { lining aspen_1x4_lining 3/4"; barrier foil_barrier; core mystery 2 1/2"; facing spruce_board 1/2"; engagement 3/8"; corners front_and_back; plate larch_2x4; plate_set_in 1/8"; made_to_measure 6" to 23 7/8"; modules 24", 18", 12" }
    room {
        system    Light
        //        ^^^^^ info: The mass of the panels is not known: mystery has no density. Write density at the catalogue entry, such as density 45 kg per m3.
        width     84"
        depth     79 1/2"
        height    7'0"
    }
`));

test('accepts a density for each layer', () => checkFindings(rule, `
    material mystery { kind insulation; density 45 kg per m3 }
    panel_system Light { lining aspen_1x4_lining 3/4"; barrier foil_barrier; core mystery 2 1/2"; facing spruce_board 1/2"; engagement 3/8"; corners front_and_back; plate larch_2x4; plate_set_in 1/8"; made_to_measure 6" to 23 7/8"; modules 24", 18", 12" }
    room { system Light; width 84"; depth 79 1/2"; height 7'0" }
`));

test('stays silent while the system is being typed', () => checkFindings(rule, `
    material mystery { kind insulation }
    panel_system Light { lining aspen_1x4_lining 3/4"; barrier foil_barrier; core mystery 2 1/2"; facing spruce_board 1/2"; engagement 3/8"; corners front_and_back; plate larch_2x4; plate_set_in 1/8"; made_to_measure 6" to 23 7/8"; modules 24", 18", 12" }
    room {
        system
        width 84"
        depth 79 1/2"
        height 7'0"
    }
`));
