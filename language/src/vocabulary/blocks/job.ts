import { block, may, must } from '../block.js';
import { choice, choices, condition, current, count, date, flag, length, lengths, mass, percent, size, supply, tariff, temperature, text, time, value, valueList, wallLengths, wallList, reference } from '../values.js';

/** Ids of the published rule sets a job may name; a test holds this list equal to the rule sets that exist. */
export const ruleSetIds = ['us_dwelling', 'us_commercial', 'us_accessible', 'california_accessible', 'ca_electrical', 'iec', 'good_practice'] as const;

/** What texts can disagree about without one being the stricter; a test holds this list equal to what the rule sets hold. */
export const decidedWords = ['vent_opening_place', 'notice_required'] as const;

/** Conductor sizes as single words. */
export const conductorWords = [
    'awg_14', 'awg_12', 'awg_10', 'awg_8', 'awg_6', 'awg_4', 'awg_3', 'awg_2', 'awg_1',
    'mm2_1_5', 'mm2_2_5', 'mm2_4', 'mm2_6', 'mm2_10', 'mm2_16', 'mm2_25',
] as const;
export type ConductorWord = typeof conductorWords[number];

/** People by percentile of body measures; a test holds this list equal to the survey's. */
export const personWords = ['p5_woman', 'p50_woman', 'p95_woman', 'p5_man', 'p50_man', 'p95_man'] as const;

/** Kinds of value a parameter may take: figures by dimension, walls, words, and the kinds of entry a catalogue holds. */
export const parameterKinds = [
    'length', 'number', 'count', 'power', 'voltage', 'current', 'temperature', 'wall', 'word', 'flag', 'text', 'panel_system', 'door_model', 'window_model', 'bench_build', 'heater_model',
] as const;
/** Kinds of block a house rule may ask of, one by one. */
export const ruleSubjects = ['site', 'room', 'door', 'window', 'bench', 'heater', 'circuit', 'sensor', 'control', 'vent', 'light', 'thermometer', 'sign', 'receptacle', 'fitting', 'duckboard'] as const;

const jobProperties = {
    number: may(text, 'The order number printed on every document.'),
    revision: may(text, 'The revision letter printed on every document.'),
    drawn_by: may(text, 'Who drew it.'),
} as const;
const partialJob = { ...jobProperties, rules: may(choices(...ruleSetIds), 'The published rule sets the room must meet; the strictest figure governs.') } as const;

export const jobBlocks = {
    job: block({
        doc: 'One room as ordered: everything that is drawn, cut, packed and wired for it.',
        standsIn: ['file'], name: 'required', hasTitle: true, walls: 'none', isRepeatable: true, derivesFrom: 'series',
        snippet: 'job ${1:name} "${2:title}" {\n\tnumber    "${3:0001}"\n\trevision  "A"\n\trules     us_dwelling\n\n\t$0\n}',
        properties: {
            ...jobProperties,
            rules: must(choices(...ruleSetIds), 'The published rule sets the room must meet; the strictest figure governs.'),
        },
    }),
    series: block({
        doc: 'A room of a maker\'s line with its sizes left open: jobs are made from it, each with its own values.',
        standsIn: ['file'], name: 'required', hasTitle: true, walls: 'none', isRepeatable: true, derivesFrom: 'series', like: 'job',
        snippet: 'series ${1:name} "${2:title}" {\n\tparameter ${3:w} { takes length; otherwise ${4:72"}; doc "${5:Outside width}" }\n\n\t$0\n}',
        properties: { ...partialJob },
    }),
    parameter: block({
        doc: 'A value a job gives when it is made from the series, in the order written.',
        standsIn: ['series'], name: 'required', walls: 'none', isRepeatable: true,
        snippet: 'parameter ${1:w} { takes ${2:length}; doc "${3:Outside width}" }',
        properties: {
            takes: must(choice(...parameterKinds), 'What kind of value it is.'),
            least: may(value, 'The smallest value it may have.', { otherwise: 'no bound' }),
            most: may(value, 'The greatest value it may have.', { otherwise: 'no bound' }),
            one_of: may(valueList, 'The values to choose from.', { otherwise: 'any value of its kind' }),
            otherwise: may(value, 'The value when a job gives none.', { otherwise: 'a job must give it' }),
            doc: may(text, 'What it is, in one line.'),
        },
    }),
    variant: block({
        doc: 'The same job with an option the customer may choose: only what differs is written.',
        standsIn: ['job'], name: 'required', hasTitle: true, walls: 'none', isRepeatable: true, like: 'job', isOwn: true,
        snippet: 'variant ${1:name} "${2:title}" {\n\t$0\n}',
        properties: { ...partialJob },
    }),
    sign_off: block({
        doc: 'Who signed a revision of the job, when, and the fingerprint of the model that was signed: a revision that changed afterwards is a finding.',
        standsIn: ['job', 'variant'], name: 'none', walls: 'none', isRepeatable: true, isOwn: true,
        snippet: 'sign_off {\n\trevision     "${1:A}"\n\tby           "${2:name and office}"\n\tdate         ${3:2027-01-31}\n\tfingerprint  "${4:as hotroom review --fingerprint prints it}"\n}',
        properties: {
            revision: must(text, 'The revision that was signed.'),
            by: must(text, 'Who signed it.'),
            date: must(date, 'The day it was signed.'),
            fingerprint: must(text, 'Fingerprint of the model that was signed, as the review report shows it.'),
        },
    }),
    rule: block({
        doc: 'A house rule: what a maker asks of every job that uses the file, over and above what is published.',
        standsIn: ['catalogue', 'file'], name: 'required', hasTitle: true, walls: 'none', isRepeatable: true,
        snippet: 'rule ${1:name} "${2:title}" {\n\tseverity  warning\n\teach      ${3:bench}\n\trequire   ${4:bench.top <= 40"}\n\tbecause   "${5:house standard}"\n}',
        properties: {
            severity: may(choice('error', 'warning', 'info', 'hint'), 'How grave it is.', { otherwise: 'warning' }),
            each: may(choice(...ruleSubjects), 'What it is about: it is asked of each of them.', { otherwise: 'the job as a whole' }),
            when: may(condition, 'Only where this holds.', { otherwise: 'always' }),
            require: must(condition, 'What must hold.'),
            because: must(text, 'Where the requirement comes from; printed with every finding.'),
        },
    }),
    site: block({
        doc: 'The place the room is built in, as measured.',
        standsIn: ['job'], name: 'none', walls: 'none', isRepeatable: false,
        snippet: 'site {\n\twidth     ${1:96"}\n\tdepth     ${2:96"}\n\tceiling   ${3:7\'6"}\n\tfloor     ${4:tile}\n\tfree      ${5:front}\n}',
        properties: {
            width: must(lengths, 'Clear width of the place along the front, in up to three places; the smallest governs.'),
            depth: must(lengths, 'Clear depth of the place, in up to three places; the smallest governs.'),
            ceiling: must(lengths, 'Height of the building\'s ceiling over the finished floor, in up to three places; the lowest governs.', { aliases: ['height'] }),
            diagonals: may(lengths, 'Both diagonals of the place, first the one from the front left corner; their difference shows how far it is out of square.'),
            floor: must(choice('tile', 'concrete', 'vinyl', 'stone', 'other_waterproof', 'wood', 'carpet'), 'What the finished floor is made of.'),
            floor_fall: may(length, 'How much lower the floor is at the side it falls to.', { otherwise: 'a level floor' }),
            falls_to: may(choice('front', 'left', 'back', 'right'), 'The side the floor falls to.'),
            drain_from_left: may(length, 'Middle of the floor drain from the left side of the place.'),
            drain_from_front: may(length, 'Middle of the floor drain from the front side of the place.'),
            free: may(wallList, 'Sides of the room that stand clear of the building.', { otherwise: 'every side stands against the building', oftenCalled: ['open', 'clear_sides'] }),
            reach: may(wallList, 'Closed sides behind which someone must be able to reach.', { otherwise: 'none' }),
            clear: may(wallLengths, 'How much floor is clear before a side, where that matters (a door swings into it).'),
            doorway: may(size, 'The narrowest opening on the way in, width x height.'),
            corridor: may(lengths, 'Widths of the corridor before and after its tightest turn.'),
            stairs: may(size, 'Clear width x head height of the stairs on the way in.'),
            lift_car: may(size, 'Clear inside width x depth of the lift car on the way in.'),
            lift_car_height: may(length, 'Clear inside height of the lift car.'),
            supply: may(supply, 'The electrical supply at the place.'),
            capacity: may(current, 'Current the supply can spare for the heater.'),
            ambient: may(temperature, 'Air temperature around the room and its wiring.', { oftenCalled: ['temperature', 'outside_temperature'] }),
            humidity: may(percent, 'Relative humidity of that air, per cent.', { otherwise: '50' }),
            outdoors: may(temperature, 'Outdoor air in the coldest weather, for air from outdoors.', { otherwise: 'as ambient' }),
            stands: may(choice('indoors', 'in_the_open'), 'Whether a building is round the room.', { otherwise: 'indoors' }),
            measured_by: may(text, 'Who measured the place.'),
            measured_on: may(date, 'The day it was measured.'),
        },
    }),
    obstruction: block({
        doc: 'Something of the building that stands in the place: a beam, a soffit, a pipe, a switch.',
        standsIn: ['site'], name: 'required', walls: 'none', isRepeatable: true,
        properties: {
            from_left: must(length, 'From the left side of the place to its near edge.'),
            from_front: must(length, 'From the front side of the place to its near edge.'),
            width: must(length, 'Its size along the front.'),
            depth: must(length, 'Its size to the back.'),
            bottom: may(length, 'Its underside over the finished floor.', { otherwise: 'it stands on the floor' }),
            top: may(length, 'Its upper side over the finished floor.', { otherwise: 'it reaches the ceiling' }),
        },
    }),
    room: block({
        doc: 'The shell of the room: which panel system, how large, how its ceiling spans.',
        standsIn: ['job'], name: 'none', walls: 'none', isRepeatable: false,
        snippet: 'room {\n\tsystem    ${1:system}\n\twidth     ${2:72"}\n\tdepth     ${3:72"}\n\theight    ${4:7\'0"}\n\tceiling   ${5:spans_front_to_back}\n}',
        properties: {
            system: must(reference('panel_system'), 'The panel system the shell is made of.', { oftenCalled: ['panels', 'panel_system', 'model'] }),
            width: must(length, 'Outside width along the front.'),
            depth: must(length, 'Outside depth from front to back.'),
            height: must(length, 'From the finished floor to the top of the ceiling panels.'),
            ceiling: may(choice('spans_front_to_back', 'spans_left_to_right'), 'Which way the ceiling panels span; must be stated for a square room.', { otherwise: 'they span the shorter way' }),
            corners: may(choice('front_and_back', 'sides', 'pinwheel'), 'Which walls run through at the corners.', { otherwise: 'as the panel system states', takenFrom: 'system.corners' }),
            no_facing: may(wallList, 'Hidden walls that get no facing.', { otherwise: 'every wall is faced' }),
            closing_corner: may(choice('front_left', 'front_right', 'back_left', 'back_right'), 'The corner that is closed last.', { otherwise: 'chosen by rule' }),
            fits: may(choices(...personWords), 'The people who are to sit in it, by percentiles of body measures: p5 is smaller than all but one in twenty. What does not fit them is told.', { otherwise: 'nobody is told of; figures are those of p5_woman and p95_man' }),
            stone_or_tile: may(size, 'Area of uninsulated stone, tile or log inside, as a width x height, for heater sizing.', { otherwise: 'none', oftenCalled: ['glass_area', 'uninsulated'] }),
        },
    }),
    climate: block({
        doc: 'How the room is used: what heat, air, steam and moisture are worked out for.',
        standsIn: ['job'], name: 'none', walls: 'none', isRepeatable: false,
        snippet: 'climate {\n\tbathing   ${1:80 degC}\n\twithin    ${2:45 min}\n}',
        properties: {
            bathing: may(temperature, 'Air temperature to bathe at.', { otherwise: '80 degC, common practice' }),
            within: may(time, 'The longest time it may take to reach it.', { otherwise: 'not asked, unless the job names good_practice' }),
            session: may(time, 'How long it is held after that.', { otherwise: '60 min' }),
            ladle: may(mass, 'Water of one ladle on the stones.', { otherwise: '0.2 kg' }),
            tariff: may(tariff, 'What the electricity costs.', { otherwise: 'no cost is worked out' }),
            hot_hours: may(time, 'Hours a week it is hot.', { otherwise: '20 h' }),
            shop: may(temperature, 'Air where the boards are worked.', { otherwise: '20 degC' }),
            shop_humidity: may(percent, 'Relative humidity there, per cent.', { otherwise: '50' }),
            store: may(temperature, 'Air where packed parts wait.', { otherwise: '10 degC' }),
            store_humidity: may(percent, 'Relative humidity there, per cent.', { otherwise: '65' }),
        },
    }),
    circuit: block({
        doc: 'The wiring of one heater: its run, its terminals, and what is there already.',
        standsIn: ['job'], name: 'optional', walls: 'none', isRepeatable: true,
        properties: {
            feeds: must(reference('heater'), 'The heater it feeds.', { oftenCalled: ['heater', 'for', 'load'] }),
            terminals: may(choice('degC_60', 'degC_75'), 'The temperature the terminals are marked for.', { otherwise: '60 degC, as terminals are unless marked', oftenCalled: ['terminations', 'terminal', 'lugs'] }),
            insulation: may(choice('degC_60', 'degC_75', 'degC_90', 'pvc', 'xlpe'), 'The temperature class of the conductor insulation.', { otherwise: '90 degC, or PVC under the IEC rules' }),
            method: may(choice('A1', 'A2', 'B1', 'B2', 'C'), 'How the cable is installed, by the letters of IEC 60364-5-52.'),
            device: may(current, 'The overcurrent device to be fitted.', { otherwise: 'the next standard size', oftenCalled: ['breaker', 'fuse', 'ocpd'] }),
            existing_device: may(current, 'Rating of the overcurrent device that is there already.'),
            existing_conductor: may(choice(...conductorWords), 'Size of the conductor that is there already.'),
            disconnect_in_sight: may(flag, 'Whether a disconnect stands within sight of the heater.'),
            circuits: may(count, 'Into how many circuits the heater is divided.', { otherwise: 'one' }),
        },
    }),
    segment: block({
        doc: 'One stretch of a circuit, where the air around the cable has one temperature.',
        standsIn: ['circuit'], name: 'optional', walls: 'none', isRepeatable: true,
        properties: {
            length: must(length, 'Length of the stretch.'),
            ambient: must(temperature, 'Air temperature around the cable there.'),
        },
    }),
    decision: block({
        doc: 'What the job follows where two texts want different things and neither is the stricter: which, why and who decided it. It is printed with every document.',
        standsIn: ['job'], name: 'optional', walls: 'none', isRepeatable: true,
        snippet: 'decision {\n\tabout     ${1:vent_opening_place}\n\tfollows   "${2:IMC 2018}"\n\tbecause   "${3:reason}"\n\tby        "${4:who}"\n}',
        properties: {
            about: must(choice(...decidedWords), 'What the texts disagree about.'),
            follows: must(text, 'The text that is followed, by the beginning of its citation: "IMC 2018", "common practice".'),
            because: must(text, 'Why.'),
            by: must(text, 'Who decided it.'),
        },
    }),
} as const;
