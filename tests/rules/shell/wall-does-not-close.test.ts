import { test } from 'vitest';
import { wallDoesNotClose as rule } from '../../../language/src/rules/shell/wall-does-not-close.js';
import { checkFindings, checkFix } from '../../support/check.js';

test('reports the two walls of one size once, with the nearest size', () => checkFindings(rule, `
    room {
        system    Skerry
        width     84"
        depth     11"
        //        ^^^ 💡 error: The left and right walls do not close: the run is 3 1/2", and the narrowest panel is 6". The nearest outside depth that closes is 13 1/2".
        height    7'0"
    }
`));

test('accepts the narrowest panel alone: 6" between walls of 3 3/4"', () => checkFindings(rule, `
    room { system Skerry; width 84"; depth 13 1/2"; height 7'0"; ceiling spans_left_to_right }
`));

test('stays silent while the depth is being typed', () => checkFindings(rule, `
    room {
        system Skerry
        width 84"
        depth
        height 7'0"
    }
`));

test('a fix sets the nearest size', () => checkFix(rule, `
    room { system Skerry; width 84"; depth 11"; height 7'0"; ceiling spans_left_to_right }
`, `
    room { system Skerry; width 84"; depth 13 1/2"; height 7'0"; ceiling spans_left_to_right }
`));
