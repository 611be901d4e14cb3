import { test } from 'vitest';
import { doorCannotOpenOnSite as rule } from '../../../language/src/rules/site/door-cannot-open-on-site.js';
import { checkFindings } from '../../support/check.js';

test('reports the clear floor before the door', () => checkFindings(rule, `
    site {
        width     96"
        depth     108"
        ceiling   7'6"
        floor     tile
        free      front, right
        clear     front 20"
        //        ^^^^^^^^^ error: There is 20" of clear floor before the front side; door entry needs 24" to open to 90 degrees (the leaf opens to 90 degrees). Put the door in another wall, or keep that floor clear.
    }
`));

test('reports an obstruction in the swing', () => checkFindings(rule, `
    site { width 96"; depth 108"; ceiling 7'6"; floor tile; free front, right; clear front 40"; obstruction post { from_left 40"; from_front 14"; width 4"; depth 4" } }
    door entry on front {
        model     Leaf24
        from      left 23 7/8"
        hinge     left
        //        ^^^^ error: Door entry hits post before it is open to 90 degrees (the leaf opens to 90 degrees). Hinge it on the other side, or move it.
    }
`));

test('accepts as much floor as the leaf is wide', () => checkFindings(rule, `
    site { width 96"; depth 108"; ceiling 7'6"; floor tile; free front, right; clear front 24" }
`));

test('stays silent while the floor is being typed', () => checkFindings(rule, `
    site {
        width 96"
        depth 108"
        ceiling 7'6"
        floor tile
        free front
        clear front
    }
`));
