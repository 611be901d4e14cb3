import { test } from 'vitest';
import { sizingMethodsDisagree as rule } from '../../../language/src/rules/climate/sizing-methods-disagree.js';
import { checkFindings } from '../../support/check.js';

test('sets both methods side by side', () => checkFindings(rule, `
    climate { within 25 min }
    heater stove on right {
        model Tarn60
        //    ^^^^^^ info: For heater stove 10.1 kW bring the room to 176 degF in 25 min (the job); the volume method wants 5.6 kW to 7.2 kW (common practice, no source). They differ…
        from front 8"
        guard yes
    }
`));
test('accepts what differs by less than a quarter', () => checkFindings(rule, 'climate { within 35 min }'));
test('reports a room that needs far less', () => checkFindings(rule, `
    climate { bathing 50 degC; within 60 min }
    heater stove on right {
        model Tarn60
        //    ^^^^^^ info: For heater stove 2…
        from front 8"
        guard yes
    }
`));
test('stays silent while the time is being typed', () => checkFindings(rule, 'climate { within 25 }'));
