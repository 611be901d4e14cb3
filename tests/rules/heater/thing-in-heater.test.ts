import { test } from 'vitest';
import { thingInHeater as rule } from '../../../language/src/rules/heater/thing-in-heater.js';
import { checkFindings, checkFix } from '../../support/check.js';

test('reports the bench and where the heater clears everything', () => checkFindings(rule, `
    heater stove on right {
        model     Tarn60
        from      front 26"
        //        ^^^^^^^^^ 💡 error: Bench lower stands where heater stove hangs. Its near side clears everything at 4" to 16" from the front wall.
        guard     yes
        backing   1 1/2"
    }
`));

// The casing ends at 36", where the lower bench begins; that this is too near is said by bench-too-near-heater.
test('touching is not standing in one place', () => checkFindings(rule, `
    heater stove on right {
        model     Tarn60
        from      front 20"
        guard     yes
        backing   1 1/2"
    }
`));

test('stays silent while the place is being typed', () => checkFindings(rule, `
    heater stove on right {
        model     Tarn60
        from
        guard     yes
        backing   1 1/2"
    }
`));

test('a fix moves the heater out of it', () => checkFix(rule, `
    heater stove on right {
        model     Tarn60
        from      front 26"
        guard     yes
        backing   1 1/2"
    }
`, `
    heater stove on right {
        model     Tarn60
        from      front 16"
        guard     yes
        backing   1 1/2"
    }
`));
