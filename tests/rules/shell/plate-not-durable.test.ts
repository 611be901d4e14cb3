import { test } from 'vitest';
import { plateNotDurable as rule } from '../../../language/src/rules/shell/plate-not-durable.js';
import { checkFindings } from '../../support/check.js';

test('reports the plate of the panel system', () => checkFindings(rule, `
    panel_system Soft {
        lining aspen_1x4_lining 3/4"; core stone_wool 2 1/2"; facing spruce_board 1/2"; engagement 3/8"; corners front_and_back; plate_set_in 1/8"; modules 24", 18", 12"
        made_to_measure 6" to 23 7/8"
        plate     alder_2x4
        //        ^^^^^^^^^ warning: The base plate is cut from alder_2x4, which is neither treated nor durable by nature; one of the two is needed (common practice, no source). Name a durable stock, or write treated at the stock.
    }
    room { system Soft; width 84"; depth 79 1/2"; height 7'0"; ceiling spans_left_to_right }
`));

test('accepts durable stock', () => checkFindings(rule, `
    panel_system Soft {
        lining aspen_1x4_lining 3/4"; core stone_wool 2 1/2"; facing spruce_board 1/2"; engagement 3/8"; corners front_and_back; plate_set_in 1/8"; modules 24", 18", 12"
        made_to_measure 6" to 23 7/8"
        plate     larch_2x4
    }
    room { system Soft; width 84"; depth 79 1/2"; height 7'0"; ceiling spans_left_to_right }
`));

test('stays silent while the stock is being typed', () => checkFindings(rule, `
    panel_system Soft {
        lining aspen_1x4_lining 3/4"; core stone_wool 2 1/2"; facing spruce_board 1/2"; engagement 3/8"; corners front_and_back; plate_set_in 1/8"; modules 24", 18", 12"
        made_to_measure 6" to 23 7/8"
        plate     
    }
    room { system Soft; width 84"; depth 79 1/2"; height 7'0"; ceiling spans_left_to_right }
`));
