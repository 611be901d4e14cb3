import { lengthFigure } from '../../core/finding.js';
import { showList } from '../../core/show.js';
import { defineRule } from '../rule.js';
import { shellProblems } from './shell-findings.js';

const citation = { kind: 'practice', text: 'a lining board is never ripped under 1", and a panel is wider than its joints' } as const;
const system = (more: string): string => `panel_system Odd { lining aspen_1x4_lining 3/4"; core stone_wool 2 1/2"; facing spruce_board 1/2"; engagement 3/8"; corners front_and_back; plate larch_2x4; plate_set_in 1/8"; made_to_measure 6" to 23 7/8"; modules ${more} }\nroom { system Odd; width 84"; depth 79 1/2"; height 7'0"; ceiling spans_left_to_right }`;

export const panelWidthUnusable = defineRule({
    id: 'panel-width-unusable',
    family: 'shell',
    title: 'The panel system offers widths no panel can have',
    severity: 'error',
    why: 'A panel narrower than its own joints, or than the narrowest rip of a board, cannot be built; so many unrelated narrow widths that they cannot be compared are no system.',
    bad: system('24", 18", 12", 1/2"'),
    good: system('24", 18", 12"'),
    sources: [citation],
    isWaivable: false,
    fixes: 'none',
    *check(input) {
        const block = input.results.room?.system;
        const at = block?.values.modules?.span;
        if (!at) return;
        const unusable = shellProblems(input, 'panel-width-unusable');
        const [first] = unusable;
        const name = block.name?.value ?? '';
        const related = [{ at: input.job.room?.values.system?.span ?? at, message: 'The room uses this panel system here.' }];
        if (first) {
            yield {
                at: at, related, citation, measured: lengthFigure(first.width), required: lengthFigure(first.least), subject: 'room.panels',
                message: `Panel system ${name} offers ${showList(unusable.map(({ width }) => input.show(width)))}; ${input.show(first.least)} is the least a panel can be (common practice, no source). Take ${unusable.length > 1 ? 'them' : 'it'} out; the other widths are used.`,
            };
        }
        if (shellProblems(input, 'no-panel-widths').length > 0) yield { at, related, citation, subject: 'room.panels', message: `Panel system ${name} offers no width a panel can have. Write its modules, or a made_to_measure range.` };
        if (shellProblems(input, 'too-many-panel-mixtures').length > 0) yield { at, related, citation, subject: 'room.panels', message: `Panel system ${name} offers so many narrow, unrelated widths that a wall could be filled in too many ways to compare. Offer fewer widths.` };
    },
});
