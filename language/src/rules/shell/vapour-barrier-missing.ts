import { inWords } from '../../core/finding.js';
import { defineRule } from '../rule.js';

const citation = { kind: 'practice', text: 'a vapour barrier on the warm side of the insulation' } as const;

export const vapourBarrierMissing = defineRule({
    id: 'vapour-barrier-missing',
    family: 'shell',
    title: 'The panel system has no vapour barrier',
    severity: 'warning',
    why: 'Steam driven into the insulation condenses where the wall is cold. The barrier belongs on the warm side, behind the lining.',
    bad: 'panel_system Bare { lining aspen_1x4_lining 3/4"; core stone_wool 2 1/2"; facing spruce_board 1/2"; engagement 3/8"; corners front_and_back; plate larch_2x4; plate_set_in 1/8"; made_to_measure 6" to 23 7/8"; modules 24", 18", 12" }\nroom { system Bare; width 84"; depth 79 1/2"; height 7\'0"; ceiling spans_left_to_right }',
    good: 'room { system Skerry; width 84"; depth 79 1/2"; height 7\'0"; ceiling spans_left_to_right }',
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    *check({ job, results }) {
        const system = results.room?.system;
        const at = job.room?.values.system?.span;
        if (!system?.isWhole || !at || system.written.has('barrier')) return;
        yield {
            at,
            message: `Panel system ${system.name?.value ?? ''} has no vapour barrier; one is needed on the warm side of the insulation (common practice, no source). Write barrier at the panel system.`,
            citation, measured: inWords('none'), required: inWords('a barrier on the warm side'), subject: 'room.wall_thickness', related: [{ at: system.head, message: 'The panel system stands here.' }],
        };
    },
});
