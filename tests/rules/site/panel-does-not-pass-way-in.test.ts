import { test } from 'vitest';
import { panelDoesNotPassWayIn as rule } from '../../../language/src/rules/site/panel-does-not-pass-way-in.js';
import { checkFindings } from '../../support/check.js';

test('reports the opening once, with the largest panel', () => checkFindings(rule, `
    site {
        width     96"
        depth     108"
        ceiling   7'6"
        floor     tile
        free      front, right
        doorway   20" x 24"
        //        ^^^^^^^^^ error: 7 panels, among them FRONT-3 of 30 3/8" x 78 3/4" x 3 3/4", do not pass the doorway (a panel passes a doorway when its two smaller dimensions fit). Find another way in, or divide the walls into narrower panels.
    }
`));

test('accepts a panel that fits exactly: 30 3/8" and 3 3/4"', () => checkFindings(rule, `
    site { width 96"; depth 108"; ceiling 7'6"; floor tile; free front, right; doorway 3 3/4" x 30 3/8" }
`));

test('stays silent while the doorway is being typed', () => checkFindings(rule, `
    site {
        width 96"
        depth 108"
        ceiling 7'6"
        floor tile
        free front
        doorway 20" x
    }
`));
