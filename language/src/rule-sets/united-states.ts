import { area, inches } from '../core/length.js';
import { documents, ifgc, imc, irc, ul875 } from './documents.js';
import { amperes, fahrenheit, hours, length, minutes, no, ratio, size, word, yes } from './figure.js';
import { branchDropLimit, continuousFactor, elementSetDeviceA, elementSetLimitA, necCitations, totalDropLimit } from './nec.js';
import { clause, type AnyClause, type RuleSet } from './rule-set.js';

const gas = { when: 'gas_heater' } as const;
const gasTimer = { when: 'gas_heater_with_timer' } as const;
const ifTimer = { when: 'timer_provided' } as const;
/** What keeps people from harm; nobody may sign it away (trade practice of this project). */
const never = { isNeverWaived: true } as const;
const ifRemote = { when: 'remote_sensor', ...never } as const;

/** Article 424 and what it leans on: the demands a rule can name. The tables are with the electrical engine. */
const electrical: readonly AnyClause[] = [
    clause('circuit.continuous-factor', ratio(continuousFactor), necCitations.continuous),
    clause('circuit.element-set', amperes(elementSetLimitA), necCitations.elementSet),
    clause('circuit.element-set-device', amperes(elementSetDeviceA), necCitations.elementSetDevice),
    clause('circuit.disconnect', word('within_sight_or_lockable'), necCitations.disconnect),
    clause('circuit.voltage-drop', ratio(branchDropLimit), necCitations.branchDrop),
    clause('circuit.voltage-drop-total', ratio(totalDropLimit), necCitations.totalDrop),
];

const listing: readonly AnyClause[] = [
    clause('climate.humidity-minimum', ratio(0.10), ul875('§1', 'The listing covers heated rooms of 10 to 25 % relative humidity.')),
    clause('climate.humidity-maximum', ratio(0.25), ul875('§1', 'The listing covers heated rooms of 10 to 25 % relative humidity.')),
    clause('limiter.manual-reset', yes, ul875('§1', 'Automatic temperature control, a limit reset by hand, and a timer.'), never),
];

const sharedNotChecked = [
    'listing and labeling of the heater and of the heater with this room',
    'egress, emergency lighting and exit signs',
    'sprinklers, smoke and heat alarms',
    'fire separation and combustible construction of the building around the room',
    'service and feeder load calculation of the building',
    'more than three current-carrying conductors in one raceway or cable',
    'amendments by the state, the county or the city',
] as const;

export const usDwelling: RuleSet<'us_dwelling'> = {
    id: 'us_dwelling',
    title: 'United States, one- and two-family dwelling or townhouse',
    family: 'us',
    scope: 'A room in a one- or two-family dwelling or a townhouse.',
    documents: [documents.irc, documents.imc, documents.nec, documents.ul875],
    clauses: [
        clause('thermostat.air-temperature', fahrenheit(194), irc('M1902.4', 'The thermostat keeps the room at 194 °F (90 °C) or less.')),
        clause('sensor.below-ceiling', length(inches(6)), irc('M1902.4', 'A remote sensing element is within 6 in (152 mm) of the ceiling.'), ifRemote),
        clause('timer.duration', hours(1), irc('G2440.5.1', 'A timer for the main burner runs 1 hour at most.'), gasTimer),
        clause('timer.place', word('outside_the_room'), irc('G2440.5.1', 'The timer control is outside the room.'), gasTimer),
        clause('vent.opening-size', size(inches(4), inches(8)), irc('G2440.6', 'A ventilation opening of at least 4 in by 8 in (102 by 203 mm).'), gas),
        clause('vent.opening-area', { kind: 'area', value: area(inches(4), inches(8)) }, irc('G2440.6', 'Gross area of a 4 in by 8 in opening.'), gas),
        clause('vent.opening-place', word('near_top_of_door'), irc('G2440.6', 'The opening is near the top of the door into the room.'), gas),
        clause('heater.accidental-contact', yes, irc('G2440.2', 'Placed so that contact by a person in the room is kept least.'), gas),
        clause('heater.guard-low-conductivity', yes, irc('G2440.2.1', 'A guard is of low thermal conductivity and does not hold the heat back from the room.'), gas),
        clause('heater.service-panels-free', yes, irc('G2440.3', 'Panels, grilles and doors removed for service are not fixed to the building.'), gas),
        clause('heater.combustion-air-place', word('outside_the_room'), irc('G2440.4', 'Combustion air and draft hood are outside the room.'), gas),
        clause('notice.required', no, imc.fromMemory('914.5.1, exception', 'One- and two-family dwellings are exempt from the warning notice.')),
        ...listing,
        ...electrical,
    ],
    notChecked: sharedNotChecked,
};

export const usCommercial: RuleSet<'us_commercial'> = {
    id: 'us_commercial',
    title: 'United States, other than one- and two-family dwellings',
    family: 'us',
    scope: 'A room in any building other than a one- or two-family dwelling or a townhouse.',
    documents: [documents.imc, documents.ifgc, documents.nec, documents.ul875],
    clauses: [
        clause('thermostat.air-temperature', fahrenheit(194), imc('914.4', 'The thermostat keeps the room at 194 °F (90 °C) or less.')),
        clause('thermostat.air-temperature', fahrenheit(194), ifgc('615.5', 'The thermostat keeps the room at 194 °F (90 °C) or less.'), gas),
        clause('sensor.below-ceiling', length(inches(6)), imc('914.4', 'A remote sensing element is within 6 in (152 mm) of the ceiling.'), ifRemote),
        clause('timer.duration', hours(1), imc('914.4.1', 'A timer runs 1 hour at most.'), ifTimer),
        clause('timer.place', word('outside_the_room'), imc('914.4.1', 'The timer control is outside the room.'), ifTimer),
        clause('vent.opening-size', size(inches(4), inches(8)), imc('914.5', 'A ventilation opening of at least 4 in by 8 in (102 by 203 mm).')),
        clause('vent.opening-area', { kind: 'area', value: area(inches(4), inches(8)) }, imc('914.5', 'Gross area of a 4 in by 8 in opening.')),
        clause('vent.opening-place', word('near_top_of_door'), imc('914.5', 'The opening is near the top of the door into the room.')),
        clause('notice.required', yes, imc.fromMemory('914.5.1', 'A permanent warning notice, mechanically fixed outside the room; its wording is in the code.')),
        clause('notice.letter-height', length(inches(0, 1, 4)), imc.fromMemory('914.5.1', 'Letters at least 1/4 in (6.4 mm) high in a contrasting color.')),
        clause('notice.stay', minutes(30), imc.fromMemory('914.5.1', 'The notice limits the stay to 30 minutes and sends people in poor health to a physician first.')),
        clause('notice.letter-height', length(inches(0, 1, 4)), ifgc.fromMemory('615.6.1', 'Letters at least 1/4 in (6.4 mm) high in a contrasting color.'), gas),
        ...listing,
        ...electrical,
    ],
    notChecked: [...sharedNotChecked, 'occupant load and occupancy', 'health department rules on public bathing'],
};
