import { test } from 'vitest';
import { twoElectricalFamilies as rule } from '../../../language/src/rules/electrical/two-electrical-families.js';
import { checkFindings } from '../../support/check.js';

test('reports the rules', () => checkFindings(rule, `
    rules us_dwelling, good_practice, iec
    //    ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ error: The job names us_dwelling, whose circuits follow the NEC, and iec, whose circuits follow IEC 60364; one circuit cannot follow both, so none is calculated. Keep those that hold at the place. A licensed electrician confirms it and does the work.
`));

test('accepts several sets of one family', () => checkFindings(rule, `
    rules us_dwelling, us_commercial, ca_electrical, good_practice
`));

test('stays silent while the rules are being typed', () => checkFindings(rule, `
    rules us_dwelling,
`));
