import { test } from 'vitest';
import { heaterListingMissing as rule } from '../../../language/src/rules/heater/heater-listing-missing.js';
import { checkFindings } from '../../support/check.js';

test('reports an entry without the word', () => checkFindings(rule, `
    heater_model Plain {
        manual        "Plain sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
    }
    heater stove on right {
        model     Plain
        //        ^^^^^ info: Plain sheet (fictional) does not name a panel system heater stove is listed with. Ask the maker of the heater whether its listing covers a prefabricated room, and write listed_with in its entry.
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`));

test('accepts an entry that names a system', () => checkFindings(rule, `
    heater_model Plain {
        manual        "Plain sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
        listed_with   SkerryMetric
    }
    heater stove on right {
        model     Plain
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`));

test('stays silent while the listing is being typed', () => checkFindings(rule, `
    heater_model Plain {
        manual        "Plain sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
        listed_with
    }
    heater stove on right {
        model     Plain
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`));
