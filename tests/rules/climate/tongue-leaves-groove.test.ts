import { test } from 'vitest';
import { tongueLeavesGroove as rule } from '../../../language/src/rules/climate/tongue-leaves-groove.js';
import { checkFindings } from '../../support/check.js';

const odd = 'panel_system Odd { lining broad 3/4"; core stone_wool 2 1/2"; facing spruce_board 1/2"; modules 24", 18", 12"; made_to_measure 6" to 23 7/8"; engagement 3/8"; corners front_and_back; plate larch_2x4; plate_set_in 1/8" }';
// Wood Handbook, table 13-5: aspen 0.234 % for each per cent along the rings; 5 1/2" x 0.00234 x 5.3 = 0.068".
test('a broad board with a short tongue', () => checkFindings(rule, `
    stock broad { section 3/4" x 5 1/2"; cover 5 7/16"; species "aspen"; lengths 8' }
    ${odd}
    room {
        system Odd
        //     ^^^ warning: From 9.3 % in the shop to 4 % in hot service a lining board shrinks by 1.73 mm; its tongue is 1.59 mm long (Wood Handbook, FPL-GTR-282 2021, table 13-5). Choose…
        width 84"
        depth 79 1/2"
        height 7'0"
        ceiling spans_left_to_right
    }
`));
test('accepts a longer tongue, a drier shop, and boards without a tongue', async () => {
    const room = (stock: string, climate = ''): string => `${climate}\n${stock}\n${odd}\nroom { system Odd; width 84"; depth 79 1/2"; height 7'0"; ceiling spans_left_to_right }`;
    await checkFindings(rule, room('stock broad { section 3/4" x 5 1/2"; cover 5 13/32"; species "aspen"; lengths 8\' }'));
    await checkFindings(rule, room('stock broad { section 3/4" x 5 1/2"; cover 5 7/16"; species "aspen"; lengths 8\' }', 'climate { shop_humidity 35 }'));
    await checkFindings(rule, room('stock broad { section 3/4" x 5 1/2"; species "aspen"; lengths 8\' }'));
});
test('stays silent while the cover is being typed', () => checkFindings(rule, `
    stock broad { section 3/4" x 5 1/2"; cover 5 7/; species "aspen"; lengths 8' }
    ${odd}
    room { system Odd; width 84"; depth 79 1/2"; height 7'0"; ceiling spans_left_to_right }
`));
