import { test } from 'vitest';
import { guardOffsetMissing as rule } from '../../../language/src/rules/heater/guard-offset-missing.js';
import { checkFindings } from '../../support/check.js';

test('reports the guard', () => checkFindings(rule, `
    heater_model Plain {
        manual        "Plain sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
        guard         required
    }
    heater stove on right {
        model     Plain
        from      front 8"
        guard     yes
        //        ^^^ warning: Heater stove has a guard, and Plain sheet (fictional) does not state how far it stands off the casing; the guard is not checked. Ask the maker of the heater and write guard_offset in its entry.
        backing   1 1/2"
    }
`));

test('accepts a heater without a guard', () => checkFindings(rule, `
    heater_model Plain {
        manual        "Plain sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
        guard         not_needed
    }
    heater stove on right {
        model     Plain
        from      front 8"
        guard     no
        backing   1 1/2"
    }
`));

test('stays silent while the offset is being typed', () => checkFindings(rule, `
    heater_model Plain {
        manual        "Plain sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
        guard_offset
    }
    heater stove on right {
        model     Plain
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`));
