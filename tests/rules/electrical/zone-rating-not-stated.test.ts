import { test } from 'vitest';
import { zoneRatingNotStated as rule } from '../../../language/src/rules/electrical/zone-rating-not-stated.js';
import { checkFindings } from '../../support/check.js';

// Source: IEC 60364-7-703, 703.512.2; BS 7671, 703.512.2.
test('reports the model and names every fact that is missing', () => checkFindings(rule, `
    rules iec
    light_model Glim { body 6" x 8"; depth 3"; protection IPX4 }
    light lamp on left {
        model     Glim
        //        ^^^^ info: For light lamp no temperature or cable temperature is stated; in the room it has to be known (IEC 60364-7-703 ed. 2.0 (2004), 703.512.2). Add rating and cable_rating to its entry, as its maker states. A licensed electrician confirms it and does the work.
        from      front 8"
        height    62"

    }
`));

test('reports a fitting that carries electricity', () => checkFindings(rule, `
    rules iec
    fitting feed on left {
    //@ 1-13 info: For fitting feed no cable temperature is stated; in the room it has to be known (IEC 60364-7-703 ed. 2.0 (2004), 703.512.2). Have its data sheet at hand for the electrician. A licensed electrician confirms it and does the work.
        what      cable_moulding
        size      1" x 20"
        depth     1"
        from      front 20"
        bottom    50"
        is_electrical yes
    }
`));

test('accepts a model that states everything', () => checkFindings(rule, `
    rules iec
    light lamp on left {
        model     Ember
        from      front 8"
        height    62"

    }
`));

test('asks for no temperature wholly below 1 m', () => checkFindings(rule, `
    rules iec
    light_model Glim { body 6" x 8"; depth 3"; protection IPX4 }
    light lamp on left {
        model     Glim
        from      front 8"
        height    600 mm

    }
`));

test('stays silent while the model is being typed', () => checkFindings(rule, `
    rules iec
    light lamp on left {
        model     
        from      front 8"
        height    62"

    }
`));
