import { test } from 'vitest';
import { ventRoleMissing as rule } from '../../../language/src/rules/air/vent-role-missing.js';
import { checkFindings, checkFix } from '../../support/check.js';

test('reports the vent', () => checkFindings(rule, `
    vent north on front {
    //@ 1-11 💡 warning: Vent north is neither named intake nor exhaust and states no role, so it counts as neither. Add role intake or role exhaust.
        size      8" x 4"
        from      left 2"
        below_ceiling 3"
    }
`));

test('accepts a role', () => checkFindings(rule, `
    vent north on front {
        role      exhaust
        size      8" x 4"
        from      left 2"
        below_ceiling 3"
    }
`));

test('stays silent while the role is being typed', () => checkFindings(rule, `
    vent north on front {
        role
        size      8" x 4"
        from      left 2"
        below_ceiling 3"
    }
`));

test('a fix adds the role', () => checkFix(rule, `
    vent north on front { size 8" x 4"; from left 2"; below_ceiling 3" }
`, `
    vent north on front { size 8" x 4"; from left 2"; below_ceiling 3"; role exhaust }
`, 'Make it an exhaust'));
