import { describe, expect, test } from 'vitest';
import { listNames } from '../../language/src/model/list-names.js';
import { blocksIn } from '../../language/src/vocabulary/index.js';
import { analyzeText, exampleText } from '../support/workspace.js';

/** Message of the one finding of a rule in a text that may use the example catalogues. */
async function messageOf(rule: string, text: string, others: Readonly<Record<string, string>> = {}): Promise<string> {
    const { findings } = await analyzeText(text, { rules: [] }, 'job.hotroom', others);
    const messages = findings.filter(finding => finding.rule === rule).map(({ message }) => message);
    expect(messages).toHaveLength(1);
    return messages[0]!;
}
const skerry = 'use "catalogue/skerry.hotroom"';
const heaters = 'use "catalogue/heaters.hotroom"';
const room = (system: string): string => `room { system ${system}; width 84"; depth 72"; height 7'0" }`;
const job = (...lines: readonly string[]): string => `job a {\nrules us_dwelling\n${lines.join('\n')}\n}\n`;
const inCatalogue = (kind: string, count: number): string => `catalogue many {\n${Array.from({ length: count }, (_, i) => `    ${kind} Kind${String.fromCharCode(97 + i)} { length 2" }`).join('\n')}\n}\n`;

describe('a name nothing answers to', () => {
    test('a file that uses nothing', async () => {
        expect(await messageOf('unknown-name', job(room('Skerry'))))
            .toBe('There is no panel system called Skerry. This file uses no other. Put use and the path of a catalogue with a panel system at its top, such as use "catalogue/tidewater.hotroom".');
    });
    test('used files none of which has one', async () => {
        expect(await messageOf('unknown-name', `${heaters}\n${job(room('Skerry'))}`))
            .toBe('There is no panel system called Skerry. This file uses "catalogue/heaters.hotroom", and it has no panel system. Use a catalogue that has one.');
    });
    test('several used files none of which has one', async () => {
        expect(await messageOf('unknown-name', `${heaters}\nuse "mine.hotroom"\n${job(room('Skerry'))}`, { 'mine.hotroom': 'catalogue mine { }\n' }))
            .toContain('This file uses "catalogue/heaters.hotroom" and "mine.hotroom", and none of them has a panel system.');
    });
    test('the names there are', async () => {
        expect(await messageOf('unknown-name', `${skerry}\n${job('door d on front { model Portal; from left 20"; hinge left }')}`)).toMatch(/^There is no door model called Portal\. There (is|are) .*Leaf24/);
    });
    test('one that is spelt alike is asked for, and the others stand behind', async () => {
        expect(await messageOf('unknown-name', `use "mine.hotroom"\n${job('heater h on right { model Kindx; from front 8" }')}`, { 'mine.hotroom': 'catalogue mine {\n    heater_model Kinda { }\n    heater_model Other { }\n}\n' }))
            .toBe('There is no heater model called Kindx. Is Kinda meant? There are Kinda and Other.');
    });
    test('blocks of the job, without the one the name stands in', async () => {
        const bench = (name: string, more = ''): string => `bench ${name} on back { build Slatted; top 37"; depth 20"${more} }`;
        expect(await messageOf('unknown-name', `${skerry}\n${job(bench('upper'), bench('lower', '; in_front_of sofa'))}`)).toBe('There is no bench called sofa. There is upper.');
        expect(await messageOf('unknown-name', `${skerry}\n${job(bench('lower', '; in_front_of sofa'))}`)).toBe('There is no bench called sofa. This job has no other bench.');
    });
    test.each([
        [['a'], 'There is a.'], [['a', 'b'], 'There are a and b.'],
        [['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h'], 'There are a, b, c, d, e, f, g and h.'],
        [['Tarna', 'Tarnb', 'Tarnc', 'Tarnd', 'Tarne', 'Tarnf', 'Tarng', 'Tarnh', 'Tarni'], 'There are 9; spelt most alike are Tarna, Tarnb, Tarnc, Tarnd and Tarne.'],
        [['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h', 'Tarn6'], 'There are 9; spelt most alike are Tarn6, a, b, c and d.'],
    ])('%j', (names, sentence) => { expect(listNames('Tarn', names)).toBe(sentence); });
    test('many names of a used file', async () => {
        const message = await messageOf('unknown-name', `use "mine.hotroom"\n${job('light l on left { model Nix; from front 8"; height 62" }')}`, { 'mine.hotroom': inCatalogue('light_model', 12) });
        expect(message).toMatch(/^There is no light model called Nix\. There are 12; spelt most alike are (Kind[a-l](, | and )?){5}\.$/);
    });
});

describe('a word that is not known', () => {
    test.each([
        ['the facts a block lacks first', 'site { colour red; width 96"; floor tile }', '‘colour’ is not known in a site. Missing here are depth and ceiling; diagonals, floor_fall, falls_to, drain_from_left, drain_from_front, free, reach, clear, doorway, corridor and \\d+ other words may stand here too\\.'],
        ['one fact', 'bench b on back { zzzzzz 3; top 18"; depth 20" }', '‘zzzzzz’ is not known in a bench. Missing here is build; length, from, .* may stand here too\\.'],
        ['blocks that stand once are not offered twice', 'site { width 96"; depth 96"; floor tile; ceiling 7\'6" }\nzzzzzz 3', '‘zzzzzz’ is not known in a job. Here may stand number, revision, (?!.*\\bsite\\b).*\\broom, .* and \\d+ other words\\.'],
        ['few words are all said', 'circuit c { feeds h; segment s { zzzzzz 3; length 3\'; ambient 68 degF } }', '‘zzzzzz’ is not known in a segment. Nothing more may stand here; remove the line\\.'],
        ['a wall without from', 'door d on front { left 20"; model Leaf24; hinge left }', '‘left’ is not known in a door. A place is written with from and the wall, such as from left 12 1/2"\\.'],
        ['the last missing one', 'circuit c { feeds h; segment s { zzzzzz 3; length 3\' } }', '‘zzzzzz’ is not known in a segment. Missing here is ambient\\.'],
    ])('%s', async (_, lines, message) => {
        const said = await messageOf('unknown-word', job(lines));
        expect(said).toMatch(new RegExp(`^${message}$`));
        expect(said.split(',').length).toBeLessThanOrEqual(13);
    });
    test('the whole of a word that was written by its beginning', async () => {
        expect(await messageOf('unknown-word', 'catalogue c {\n    door Leaf { }\n}\n')).toBe('‘door’ is not known in a catalogue. Is door_model meant?');
    });
    test.each([
        ['room { width 84" }', 'It belongs in a job: put it between the braces of one.'],
        ['segment { length 3\' }', 'It belongs in a circuit: put it between the braces of one.'],
        ['width 84"', ''],
    ])('at the top of a file: %s', async (text, cure) => {
        const [start, words, end] = [`‘${text.split(' ')[0]!}’ does not stand at the top of a file; `, [...blocksIn('file'), 'use'], ` do.${cure === '' ? '' : ` ${cure}`}`];
        const message = await messageOf('unknown-word', text);
        expect([message.startsWith(start), message.endsWith(end)]).toEqual([true, true]);
        expect(words.filter(word => !message.slice(start.length).includes(word))).toEqual([]);
    });
});

describe('a path that leads nowhere', () => {
    test('the file that is not used yet, not the one that is', async () => {
        expect(await messageOf('use-not-found', `${skerry}\nuse "catalogue/skery.hotroom"\n`, { 'catalogue/skerr2.hotroom': '' })).toBe('There is no file "catalogue/skery.hotroom". Is "catalogue/skerr2.hotroom" meant?');
    });
    test('the same name in another folder', async () => {
        expect(await messageOf('use-not-found', 'use "skerry.hotroom"\n')).toBe('There is no file "skerry.hotroom". Is "catalogue/skerry.hotroom" meant?');
    });
    test('nothing like it: what there is', async () => {
        expect(await messageOf('use-not-found', `${skerry}\nuse "zzzzzz.hotroom"\n`)).toBe('There is no file "zzzzzz.hotroom". The path is counted from the folder of this file. There is near it "catalogue/heaters.hotroom".');
    });
    test.each([
        ['catalogue\\skerry.hotroom', 'catalogue/skerry.hotroom'], ['..\\jobs\\catalogue\\skerry.hotroom', '../jobs/catalogue/skerry.hotroom'],
        ['catalogue\\\\skerry.hotroom', 'catalogue/skerry.hotroom'], ['.\\catalogue/skerry.hotroom', './catalogue/skerry.hotroom'],
    ])('backslashes: %s', async (written, turned) => {
        const text = `use "${written}"\n${job(room('Skerry'))}`;
        const { findings } = await analyzeText(text, { rules: [] });
        expect(findings).toMatchObject([{ rule: 'use-not-a-path', message: `"${written}" has backslashes. A path is written with /: "${turned}".`, fixes: [{ safety: 'safe', edits: [{ newText: `"${turned}"` }] }] }]);
        expect((await analyzeText(text.replace(written, turned), { rules: [] })).findings).toEqual([]);
    });
    test.each(['C:\\jobs\\skerry.hotroom', '\\\\shop\\skerry.hotroom', 'catalogue\\skerry'])('no fix for %s', async written => {
        const { findings } = await analyzeText(`use "${written}"\n`, { rules: [] });
        expect(findings).toMatchObject([{ rule: 'use-not-a-path', message: `"${written}" has backslashes. Write a path from this file, with / and ending in .hotroom.` }]);
        expect(findings[0]!.fixes ?? []).toEqual([]);
    });
});

describe('one cause, one message', () => {
    const all = async (text: string, others?: Readonly<Record<string, string>>): Promise<readonly string[]> => (await analyzeText(text, {}, 'job.hotroom', others)).findings.filter(({ severity }) => severity === 'error').map(({ message }) => message);
    test('a line use that is gone', async () => {
        expect(await all(exampleText('birch-point.hotroom').replace('use "catalogue/skerry.hotroom"\n', ''))).toEqual([expect.stringMatching(
            /^Nothing in sight is called Skerry \(panel system\), .*; what is used here: "catalogue\/heaters\.hotroom"\. "catalogue\/skerry\.hotroom" gives them\. Put use "catalogue\/skerry\.hotroom" at the top of the file\.$/)]);
    });
    test('both of them', async () => {
        const text = exampleText('birch-point.hotroom').replace(/^use .*\n/gm, '');
        expect(await all(text)).toEqual([expect.stringMatching(/^Nothing in sight is called .*; this file uses no other\. "catalogue\/skerry\.hotroom" gives \d of them\. Put use/)]);
    });
    test('the line that begins the job is gone', async () => {
        const text = exampleText('birch-point.hotroom').replace(/^job .*\n/m, '');
        expect(await all(text)).toEqual([expect.stringMatching(/^‘number’ and \d+ more lines belong in a job\. Put a line such as job first "First room" \{ before them\.$/)]);
    });
    test('an empty file', async () => {
        expect((await analyzeText('')).findings.map(({ rule, severity }) => [rule, severity])).toEqual([['file-without-a-job', 'info']]);
        expect((await analyzeText('use "catalogue/skerry.hotroom"\n')).findings.map(({ rule }) => rule)).toEqual(['file-without-a-job']);
    });
});

test('a fact of another block is told with what this one lacks', async () => {
    const text = exampleText('birch-point.hotroom').replace('top       37"', 'threshold 37"');
    expect((await analyzeText(text)).findings.filter(({ severity }) => severity === 'error').map(({ message }) => message)).toEqual(['‘threshold’ is not known in a bench. It belongs in a door. Missing here is top.']);
});
test.each([['top       37"', 'height    37"', '‘height’ is not known in a bench. Is top meant?'], ['hinge', 'handing', '‘handing’ is not known in a door. Is hinge meant?']])('a word people say for another leads to it: %s', async (written, said, message) => {
    const text = exampleText('birch-point.hotroom').replace(written, said);
    expect((await analyzeText(text)).findings.filter(({ severity }) => severity === 'error').map(found => found.message)).toEqual([message]);
});
