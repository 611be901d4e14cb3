import { test } from 'vitest';
import { disconnectNotInSight as rule } from '../../../language/src/rules/electrical/disconnect-not-in-sight.js';
import { checkFindings } from '../../support/check.js';

// Source: NEC 424.19.
test('reports the fact', () => checkFindings(rule, `
    circuit stove_feed {
        feeds     stove
        disconnect_in_sight no
        //                  ^^ error: No disconnect of circuit stove_feed stands within sight of heater stove; one within sight is needed, or one that can be locked open (NEC 2023, 424.19). Plan its place and write disconnect_in_sight yes. A licensed electrician confirms it and does the work.
        segment   wall { length 20'; ambient 86 degF }
    }
`));

test('accepts one within sight', () => checkFindings(rule, `
    circuit stove_feed {
        feeds     stove
        disconnect_in_sight yes
        segment   wall { length 20'; ambient 86 degF }
    }
`));

test('does not ask for it under the IEC rules', () => checkFindings(rule, `
    rules iec
    circuit stove_feed {
        feeds     stove
        disconnect_in_sight no
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
