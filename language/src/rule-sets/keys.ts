import type { FigureKind, Figures } from './figure.js';

/**
 * How a figure is meant. `minimum` and `maximum` are limits that equal passes; `target` is a place or size aimed at;
 * `choice` is one of several words; `requirement` is a yes or no.
 */
export type Sense = 'minimum' | 'maximum' | 'target' | 'choice' | 'requirement';

interface KeyBase { readonly title: string; readonly sense: Sense; readonly figure: FigureKind; readonly words?: readonly string[] }

const minimum = <const F extends FigureKind>(figure: F, title: string) => ({ figure, title, sense: 'minimum' }) as const;
const maximum = <const F extends FigureKind>(figure: F, title: string) => ({ figure, title, sense: 'maximum' }) as const;
const target = <const F extends FigureKind>(figure: F, title: string) => ({ figure, title, sense: 'target' }) as const;
const requirement = (title: string) => ({ figure: 'yes_no', title, sense: 'requirement' }) as const;
const choice = <const W extends readonly string[]>(title: string, ...words: W) => ({ figure: 'word', title, sense: 'choice', words }) as const;

/** Everything the rule sets can speak about: what the figure is of, how it is meant and of which kind it is. */
export const clauseKeys = {
    'thermostat.air-temperature': maximum('temperature', 'highest room temperature the thermostat allows'),
    'sensor.below-ceiling': maximum('length', 'distance of a remote sensing element below the ceiling lining'),
    'sensor.beside-heater': target('length', 'distance of the sensing element from the side of the heater'),
    'timer.required': requirement('a timer is required'),
    'timer.duration': maximum('duration', 'longest running time a timer may be set to'),
    'timer.duration-shared': maximum('duration', 'longest running time in flats and hotels'),
    'timer.place': choice('place of the timer control', 'outside_the_room'),
    'timer.override': requirement('the timer may be overridden'),
    'timer.opens-all-ungrounded': requirement('the timer opens all ungrounded conductors'),
    'limiter.manual-reset': requirement('a high-temperature limit that is reset by hand'),

    'heater.accidental-contact': requirement('the heater is placed so that contact by accident is kept least'),
    'heater.guard-low-conductivity': requirement('guards are of low thermal conductivity and let the heat through to the room'),
    'heater.service-panels-free': requirement('panels removed for service are not fixed to the building'),
    'heater.combustion-air-place': choice('place of combustion air and draft hood of a fuel-burning heater', 'outside_the_room'),
    'heater.room-to-nameplate': requirement('the room is built to the size on the heater nameplate'),
    'heater.clearances-to-nameplate': requirement('clearances on the heater nameplate are kept'),
    'heater.below-water': requirement('the heater may stand below a shower head or water spray'),
    'heater.power-in-scope': maximum('power', 'rated power the product standard covers'),
    'heater.voltage-single-in-scope': maximum('voltage', 'rated single-phase voltage the product standard covers'),
    'heater.voltage-in-scope': maximum('voltage', 'rated voltage the product standard covers'),
    'heater.wood-temperature': maximum('temperature', 'temperature of wood surfaces in the heating test'),
    'heater.remote-start-interlock': requirement('remote start needs a detecting cut-out or an armed door interlock'),
    'heater.volume-per-kilowatt-minimum': minimum('volume', 'effective room volume for each kW, small end'),
    'heater.volume-per-kilowatt-maximum': maximum('volume', 'effective room volume for each kW, large end'),
    'heater.uninsulated-surface': target('volume', 'volume added for each square metre of uninsulated surface'),
    'heater.log-wall-factor': target('ratio', 'factor on the volume of a room with solid log walls'),
    'heater.heat-up-minimum': minimum('duration', 'time to reach bathing temperature, quick end'),
    'heater.heat-up-maximum': maximum('duration', 'time to reach bathing temperature, slow end'),
    'heater.stones-minimum': minimum('mass', 'stones, small end'),
    'heater.stones-maximum': maximum('mass', 'stones, large end'),
    'heater.screws-proud': target('length', 'how far the two upper fixing screws stand proud'),

    'vent.opening-size': minimum('size', 'ventilation opening'),
    'vent.opening-area': minimum('area', 'gross area of the ventilation opening'),
    'vent.opening-place': choice('place of the ventilation opening', 'near_top_of_door', 'across_the_room_low'),
    'vent.intake-place': choice('place of the air intake', 'near_the_heater'),
    'vent.exhaust-not-less': requirement('the exhaust is at least as large as the intake'),
    'air.changes-minimum': minimum('air_changes', 'air changes, low end'),
    'air.changes-maximum': maximum('air_changes', 'air changes, high end'),
    'air.changes': target('air_changes', 'air changes often aimed at'),
    'climate.temperature-minimum': minimum('temperature', 'bathing temperature, low end'),
    'climate.temperature-maximum': maximum('temperature', 'bathing temperature, high end'),
    'climate.humidity-minimum': minimum('ratio', 'relative humidity, low end'),
    'climate.humidity-maximum': maximum('ratio', 'relative humidity, high end'),

    'notice.required': requirement('a permanent warning notice outside the room'),
    'notice.letter-height': minimum('length', 'letter height of the warning notice'),
    'notice.stay': maximum('duration', 'stay in the room the notice states'),

    'door.clear-width': minimum('length', 'clear width of the doorway with the leaf open at 90°'),
    'door.threshold': maximum('length', 'height of a threshold'),
    'door.swing': choice('swing of the door', 'outward'),
    'door.latch': choice('latch of the door', 'none_that_needs_a_hand'),
    'door.into-bench-floor-space': requirement('the door may swing into the clear floor space of the bench'),
    'door.handle': choice('material of the handle', 'wood'),

    'bench.length': minimum('length', 'length of the bench'),
    'bench.depth-minimum': minimum('length', 'depth of the bench, least'),
    'bench.depth-maximum': maximum('length', 'depth of the bench, most'),
    'bench.depth-to-lie': minimum('length', 'depth of a bench to lie on'),
    'bench.lower-depth-minimum': minimum('length', 'depth of a lower bench, least'),
    'bench.lower-depth-maximum': maximum('length', 'depth of a lower bench, most'),
    'bench.seat-height-minimum': minimum('length', 'seat height above the floor, least'),
    'bench.seat-height-maximum': maximum('length', 'seat height above the floor, most'),
    'bench.back-length': minimum('length', 'length of the back support'),
    'bench.back-from': maximum('length', 'lower edge of the back support above the seat'),
    'bench.back-to': minimum('length', 'upper edge of the back support above the seat'),
    'bench.back-from-rear-edge': maximum('length', 'distance of the back support from the rear edge of the seat'),
    'bench.load': minimum('force', 'load at any point of seat, fastening, mounting or structure'),
    'bench.slip-resistant': requirement('the seat is slip resistant and sheds water'),
    'bench.removable-may-obstruct': requirement('a readily removable bench may stand in the turning space'),
    'bench.rise-minimum': minimum('length', 'rise between tiers, least'),
    'bench.rise-maximum': maximum('length', 'rise between tiers, most'),
    'bench.head-clearance': minimum('length', 'upper bench to ceiling, least'),
    'bench.head-clearance-maximum': maximum('length', 'upper bench to ceiling, most'),
    'bench.seat-length': minimum('length', 'bench length for each sitter'),
    'bench.slat-gap-minimum': minimum('length', 'gap between slats, least'),
    'bench.slat-gap-maximum': maximum('length', 'gap between slats, most'),
    'bench.span': maximum('length', 'length between supports without a centre leg'),
    'floor.clear-space': minimum('size', 'clear floor space'),
    'floor.clear-space-place': choice('place of the clear floor space', 'at_bench_end_along_short_axis'),
    'floor.turning-circle': minimum('length', 'diameter of the turning space'),
    'floor.turning-square': minimum('length', 'square a T-shaped turning space fills'),
    'floor.turning-arm': minimum('length', 'width of arms and base of a T-shaped turning space'),
    'control.reach-low': minimum('length', 'height of a control over the floor, least'),
    'control.reach-high': maximum('length', 'height of a control over the floor, most'),
    'scoping.share': minimum('ratio', 'share of clustered rooms that are accessible'),
    'scoping.each-type': minimum('count', 'accessible rooms of each type'),

    'room.ceiling-height-minimum': minimum('length', 'ceiling height, low end'),
    'room.ceiling-height-maximum': maximum('length', 'ceiling height, high end'),
    'room.height-least': minimum('length', 'lowest room in use'),
    'wall.r-value': minimum('thermal_resistance', 'insulation of the walls'),
    'ceiling.r-value': minimum('thermal_resistance', 'insulation of the ceiling'),
    'wall.barrier-side': choice('side of the vapour barrier', 'warm_side'),
    'wall.air-gap-minimum': minimum('length', 'air gap behind the lining, least'),
    'wall.air-gap-maximum': maximum('length', 'air gap behind the lining, most'),
    'lining.moisture': maximum('ratio', 'moisture content of the lining at installation'),
    'fastening.concealed': requirement('no metal is exposed where skin touches'),
    'fastening.material': choice('material of the fastenings', 'stainless'),
    'light.below-ceiling': minimum('length', 'light below the ceiling when not rated for the heat'),
    'light.rating': minimum('temperature', 'rating of a light in the hottest layer'),
    'thermometer.below-ceiling': target('length', 'thermometer below the ceiling'),
    'site.gap': minimum('length', 'gap to the building behind and beside a closed side'),
    'site.gap-to-reach': minimum('length', 'gap to the building where someone must reach in'),

    'circuit.continuous-factor': minimum('ratio', 'conductor and device rating as a share of the heater load'),
    'circuit.element-set': maximum('current', 'load of each subdivided set of heating elements'),
    'circuit.element-set-device': maximum('current', 'device of a set of heating elements'),
    'circuit.disconnect': choice('disconnecting means', 'within_sight_or_lockable'),
    'circuit.voltage-drop': maximum('ratio', 'voltage drop of the branch circuit'),
    'circuit.voltage-drop-total': maximum('ratio', 'voltage drop of feeder and branch circuit together'),
    'circuit.residual-current': maximum('current', 'residual current device on circuits other than the heater'),
    'circuit.selv-protection': choice('basic protection of SELV and PELV circuits', 'barrier_IP24_or_insulation_tested_at_500_V'),
    'zone.one-offset': target('length', 'zone 1 reaches this far from the heater'),
    'zone.two-top': target('length', 'zone 2 ends and zone 3 begins this high above the floor'),
    'zone.one-equipment': choice('equipment in zone 1', 'heater_and_what_belongs_to_it'),
    'zone.two-equipment': choice('heat resistance of equipment in zone 2', 'no_special_requirement'),
    'zone.three-equipment': minimum('temperature', 'temperature equipment in zone 3 withstands'),
    'zone.three-cable': minimum('temperature', 'temperature cable insulation and sheath in zone 3 withstand'),
    'equipment.ingress': choice('degree of protection of equipment', 'IPX4', 'IP24'),
    'equipment.ingress-hosed': choice('degree of protection where water jets clean the room', 'IPX5'),
    'equipment.socket-outlet-in-room': requirement('socket-outlets may be in the room'),
    'equipment.switchgear-in-room': requirement('switchgear not built into the heater may be in the room'),
} as const satisfies Readonly<Record<string, KeyBase>>;

export type ClauseKey = keyof typeof clauseKeys;

type KindOf<K extends ClauseKey> = (typeof clauseKeys)[K]['figure'];
/** The kind of figure a key takes; for a choice, one of the words the key lists. */
export type FigureOf<K extends ClauseKey> = (typeof clauseKeys)[K] extends { readonly figure: 'word'; readonly words: readonly (infer W)[] }
    ? { readonly kind: 'word'; readonly value: W }
    : Figures[KindOf<K>];
