import { test } from 'vitest';
import { spanWithoutLeg as rule } from '../../../language/src/rules/bench/span-without-leg.js';
import { checkFindings } from '../../support/check.js';

// Between ledgers of 1 1/2" the rail of a bench from wall to wall is 73 1/2" long; the notch takes the whole 3 1/2" of a leg.
test('reports the overlap that takes the leg', () => checkFindings(rule, `
    bench_build Trial { slat alder_1x4; slat_gap 1/4" to 3/4"; bearer alder_2x4; bearer_spacing 24"; rail alder_2x4; ledger alder_2x4; leg alder_2x4; leg_spacing 4' }
    bench upper on back { build Trial; top 37"; depth 20" }
    bench lower on back {
        build     Slatted
        top       18"
        depth     20"
        in_front_of upper
        overlap   4"
    //            ^^ error: The front rail of bench upper on the back wall spans 73 1/2" without a leg; 48" at most is needed (the leg spacing of its bench build). The notch for bench lower takes 4" of a leg 3 1/2" wide: let lower reach less far under it, or choose wider legs.
    }
`));

test('accepts a notch that leaves some of the leg', () => checkFindings(rule, `
    bench_build Trial { slat alder_1x4; slat_gap 1/4" to 3/4"; bearer alder_2x4; bearer_spacing 24"; rail alder_2x4; ledger alder_2x4; leg alder_2x4; leg_spacing 4' }
    bench upper on back { build Trial; top 37"; depth 20" }
    bench lower on back { build Slatted; top 18"; depth 20"; in_front_of upper; overlap 2" }
`));

test('stays silent while the overlap is being typed', () => checkFindings(rule, `
    bench_build Trial { slat alder_1x4; slat_gap 1/4" to 3/4"; bearer alder_2x4; bearer_spacing 24"; rail alder_2x4; ledger alder_2x4; leg alder_2x4; leg_spacing 4' }
    bench upper on back { build Trial; top 37"; depth 20" }
    bench lower on back {
        build     Slatted
        top       18"
        depth     20"
        in_front_of upper
        overlap
    }
`));
