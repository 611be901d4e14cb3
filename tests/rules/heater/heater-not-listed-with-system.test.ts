import { test } from 'vitest';
import { heaterNotListedWithSystem as rule } from '../../../language/src/rules/heater/heater-not-listed-with-system.js';
import { checkFindings } from '../../support/check.js';

test('reports the model and both names', () => checkFindings(rule, `
    heater stove on right {
        model     Beck60
        //        ^^^^^^ warning: Heater stove is listed with Skerry; the room is built of SkerryMetric (Beck 60 leaflet, demo edition 1). Choose a heater listed with it, or ask the heater's maker and the local authority, who decide.
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
    room {
        system    SkerryMetric
        width     84"
        depth     79 1/2"
        height    7'0"
        ceiling   spans_left_to_right
    }
`));

test('accepts a listing that names the system among others', () => checkFindings(rule, `
    heater stove on right {
        model     Tarn60
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
    room {
        system    SkerryMetric
        width     84"
        depth     79 1/2"
        height    7'0"
        ceiling   spans_left_to_right
    }
`));

test('stays silent while the system is being typed', () => checkFindings(rule, `
    heater stove on right {
        model     Beck60
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
    room {
        system
        width     84"
        depth     79 1/2"
        height    7'0"
        ceiling   spans_left_to_right
    }
`));
