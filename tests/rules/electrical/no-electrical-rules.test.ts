import { test } from 'vitest';
import { noElectricalRules as rule } from '../../../language/src/rules/electrical/no-electrical-rules.js';
import { checkFindings } from '../../support/check.js';

test('reports the rules', () => checkFindings(rule, `
    rules good_practice
    //    ^^^^^^^^^^^^^ info: None of the rule sets named speaks of circuits; the schedule is calculated by the NEC, for want of another. Name the set that holds at the place, such as us_dwelling, us_commercial or iec. A licensed electrician confirms it and does the work.
`));

test('accepts one set that does', () => checkFindings(rule, `
    rules good_practice, iec
`));

test('stays silent while the rules are being typed', () => checkFindings(rule, `
    rules
`));
