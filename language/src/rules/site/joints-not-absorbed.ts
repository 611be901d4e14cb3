import { lengthFigure } from '../../core/finding.js';
import { areFreeSidesUnstated } from '../free-sides.js';
import { defineRule } from '../rule.js';

const citation = { kind: 'practice', text: 'each joint may add 1/32"' } as const;
const shop = (width: string): string => `panel_system Slim { lining aspen_1x4_lining 3/4"; barrier foil_barrier; core stone_wool 2 1/2"; facing spruce_board 1/2"; modules 7"; made_to_measure 7" to 9"; engagement 3/8"; corners front_and_back; plate larch_2x4; plate_set_in 1/8" }\nsite { width ${width}; depth 130"; ceiling 7'6"; floor tile; free front }\nroom { system Slim; width 462"; depth 105 1/2"; height 7'0"; ceiling spans_left_to_right }\n// without door entry`;

export const jointsNotAbsorbed = defineRule({
    id: 'joints-not-absorbed',
    family: 'site',
    title: 'The joints of a wall may add up to more than the gaps hold',
    severity: 'warning',
    why: 'Every joint of a wall may stand 1/32" open. Between two closed sides the sum has to find room in the gaps to the building.',
    bad: shop('464"'),
    good: shop('465"'),
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    *check({ job, results, show }) {
        if (areFreeSidesUnstated(job)) return;
        for (const fit of results.site?.fit?.axes ?? []) {
            const size = job.room?.values[fit.axis];
            if (!fit.fits || fit.isStackUpAbsorbed || fit.stackUpGap === undefined || !size) continue;
            yield {
                at: size.span,
                message: `The joints along the ${fit.axis} may add ${show(fit.stackUp)} and the gaps to the building hold ${show(fit.stackUpGap)} (common practice, no source). Leave one side free, or make the room smaller.`,
                citation, measured: lengthFigure(fit.stackUpGap), required: lengthFigure(fit.stackUp), subject: `site.spare_${fit.axis}`,
            };
        }
    },
});
