import { test } from 'vitest';
import { obstructionTooNear as rule } from '../../../language/src/rules/site/obstruction-too-near.js';
import { checkFindings } from '../../support/check.js';

test('reports the gap', () => checkFindings(rule, `
    site {
        width 96"; depth 108"; ceiling 7'6"; floor tile; free front, right
        obstruction pipe {
        //@ 5-21 warning: Obstruction pipe is 1/2" from the room; 1" is needed for shims and tolerance (common practice, no source). Move the room, or make it smaller.
            from_left 85 1/2"; from_front 60"; width 4"; depth 4"
        }
    }
`));

test('accepts 1"', () => checkFindings(rule, `
    site {
        width 96"; depth 108"; ceiling 7'6"; floor tile; free front, right
        obstruction pipe {
            from_left 86"; from_front 60"; width 4"; depth 4"
        }
    }
`));

test('stays silent while it is being typed', () => checkFindings(rule, `
    site {
        width 96"; depth 108"; ceiling 7'6"; floor tile; free front, right
        obstruction pipe {
            from_left ; from_front 60"; width 4"; depth 4"
        }
    }
`));
