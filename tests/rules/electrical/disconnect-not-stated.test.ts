import { test } from 'vitest';
import { disconnectNotStated as rule } from '../../../language/src/rules/electrical/disconnect-not-stated.js';
import { checkFindings } from '../../support/check.js';

// Source: NEC 424.19.
test('reports the circuit', () => checkFindings(rule, `
    circuit stove_feed {
    //@ 1-19 info: Circuit stove_feed does not say whether a disconnect stands within sight of heater stove; one within sight is needed, or one that can be locked open (NEC 2023, 424.19). Agree its place with the electrician and add disconnect_in_sight.
        feeds     stove
        segment   wall { length 20'; ambient 86 degF }
    }
`));

test('accepts a stated no, which has a rule of its own', () => checkFindings(rule, `
    circuit stove_feed {
        feeds     stove
        disconnect_in_sight no
        segment   wall { length 20'; ambient 86 degF }
    }
`));

test('does not ask for it under the IEC rules', () => checkFindings(rule, `
    rules iec
    circuit stove_feed {
        feeds     stove
        method    C
        segment   wall { length 20'; ambient 86 degF }
    }
`));

test('stays silent while the fact is being typed', () => checkFindings(rule, `
    circuit stove_feed {
        feeds     stove
        disconnect_in_sight
        segment   wall { length 20'; ambient 86 degF }
    }
`));
