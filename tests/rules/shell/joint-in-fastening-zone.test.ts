import { test } from 'vitest';
import { jointInFasteningZone as rule } from '../../../language/src/rules/shell/joint-in-fastening-zone.js';
import { checkFindings } from '../../support/check.js';

test('reports the place of the heater', () => checkFindings(rule, `
    heater stove on right {
        model     Tarn60
        centre    from front 24"
        //        ^^^^^^^^^^^^^^ warning: The joint between RIGHT-2 and RIGHT-3 lies 24" from the front wall, inside the fastening zone of heater stove, 17" to 31"; the zone has to lie inside one panel (common practice, no source). Move the heater 7" toward the front wall, or 7" away from it.
        guard     yes
    }
`));

test('accepts a zone that ends at the joint: 17" and 7" make 24"', () => checkFindings(rule, `
    heater stove on right { model Tarn60; centre from front 17"; guard yes }
`));

test('stays silent while the place is being typed', () => checkFindings(rule, `
    heater stove on right {
        model Tarn60
        centre from front
    }
`));
