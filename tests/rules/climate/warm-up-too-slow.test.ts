import { test } from 'vitest';
import { warmUpTooSlow as rule } from '../../../language/src/rules/climate/warm-up-too-slow.js';
import { checkFindings } from '../../support/check.js';

// One-dimensional conduction; the run itself is compared with published cases in tests/published/transient.ts.
test('names time, power and what would do', () => checkFindings(rule, `
    climate {
        within 45 min
        //     ^^^^^^ warning: Heater stove with 6 kW brings the room from 68 degF to 176 degF in 51 min (good to…
    }
`));
test('practice asks for an hour where the job names no time, and only where it names practice', () => checkFindings(rule, `
    rules us_dwelling, good_practice
    climate { bathing 100 degC }
    heater stove on right {
        model Tarn60
        //    ^^^^^^ info: Heater stove with 6 kW brings the room from 68 degF to 212 degF in 8…
        from front 8"
        guard yes
    }
`));
test('accepts a time that is reached, and asks nothing where nobody asks', async () => {
    await checkFindings(rule, 'climate { within 52 min }');
    await checkFindings(rule, 'rules us_dwelling\nclimate { bathing 100 degC }');
});
test('stays silent while the time is being typed', () => checkFindings(rule, 'climate { within 4'));
test('says so of a heater that never gets there', () => checkFindings(rule, `
    heater_model Weak is Tarn60 { power 1 kW }
    climate {
        within 45 min
        //     ^^^^^^ warning: Heater stove with 1 kW does not bring the room to…
    }
    heater stove on right {
        model     Weak
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`));
