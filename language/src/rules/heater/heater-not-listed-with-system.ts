import { inWords } from '../../core/finding.js';
import { showList } from '../../core/show.js';
import { manualCitation } from '../../engines/heater/casing.js';
import { defineRule } from '../rule.js';
import { heaterFindings, inCatalogue, modelSpan } from './heater-findings.js';

export const heaterNotListedWithSystem = defineRule({
    id: 'heater-not-listed-with-system',
    family: 'heater',
    title: 'The listing of the heater does not name this panel system',
    severity: 'warning',
    why: 'A heater for a prefabricated room is listed with the rooms it was tested in; with another one the listing may not hold, and the inspector will ask.',
    bad: `room { system SkerryMetric; width 84"; depth 79 1/2"; height 7'0"; ceiling spans_left_to_right }
heater stove on right { model Beck60; from front 8"; guard yes; backing 1 1/2" }`,
    good: 'heater stove on right { model Beck60; from front 8"; guard yes; backing 1 1/2" }',
    sources: [{ kind: 'manual', text: 'the rooms the heater is listed with' }],
    isWaivable: true,
    fixes: 'none',
    check: input => heaterFindings(input, judged => {
        const system = input.results.room?.system;
        const built = system?.name?.value;
        const listed = judged.model.values.listed_with?.value;
        if (built === undefined || !listed || listed.some(({ block, name }) => block === system || (!block && name === built))) return undefined;
        return {
            at: modelSpan(judged),
            message: `Heater ${judged.name} is listed with ${showList(listed.map(({ name }) => name))}; the room is built of ${built} (${judged.manual.title}). Choose a heater listed with it, or ask the heater's maker and the local authority, who decide.`,
            citation: manualCitation(judged.manual), measured: inWords(built), required: inWords(listed.map(({ name }) => name).join(', ')), subject: judged.name,
            related: inCatalogue(judged, judged.model.values.listed_with.span),
        };
    }),
});
