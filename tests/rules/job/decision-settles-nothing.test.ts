import { test } from 'vitest';
import { decisionSettlesNothing as rule } from '../../../language/src/rules/job/decision-settles-nothing.js';
import { checkFindings, checkFix } from '../../support/check.js';

test('reports a text no rule set of the job cites', () => checkFindings(rule, `
    rules us_commercial, good_practice
    decision {
        about     vent_opening_place
        follows   "IRC 2018"
        //        ^^^^^^^^^^ 💡 warning: No rule set of the job cites ‘IRC 2018’ for vent_opening_place; there are IMC 2018, 914.5 and common practice, no source. Write the beginning of one, or name the rule set that holds it.
        because   "as the authority wants it"
        by        "design office"
    }
`));
test('reports what is not in dispute', () => checkFindings(rule, `
    rules us_commercial
    decision {
        about     notice_required
        //        ^^^^^^^^^^^^^^^ 💡 warning: The rule sets of the job do not disagree about notice_required, so there is nothing to decide. Remove the decision, or name the rule sets it is about.
        follows   "IMC 2018"
        because   "as the code has it"
        by        "design office"
    }
`));
test('accepts a decision between two texts', () => checkFindings(rule, `
    rules us_commercial, good_practice
    decision { about vent_opening_place; follows "common practice"; because "as the authority wants it"; by "design office" }
`));
test('stays silent while it is being typed', () => checkFindings(rule, `
    rules us_commercial, good_practice
    decision {
        about     vent_opening_place
        follows
        because   "as the authority wants it"
        by        "design office"
    }
`));
test('a fix writes a text there is', () => checkFix(rule, `
    rules us_commercial, good_practice
    decision { about vent_opening_place; follows "IRC 2018"; because "as the authority wants it"; by "design office" }
`, `
    rules us_commercial, good_practice
    decision { about vent_opening_place; follows "common practice, no source"; because "as the authority wants it"; by "design office" }
`, 'Follow common practice, no source'));
