import { test } from 'vitest';
import { installationMethodMissing as rule } from '../../../language/src/rules/electrical/installation-method-missing.js';
import { checkFindings } from '../../support/check.js';

// Source: IEC 60364-5-52, tables of annex B by reference method.
test('reports the circuit', () => checkFindings(rule, `
    rules iec
    circuit stove_feed {
    //@ 1-19 info: Circuit stove_feed does not say how its cable is installed; the method is needed to choose the conductor (IEC 60364-5-52 ed. 3.0 (2009), Table B.52.2). Add method A1, A2, B1, B2 or C; A1 and A2 are inside an insulated wall. A licensed electrician confirms it and does the work.
        feeds     stove
        segment   wall { length 20'; ambient 86 degF }
    }
`));

test('accepts a method', () => checkFindings(rule, `
    rules iec
    circuit stove_feed {
        feeds     stove
        method    C
        segment   wall { length 20'; ambient 86 degF }
    }
`));

test('does not ask for one under the NEC', () => checkFindings(rule, `
    circuit stove_feed {
        feeds     stove
        disconnect_in_sight yes
        segment   wall { length 20'; ambient 86 degF }
    }
`));

test('stays silent while the method is being typed', () => checkFindings(rule, `
    rules iec
    circuit stove_feed {
        feeds     stove
        method
        segment   wall { length 20'; ambient 86 degF }
    }
`));
