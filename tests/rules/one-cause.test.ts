import { describe, expect, test } from 'vitest';
import type { ReportedFinding } from '../../language/src/core/finding.js';
import { analyzeText, exampleText } from '../support/workspace.js';

/*
 * One cause, one message: a figure of the standard job is replaced by an absurd one, and the findings that come with it are counted. More than
 * three for one figure means that rules speak of consequences; they have to be silent where the rule of the cause speaks.
 */
const most = 3;
const source = exampleText('birch-point.hotroom');
const lines = source.split('\n');
const key = ({ rule, message }: ReportedFinding): string => `${rule}: ${message}`;

const known = new Set((await analyzeText(source)).findings.map(key));
const added = async (text: string): Promise<string[]> => (await analyzeText(text)).findings.map(key).filter(finding => !known.has(finding));
/** The standard job with one line replaced. */
const withLine = (line: string, by: string): string => {
    expect(source.split(line)).toHaveLength(2);
    return source.replace(line, by);
};

interface Figure { readonly at: number; readonly index: number; readonly text: string; readonly unit: string }
const pattern = /(?<![\w"'])(?:\d+'\d+"|\d+ \d+\/\d+"|\d+\/\d+"|\d+(?:"|'| V| A| degF| min))/g;
const figures: readonly Figure[] = lines.flatMap((line, at) => /^\s*\/\/|^use|^job|_on /.test(line) ? [] : [...line.matchAll(pattern)]
    .map(([text], i, all) => ({ at, index: [...line.matchAll(pattern)][i]?.index ?? all.length, text, unit: /["']/.test(text) ? '"' : text.replace(/^\d+/, '') })));

/** The figure in inches, near enough to make absurd ones of it. */
function inInches(text: string): number {
    const feet = Number(/^(\d+)'/.exec(text)?.[1] ?? 0);
    const inch = Number(/(?:^|')(\d+)(?: \d+\/\d+)?"/.exec(text)?.[1] ?? 0);
    return feet * 12 + inch;
}
const absurd = ({ text, unit }: Figure): readonly string[] => unit !== '"' ? [`0${unit}`, `1${unit}`, `9999${unit}`]
    : ['0"', '1/8"', '1"', '600"', ...[0.25, 0.5, 0.75, 1.25, 1.5, 2, 3].map(factor => `${Math.max(2, Math.round(inInches(text) * factor))}"`)];

describe('every figure of the standard job, made absurd', () => {
    test('is found at all', () => { expect(figures.length).toBeGreaterThan(35); });
    test.each(figures)('line $at: $text', async figure => {
        const line = lines[figure.at] ?? '';
        for (const value of absurd(figure)) {
            const text = lines.with(figure.at, line.slice(0, figure.index) + value + line.slice(figure.index + figure.text.length)).join('\n');
            const findings = await added(text);
            expect(findings.length, `${line.trim()} with ${value}:\n${findings.join('\n')}`).toBeLessThanOrEqual(most);
        }
    });
});

/** Fact, what is written instead, at most so many findings, and the rule of the cause, which has to be among them. */
const table: readonly (readonly [fact: string, instead: string, most: number, cause: string])[] = [
    ['width     84"', 'width     600"', 3, 'site-too-small'],
    ['width     84"', 'width     21"', 3, 'opening-runs-off-wall'],
    ['depth     79 1/2"', 'depth     600"', 3, 'site-too-small'],
    ['depth     79 1/2"', 'depth     20"', 2, 'bench-outside-room'],
    ['height    7\'0"', 'height    60"', 1, 'room-too-low'],
    ['height    7\'0"', 'height    21"', 1, 'room-too-low'],
    ['height    7\'0"', 'height    600"', 2, 'site-too-low-for-assembly'],
    ['ceiling   7\'6"', 'ceiling   60"', 1, 'site-too-low-for-assembly'],
    ['free      front, right', '', 1, 'free-sides-not-stated'],
    ['doorway   32" x 80"', '', 1, 'site-not-fully-measured'],
    ['supply    240 V single_phase', 'supply    0 V single_phase', 1, 'supply-wrong-voltage'],
    ['supply    240 V single_phase', 'supply    9999 V single_phase', 1, 'supply-wrong-voltage'],
    ['from      left 23 7/8"', 'from      left 600"', 1, 'opening-runs-off-wall'],
    ['top       37"', 'top       1"', 1, 'bench-top-below-build-up'],
    ['top       37"', 'top       600"', 2, 'bench-outside-room'],
    ['depth     20"', 'depth     60"', 1, 'bench-outside-room'],
    ['depth     20"', 'depth     70"', 1, 'bench-outside-room'],
    ['depth     20"', 'depth     600"', 1, 'bench-outside-room'],
    ['top       18"', 'top       60"', 1, 'tier-behind-not-higher'],
    ['top       18"', 'top       600"', 1, 'bench-outside-room'],
    ['depth     16"', 'depth     600"', 1, 'bench-outside-room'],
    ['bottom 4"; air outdoors', 'bottom 600"; air outdoors', 1, 'vent-above-ceiling'],
    ['size 8" x 4"; behind stove', 'size 8" x 600"; behind stove', 2, 'vent-above-ceiling'],
];

test.each(table)('%s written as %s gives at most %i, with %s', async (fact, instead, limit, cause) => {
    const findings = await added(withLine(fact, instead));
    expect(findings.length, findings.join('\n')).toBeLessThanOrEqual(limit);
    expect(findings.map(finding => finding.split(':')[0])).toContain(cause);
});

test('no figure is shown that is not a number', async () => {
    for (const [fact, instead] of table) for (const finding of await added(withLine(fact, instead))) expect(finding).not.toMatch(/NaN|Infinity|undefined/);
});

/** Blocks a job can be without, and the keys a message has to name so that one knows what to write. */
const missing: readonly (readonly [block: RegExp, rule: string, keys: readonly string[]])[] = [
    [/ {4}site \{[^}]*\}\n/, 'site-missing', ['width', 'depth', 'ceiling', 'floor', 'free']],
    [/ {4}room \{[^}]*\}\n/, 'room-missing', ['system', 'width', 'depth', 'height']],
    [/ {4}door entry[^}]*\}\n/, 'door-missing', ['model', 'from', 'hinge']],
    [/ {4}heater stove[^}]*\}\n/, 'heater-missing', ['model', 'from', 'guard']],
    [/ {4}circuit stove_feed \{(?:[^{}]*\{[^{}]*\})*[^}]*\}\n/, 'circuit-missing', ['feeds', 'length', 'ambient']],
    [/ {4}sensor on[^}]*\}\n/, 'sensor-missing', ['centre', 'below_ceiling']],
    [/ {4}control on[^}]*\}\n/, 'control-missing', ['stands', 'height', 'timer']],
    [/ {4}thermometer[^}]*\}\n/, 'thermometer-missing', ['from']],
    [/ {4}vent intake[^}]*\}\n/, 'intake-missing', ['size', 'bottom', 'air']],
    [/ {4}vent exhaust[^}]*\}\n/, 'exhaust-missing', ['size', 'from', 'bottom', 'air']],
    [/ {4}sign bathing[^}]*\}\n/, 'bathing-sign-missing', ['says', 'stands']],
];
test.each(missing)('a job without %s is told the facts to write by %s', async (block, rule, keys) => {
    expect(source).toMatch(block);
    const [finding] = (await added(source.replace(block, ''))).filter(one => one.startsWith(`${rule}: `));
    const sample = /\{(.*)\}/.exec(finding ?? '')?.[1] ?? '';
    for (const fact of keys) expect(sample).toMatch(new RegExp(`\\b${fact}\\b`));
});
