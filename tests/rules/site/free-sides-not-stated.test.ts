import { expect, test } from 'vitest';
import { freeSidesNotStated as rule } from '../../../language/src/rules/site/free-sides-not-stated.js';
import { checkFindings, checkFix } from '../../support/check.js';
import { withStandardJob } from '../../support/standard-job.js';
import { analyzeText } from '../../support/workspace.js';

// The closing panel needs a corner whose plate stays unfastened, free to swing outward by the engagement, 3/8" here. Common practice, no source.
test('says what to write, and what holds when all four sides are built in', () => checkFindings(rule, `
    site {
    //@head 💡 error: The site names no side that stands free, so all four count as built in and no corner can be closed last: the wall there has to swing outward by the engagement, 3/8" (common practice, no source). Write the sides that stand clear of the building, such as free front. If all four are built in there is no corner to close: put the room up clear of the building and slide it into place.
        width     96"
        depth     108"
        ceiling   7'6"
        floor     tile
    }
`));

test('names two sides where the job counts on none', () => checkFindings(rule, `
    site {
    //@head error: The site names no side that stands free, so all four count as built in and no corner can be closed last: the wall there has to swing outward by the engagement, 3/8" (common practice, no source). Write the sides that stand clear of the building, such as free front, right. If…
        width 96"; depth 108"; ceiling 7'6"; floor tile
    }
    door entry on front { model Leaf24; from left 23 7/8"; hinge left; swing inward }
    vent exhaust on front { size 8" x 4"; from left 3"; bottom 4"; air outdoors }
`));

test('warns where no corner has to be closed: panels without engagement', () => checkFindings(rule, `
    panel_system Flat { lining aspen_1x4_lining 3/4"; barrier foil_barrier; core stone_wool 2 1/2"; facing spruce_board 1/2"; modules 24", 18", 12"; made_to_measure 6" to 23 7/8"; engagement 0"; corners front_and_back; plate larch_2x4; plate_set_in 1/8" }
    room { system Flat; width 84"; depth 79 1/2"; height 7'0"; ceiling spans_left_to_right }
    site {
    //@head 💡 warning: The site names no side that stands free; whether a door can open, a vent has air and ceiling panels can be run in is not judged (the closing…
        width 96"; depth 108"; ceiling 7'6"; floor tile
    }
`));

test('accepts one free side', () => checkFindings(rule, `
    site { width 96"; depth 108"; ceiling 7'6"; floor tile; free back }
`));

test('stays silent while the line is being typed, and without a room or a site', async () => {
    await checkFindings(rule, `
        site {
            width     96"
            depth     108"
            ceiling   7'6"
            floor     tile
            free
        }
    `);
    await checkFindings(rule, '// without site');
    await checkFindings(rule, '// without room\nsite { width 96"; depth 108"; ceiling 7\'6"; floor tile }');
});

test('a fix names the sides the job counts on', () => checkFix(rule, `
    site { width 96"; depth 108"; ceiling 7'6"; floor tile; clear front 40" }
    vent exhaust on left { size 8" x 4"; from front 3"; bottom 4"; air room }
`, `
    site { width 96"; depth 108"; ceiling 7'6"; floor tile; clear front 40"; free front, left }
`));

test('is the only error a site without free sides has', async () => {
    const { findings } = await analyzeText(withStandardJob('site { width 96"; depth 108"; ceiling 7\'6"; floor tile; doorway 32" x 80"; supply 240 V single_phase; capacity 60 A }'));
    expect(findings.filter(({ severity }) => severity === 'error' || severity === 'warning').map(({ rule: id }) => id)).toEqual(['free-sides-not-stated']);
});
