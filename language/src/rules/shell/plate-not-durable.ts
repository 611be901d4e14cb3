import { inWords } from '../../core/finding.js';
import { defineRule } from '../rule.js';

const citation = { kind: 'practice', text: 'base plates are treated or durable by nature' } as const;

export const plateNotDurable = defineRule({
    id: 'plate-not-durable',
    family: 'shell',
    title: 'The base plate is neither treated nor durable',
    severity: 'warning',
    why: 'The plate lies on a floor that gets wet. Wood that is neither treated nor durable by nature rots under the room where nobody sees it.',
    bad: 'panel_system Soft { lining aspen_1x4_lining 3/4"; core stone_wool 2 1/2"; facing spruce_board 1/2"; engagement 3/8"; corners front_and_back; plate alder_2x4; plate_set_in 1/8"; made_to_measure 6" to 23 7/8"; modules 24", 18", 12" }\nroom { system Soft; width 84"; depth 79 1/2"; height 7\'0"; ceiling spans_left_to_right }',
    good: 'room { system Skerry; width 84"; depth 79 1/2"; height 7\'0"; ceiling spans_left_to_right }',
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    *check({ job, results }) {
        const plate = results.room?.system.values.plate;
        const stock = plate?.value.block;
        if (!plate || !stock?.isWhole || (stock.values.treated?.value ?? 'no') !== 'no') return;
        yield {
            at: plate.span,
            message: `The base plate is cut from ${plate.value.name}, which is neither treated nor durable by nature; one of the two is needed (common practice, no source). Name a durable stock, or write treated at the stock.`,
            citation, measured: inWords('no'), required: inWords('treated or durable'), subject: 'room.panels',
            related: job.room?.values.system ? [{ at: job.room.values.system.span, message: 'The room uses this panel system here.' }] : [],
        };
    },
});
