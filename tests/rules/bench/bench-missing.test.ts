import { test } from 'vitest';
import { benchMissing as rule } from '../../../language/src/rules/bench/bench-missing.js';
import { checkFindings } from '../../support/check.js';

test('reports a room without a bench', () => checkFindings(rule, `
    room {
    //@ 1-5 info: The job has no bench (common practice, no source). Write a block such as bench upper on back { build …; top …; depth … }, or leave it so if the benches come from elsewhere.
        system    Skerry
        width     84"
        depth     79 1/2"
        height    7'0"
        ceiling   spans_left_to_right
    }
    // without bench upper
    // without bench lower
`));

test('accepts one bench', () => checkFindings(rule, `
    // without bench lower
`));

test('stays silent while a bench is being typed', () => checkFindings(rule, `
    // without bench upper
    // without bench lower
    bench
`));
