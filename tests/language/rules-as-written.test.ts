import { expect, test } from 'vitest';
import { dedent } from '../support/dedent.js';
import { withStandardJob } from '../support/standard-job.js';
import { analyzeText } from '../support/workspace.js';

const room = withStandardJob('');
/** What is told of a rule beside the standard job: the messages with the text they stand at. */
async function told(rule: string, text = `${room}\n${dedent(rule)}`): Promise<readonly (readonly [message: string, at: string])[]> {
    const { findings } = await analyzeText(text);
    return findings.filter(({ rule: id, severity }) => id === 'x' || severity === 'error').map(({ message, at }) => [message, text.slice(at.start, at.end)]);
}

// Rules as three designers wrote them who had nothing but the reference, and what they need to be told.
test.each<[string, [string, string][]]>([
    ['rule x { require min(bench.depth) >= 18"; because "y" }', [['x: min(bench.depth) is 16"; at least 18" is needed (y).', '16"']]],
    ['rule x { each bench; when bench.is_highest; require bench.fascia; because "y" }', [['x, bench upper: bench.fascia is no (y).', 'bench upper']]],
    ['rule x { each bench; when bench.is_highest; require not(bench.is_highest); because "y" }', [['x, bench upper: bench.is_highest is yes (y).', 'bench upper']]],
    ['rule x { each light; require light.model.rating >= 140 degC; because "y" }', [['x, light lamp: light.model.rating is 125 degC; at least 140 degC is needed (y).', 'Ember']]],
    ['rule x { each light; require light.rating >= 125 degC; because "y" }', []],
    ['rule x { require sum(circuit.segment.length) <= 30\'; because "y" }', [['x: sum(circuit.segment.length) is 34\'; at most 30\' is needed (y).', 'job standard']]],
    ['rule x { require air.intake / room.inside.volume >= 0.2 in2 / 1 ft3; because "y" }', [['x: air.intake / room.inside.volume is 0.0008687 / 1 ft; at least 0.001389 / 1 ft, 0.2 in2 / 1 ft3, is needed (y).', 'job standard']]],
    ['rule x { require room.inside.volume / max(heater.power) <= 40 ft3 / 1 kW; because "y" }', [['x: room.inside.volume / max(heater.power) is 42.63 ft3 / 1 kW; at most 40 ft3 / 1 kW is needed (y).', 'job standard']]],
    ['rule x { require site.supply.volts >= 250 V; because "y" }', [['x: site.supply.volts is 240 V; at least 250 V is needed (y).', '240 V single_phase']]],
    ['rule x { each bench; require bench.load_path = end_ledgers; because "y" }', []],
    ['rule x { each thermometer; require thermometer.below_ceiling <= 6"; because "y" }', []],
    ['rule x { require max(window.sill) >= 30"; because "y" }', [['House rule x could not be asked: there is no window to ask of. Write what it needs, or say in the rule by when where it is asked.', 'job standard']]],
    ['rule x { require sum(window.glass_area) <= 10 ft2; because "y" }', []],
    ['rule x { require sum(window.glass_area) + 1 ft2 >= 10 ft2; because "y" }', [['x: sum(window.glass_area) + 1 ft2 is 1 ft2; at least 10 ft2 is needed (y).', 'job standard']]],
])('%s', async (rule, findings) => { expect(await told(rule)).toEqual(findings); });

test.each([
    ['each door; require door.hand = left', 'door.hand is never left: it is left_hand or right_hand.'],
    ['each heater; require heater.conductor = awg_8', 'heater.conductor is a text to read, put together when it is shown; nothing written here is ever equal to it. Compare a figure or a fact that was written.'],
    ['each vent; when vent.role = supply; require vent.free_area >= 4 in2', 'vent.role is never supply: it is intake or exhaust.'],
    ['each vent; require vent.air = "outdoor"', 'vent.air is never outdoor: it is outdoors, room or unknown. Is outdoors meant?'],
    ['each heater; require heater.clearance.side >= if heater.guard then 4" else 8', '‘then’ gives a length and ‘else’ a bare number; both must be of one kind.'],
    ['each bench; require bench.depth >= 18', '‘>=’ compares a length with a bare number; both sides must be of one kind. Put its unit behind 18, such as 18".'],
    ['let y = 3"; each bench; require bench.depth >= 3"', '‘let’ does not stand in a rule. It stands at the top of a file, in a catalogue, in a job, in a series or in a variant.'],
    ['require air.intake >= 30 sq in', '‘sq in’ is written in2 here: 30 in2.'],
    ['each light; require light.rating >= 125 C', '‘C’ is written degC here: 125 degC.'],
    ['each bench; require bench.depth >= 16" AND bench.top > 3"', '‘AND’ is written in small letters: and.'],
    ['each bench; require bench.depth ≥ 18"', '‘≥’ is written >= here.'],
    ['each heater; require heater.voltage_drop < 3%', 'A figure per cent is written without a sign.'],
    ['each bench; require bench.depth >= 16" && bench.top > 3"', '‘&’ is not used here; both are asked for by and.'],
    ['each bench; require depth >= 18"', 'Nothing is called ‘depth’ here. Is bench.depth meant?'],
    ['require room.volume >= 1 ft3', 'Nothing is called ‘room.volume’ here. Is room.inside.volume meant?'],
    ['require room.light >= 1', 'Nothing is called ‘room.light’ here. …'],
])('%s is led to what is meant, once', async (facts, message) => {
    const found = await told(`rule x { ${facts}; because "y" }`);
    expect(found.map(([words]) => message.endsWith('…') ? `${words.slice(0, message.length - 1)}…` : words)).toEqual([message]);
});
