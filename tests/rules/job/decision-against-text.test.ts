import { test } from 'vitest';
import { decisionAgainstText as rule } from '../../../language/src/rules/job/decision-against-text.js';
import { checkFindings } from '../../support/check.js';

test('reports practice that is followed against a code', () => checkFindings(rule, `
    rules us_commercial, good_practice
    decision {
        about     vent_opening_place
        follows   "common practice"
        //        ^^^^^^^^^^^^^^^^^ warning: The job follows common practice, no source (across the room low) against IMC 2018, 914.5 (near top of door), as design office decided. The local authority is the one who decides: have its agreement in writing.
        because   "as the authority wants it"
        by        "design office"
    }
`));
test('accepts the code', () => checkFindings(rule, `
    rules us_commercial, good_practice
    decision { about vent_opening_place; follows "IMC 2018"; because "as the code has it"; by "design office" }
`));
test('accepts one published text against another', () => checkFindings(rule, `
    rules us_dwelling, us_commercial
    decision { about notice_required; follows "IMC 2018, 914.5.1, exception"; because "a dwelling over a shop"; by "design office" }
`));
test('stays silent while it is being typed', () => checkFindings(rule, `
    rules us_commercial, good_practice
    decision { about vent_opening_place; follows "common practice"; because "as the authority wants it"; by }
`));
