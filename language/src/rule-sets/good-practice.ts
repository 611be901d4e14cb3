import { feet, inches, mm, TICKS_PER_METRE, ticks, volume, type Length } from '../core/length.js';
import { practice } from './documents.js';
import { airChanges, celsius, kilograms, length, minutes, ratio, rValue, word, yes, type Figures } from './figure.js';
import { clause, type AnyClause, type RuleSet } from './rule-set.js';

const metre: Length = ticks(TICKS_PER_METRE);
const cubicMetres = (tenths: number): Figures['volume'] => ({ kind: 'volume', value: volume(mm(100 * tenths), metre, metre) });

const heater: readonly AnyClause[] = [
    clause('heater.volume-per-kilowatt-minimum', cubicMetres(10), practice('About 1 kW for 1 to 1.3 m³ of insulated timber room.')),
    clause('heater.volume-per-kilowatt-maximum', cubicMetres(13), practice('About 1 kW for 1 to 1.3 m³ of insulated timber room.')),
    clause('heater.uninsulated-surface', cubicMetres(12), practice('Each square metre of bare masonry, tile, glass or log counts as about 1.2 m³ more.')),
    clause('heater.log-wall-factor', ratio(1.5), practice('Solid log walls count as about half as much volume again.')),
    clause('heater.heat-up-minimum', minutes(30), practice('30 to 60 minutes to 80 °C.')),
    clause('heater.heat-up-maximum', minutes(60), practice('30 to 60 minutes to 80 °C.')),
    clause('heater.stones-minimum', kilograms(20), practice('20 to 100 kg of stones and more, by heater.')),
    clause('heater.stones-maximum', kilograms(100), practice('20 to 100 kg of stones and more, by heater.'), { sense: 'target' }),
    clause('heater.screws-proud', length(inches(0, 1, 8)), practice('The heater hangs on two upper screws that stand 1/8 in proud.')),
    clause('sensor.beside-heater', length(inches(12)), practice('The sensing element is 12 in from the side of the heater.')),
    clause('sensor.below-ceiling', length(inches(12)), practice('The sensing element is 12 in below the ceiling.'), { sense: 'target' }),
    clause('thermometer.below-ceiling', length(inches(6)), practice('The thermometer is 6 in below the ceiling, clear of the plume.')),
    clause('light.below-ceiling', length(mm(300)), practice('A light stays out of the top 0.3 m or is rated for it.')),
    clause('light.rating', celsius(125), practice('A light in the top 0.3 m is rated 125 °C.')),
];

const air: readonly AnyClause[] = [
    clause('air.changes-minimum', airChanges(3), practice('3 to 8 air changes an hour.')),
    clause('air.changes-maximum', airChanges(8), practice('3 to 8 air changes an hour.')),
    clause('air.changes', airChanges(6), practice('Often 6 air changes an hour.')),
    clause('vent.intake-place', word('near_the_heater'), practice('Intake near or above the heater.')),
    clause('vent.opening-place', word('across_the_room_low'), practice('Exhaust low on the opposite wall or under the bench.')),
    clause('vent.exhaust-not-less', yes, practice('The exhaust is at least as large as the intake.')),
    clause('climate.temperature-minimum', celsius(70), practice('Bathing at 70 to 100 °C.')),
    clause('climate.temperature-maximum', celsius(100), practice('Bathing at 70 to 100 °C.')),
    clause('climate.humidity-minimum', ratio(0.05), practice('5 to 25 % relative humidity.')),
    clause('climate.humidity-maximum', ratio(0.25), practice('5 to 25 % relative humidity.')),
];

const benches: readonly AnyClause[] = [
    clause('bench.head-clearance', length(inches(42)), practice('42 to 47 in from the upper bench to the ceiling.')),
    clause('bench.head-clearance-maximum', length(inches(47)), practice('42 to 47 in from the upper bench to the ceiling.')),
    clause('bench.depth-minimum', length(mm(500)), practice('An upper bench to sit on is 500 to 600 mm deep.'), { when: 'upper_bench' }),
    clause('bench.depth-maximum', length(mm(600)), practice('An upper bench to sit on is 500 to 600 mm deep.'), { when: 'upper_bench' }),
    clause('bench.depth-to-lie', length(mm(600)), practice('A bench to lie on is 600 mm deep or more.')),
    clause('bench.lower-depth-minimum', length(mm(300)), practice('A lower bench is 300 to 450 mm deep.')),
    clause('bench.lower-depth-maximum', length(mm(450)), practice('A lower bench is 300 to 450 mm deep.')),
    clause('bench.rise-minimum', length(mm(400)), practice('400 to 450 mm from tier to tier.')),
    clause('bench.rise-maximum', length(mm(450)), practice('400 to 450 mm from tier to tier.')),
    clause('bench.seat-length', length(inches(24)), practice('24 in of bench for each sitter.')),
    clause('bench.slat-gap-minimum', length(mm(8)), practice('Slat gaps of 8 to 20 mm.')),
    clause('bench.slat-gap-maximum', length(mm(20)), practice('Slat gaps of 8 to 20 mm.')),
    clause('bench.span', length(feet(6)), practice('A bench longer than 6 ft between supports has centre legs.')),
];

const shell: readonly AnyClause[] = [
    clause('room.ceiling-height-minimum', length(feet(6, 10)), practice('A ceiling 6 ft 10 in to 7 ft 6 in high.')),
    clause('room.ceiling-height-maximum', length(feet(7, 6)), practice('A ceiling 6 ft 10 in to 7 ft 6 in high.')),
    clause('room.height-least', length(mm(1900)), practice('No room lower than about 1.9 m.')),
    clause('door.swing', word('outward'), practice('The door opens outward.')),
    clause('door.latch', word('none_that_needs_a_hand'), practice('No lock and no latch that needs a turn of the hand.')),
    clause('door.clear-width', length(mm(600)), practice('A doorway of 600 mm or more.')),
    clause('door.handle', word('wood'), practice('Wood where the door is touched.')),
    clause('wall.r-value', rValue(11), practice('R-11 to R-13 in the walls.')),
    clause('ceiling.r-value', rValue(19), practice('R-19 or more in the ceiling.')),
    clause('wall.barrier-side', word('warm_side'), practice('A foil barrier on the warm side.')),
    clause('wall.air-gap-minimum', length(mm(10)), practice('An air gap of 10 to 20 mm behind the lining.')),
    clause('wall.air-gap-maximum', length(mm(20)), practice('An air gap of 10 to 20 mm behind the lining.')),
    clause('lining.moisture', ratio(0.12), practice('Lining at 11 to 12 % moisture or drier when it goes in.')),
    clause('fastening.concealed', yes, practice('Fastenings concealed or sunk; no metal where skin touches.')),
    clause('fastening.material', word('stainless'), practice('Stainless fastenings.')),
    clause('site.gap', length(inches(1)), practice('1 in behind and beside a closed side.')),
    clause('site.gap-to-reach', length(inches(2)), practice('2 in where someone must reach.')),
];

/** Rules of thumb. None has a published source, and none is ever to be shown as a code. */
export const goodPractice: RuleSet<'good_practice'> = {
    id: 'good_practice',
    title: 'Common practice, no source',
    family: 'any',
    scope: 'What makers commonly do where no document speaks; the heater manual and the codes come first.',
    documents: [],
    clauses: [...heater, ...air, ...benches, ...shell],
    notChecked: ['practice has no published source, so none of it shows that a room meets a code'],
};
