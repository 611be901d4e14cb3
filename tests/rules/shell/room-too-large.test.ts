import { test } from 'vitest';
import { roomTooLarge as rule } from '../../../language/src/rules/shell/room-too-large.js';
import { checkFindings } from '../../support/check.js';

test('reports the dimension', () => checkFindings(rule, `
    room {
        system    Skerry
        width     84 ft
        //        ^^^^^ error: The width is 84'; at most 50' is worked out (common practice, no source). Check the unit.
        depth     79 1/2"
        height    7'0"
    }
`));

test('accepts 50 ft', () => checkFindings(rule, `
    room { system Skerry; width 50 ft; depth 79 1/2"; height 7'0"; ceiling spans_left_to_right }
`));

test('stays silent while the width is being typed', () => checkFindings(rule, `
    room {
        system Skerry
        width
        depth 79 1/2"
        height 7'0"
    }
`));
