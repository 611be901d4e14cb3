import { inWords } from '../../core/finding.js';
import { showList } from '../../core/show.js';
import { defineRule } from '../rule.js';
import { placedBenches } from './bench-findings.js';

const citation = { kind: 'practice', text: 'legs miss the drain' } as const;

export const legOnDrain = defineRule({
    id: 'leg-on-drain',
    family: 'bench',
    title: 'A bench leg stands on the floor drain',
    severity: 'warning',
    why: 'The leg has no floor under it, the grate cannot be lifted, and the foot of the leg stays wet.',
    bad: 'site { width 96"; depth 108"; ceiling 7\'6"; floor tile; free front, right; clear front 40"; doorway 32" x 80"; supply 240 V single_phase; capacity 60 A; ambient 68 degF; drain_from_left 43"; drain_from_front 87" }',
    good: 'site { width 96"; depth 108"; ceiling 7\'6"; floor tile; free front, right; clear front 40"; doorway 32" x 80"; supply 240 V single_phase; capacity 60 A; ambient 68 degF; drain_from_left 43"; drain_from_front 60" }',
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    *check(input) {
        const { results: { site }, show } = input;
        if (!site) return;
        const { drain_from_left: fromLeft, drain_from_front: fromFront } = site.block.values;
        for (const { layout, block, name } of placedBenches(input)) {
            const marks = layout.legs.map(leg => leg.mark).filter(mark => site.onDrain.some(footing => footing.name === mark));
            if (marks.length === 0 || !fromLeft || !fromFront) continue;
            yield {
                at: block.head,
                message: `${marks.length === 1 ? 'Leg' : 'Legs'} ${showList(marks)} of bench ${name} would stand on the drain, ${show(fromLeft.value)} from the left and ${show(fromFront.value)} from the front of the place; floor is needed under each leg (common practice, no source). Move the room or the drain, or change the length of the bench so that its legs move.`,
                citation, measured: inWords(marks.join(', ')), required: inWords('floor under each leg'), subject: name,
                related: [{ at: fromLeft.fact, message: 'The drain stands here.' }],
            };
        }
    },
});
