import { test } from 'vitest';
import { siteNotFullyMeasured as rule } from '../../../language/src/rules/site/site-not-fully-measured.js';
import { checkFindings } from '../../support/check.js';

test('tells once what is not checked for want of a measure, and what to write', () => checkFindings(rule, `
    site {
    //@head info: The site was not measured in full: no doorway, corridor, stairs or lift car is given, so whether the panels can be carried in is not checked (common practice, no source). Write doorway and the narrowest opening on the way in, such as doorway 32" x 80".
        width     96"
        depth     108"
        ceiling   7'6"
        floor     tile
        free      front, right
    }
`));

test('names every half of a pair that is missing', () => checkFindings(rule, `
    site {
    //@head info: The site was not measured in full: lift_car is given without lift_car_height, so whether the panels go into the lift car is not checked; drain_from_front is given without drain_from_left, so whether plate and legs miss the drain is not checked; one diagonal is given, so whether the place is square is not checked (common practice, no source). Write lift_car_height as well. Write drain_from_left as well. Write both diagonals, such as diagonals 144 1/2", 144 1/4".
        width     96"
        depth     108"
        ceiling   7'6"
        floor     tile
        free      front, right
        lift_car  50" x 60"
        drain_from_front 40"
        diagonals 144 1/2"
    }
`));

test('accepts any one part of the way in', async () => {
    for (const way of ['doorway 32" x 80"', 'corridor 48"', 'stairs 36" x 80"', 'lift_car 50" x 60"; lift_car_height 84"']) {
        await checkFindings(rule, `site { width 96"; depth 108"; ceiling 7'6"; floor tile; free front, right; ${way} }`);
    }
});

test('stays silent while the line is being typed, and while the site lacks what it cannot do without', async () => {
    await checkFindings(rule, `
        site {
            width 96"
            depth 108"
            ceiling 7'6"
            floor tile
            free front
            doorway 32"
        }
    `);
    await checkFindings(rule, 'site { width 96"; floor tile; free front }');
});
