import { inWords, type Finding } from '../../core/finding.js';
import { neighbours } from '../../core/geometry.js';
import { showList } from '../../core/show.js';
import type { BenchProblem } from '../../engines/benches/bench-problem.js';
import type { Block } from '../../model/block.js';
import { defineRule } from '../rule.js';
import { benchFindings } from './bench-findings.js';

const citation = { kind: 'geometry', text: 'the runs of one bench meet in corners' } as const;

export const benchWallsCannotJoin = defineRule({
    id: 'bench-walls-cannot-join',
    family: 'bench',
    title: 'The walls of a bench do not make one bench',
    severity: 'error',
    why: 'An L turns at a corner and a U at two, so its walls are neighbours; other walls are two benches.',
    bad: 'bench lower on front, back { build Slatted; top 18"; depth 16" }',
    good: 'bench lower on back, left { build Slatted; top 18"; depth 16"; in_front_of upper }',
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    *check(input) {
        yield* benchFindings(input, 'walls-not-adjacent', ({ problem: { walls }, block, name }) => {
            const [first] = walls;
            return first && finding(block, name, 1, walls.join(' and '),
                `The ${showList(walls)} walls of bench ${name} do not meet in a corner. Name a neighbour of the ${first} wall, ${neighbours[first].left} or ${neighbours[first].right}, or make two benches of it.`);
        });
        yield* benchFindings(input, 'too-many-walls', ({ problem: { walls }, block, name }) =>
            finding(block, name, 3, walls.join(', '), `Bench ${name} names ${walls.length} walls; a straight bench has one, an L two and a U three. Make two benches of it.`));
    },
});

function finding(block: Block<'bench'>, name: BenchProblem['bench'], wall: number, measured: string, message: string): Finding {
    return { at: block.walls[wall]?.span ?? block.head, message, citation, measured: inWords(measured), required: inWords('one to three neighbouring walls'), subject: name };
}
