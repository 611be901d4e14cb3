import { describe, expect, test } from 'vitest';
import { functions } from '../../language/src/model/functions.js';
import { functionNames } from '../../language/src/syntax/tidy-values.js';
import { applyFix } from '../support/check.js';
import { analyzeText, exampleText } from '../support/workspace.js';

/** The guest bathhouse: benches, heater, circuit, door and vents, each with what refers to it. */
const sound = exampleText('otter-cove.hotroom');
const plain = await analyzeText(sound);
const key = ({ rule, message }: { rule: string; message: string }): string => `${rule}: ${message}`;
const known = new Set(plain.findings.map(key));
const syntaxOnly = { rules: [] } as const;

function withPiece(piece: string | RegExp, by: string): string {
    const text = sound.replace(piece, by);
    if (text === sound) throw new Error(`Not in the example: ${String(piece)}`);
    return text;
}
/** The one message of a text and, when it has a fix, that the fix gives a text without any. */
async function expectOne(text: string, message: string, cure: string | undefined): Promise<void> {
    const { findings } = await analyzeText(text, syntaxOnly);
    expect(findings.map(({ message }) => message)).toEqual([message]);
    const fix = findings[0]?.fixes?.[0];
    expect(fix?.safety).toBe(cure === undefined ? undefined : 'safe');
    if (!fix || cure === undefined) return;
    const cured = applyFix(text, fix);
    expect(cured).toContain(cure);
    expect((await analyzeText(cured, syntaxOnly)).findings).toEqual([]);
}

describe('a header line that is missing has one message, and the rest is read', () => {
    const missing = (kind: string, header: string): string => `These lines belong in a ${kind}; the line that begins it is missing. Put ${header} { before them.`;
    test.each<readonly [line: string, message: string, cure: string | undefined]>([
        ['    site {\n', missing('site', 'site'), '    site {'],
        ['    room {\n', missing('room', 'room'), '    room {'],
        ['    circuit stove_feed {\n', missing('circuit', 'circuit'), '    circuit {'],
        ['    bench upper on back, left {\n', missing('bench', 'bench NAME on WALL'), undefined],
        ['    bench lower on back, left {\n', missing('bench', 'bench NAME on WALL'), undefined],
        ['    heater stove on right {\n', missing('heater', 'heater NAME on WALL'), undefined],
        ['    door entry on front {\n', missing('door', 'door NAME on WALL'), undefined],
    ])('%s', async (line, message, cure) => { await expectOne(withPiece(line, ''), message, cure); });

    test.each(['    site {\n', '    room {\n'])('with %s gone the job is judged as it was', async line => {
        const { findings } = await analyzeText(withPiece(line, ''));
        expect(findings.map(key).filter(one => !known.has(one)).length).toBe(1);
        expect(findings.length).toBe(plain.findings.length + 1);
    });
    test('a header on the line of its facts', async () => {
        await expectOne(withPiece('vent intake on right  { ', ''), missing('vent', 'vent NAME on WALL'), undefined);
    });
    test('facts that several kinds take', async () => {
        await expectOne(withPiece('light lamp on right   { model Ember; from front 40"; height 62" }', 'model Ember; from front 40" }'),
            'These lines belong in a door, window, heater or light; the line that begins it is missing. Put a line such as door NAME on WALL { before them.', undefined);
    });
    test('the line of the job itself', async () => {
        const { findings } = await analyzeText(withPiece(/job otter.*\n/, ''), syntaxOnly);
        expect(findings.map(({ message }) => message)).toEqual(['‘number’ and 17 more lines belong in a job. Put a line such as job first "First room" { before them.']);
    });
});

describe('a brace too many is told where it stands, and the block goes on', () => {
    test.each([
        ['    room {', '    }\n    room {', 'This } closes job otter_cove too early: ‘room’ and what follows belong in it. Remove it.'],
        ['top       37"', 'top 37" }', 'This } closes bench upper too early: ‘depth’ and what follows belong in it. Remove it.'],
        ['floor_fall 1/2"', 'floor_fall 1/2" }', 'This } closes site too early: ‘falls_to’ and what follows belong in it. Remove it.'],
    ])('before what follows %s', async (piece, by, message) => { await expectOne(withPiece(piece, by), message, by.replace('}', '').trim()); });
    test('where the braces are in balance, because the last one is gone', async () => {
        const { findings } = await analyzeText(withPiece('    room {', '    }\n    room {').replace(/}\n$/, ''), syntaxOnly);
        expect(findings.map(({ message }) => message)).toEqual(['‘room’ and 13 more lines belong in a job. The } before them closes job otter_cove too early; move it behind them.']);
    });
});

test.each([
    [/build {5}Slatted\n {8}top/, 'build Slatted top', 'top', 'Slatted; top'], [/system {4}Skerry\n {8}width/, 'system Skerry width', 'width', 'Skerry; width'],
    [/feeds {5}stove\n {8}terminals/, 'feeds stove terminals', 'terminals', 'stove; terminals'], [/in_front_of upper\n/, 'in_front_of upper when 2" > 1"\n', 'when', 'upper; when'],
])('two facts on one line, the first with a name: %s', async (piece, by, second, cure) => {
    await expectOne(withPiece(piece, by), `‘${second}’ begins a fact of its own. Put it on its own line or after a semicolon.`, cure);
});
test('a name that is spelled like a fact stays one', async () => {
    await expectOne(withPiece('bench upper', 'bench top').replace('in_front_of upper', 'in_front_of top when 2" > 1"'), '‘when’ begins a fact of its own. Put it on its own line or after a semicolon.', 'top; when');
});

test.each(['catalogue/skerry.hotroom', '\'catalogue/skerry.hotroom\'', 'catalogue\\skerry.hotroom', 'catalogue/skerry.hotroom // the panels'])('a path without its quotes: %s', async path => {
    await expectOne(withPiece('"catalogue/skerry.hotroom"', path), 'A path stands in quotes: use "catalogue/skerry.hotroom".', 'use "catalogue/skerry.hotroom"');
});

test.each([
    ['8\'6"\n', '9 feet\n', '‘feet’ is written ft here: 9 ft.', '9 ft\n'], ['8\'6"\n', '102 inches\n', '‘inches’ is written in here: 102 in.', '102 in\n'], ['8\'6"\n', '102inch\n', '‘inch’ is written in here: 102 in.', '102 in\n'],
    ['8\'6"\n', '102 in.\n', 'A unit is written without a point: 102 in.', '102 in\n'], ['8\'6"\n', '8 feet 6 inches\n', 'Feet and inches are written with marks: 8\'6".', '8\'6"\n'],
    ['8\'6"\n', '2590 millimetres\n', '‘millimetres’ is written mm here: 2590 mm.', '2590 mm\n'],
    ['50 A', '50 amps', '‘amps’ is written A here: 50 A.', '50 A'], ['50 A', '50 ampere', '‘ampere’ is written A here: 50 A.', '50 A'], ['50 A', '50 AMP', '‘AMP’ is written A here: 50 A.', '50 A'],
    ['240 V ', '240 volts ', '‘volts’ is written V here: 240 V.', '240 V '],
    ['72 degF', '72 F', '‘F’ is written degF here: 72 degF.', '72 degF'], ['72 degF', '22 C', '‘C’ is written degC here: 22 degC.', '22 degC'],
    ['34" x 80"', '34" by 80"', 'A size is written with x: 34" x 80".', '34" x 80"'],
])('a unit as people write it: %s as %s', async (piece, by, message, cure) => { await expectOne(withPiece(piece, by), message, cure); });
test('power, in a catalogue', async () => {
    const text = (power: string): string => exampleText('catalogue/heaters.hotroom').replace(/power( +)[\d.]+ kW/, `power$1${power}`);
    expect((await analyzeText(text('6 kilowatts'), syntaxOnly, 'catalogue/other.hotroom')).findings.map(({ message }) => message)).toEqual(['‘kilowatts’ is written kW here: 6 kW.']);
    expect((await analyzeText(text('6000 watts'), syntaxOnly, 'catalogue/other.hotroom')).findings.map(({ message }) => message)).toEqual(['‘watts’ is written W here: 6000 W.']);
});
test('a letter is no unit where its fact takes another kind of value', async () => {
    const { findings } = await analyzeText(withPiece('8\'6"\n', '102 F\n'), syntaxOnly);
    expect(findings.map(({ message }) => message)).toEqual(['‘F’ does not belong here: width takes a length, such as 34 3/4" or 885 mm.']);
});

describe('headers', () => {
    test.each([
        ['light lamp on right', 'light lamp in right', 'A wall stands behind on: light lamp on right.', 'light lamp on right'],
        ['bench upper on back', 'bench upper at back', 'A wall stands behind on: bench upper on back.', 'bench upper on back'],
        ['light lamp on right', 'skylight lamp on right', '‘skylight’ is not known in a job. Is light meant?', 'light lamp on right'],
        ['"Otter Cove guest bathhouse"', 'Otter Cove', 'A title stands in quotes: "Otter Cove".', 'otter_cove "Otter Cove" {'],
        ['drain_from_left 56"', 'drain from left 56"', 'drain_from_left is one word here.', 'drain_from_left 56"'],
    ])('%s as %s', async (piece, by, message, cure) => { await expectOne(withPiece(piece, by), message, cure); });
    test('the kind of an entry as two words', async () => {
        const text = exampleText('catalogue/skerry.hotroom').replace('door_model Leaf24', 'door model Leaf24');
        const { findings } = await analyzeText(text, syntaxOnly, 'catalogue/other.hotroom');
        expect(findings.map(({ message }) => message)).toEqual(['door_model is one word here.']);
        expect(applyFix(text, findings[0]!.fixes![0]!)).toBe(exampleText('catalogue/skerry.hotroom'));
    });
    test('an unknown kind whose facts several kinds take is left to be told', async () => {
        await expectOne(withPiece('light lamp on right   { model Ember; from front 40"; height 62" }', 'skylight view on right { model View18; from front 40" }'),
            '‘skylight’ is not known in a job. Here may stand drawn_by, variant, sign_off, climate, circuit, decision, door, window, bench, heater and 8 other words.', undefined);
    });
    test('a title before what a job is made from', async () => {
        const series = 'series cottage { parameter w { takes length; otherwise 80" } }\n';
        const messages = async (text: string): Promise<string[]> => (await analyzeText(text, syntaxOnly)).findings.filter(({ rule }) => rule !== 'fact-missing').map(({ message }) => message);
        expect(await messages(`${series}job one Small Room is cottage(84")\n`)).toEqual(['A title stands in quotes: "Small Room".', ...await messages(`${series}job one "Small Room" is cottage(84")\n`)]);
    });
});

describe('conditions', () => {
    test('the functions that touch their bracket are those of the language', () => { expect([...functionNames].sort()).toEqual(Object.keys(functions).sort()); });
    test.each([
        ['when room.width == 8\'6"', '‘==’ is written = here.', 'when room.width = 8\'6"'], ['when room.width => 8\'', '‘=>’ is written >= here.', 'when room.width >= 8\''],
        ['when room.width =< 9\'', '‘=<’ is written <= here.', 'when room.width <= 9\''], ['when room.width <> 9\'', '‘<>’ is written != here.', 'when room.width != 9\''],
        ['when not (room.width < 3")', 'not is written not(condition): its bracket touches it.', 'when not(room.width < 3")'],
        ['when not high', 'not is written not(condition): its bracket touches it.', 'when not(high)'],
        ['when not room.width < 3"', 'not is written not(condition): its bracket touches it.', undefined],
        ['when max (room.width, 3") > 2"', 'max is written max(…): its bracket touches it.', 'when max(room.width, 3") > 2"'],
    ])('%s', async (fact, message, cure) => { await expectOne(withPiece('guard     yes', `guard yes; ${fact}`).replace('    site {', '    let high = upper.top > 90"\n    site {'), message, cure); });
    test('a fact is no comparison, however it is written', async () => {
        await expectOne(withPiece('top       37"', 'top == 37"'), '‘=’ compares two values. A fact is a word and then its value, such as top 37".', undefined);
    });
});
