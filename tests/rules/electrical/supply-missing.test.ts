import { test } from 'vitest';
import { supplyMissing as rule } from '../../../language/src/rules/electrical/supply-missing.js';
import { checkFindings } from '../../support/check.js';

test('reports the site', () => checkFindings(rule, `
    site {
    //@ 1-5 warning: The site does not state its supply; without voltage and phases nothing about the circuit of heater stove can be worked out. Have it read at the panel and add a line such as supply 240 V single_phase.
        width     96"
        depth     108"
        ceiling   7'6"
        floor     tile
    }
`));

test('accepts a heater that names a supply of its own', () => checkFindings(rule, `
    site {
        width     96"
        depth     108"
        ceiling   7'6"
        floor     tile
    }
    heater stove on right { model Tarn60; from front 8"; guard yes; supply 240 V single_phase }
`));

test('stays silent while the supply is being typed', () => checkFindings(rule, `
    site {
        width     96"
        depth     108"
        ceiling   7'6"
        floor     tile
        supply
    }
`));
