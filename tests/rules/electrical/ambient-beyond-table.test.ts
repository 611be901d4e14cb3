import { test } from 'vitest';
import { ambientBeyondTable as rule } from '../../../language/src/rules/electrical/ambient-beyond-table.js';
import { checkFindings } from '../../support/check.js';

// Source: NEC Table 310.15(B)(1): the 60 °C column ends with the band 51 to 55 °C (123 to 131 °F).
test('reports the temperature of the stretch', () => checkFindings(rule, `
    circuit stove_feed {
        feeds     stove
        disconnect_in_sight yes
        insulation degC_60
        segment   attic { length 20'; ambient 132 degF }
        //                                    ^^^^^^^^ error: Segment attic of circuit stove_feed is at 132 °F (55.6 °C); conductors of 60 °C may not be used there (NEC 2023, Table 310.15(B)(1)). Lead the run through cooler air, or choose an insulation of a higher class. A licensed electrician confirms it and does the work.
    }
`));

test('counts nameless segments', () => checkFindings(rule, `
    circuit stove_feed {
        feeds     stove
        disconnect_in_sight yes
        insulation degC_60
        segment { length 10'; ambient 86 degF }
        segment { length 20'; ambient 140 degF }
        //                            ^^^^^^^^ error: Segment 2 of circuit stove_feed is at 140 °F (60 °C)…
    }
`));

test('accepts the last band of the 60 °C column: 131 °F', () => checkFindings(rule, `
    circuit stove_feed {
        feeds     stove
        disconnect_in_sight yes
        insulation degC_60
        segment   attic { length 20'; ambient 131 degF }
    }
`));

test('stays silent while the temperature is being typed', () => checkFindings(rule, `
    circuit stove_feed {
        feeds     stove
        disconnect_in_sight yes
        insulation degC_60
        segment   attic { length 20'; ambient 140 }
    }
`));
