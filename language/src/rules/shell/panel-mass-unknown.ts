import { inWords } from '../../core/finding.js';
import { showList } from '../../core/show.js';
import { panelUnits } from '../../engines/shell/parts.js';
import { defineRule } from '../rule.js';

const citation = { kind: 'catalogue', text: 'the densities of the layers' } as const;

export const panelMassUnknown = defineRule({
    id: 'panel-mass-unknown',
    family: 'shell',
    title: 'The mass of the panels is not known',
    severity: 'info',
    why: 'Who may lift a panel, and how cartons are packed, follows from its mass. A layer without a density leaves it unknown; the tool does not guess.',
    bad: 'material mystery { kind insulation }\npanel_system Light { lining aspen_1x4_lining 3/4"; barrier foil_barrier; core mystery 2 1/2"; facing spruce_board 1/2"; engagement 3/8"; corners front_and_back; plate larch_2x4; plate_set_in 1/8"; made_to_measure 6" to 23 7/8"; modules 24", 18", 12" }\nroom { system Light; width 84"; depth 79 1/2"; height 7\'0"; ceiling spans_left_to_right }',
    good: 'room { system Skerry; width 84"; depth 79 1/2"; height 7\'0"; ceiling spans_left_to_right }',
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    *check({ job, results }) {
        const shell = results.shell?.result;
        const at = job.room?.values.system?.span;
        if (!shell || !at) return;
        const missing = new Set(panelUnits(shell).flatMap(({ weight, opening }) => weight.isKnown || opening !== undefined ? [] : weight.missing));
        if (missing.size === 0) return;
        yield {
            at,
            message: `The mass of the panels is not known: ${showList([...missing])} ${missing.size > 1 ? 'have' : 'has'} no density. Write density at the catalogue entry, such as density 45 kg per m3.`,
            citation, measured: inWords('not stated'), required: inWords('a density for each layer'), subject: 'room.panel_mass',
        };
    },
});
