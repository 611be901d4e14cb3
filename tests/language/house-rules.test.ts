import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { isLanguageRule } from '../../language/src/model/language-rules.js';
import { compare } from '../support/check.js';
import { dedent } from '../support/dedent.js';
import { withStandardJob } from '../support/standard-job.js';
import { analyzeText } from '../support/workspace.js';

const room = withStandardJob('');
const house = async (rules: string, path?: string): Promise<readonly string[]> => {
    const analysis = await (path === undefined ? analyzeText(`${room}\n${dedent(rules)}`)
        : analyzeText(`use "${path}"\n${room}`, {}, 'job.hotroom', { [path]: dedent(rules) }));
    return analysis.findings.filter(({ citation, rule }) => citation?.kind === 'house' || rule === 'mixed-dimensions' || rule === 'name-in-calculation').map(({ rule, severity, message }) => `${severity} ${rule}: ${message}`);
};

describe('house rules', () => {
    const seated = (least: string): string => `
        rule seated_headroom "Head clearance over the top bench" {
            severity  error
            each      bench
            when      bench.is_highest
            require   room.inside.height - bench.top >= ${least}
            because   "house standard 7"
        }`;
    test('a finding has the values of both sides, its place and where it comes from', async () => {
        const text = `${room}\n${dedent(seated('44"'))}`;
        const [finding] = (await analyzeText(text)).findings.filter(({ rule }) => rule === 'seated_headroom');
        expect(finding?.message).toBe('Head clearance over the top bench, bench upper: room.inside.height - bench.top is 43 1/4"; at least 44" is needed (house standard 7).');
        expect(finding && text.slice(finding.at.start, finding.at.end)).toBe('37"');
        expect(finding).toMatchObject({ severity: 'error', subject: 'upper', measured: { kind: 'length' }, required: { kind: 'length' }, citation: { kind: 'house', text: 'house standard 7' } });
    });
    test('what equals the requirement passes', async () => { expect(await house(seated('43 1/4"'))).toEqual([]); });
    test('a rule of a catalogue holds for every job that uses it', async () => {
        expect(await house(`catalogue house {${seated('44"')}\n}`, 'house.hotroom')).toHaveLength(1);
    });
    test('of the job as a whole, over lists', async () => {
        expect(await house('rule deep { require all(bench.depth >= 18"); because "house standard 3" }'))
            .toEqual(['warning deep: deep: bench lower: bench.depth is 16"; at least 18" is needed (house standard 3).']);
    });
    test('calculated requirements name their calculation', async () => {
        expect(await house('rule big { severity info; require room.inside.volume <= stove.power * 20 ft3 / 1 kW; because "house standard 9" }'))
            .toEqual([expect.stringMatching(/^info big: big: room\.inside\.volume is [\d.]+ ft3; at most 120 ft3, stove\.power \* 20 ft3 \/ 1 kW, is needed \(house standard 9\)\.$/)]);
    });
    test('a let beside it or at the top of its file, computed names in it too', async () => {
        expect(await house('let least = 44"\ncatalogue house {\n    let head = room.inside.height - max(bench.top)\n    rule low { require head >= least; because "house standard 7" }\n}', 'house.hotroom'))
            .toEqual(['warning low: low: head is 43 1/4"; at least 44", least, is needed (house standard 7).']);
    });
    test('severity is a warning unless it says otherwise', async () => { expect(await house('rule x { require 1 > 2; because "no" }')).toEqual(['warning x: x: 1; more than 2 is needed (no).']); });
});

describe('a rule that is wrong is told so at its own text', () => {
    test('in the job\'s own file', async () => {
        const text = `${room}\n${dedent(`
            rule a {
                require   room.inside.volume > 3 kW
                //@ 15-40 error: ‘>’ compares a volume with a power; both sides must be of one kind.
                because   "x"
            }
            rule b {
                each      bench
                require   bench.tp > 3"
                //@ 15-23 💡 error: Nothing is called ‘bench.tp’ here. Is bench.top meant?
                because   "x"
            }`)}`;
        compare(text, (await analyzeText(text)).findings.filter(({ severity }) => severity === 'error'));
    });
    test('in a file without a job', async () => {
        const text = dedent(`
            catalogue house {
                rule b {
                    each      bench
                    require   bench.tp > 3"
                    //@ 19-27 💡 error: Nothing is called ‘bench.tp’ here. Is bench.top meant?
                    because   "x"
                }
                rule c {
                    require   room.inside.height > 3 A
                    //@ 19-43 error: ‘>’ compares a length with a current; both sides must be of one kind.
                    because   "x"
                }
            }`);
        compare(text, (await analyzeText(text)).findings.filter(({ severity }) => severity === 'error'));
    });
});

describe('words', () => {
    const mistakes = async (require: string): Promise<readonly string[]> => (await analyzeText(`${room}\nrule a { ${require}; because "x" }`)).findings.filter(({ severity }) => severity === 'error').map(({ message }) => message);
    test.each([
        ['require all(door.model.catch != lok)', 'door.model.catch is never lok: it is roller, magnetic, lock or latch. Is lock meant?'],
        ['each site; require site.floor = tyle', 'site.floor is never tyle: it is tile, concrete, vinyl, stone, other_waterproof, wood or carpet. Is tile meant?'],
        ['each door; require door.wall = front or left', '‘left’ alone is no condition. Say the name again: or door.wall = left.'],
        ['each bench; require bench.fascia = true', 'bench.fascia is never true: it is yes or no.'],
    ])('%s', async (require, message) => { expect((await mistakes(require)).map(found => found.replace(/it is roller.*(?= Is)/, 'it is roller, magnetic, lock or latch.'))).toEqual([message]); });
    test.each(['require count(vent.role = intake) = 1', 'require sum(circuit.segment.length) <= 60\'', 'each vent; when vent.role = exhaust; require vent.free_area >= 4 in2'])('%s holds', async require => {
        expect((await analyzeText(`${room}\nrule a { ${require}; because "x" }`)).findings.filter(({ rule, severity }) => rule === 'a' || severity === 'error')).toEqual([]);
    });
});

test('the rules of the language reference hold for the standard job', async () => {
    const reference = readFileSync(new URL('../../language/handbook/reference.md', import.meta.url), 'utf8');
    const rules = /### House rules[\s\S]*?```hotroom\n([\s\S]*?)```/.exec(reference)?.[1] ?? '';
    expect(rules.match(/^rule /gm)).toHaveLength(5);
    const found = (await analyzeText(`${room}\n${rules}`)).findings.filter(({ rule, citation }) => citation?.kind === 'house' || isLanguageRule(rule));
    expect(found).toEqual([]);
});

describe('a condition of several parts', () => {
    const told = async (rule: string): Promise<readonly string[]> => (await house(`rule x { ${rule}; because "y" }`)).map(found => found.replace('warning x: x', 'x'));
    test.each([
        ['require all(bench.depth >= 18")', ['x: bench lower: bench.depth is 16"; at least 18" is needed (y).']],
        ['require all(bench.depth >= 21" and bench.top > 10")', ['x: bench upper: bench.depth is 20", at least 21" is needed; bench lower: bench.depth is 16", at least 21" is needed (y).']],
        ['each door; require door.hinge = right and door.swing = outward and count(bench) = 3', ['x, door entry: door.hinge is left, right is needed; count(bench) is 2, 3 is needed (y).']],
        ['each bench; when bench.is_highest; require (bench.depth >= 21" or bench.top > 60")', ['x, bench upper: bench.depth is 20", at least 21" is needed, or bench.top is 37", more than 60" is needed (y).']],
        ['require any(bench.depth >= 50")', ['x: any(bench.depth >= 50") does not hold (y).']],
        ['require all(bench.depth >= 50" or bench.top < 20")', ['x: bench upper: bench.depth >= 50" or bench.top < 20" does not hold (y).']],
        ['require all(bench.depth >= 16") and all(bench.top >= 18")', []],
    ])('%s', async (rule, messages) => { expect(await told(rule)).toEqual(messages); });
    test('it stands where the part that fails is written', async () => {
        const text = `${room}\nrule x { require all(bench.depth >= 18"); because "y" }`;
        const [finding] = (await analyzeText(text)).findings.filter(({ rule }) => rule === 'x');
        expect(finding && text.slice(finding.at.start, finding.at.end)).toBe('16"');
        expect(finding).toMatchObject({ measured: { kind: 'length' }, required: { kind: 'length' } });
    });
});

describe('a condition in other words is led to how it is written', () => {
    const mistakes = async (rule: string): Promise<readonly string[]> => (await analyzeText(`${room}\nrule a { ${rule}; because "x" }`)).findings.filter(({ severity }) => severity === 'error').map(({ message, fixes = [] }) => `${message} ${fixes.map(({ title }) => `[${title}]`).join('')}`.trim());
    test.each([
        ['each bench; require bench.hight <= 40"', 'Nothing is called ‘bench.hight’ here. Is bench.top meant? [Write bench.top]'],
        ['require upper.height <= 40"', 'Nothing is called ‘upper.height’ here. Is upper.top meant? [Write upper.top]'],
        ['each bench; require bench.top = 16" to 40"', 'A range is no figure to compare with. Write both ends: bench.top >= 16" and bench.top <= 40". [Write both ends]'],
        ['each door; require door.hinge is left', '‘is’ is written = in a condition: door.hinge = left. [Write door.hinge = left]'],
        ['each bench; require bench.depth is at least 16"', '‘is at least’ is written >= in a condition: bench.depth >= 16". [Write bench.depth >= 16"]'],
        ['each bench; require bench.top between 16" and 40"', '‘between’ is written as two comparisons in a condition: bench.top >= 16" and bench.top <= 40". [Write bench.top >= 16" and bench.top <= 40"]'],
        ['each bench; require bench.top >= 16"\nand bench.top <= 40"', 'A line ends a fact, so ‘and’ begins none here. Write the whole condition on one line; a let beside the rule can give a part of it a name.'],
    ])('%s', async (rule, message) => { expect(await mistakes(rule)).toEqual([message]); });
});
