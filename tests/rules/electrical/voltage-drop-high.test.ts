import { test } from 'vitest';
import { voltageDropHigh as rule } from '../../../language/src/rules/electrical/voltage-drop-high.js';
import { checkFindings } from '../../support/check.js';

// Source: NEC chapter 9, Table 8: 8 AWG stranded 0.778 Ω/1000 ft at 75 °C, by its note 0.742 at 60 °C.
test('reports the circuit: 2 · 25 A · 0.742 Ω/1000 ft · 220 ft is 8.16 V of 240 V', () => checkFindings(rule, `
    circuit stove_feed {
        feeds     stove
        //        ^^^^^ info: Circuit stove_feed loses 3.39 % of its voltage over 220'; 3 % or less is advised (NEC 2023, 210.19(A), informational note). A shorter run or a larger conductor cures it; ask the electrician.
        disconnect_in_sight yes
        segment   yard { length 220'; ambient 68 degF }
    }
`));

test('accepts a drop under 3 %', () => checkFindings(rule, `
    circuit stove_feed {
        feeds     stove
        disconnect_in_sight yes
        segment   yard { length 190'; ambient 68 degF }
    }
`));

test('stays silent while the length is being typed', () => checkFindings(rule, `
    circuit stove_feed {
        feeds     stove
        disconnect_in_sight yes
        segment   yard { length ; ambient 68 degF }
    }
`));
