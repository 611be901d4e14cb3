import { test } from 'vitest';
import { circuitWithoutSegments as rule } from '../../../language/src/rules/electrical/circuit-without-segments.js';
import { checkFindings } from '../../support/check.js';

// Source: NEC Table 310.15(B)(1); IEC 60364-5-52 Table B.52.14.
test('reports the circuit and assumes no temperature', () => checkFindings(rule, `
    circuit stove_feed {
    //@ 1-19 info: Circuit stove_feed has no segment; length and air temperature of each stretch are needed for its conductor and voltage drop (NEC 2023, Table 310.15(B)(1)). No temperature is assumed: add a line such as segment wall { length 12'; ambient 86 degF }. A licensed electrician confirms it and does the work.
        feeds     stove
        disconnect_in_sight yes
    }
`));

test('cites the table of the IEC rules under them', () => checkFindings(rule, `
    rules iec
    circuit stove_feed {
    //@ 1-19 info: Circuit stove_feed has no segment; length and air temperature of each stretch are needed for its conductor and voltage drop (IEC 60364-5-52 ed. 3.0 (2009), Table B.52.14). …
        feeds     stove
        method    C
    }
`));

test('accepts one segment', () => checkFindings(rule, `
    circuit stove_feed {
        feeds     stove
        disconnect_in_sight yes
        segment   wall { length 20'; ambient 86 degF }
    }
`));

test('stays silent while a segment is being typed', () => checkFindings(rule, `
    circuit stove_feed {
        feeds     stove
        segment
    }
`));
