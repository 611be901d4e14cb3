import { test } from 'vitest';
import { circuitMissing as rule } from '../../../language/src/rules/electrical/circuit-missing.js';
import { checkFindings, checkFix } from '../../support/check.js';

test('names what cannot be worked out', () => checkFindings(rule, `
    // without circuit stove_feed
    heater stove on right {
    //@ 1-13 💡 info: Heater stove has no circuit block; the schedule cannot be completed for want of: the run from the panel to the heater, with the ambient temperature of each segment; length of the run, for the voltage drop; where the disconnecting means is. Write circuit stove_feed { feeds stove; disconnect_in_sight …; segment wall { length …; ambient … } }, a segment for each stretch of the run.
        model     Tarn60
        from      front 8"
        guard     yes
    }
`));

test('accepts a circuit block, whatever it says', () => checkFindings(rule, `
    circuit stove_feed {
        feeds     stove
    }
`));

test('stays silent while the circuit is being typed', () => checkFindings(rule, `
    circuit stove_feed {
        feeds
    }
`));

test('a fix adds the block, whose own lacks are told then', () => checkFix(rule, `
    // without circuit stove_feed
    heater stove on right { model Tarn60; from front 8"; guard yes }
`, `
    heater stove on right { model Tarn60; from front 8"; guard yes }
        circuit stove_feed { feeds stove }
`));

test('keeps silent where a circuit feeds a heater nobody knows: its name has the finding', () => checkFindings(rule, `
    circuit stove_feed { feeds stov; disconnect_in_sight yes; segment wall { length 20'; ambient 86 degF } }
`));
