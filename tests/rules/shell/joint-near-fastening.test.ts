import { test } from 'vitest';
import { jointNearFastening as rule } from '../../../language/src/rules/shell/joint-near-fastening.js';
import { checkFindings } from '../../support/check.js';

test('reports a bench once, with its joints', () => checkFindings(rule, `
    // without bench lower
    bench upper on back {
        build     Slatted
        top       37"
        depth     25"
        //        ^^^ info: Bench upper is fastened 1" from the joint of LEFT-2/LEFT-3 and near that of RIGHT-1/RIGHT-2; 2" is wanted between a joint and a ledger end or leg (common practice, no source). Another depth or length clears it; otherwise put blocking in both panels.
    }
`));

test('accepts 2" exactly: a ledger of 26" from the back ends 2" past the joint at 24"', () => checkFindings(rule, `
    bench upper on back { build Slatted; top 37"; depth 26"; load_path end_ledgers }
    bench lower on back { build Slatted; top 18"; depth 14 3/4"; in_front_of upper }
`));

test('stays silent while the depth is being typed', () => checkFindings(rule, `
    bench upper on back {
        build Slatted
        top 37"
        depth
    }
    bench lower on back { build Slatted; top 18"; depth 14 3/4" }
`));
