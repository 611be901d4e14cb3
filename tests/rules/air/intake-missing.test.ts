import { test } from 'vitest';
import { intakeMissing as rule } from '../../../language/src/rules/air/intake-missing.js';
import { checkFindings } from '../../support/check.js';

// The gap under the leaf is 1/2" over 24".
test('reports the room and what is open under the door', () => checkFindings(rule, `
    // without vent intake
    room {
    //@ 1-5 warning: The room has no intake; fresh air from a clean source is needed near the heater (common practice, no source). Under the doors 12 in2 are open. Write a block such as vent intake on right { size …; behind stove; bottom …; air … }, low by the heater.
        system    Skerry
        width     84"
        depth     79 1/2"
        height    7'0"
        ceiling   spans_left_to_right
    }
`));

test('accepts an intake by its role, whatever its name', () => checkFindings(rule, `
    // without vent intake
    vent low on right { role intake; size 8" x 4"; behind stove; bottom 4"; air outdoors }
`));

test('leaves a vent without a role to the rule about that', () => checkFindings(rule, `
    // without vent intake
    vent low on right { size 8" x 4"; behind stove; bottom 4"; air outdoors }
`));

test('stays silent while the intake is being typed', () => checkFindings(rule, `
    vent intake on right {
        size
    }
`));
