import { test } from 'vitest';
import { condensationAtBarrier as rule } from '../../../language/src/rules/climate/condensation-at-barrier.js';
import { checkFindings } from '../../support/check.js';

// Dew point by the ASHRAE Handbook, compared in tests/published/steam.ts.
test('a large ladle on a lining not yet warm', () => checkFindings(rule, `
    climate {
        ladle 3 lb
        //    ^^^^ warning: After a ladle on first reaching 176 degF the dew point is 159 degF; behind the lining of the…
    }
`));
test('accepts a small one', () => checkFindings(rule, 'climate { ladle 0.2 lb }'));
test('stays silent while the ladle is being typed', () => checkFindings(rule, 'climate { ladle 3 }'));
