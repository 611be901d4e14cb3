import { test } from 'vitest';
import { footRoomTooSmall as rule } from '../../../language/src/rules/bench/foot-room-too-small.js';
import { checkFindings } from '../../support/check.js';

// 300 mm is common practice, no source.
test('reports the overlap that takes the foot room', () => checkFindings(rule, `
    bench lower on back {
        build     Slatted
        top       18"
        depth     16"
        in_front_of upper
        overlap   6"
    //            ^^ warning: Bench lower leaves 10" before bench upper for feet; 300 mm (≈11 13/16") is needed (common practice, no source). Let it reach less far under the tier behind, or make it deeper.
    }
`));

test('reports a shallow tier', () => checkFindings(rule, `
    bench lower on back { build Slatted; top 18"; depth 11"; in_front_of upper }
    //                                                  ^^^ warning: Bench lower leaves 11" before bench upper for feet; 300 mm (≈11 13/16") is needed (common practice, no source). Make it deeper.
`));

test('accepts exactly 300 mm', () => checkFindings(rule, `
    bench lower on back { build Slatted; top 18"; depth 300 mm; in_front_of upper }
`));

test('stays silent while the depth is being typed', () => checkFindings(rule, `
    bench lower on back {
        build     Slatted
        top       18"
        depth
        in_front_of upper
    }
`));
