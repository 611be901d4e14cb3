import { test } from 'vitest';
import { doorMissing as rule } from '../../../language/src/rules/opening/door-missing.js';
import { checkFindings } from '../../support/check.js';

test('reports a room without a door', () => checkFindings(rule, `
    room {
    //@ 1-5 error: The job has no door; one is needed. Write a block such as door entry on front { model …; from left …; hinge left }, its model named in a catalogue this file uses.
        system    Skerry
        width     84"
        depth     79 1/2"
        height    7'0"
        ceiling   spans_left_to_right
    }
    // without door entry
`));

test('accepts one door', () => checkFindings(rule, `
    door entry on front { model Leaf24; from left 23 7/8"; hinge left }
`));

test('stays silent while a door is being typed', () => checkFindings(rule, `
    // without door entry
    door
`));
