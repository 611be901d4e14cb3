import { test } from 'vitest';
import { benchWallsCannotJoin as rule } from '../../../language/src/rules/bench/bench-walls-cannot-join.js';
import { checkFindings } from '../../support/check.js';

test('reports walls that do not meet', () => checkFindings(rule, `
    bench lower on front, back { build Slatted; top 18"; depth 16" }
    //                    ^^^^ error: The front and back walls of bench lower do not meet in a corner. Name a neighbour of the front wall, right or left, or make two benches of it.
`));

test('reports a fourth wall', () => checkFindings(rule, `
    bench lower on back, left, front, right { build Slatted; top 18"; depth 16" }
    //                                ^^^^^ error: Bench lower names 4 walls; a straight bench has one, an L two and a U three. Make two benches of it.
`));

test('accepts an L and a U', () => checkFindings(rule, `
    bench upper on back { build Slatted; top 37"; depth 20" }
    bench lower on left, back, right { build Slatted; top 18"; depth 16"; in_front_of upper }
`));

test('stays silent while the walls are being typed', () => checkFindings(rule, `
    bench lower on front, {
        build     Slatted
        top       18"
        depth     16"
    }
`));
