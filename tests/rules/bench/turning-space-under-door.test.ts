import { test } from 'vitest';
import { turningSpaceUnderDoor as rule } from '../../../language/src/rules/bench/turning-space-under-door.js';
import { checkFindings } from '../../support/check.js';

const room = (swing: string, depth = '91 1/2"'): string => `
    rules us_accessible
    room { system Skerry; width 84"; depth ${depth}; height 7'0"; ceiling spans_left_to_right }
    // without bench upper
    bench lower on back { build Slatted; top 18"; depth 16"; is_accessible yes }
    door entry on front { model Leaf24; from left 23 7/8"; hinge left; swing ${swing} }
`;

test('reports the swing', () => checkFindings(rule, `${room('inward')}    //@head info: Door entry swings through the only turning space of the room. That is allowed (ADA Standards 2010, 304.4), but nobody can come in to help who turns there. Let the door open outward.
`));
test('accepts an outward door', () => checkFindings(rule, room('outward')));
test('accepts a room that is deep enough for both', () => checkFindings(rule, room('inward', '115 1/2"')));
test('stays silent while the swing is being typed', () => checkFindings(rule, room('')));
