import { test } from 'vitest';
import { lightLowOverBench as rule } from '../../../language/src/rules/bench/light-low-over-bench.js';
import { checkFindings } from '../../support/check.js';

// The lamp is 3" deep, so on the back wall it hangs over the upper bench, whose top is 37". 42" is common practice, no source.
test('reports a light over the upper bench', () => checkFindings(rule, `
    light lamp on back {
        model     Ember
        from      left 30"
        height    62"
    //            ^^^ warning: Light lamp hangs 25" over bench upper; 42" is needed to sit under it (common practice, no source). Move it clear of the bench.
    }
`));

test('measures to the bench below the light', () => checkFindings(rule, `
    light lamp on left { model Ember; from back 24"; height 59"  }
    //                                                      ^^^ warning: Light lamp hangs 41" over bench lower; 42" is needed to sit under it (common practice, no source). Move it clear of the bench, or to a height of 60".
`));

test('accepts a light exactly high enough, over the lower bench', () => checkFindings(rule, `
    light lamp on left { model Ember; from back 24"; height 60" }
`));

test('accepts a light that hangs over the floor', () => checkFindings(rule, `
    light lamp on left { model Ember; from front 8"; height 40" }
`));

test('stays silent while the height is being typed', () => checkFindings(rule, `
    light lamp on back {
        model     Ember
        from      left 30"
        height
    }
`));
