import { test } from 'vitest';
import { guardMissing as rule } from '../../../language/src/rules/heater/guard-missing.js';
import { checkFindings, checkFix } from '../../support/check.js';

test('a guard the manual requires is an error', () => checkFindings(rule, `
    heater stove on right {
    //@ 1-13 💡 error: Heater stove has no guard; its manual requires one (Tarn 60 installation sheet, demo edition 2). Write guard yes.
        model     Tarn60
        from      front 8"
        backing   1 1/2"
    }
`));

test('a guard it recommends is a remark, where the designer said no', () => checkFindings(rule, `
    heater stove on right {
        model     Tarn45
        from      front 8"
        guard     no
        //        ^^ 💡 info: Heater stove has no guard; its manual recommends one (Tarn 45 installation sheet, demo edition 1). Write guard yes.
        backing   1 1/2"
    }
`));

test('accepts a heater whose manual needs none', () => checkFindings(rule, `
    heater_model Cool {
        manual        "Cool sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
        guard         not_needed
    }
    heater stove on right {
        model     Cool
        from      front 8"
        backing   1 1/2"
    }
`));

test('stays silent while the guard is being typed', () => checkFindings(rule, `
    heater stove on right {
        model     Tarn60
        from      front 8"
        guard
        backing   1 1/2"
    }
`));

test('a fix adds the guard', () => checkFix(rule, `
    heater stove on right {
        model     Tarn60
        from      front 8"
        backing   1 1/2"
    }
`, `
    heater stove on right {
        model     Tarn60
        from      front 8"
        backing   1 1/2"
            guard     yes
    }
`));

test('a fix turns no into yes', () => checkFix(rule, `
    heater stove on right {
        model     Tarn60
        from      front 8"
        guard     no
        backing   1 1/2"
    }
`, `
    heater stove on right {
        model     Tarn60
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`));
