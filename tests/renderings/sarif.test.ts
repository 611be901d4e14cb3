import { expect, test } from 'vitest';
import type { ReportedFinding } from '../../language/src/core/finding.js';
import { Places } from '../../language/src/renderings/findings-text.js';
import { allRuleHelp } from '../../language/src/renderings/rule-help.js';
import { sarifLog } from '../../language/src/renderings/sarif.js';

const text = 'job j {\r\n    note "🔥" ; top 37"\r\n}';
const uri = 'file:///jobs/odd%20name%20%23%25.hotroom';
const name = 'jobs/odd name #%.hotroom';
const start = text.indexOf('37"');
const finding = (more: Partial<ReportedFinding> = {}): ReportedFinding =>
    ({ at: { uri, start, end: start + 3 }, rule: 'unknown-word', severity: 'error', message: 'It is too low.', ...more });
const log = (...findings: readonly ReportedFinding[]) => sarifLog(findings, [name], new Places({ textOf: () => text, nameOf: () => name }), { version: '1.2.3' });

// OASIS SARIF 2.1.0: required properties by object (3.13 log, 3.14 run, 3.18 tool, 3.19 component, 3.27 result, 3.49 rule), from memory
test('what the format asks for is there', () => {
    const { version, $schema, runs: [run] } = log(finding());
    expect([version, $schema]).toEqual(['2.1.0', expect.stringMatching(/^https:\/\/.*sarif-schema-2\.1\.0\.json$/)]);
    expect(run!.tool.driver).toMatchObject({ name: 'hotroom', version: '1.2.3' });
    expect(run!.columnKind).toBe('utf16CodeUnits');
    for (const result of run!.results) expect(result.message.text).not.toBe('');
});

test('a result names its rule, level and region in UTF-16 columns from 1', () => {
    const [run] = log(finding()).runs;
    const [result] = run!.results;
    expect(result!.level).toBe('error');
    expect(run!.tool.driver.rules[result!.ruleIndex!]!.id).toBe(result!.ruleId);
    // `    note "🔥" ; top ` is 20 units long: the emoji counts two
    expect(result!.locations[0]!.physicalLocation.region).toEqual({ startLine: 2, startColumn: 21, endLine: 2, endColumn: 24 });
});

test('file names are relative references with everything reserved escaped', () => {
    const [run] = log(finding()).runs;
    const location = run!.results[0]!.locations[0]!.physicalLocation.artifactLocation;
    expect(location).toEqual({ uri: 'jobs/odd%20name%20%23%25.hotroom', uriBaseId: '%SRCROOT%', index: 0 });
    expect(decodeURIComponent(location.uri)).toBe(name);
    expect(run!.artifacts[location.index!]!.location.uri).toBe(location.uri);
});

test.each([['error', 'error'], ['warning', 'warning'], ['info', 'note'], ['hint', 'note']] as const)('%s is level %s', (severity, level) => {
    expect(log(finding({ severity })).runs[0]!.results[0]!.level).toBe(level);
});

test('other places and fixes travel along', () => {
    const at = { uri, start: 0, end: 3 };
    const [result] = log(finding({ related: [{ at, message: 'Here.' }], fixes: [{ title: 'Write 38"', safety: 'review', edits: [{ span: { uri, start, end: start + 3 }, newText: '38"' }] }] })).runs[0]!.results;
    expect(result!.relatedLocations).toMatchObject([{ id: 1, message: { text: 'Here.' }, physicalLocation: { region: { startLine: 1, startColumn: 1, endLine: 1, endColumn: 4 } } }]);
    expect(result!.fixes).toMatchObject([{ description: { text: 'Write 38"' }, artifactChanges: [{ replacements: [{ deletedRegion: { startLine: 2, startColumn: 21 }, insertedContent: { text: '38"' } }] }] }]);
});

// placeholders are {0}, a literal brace is doubled (3.11.5); [text](1) is a link (3.11.6); from memory
test('braces and link brackets in a message are literal', () => {
    expect(log(finding({ message: 'bench { … } [x](1) [y]' })).runs[0]!.results[0]!.message.text).toBe('bench {{ … }} \\[x](1) [y]');
});

test('every rule is described once, with help', () => {
    const { rules } = log().runs[0]!.tool.driver;
    expect(new Set(rules.map(({ id }) => id)).size).toBe(rules.length);
    expect(rules.map(({ id }) => id)).toEqual(allRuleHelp().map(({ id }) => id));
    for (const { shortDescription, fullDescription, help } of rules) for (const words of [shortDescription.text, fullDescription.text, help.text, help.markdown]) expect(words.trim()).not.toBe('');
});

test('a rule nobody described still gives a result', () => {
    const [result] = log(finding({ rule: 'made-up' })).runs[0]!.results;
    expect(result!.ruleId).toBe('made-up');
    expect(result).not.toHaveProperty('ruleIndex');
});
