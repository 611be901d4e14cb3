import { inWords, lengthFigure } from '../../core/finding.js';
import { showList } from '../../core/show.js';
import { defineRule } from '../rule.js';
import { changedSizes, closesExactly, setSize, shellProblems, sizeOf } from './shell-findings.js';

export const ceilingDoesNotClose = defineRule({
    id: 'ceiling-does-not-close',
    family: 'shell',
    title: 'The ceiling cannot be filled with the panels of the system',
    severity: 'error',
    why: 'Ceiling panels lie side by side over the whole outside rectangle; their cover widths have to sum to it exactly.',
    bad: 'panel_system Stiff { lining aspen_1x4_lining 3/4"; core stone_wool 2 1/2"; facing spruce_board 1/2"; modules 24", 18"; engagement 3/8"; corners front_and_back; plate larch_2x4; plate_set_in 1/8" }\nroom { system Stiff; width 84"; depth 79 1/2"; height 7\'0"; ceiling spans_left_to_right }',
    good: 'room { system Skerry; width 84"; depth 79 1/2"; height 7\'0"; ceiling spans_left_to_right }',
    sources: [closesExactly],
    isWaivable: true,
    fixes: 'review',
    *check(input) {
        for (const { run, suggestions } of shellProblems(input, 'ceiling-does-not-close')) {
            const axis = input.results.shell?.result.ceiling?.acrossAxis === 'x' ? 'width' : 'depth';
            const size = sizeOf(input, axis);
            if (!size) continue;
            const sizes = changedSizes(size.value, suggestions.sizesThatClose);
            yield {
                at: size.span,
                message: `The ceiling does not close: its panels lie side by side over ${input.show(run)}, and no sum of the widths the system offers is that. ${sizes.length > 0 ? `The nearest outside ${axis} with which it does is ${showList(sizes.map(input.show), 'or')}; or let it span the other way.` : 'Let it span the other way, or choose another size.'}`,
                citation: closesExactly, measured: lengthFigure(run), required: inWords(sizes.map(input.show).join(' or ')), subject: 'room.ceiling',
                fixes: sizes.map(length => setSize(axis, size.span, length, input)),
            };
        }
    },
});
