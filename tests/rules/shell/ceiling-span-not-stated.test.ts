import { test } from 'vitest';
import { ceilingSpanNotStated as rule } from '../../../language/src/rules/shell/ceiling-span-not-stated.js';
import { checkFindings, checkFix } from '../../support/check.js';

test('reports the square room', () => checkFindings(rule, `
    room {
    //@head 💡 error: The room is 79 1/2" both ways and does not say which way its ceiling spans. Write ceiling spans_front_to_back or ceiling spans_left_to_right.
        system    Skerry
        width     79 1/2"
        depth     79 1/2"
        height    7'0"
    }
`));

test('accepts a room that has a shorter way', () => checkFindings(rule, `
    room { system Skerry; width 84"; depth 79 1/2"; height 7'0";  }
`));

test('stays silent while the span is being typed', () => checkFindings(rule, `
    room {
        system Skerry
        width 79 1/2"
        depth 79 1/2"
        height 7'0"
        ceiling
    }
`));

test('a fix states the span', () => checkFix(rule, `
    room { system Skerry; width 79 1/2"; depth 79 1/2"; height 7'0" }
`, `
    room { system Skerry; width 79 1/2"; depth 79 1/2"; height 7'0"; ceiling spans_front_to_back }
`));
