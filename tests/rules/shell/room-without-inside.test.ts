import { test } from 'vitest';
import { roomWithoutInside as rule } from '../../../language/src/rules/shell/room-without-inside.js';
import { checkFindings } from '../../support/check.js';

test('reports the dimension', () => checkFindings(rule, `
    room {
        system    Skerry
        width     7 1/2"
        //        ^^^^^^ error: The width is 7 1/2" outside, and the shell alone takes 7 1/2". Outside sizes are written here, not inside ones.
        depth     79 1/2"
        height    7'0"
    }
`));

test('accepts anything above the shell', () => checkFindings(rule, `
    room { system Skerry; width 7 33/64"; depth 79 1/2"; height 7'0"; ceiling spans_left_to_right }
`));

test('stays silent while the width is being typed', () => checkFindings(rule, `
    room {
        system Skerry
        width
        depth 79 1/2"
        height 7'0"
    }
`));
