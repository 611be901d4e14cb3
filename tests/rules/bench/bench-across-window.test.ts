import { test } from 'vitest';
import { benchAcrossWindow as rule } from '../../../language/src/rules/bench/bench-across-window.js';
import { checkFindings } from '../../support/check.js';

// The top of the upper bench is 37" high and its rails begin at 31 1/4".
test('reports the bench that stands before the glass', () => checkFindings(rule, `
    window view on back { model View18; from left 28"; sill 30" }
    bench upper on back { build Slatted; top 37"; depth 20" }
    //@ 1-12 info: Bench upper covers 18" of the width and 5 3/4" of the height of window view. Raise the sill of the window over the top of the bench.
`));

test('accepts a sill at the top of the bench', () => checkFindings(rule, `
    window view on back { model View18; from left 28"; sill 37" }
`));

test('stays silent while the sill is being typed', () => checkFindings(rule, `
    window view on back {
        model     View18
        from      left 28"
        sill
    }
`));
