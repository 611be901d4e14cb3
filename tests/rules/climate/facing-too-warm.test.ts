import { test } from 'vitest';
import { facingTooWarm as rule } from '../../../language/src/rules/climate/facing-too-warm.js';
import { checkFindings } from '../../support/check.js';

const place = 'site { width 96"; depth 108"; ceiling 90"; floor tile; free front, right; clear front 40"; doorway 32" x 80"; supply 240 V single_phase; capacity 60 A; ambient 104 degF }';
const odd = (core: string): string => `panel_system Odd { lining aspen_1x4_lining 3/4"; core ${core}; facing spruce_board 1/8"; modules 24", 18", 12"; made_to_measure 6" to 23 7/8"; engagement 3/8"; corners front_and_back; plate larch_2x4; plate_set_in 1/8" }`;
// ISO 13732-1:2006 from memory: 48 degC for ten minutes on any material.
test('a thin wall in a warm place', () => checkFindings(rule, `
    climate { bathing 120 degC; session 3 h }
    ${place}
    ${odd('spruce_board 1/8"')}
    room {
        system Odd
        //     ^^^ warning: At the end of a session the facing (back) is 140 degF warm; 118 degF is the most to touch (ISO 13732-1 2006, table of burn thresholds). Choose…
        width 84"
        depth 79 1/2"
        height 7'0"
        ceiling spans_left_to_right
    }
`));
test('accepts an insulated one', () => checkFindings(rule, `
    climate { bathing 120 degC; session 3 h }
    ${place}
    ${odd('stone_wool 2 1/2"')}
    room { system Odd; width 84"; depth 79 1/2"; height 7'0"; ceiling spans_left_to_right }
`));
test('stays silent while the core is being typed', () => checkFindings(rule, `
    climate { bathing 120 degC; session 3 h }
    ${place}
    ${odd('spruce_board')}
    room { system Odd; width 84"; depth 79 1/2"; height 7'0"; ceiling spans_left_to_right }
`));
