import { test } from 'vitest';
import { doorOpensInward as rule } from '../../../language/src/rules/opening/door-opens-inward.js';
import { checkFindings, checkFix } from '../../support/check.js';

// Outward is common practice, no source.
test('reports the swing', () => checkFindings(rule, `
    door entry on front {
        model     Leaf24
        from      left 23 7/8"
        hinge     left
        swing     inward
    //            ^^^^^^ 💡 warning: Door entry opens inward; outward is needed (common practice, no source). Let it open outward, and keep that floor free.
    }
`));

test('accepts outward, said or not', () => checkFindings(rule, `
    door entry on front { model Leaf24; from left 23 7/8"; hinge left }
    door second on right { model Leaf24; from back 23 7/8"; hinge back; swing outward }
`));

test('stays silent while the swing is being typed', () => checkFindings(rule, `
    door entry on front {
        model     Leaf24
        from      left 23 7/8"
        hinge     left
        swing
    }
`));

test('a fix lets it open outward', () => checkFix(rule, `
    door entry on front { model Leaf24; from left 23 7/8"; hinge left; swing inward }
`, `
    door entry on front { model Leaf24; from left 23 7/8"; hinge left; swing outward }
`));
