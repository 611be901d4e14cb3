import { test } from 'vitest';
import { obstructionInRoom as rule } from '../../../language/src/rules/site/obstruction-in-room.js';
import { checkFindings } from '../../support/check.js';

test('reports the obstruction', () => checkFindings(rule, `
    site {
        width 96"; depth 108"; ceiling 7'6"; floor tile; free front, right
        obstruction pipe {
        //@ 5-21 error: Obstruction pipe stands inside the outline of the room as it is placed against the closed sides; nothing may (the room and the building cannot fill one place). Move the room, make it smaller, or have the obstruction moved.
            from_left 80"; from_front 60"; width 4"; depth 4"
        }
    }
`));

test('accepts one that touches the outline', () => checkFindings(rule, `
    site {
        width 96"; depth 108"; ceiling 7'6"; floor tile; free front, right
        obstruction pipe {
            from_left 85"; from_front 60"; width 4"; depth 4"
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
