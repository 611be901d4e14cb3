import { test } from 'vitest';
import { heaterFedTwice as rule } from '../../../language/src/rules/electrical/heater-fed-twice.js';
import { checkFindings } from '../../support/check.js';

test('reports the second circuit', () => checkFindings(rule, `
    circuit stove_feed { feeds stove; disconnect_in_sight yes }
    circuit spare_feed {
        feeds     stove
        //        ^^^^^ error: Heater stove is fed by circuit stove_feed already; only that one is calculated. Remove one of the two, or write circuits in one block when the manual divides the heater. A licensed electrician confirms it and does the work.
    }
`));

test('accepts one circuit for each of two heaters', () => checkFindings(rule, `
    heater second on left {
        model     Tarn45
        from      front 8"
        guard     yes
    }
    circuit second_feed { feeds second }
`));

test('stays silent while the second circuit is being typed', () => checkFindings(rule, `
    circuit spare_feed {
        feeds
    }
`));
