import { test } from 'vitest';
import { heaterScrewTooShort as rule } from '../../../language/src/rules/heater/heater-screw-too-short.js';
import { checkFindings, checkFix } from '../../support/check.js';

test('reports blocking that is too thin', () => checkFindings(rule, `
    heater stove on right {
        model     Tarn60
        from      front 8"
        guard     yes
        backing   1"
        //        ^^ 💡 error: The screws of heater stove hold in 1" of blocking; 1 1/4" is needed (the least penetration of the screw). Make the blocking at least 1 1/4" thick.
    }
`));

// 2" less 1/8" proud and 3/4" of lining.
test('reports a screw that is too short', () => checkFindings(rule, `
    screw odd_screw { length 2"; penetration 1 1/4" }
    heater_model Plain {
        manual        "Plain sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
        fasten_screw  odd_screw
    }
    heater stove on right {
        model     Plain
        //        ^^^^^ error: The screws of heater stove hold in 1 1/8" of blocking; 1 1/4" is needed (the least penetration of the screw). Screws 2 1/8" to 3 3/8" long hold in this wall.
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`));

test('accepts exactly what is needed', () => checkFindings(rule, `
    screw odd_screw { length 2 1/8"; penetration 1 1/4" }
    heater_model Plain {
        manual        "Plain sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
        fasten_screw  odd_screw
    }
    heater stove on right {
        model     Plain
        from      front 8"
        guard     yes
        backing   1 1/4"
    }
`));

test('stays silent while the blocking is being typed', () => checkFindings(rule, `
    heater stove on right {
        model     Tarn60
        from      front 8"
        guard     yes
        backing
    }
`));

test('a fix makes the blocking thick enough', () => checkFix(rule, `
    heater stove on right {
        model     Tarn60
        from      front 8"
        guard     yes
        backing   1"
    }
`, `
    heater stove on right {
        model     Tarn60
        from      front 8"
        guard     yes
        backing   1 1/4"
    }
`));
