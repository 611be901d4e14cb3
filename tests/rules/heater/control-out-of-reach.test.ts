import { test } from 'vitest';
import { controlOutOfReach as rule } from '../../../language/src/rules/heater/control-out-of-reach.js';
import { checkFindings, checkFix } from '../../support/check.js';

// 15" to 48": ADA Standards 2010, 308.2.1 by 309.3, from memory.
test('reports one too high', () => checkFindings(rule, `
    rules us_accessible
    control on front {
        stands    outside
        height    54"
        //        ^^^ 💡 error: The middle of the control is 54" over the floor; 48" at most is needed within reach of a wheelchair (ADA Standards 2010, 308.2.1 by 309.3). Set it lower.
        timer     60 min
    }
`));
test('reports one too low, by its name', () => checkFindings(rule, `
    rules us_accessible
    // without control
    control dial on front { stands outside; height 12"; timer 60 min }
    //                                             ^^^ 💡 error: The middle of control dial is 12" over the floor; 15" at least is needed within reach of a wheelchair (ADA Standards 2010, 308.2.1 by 309.3). Set it higher.
`));
test.each(['15"', '48"'])('accepts exactly %s', height => checkFindings(rule, `
    rules us_accessible
    control on front { stands outside; height ${height}; timer 60 min }
`));
test('leaves rooms that are not to be accessible alone', () => checkFindings(rule, `
    control on front { stands outside; height 60"; timer 60 min }
`));
test('stays silent while the height is being typed', () => checkFindings(rule, `
    rules us_accessible
    control on front {
        stands    outside
        height
        timer     60 min
    }
`));
test('a fix lowers it', () => checkFix(rule, `
    rules us_accessible
    control on front { stands outside; height 54"; timer 60 min }
`, `
    rules us_accessible
    control on front { stands outside; height 48"; timer 60 min }
`));
