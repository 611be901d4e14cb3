import { test } from 'vitest';
import { circuitFactOfOtherRules as rule } from '../../../language/src/rules/electrical/circuit-fact-of-other-rules.js';
import { checkFindings, checkFix } from '../../support/check.js';

test('reports an insulation the NEC does not name', () => checkFindings(rule, `
    circuit stove_feed {
        feeds     stove
        disconnect_in_sight yes
        insulation xlpe
        //         ^^^^ warning: The insulation of circuit stove_feed is xlpe, which the NEC does not name; the circuit is calculated for 90 °C insulation instead (NEC 2023, Table 310.15(B)(1)). Write degC_60, degC_75 or degC_90 as the cable is marked. A licensed electrician confirms it and does the work.
        segment   wall { length 20'; ambient 86 degF }
    }
`));

test('reports an insulation IEC 60364 does not name, and terminals it does not ask for', () => checkFindings(rule, `
    rules iec
    circuit stove_feed {
        feeds     stove
        method    C
        insulation degC_60
        //         ^^^^^^^ warning: The insulation of circuit stove_feed is degC_60, which IEC 60364 does not name; the circuit is calculated for PVC of 70 °C instead (IEC 60364-5-52 ed. 3.0 (2009), Table B.52.14). …
        terminals degC_75
        //        ^^^^^^^ 💡 info: The terminals of circuit stove_feed play no part…
        segment   wall { length 20'; ambient 86 degF }
    }
`));

test('accepts the words of its own family', () => checkFindings(rule, `
    circuit stove_feed {
        feeds     stove
        disconnect_in_sight yes
        insulation degC_75
        terminals degC_75
        segment   wall { length 20'; ambient 86 degF }
    }
`));

test('stays silent while the insulation is being typed', () => checkFindings(rule, `
    circuit stove_feed {
        feeds     stove
        disconnect_in_sight yes
        insulation
        segment   wall { length 20'; ambient 86 degF }
    }
`));

test('a fix removes what plays no part', () => checkFix(rule, `
    circuit stove_feed { feeds stove; method C; disconnect_in_sight yes }
`, `
    circuit stove_feed { feeds stove; ; disconnect_in_sight yes }
`));
