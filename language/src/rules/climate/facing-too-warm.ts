import { surfacesOf } from '../../assembly/climate-service.js';
import { amount, type Finding } from '../../core/finding.js';
import type { Citation } from '../../core/citation.js';
import { showCitation } from '../../core/citation.js';
import { defineRule } from '../rule.js';
import { showCelsius, systemSpan, wholeClimate } from './climate-findings.js';

/** Skin on any material for ten minutes. */
const mostC = 48;
const contactTemperature: Citation = { kind: 'standard', document: 'ISO 13732-1', edition: '2006', clause: 'table of burn thresholds', text: 'Contact of 10 min with any material burns above 48 degC.', fromMemory: true };

export const facingTooWarm = defineRule({
    id: 'facing-too-warm',
    family: 'climate',
    title: 'The outside of the shell gets too warm to touch',
    severity: 'warning',
    why: 'People lean on the outside and things stand against it; wood and skin outside the room are not made for the heat inside.',
    bad: 'climate { bathing 120 degC; session 3 h }\nsite { width 96"; depth 108"; ceiling 7\'6"; floor tile; free front, right; clear front 40"; doorway 32" x 80"; supply 240 V single_phase; capacity 60 A; ambient 104 degF }\npanel_system Odd { lining aspen_1x4_lining 3/4"; core spruce_board 1/8"; facing spruce_board 1/8"; modules 24", 18", 12"; made_to_measure 6" to 23 7/8"; engagement 3/8"; corners front_and_back; plate larch_2x4; plate_set_in 1/8" }\nroom { system Odd; width 84"; depth 79 1/2"; height 7\'0"; ceiling spans_left_to_right }',
    good: 'climate { bathing 120 degC; session 3 h }\nsite { width 96"; depth 108"; ceiling 7\'6"; floor tile; free front, right; clear front 40"; doorway 32" x 80"; supply 240 V single_phase; capacity 60 A; ambient 104 degF }\npanel_system Odd { lining aspen_1x4_lining 3/4"; core stone_wool 2 1/2"; facing spruce_board 1/2"; modules 24", 18", 12"; made_to_measure 6" to 23 7/8"; engagement 3/8"; corners front_and_back; plate larch_2x4; plate_set_in 1/8" }\nroom { system Odd; width 84"; depth 79 1/2"; height 7\'0"; ceiling spans_left_to_right }',
    sources: [contactTemperature],
    isWaivable: true,
    fixes: 'none',
    *check(input): Generator<Finding> {
        const climate = wholeClimate(input);
        const [first] = climate?.heating ?? [];
        const end = first?.warmUp?.end;
        const surfaces = climate && end && surfacesOf(climate, end);
        if (!surfaces || surfaces.warmestFacingC <= mostC) return;
        yield {
            at: systemSpan(input),
            message: `At the end of a session the facing (${surfaces.warmest}) is ${showCelsius(surfaces.warmestFacingC, input)} warm; ${showCelsius(mostC, input)} is the most to touch (${showCitation(contactTemperature)}). Choose thicker insulation, a shorter session, or air the place around the room.`,
            citation: contactTemperature, measured: amount(surfaces.warmestFacingC, 'degC'), required: amount(mostC, 'degC'), subject: 'room.facing_temperature',
        };
    },
});
