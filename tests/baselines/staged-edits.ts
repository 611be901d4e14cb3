/** One edit of an example: what is written in place of what. White space of any kind stands for any other. */
export interface StagedEdit {
    readonly what: string;
    /** Path in examples/; the standard job when it says none. */
    readonly job?: string;
    readonly edits?: readonly (readonly [from: string, to: string])[];
    /** Edits of the catalogues and house rules it uses, by their path. */
    readonly used?: Readonly<Record<string, readonly (readonly [from: string, to: string])[]>>;
    /** A whole text made of the whole text. */
    readonly rewrite?: (text: string) => string;
    /** The day of the later side; both are of 2026-11-25 without it. */
    readonly today?: { readonly year: number; readonly month: number; readonly day: number };
}

const petrel = 'house/petrel-wharf.hotroom';
const moved = (text: string, from: string, until: string): string => {
    const start = text.indexOf(from);
    const end = text.indexOf(until, start);
    return `${text.slice(0, start)}${text.slice(end, text.lastIndexOf('}'))}\n${text.slice(start, end)}}\n`;
};

/** Edits after which a job means what it meant. */
export const sameMeaning: readonly StagedEdit[] = [
    { what: 'a remark and blank lines', edits: [['room {', 'room {\n\n    // As measured twice.\n']] },
    { what: 'tabs for spaces', rewrite: text => text.replaceAll('    ', '\t') },
    { what: 'lines that end as on Windows', rewrite: text => text.replaceAll('\n', '\r\n') },
    { what: 'a small block on lines of its own', edits: [['thermometer on left { from front 30" }', 'thermometer on left {\n        from front 30"\n    }']] },
    { what: 'semicolons for lines', edits: [['hinge left\n', 'hinge left;\n']] },
    { what: 'inches as feet', edits: [['width 84"', 'width 7\'']] },
    { what: 'a fraction as millimetres', edits: [['depth 79 1/2"', 'depth 2019.3 mm']] },
    { what: 'degrees of another scale', edits: [['ambient 68 degF\n measured', 'ambient 20 degC\n measured']] },
    { what: 'kilowatts as watts in a catalogue', used: { 'catalogue/heaters.hotroom': [['power 6 kW', 'power 6000 W']] } },
    { what: 'facts in another order', edits: [['top 37"\n depth 20"', 'depth 20"\n top 37"']] },
    { what: 'a block in another place', rewrite: text => moved(text, '    room {', '    door entry') },
    { what: 'uses in another order', edits: [['use "catalogue/skerry.hotroom"\nuse "catalogue/heaters.hotroom"', 'use "catalogue/heaters.hotroom"\nuse "catalogue/skerry.hotroom"']] },
    { what: 'rule sets in another order', edits: [['us_dwelling, good_practice', 'good_practice, us_dwelling']] },
    { what: 'sides in another order', edits: [['free front, right', 'free right, front']] },
    { what: 'a calculation for a figure', edits: [['top 37"', 'top 2 * 18" + 1"']] },
    { what: 'a let put where it is used', job: petrel, edits: [['let aisle = 36"\n', '\n'], ['- aisle', '- 36"']] },
    { what: 'a figure that got a name', edits: [['top 18"', 'top step'], ['site {', 'let step = 18"\n site {']] },
    { what: 'a let nobody uses', edits: [['site {', 'let spare = 3"\n site {']] },
    { what: 'an entry of a catalogue the job does not use', used: { 'catalogue/heaters.hotroom': [['power 4.5 kW', 'power 4.4 kW']] } },
    { what: 'remarks and layout of a catalogue', used: { 'catalogue/skerry.hotroom': [['// Layers that are not boards.', '// Layers.\n\n']] } },
];

/** Edits that change what a job means. What they change stands in staged-edits.md. */
export const otherMeaning: readonly StagedEdit[] = [
    { what: 'another title', edits: [['"Birch Point bathhouse"', '"Birch Point"']] },
    { what: 'another revision and number', edits: [['revision "B"', 'revision "C"'], ['number "2417"', 'number "2418"']] },
    { what: 'who drew it', edits: [['revision "B"', 'revision "B"\n drawn_by "design office"']] },
    { what: 'a further rule set', edits: [['rules us_dwelling, good_practice', 'rules us_dwelling, us_commercial, good_practice']] },
    { what: '1/16" more on one panel: the room is that much wider', edits: [['width 84"', 'width 84 1/16"']] },
    { what: 'a room deeper by half a foot', edits: [['depth 79 1/2"', 'depth 85 1/2"']] },
    { what: 'a room higher by an inch', edits: [['height 7\'0"', 'height 7\'1"']] },
    { what: 'a ceiling that spans the other way', edits: [['ceiling spans_left_to_right', 'ceiling spans_front_to_back']] },
    { what: 'a door moved by an inch', edits: [['from left 23 7/8"', 'from left 24 7/8"']] },
    { what: 'a door hinged on the other side', edits: [['hinge left', 'hinge right']] },
    { what: 'a wider door in the same section', edits: [['model Leaf24', 'model Leaf25'], ['from left 23 7/8"', 'from left 23 3/8"']] },
    { what: 'a bench higher by 1/16"', edits: [['top 37"', 'top 37 1/16"']] },
    { what: 'a bench deeper by an inch', edits: [['depth 16"', 'depth 17"']] },
    { what: 'a bench called otherwise', edits: [['bench upper', 'bench highest'], ['in_front_of upper', 'in_front_of highest']] },
    { what: 'a bench left out', edits: [['bench lower on back { build Slatted\n top 18"\n depth 16"\n in_front_of upper\n }', '']] },
    { what: 'a bench with a fascia', edits: [['top 37"', 'top 37"\n fascia yes']] },
    { what: 'a heater moved by an inch', edits: [['from front 8"', 'from front 9"']] },
    { what: 'a heater too near its wall', edits: [['from front 8"', 'from front 5"']] },
    { what: 'a smaller heater', edits: [['model Tarn60', 'model Tarn45']] },
    { what: 'a heater without its guard', edits: [['guard yes', 'guard no']] },
    { what: 'blocking of no stock that is named', edits: [['backing_stock alder_2x4\n', '\n']] },
    { what: 'a longer cable run', edits: [['length 22\'', 'length 80\'']] },
    { what: 'a disconnect out of sight', edits: [['disconnect_in_sight yes', 'disconnect_in_sight no']] },
    { what: 'a sensor hung lower', edits: [['below_ceiling 5"', 'below_ceiling 7"']] },
    { what: 'a control at another height', edits: [['height 54"', 'height 48"']] },
    { what: 'a shorter timer', edits: [['timer 60 min', 'timer 30 min']] },
    { what: 'a vent moved in its panel', edits: [['from left 3"', 'from left 4"']] },
    { what: 'a smaller vent', edits: [['vent exhaust on front { size 8" x 4"', 'vent exhaust on front { size 6" x 4"']] },
    { what: 'a lamp on another wall', edits: [['light lamp on left', 'light lamp on back']] },
    { what: 'a sign left out', edits: [['sign caution { says warning; stands outside; letters 1/4" }', '']] },
    { what: 'a lower building', edits: [['ceiling 7\'6"', 'ceiling 7\'2"']] },
    { what: 'a supply that can spare less', edits: [['capacity 60 A', 'capacity 30 A']] },
    { what: 'a finding accepted', edits: [['revision "B"', 'revision "B"\n waive feet-below-stones on stove because "the customer sits on the floor" by "design office" until 2027-03-01']] },
    { what: 'a waiver that ran out', edits: [['revision "B"', 'revision "B"\n waive feet-below-stones on stove because "the customer sits on the floor" by "design office" until 2027-03-01']], today: { year: 2027, month: 3, day: 2 } },
    { what: 'a word misspelt', edits: [['hinge left', 'hingee left']] },
    { what: 'a catalogue: another price', used: { 'catalogue/skerry.hotroom': [['price 3.40 USD per ft', 'price 3.60 USD per ft']] } },
    { what: 'a catalogue: a length no longer sold', used: { 'catalogue/skerry.hotroom': [['lengths 6\', 8\', 10\', 12\'', 'lengths 6\', 8\', 10\'']] } },
    { what: 'a catalogue: a slat 1/8" narrower', used: { 'catalogue/skerry.hotroom': [['section 3/4" x 3 1/2"', 'section 3/4" x 3 3/8"']] } },
    { what: 'a catalogue: lighter insulation', used: { 'catalogue/skerry.hotroom': [['density 45 kg per m3', 'density 40 kg per m3']] } },
    { what: 'a catalogue: the manual asks for more room', used: { 'catalogue/heaters.hotroom': [['clear_above 45"', 'clear_above 52"']] } },
    { what: 'a house rule asks for more', job: petrel, used: { 'house/rules.hotroom': [['>= 42"', '>= 44"']] } },
    { what: 'a let with another value', job: petrel, edits: [['let aisle = 36"', 'let aisle = 35"']] },
];
