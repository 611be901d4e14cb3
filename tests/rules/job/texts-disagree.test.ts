import { test } from 'vitest';
import { textsDisagree as rule } from '../../../language/src/rules/job/texts-disagree.js';
import { checkFindings } from '../../support/check.js';

test('reports both texts and how the job chooses', () => checkFindings(rule, `
    rules us_dwelling, us_commercial
    //    ^^^^^^^^^^^^^^^^^^^^^^^^^^ info: A permanent warning notice outside the room: no (IMC 2018, 914.5.1, exception) and yes (IMC 2018, 914.5.1) disagree; the local authority decides. Say which the job follows: decision { about notice_required; follows "…"; because "…"; by "…" }.
`));
test('is silent when the job has decided', () => checkFindings(rule, `
    rules us_dwelling, us_commercial
    decision { about notice_required; follows "IMC 2018, 914.5.1, exception"; because "a dwelling over a shop"; by "design office" }
`));
test('is silent where one rule set speaks alone', () => checkFindings(rule, `
    rules us_commercial
`));
test('stays silent while the decision is being typed', () => checkFindings(rule, `
    rules us_dwelling, us_commercial
    decision {
        about     notice_required
        follows
        because   "a dwelling over a shop"
        by        "design office"
    }
`));
