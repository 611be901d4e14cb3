import { test } from 'vitest';
import { plateCannotBeSpliced as rule } from '../../../language/src/rules/shell/plate-cannot-be-spliced.js';
import { checkFindings } from '../../support/check.js';

test('reports the lengths of the stock', () => checkFindings(rule, `
    stock short_plate {
        section 1 1/2" x 3 1/2"
        lengths   18"
        //        ^^^ error: The base plate BASE-FRONT is 83 3/4" and its stock is at most 18"; it cannot be spliced clear of panel joints and doorways (common practice, no source). Name a longer stock.
        treated durable
    }
    panel_system Low { lining aspen_1x4_lining 3/4"; barrier foil_barrier; core stone_wool 2 1/2"; facing spruce_board 1/2"; engagement 3/8"; corners front_and_back; plate short_plate; plate_set_in 1/8"; made_to_measure 6" to 23 7/8"; modules 24", 18", 12" }
    room { system Low; width 84"; depth 79 1/2"; height 7'0"; ceiling spans_left_to_right }
    door entry on front { model Leaf24; from left 23 7/8"; hinge left; threshold 1/2" }
`));

test('accepts stock as long as the longest plate', () => checkFindings(rule, `
    stock short_plate {
        section 1 1/2" x 3 1/2"
        lengths   83 3/4"
        treated durable
    }
    panel_system Low { lining aspen_1x4_lining 3/4"; barrier foil_barrier; core stone_wool 2 1/2"; facing spruce_board 1/2"; engagement 3/8"; corners front_and_back; plate short_plate; plate_set_in 1/8"; made_to_measure 6" to 23 7/8"; modules 24", 18", 12" }
    room { system Low; width 84"; depth 79 1/2"; height 7'0"; ceiling spans_left_to_right }
    door entry on front { model Leaf24; from left 23 7/8"; hinge left; threshold 1/2" }
`));

test('stays silent while the lengths are being typed', () => checkFindings(rule, `
    stock short_plate {
        section 1 1/2" x 3 1/2"
        lengths   
        treated durable
    }
    panel_system Low { lining aspen_1x4_lining 3/4"; barrier foil_barrier; core stone_wool 2 1/2"; facing spruce_board 1/2"; engagement 3/8"; corners front_and_back; plate short_plate; plate_set_in 1/8"; made_to_measure 6" to 23 7/8"; modules 24", 18", 12" }
    room { system Low; width 84"; depth 79 1/2"; height 7'0"; ceiling spans_left_to_right }
    door entry on front { model Leaf24; from left 23 7/8"; hinge left; threshold 1/2" }
`));
