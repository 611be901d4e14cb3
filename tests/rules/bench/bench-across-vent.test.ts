import { test } from 'vitest';
import { benchAcrossVent as rule } from '../../../language/src/rules/bench/bench-across-vent.js';
import { checkFindings } from '../../support/check.js';

// The rails of the upper bench begin at 31 1/4".
test('reports the bench that closes the vent', () => checkFindings(rule, `
    vent low on back { role exhaust; size 8" x 4"; from left 12"; bottom 33" }
    bench upper on back { build Slatted; top 37"; depth 20" }
    //@ 1-12 warning: Bench upper covers 8" of the width and 4" of the height of vent low. Set the vent below or above the slats, bearers and rails of the bench.
`));

test('accepts a vent that ends below the rails', () => checkFindings(rule, `
    vent low on back { role exhaust; size 8" x 4"; from left 12"; bottom 27 1/4" }
`));

test('stays silent while the height of the vent is being typed', () => checkFindings(rule, `
    vent low on back {
        role      exhaust
        size      8" x 4"
        from      left 12"
        bottom
    }
`));
