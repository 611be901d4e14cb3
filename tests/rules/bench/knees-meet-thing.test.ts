import { test } from 'vitest';
import { kneesMeetThing as rule } from '../../../language/src/rules/bench/knees-meet-thing.js';
import { checkFindings } from '../../support/check.js';

// Body measures: ANSUR II 2012, public data set.
const job = (depth: string, mark = ''): string => `
    room { system Skerry; width 84"; depth 79 1/2"; height 7'0"; ceiling spans_left_to_right; fits p95_man }
    bench lower on left { build Slatted; top 18"; depth 16" }
    ${mark}
    bench upper on right { build Slatted; top 20"; depth ${depth} }
    // without heater stove
`;
// 669 mm from the rear edge on the left, 76 1/2" (1943.1 mm) between the linings: a bench on the right may be 1274.1 mm deep.
test('reports what stands there', () => checkFindings(rule, job('58"', '//@ 53-56 info: Who leans back on bench lower meets bench upper with the knees; they need 669 mm (≈26 11/32") (buttock–knee length of a 95th percentile man, ANSUR II 2012) from the rear edge. Move one of the two, or make the bench deeper.')));
test('accepts knees that touch', () => checkFindings(rule, job('1274.1 mm')));
test('a tenth of a millimetre less room is told', () => checkFindings(rule, job('1274.2 mm', '//@ 53-56 info: Who leans back on bench lower meets bench upper …')));
test('stays silent while it is being typed', () => checkFindings(rule, `
    room { system Skerry; width 84"; depth 79 1/2"; height 7'0"; ceiling spans_left_to_right; fits p95_man, p5_woman }
    bench upper on back {
        build     Slatted
        top       37"
        depth
    }
`));
test('nobody is asked of when the room names nobody', () => checkFindings(rule, `
    room { system Skerry; width 84"; depth 79 1/2"; height 7'0"; ceiling spans_left_to_right;  }
`));
test('people that are being typed are nobody', () => checkFindings(rule, `
    room { system Skerry; width 84"; depth 79 1/2"; height 7'0"; ceiling spans_left_to_right; fits }
`));
