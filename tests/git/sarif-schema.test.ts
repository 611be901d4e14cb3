import { readFileSync } from 'node:fs';
import { sarifToMarkdown } from '@security-alert/sarif-to-markdown';
import Ajv from 'ajv';
import { describe, expect, test } from 'vitest';
import type { SarifLog } from '../../language/src/renderings/sarif.js';
import { exampleText } from '../support/workspace.js';
import { Folder } from '../server/cli/command-line.js';

const json = (name: string): object => JSON.parse(readFileSync(new URL(`../../node_modules/${name}`, import.meta.url), 'utf8')) as object;
// The JSON Schema of SARIF 2.1.0 as @microsoft/jest-sarif ships it (rtm.5, draft 04): source of the check.
const ajv = new Ajv({ schemaId: 'id', allErrors: true }).addMetaSchema(json('ajv/lib/refs/json-schema-draft-04.json'));
const isValid = ajv.compile(json('@microsoft/jest-sarif/lib/schemas/sarif-2.1.0-rtm.5.json'));
const mistakesOf = (log: object): unknown => { isValid(log); return (isValid.errors ?? []).map(({ dataPath, message }) => `${dataPath} ${message ?? ''}`); };

async function sarifOf(files: Readonly<Record<string, string>>, ...words: readonly string[]): Promise<SarifLog> {
    const { out, code } = await new Folder(files).run(['check', '.', '--format', 'sarif', ...words]);
    expect(code).toBeLessThan(2);
    return JSON.parse(out) as SarifLog;
}
const catalogue = { 'catalogue/skerry.hotroom': exampleText('catalogue/skerry.hotroom'), 'catalogue/heaters.hotroom': exampleText('catalogue/heaters.hotroom') };

describe('SARIF against its published schema', () => {
    test('the schema refuses what is none', () => { expect(mistakesOf({ version: '2.1.0', runs: [{ results: [{ message: {} }] }] })).not.toEqual([]); });
    test.each([
        ['findings with fixes, related places and sources', exampleText('birch-point.hotroom').replace('front 8"', 'front 1"').replace('width     84"', 'widht     84"')],
        ['a finding somebody accepted', exampleText('birch-point.hotroom').replace(/\}\n$/, '    waive feet-below-stones on stove because "short people" by "office" until 2027-03-01\n}\n')],
        ['no finding', 'job j { }'],
    ])('%s', async (_, text) => { expect(mistakesOf(await sarifOf({ ...catalogue, 'a.hotroom': text }))).toEqual([]); });
    test('what the settings turned off', async () => {
        const log = await sarifOf({ ...catalogue, 'a.hotroom': exampleText('birch-point.hotroom'), 'hotroom.json': '{ "severities": { "feet-below-stones": "off" } }' });
        expect(mistakesOf(log)).toEqual([]);
        expect(JSON.stringify(log)).toContain('"suppressions"');
    });
    test('names of files that need escaping', async () => { expect(mistakesOf(await sarifOf({ 'odd name #%41 ä🔥.hotroom': 'job j { topp 3" }' }))).toEqual([]); });
});

// A general library that reads SARIF: what it makes of ours names every finding and where it stands.
test('a reader library opens it', async () => {
    const log = await sarifOf({ ...catalogue, 'a.hotroom': exampleText('birch-point.hotroom').replace('front 8"', 'front 1"').replace('top       37"', 'top       44"') });
    const [read] = sarifToMarkdown({ title: 'Findings', owner: 'office', repo: 'jobs', branch: 'main', sourceRoot: '' })(log as unknown as Parameters<ReturnType<typeof sarifToMarkdown>>[0]);
    const { results } = log.runs[0]!;
    expect(results.length).toBeGreaterThan(1);
    expect(read?.hasMessages).toBe(true);
    for (const { ruleId, locations } of results) {
        expect(read?.body).toContain(ruleId);
        expect(read?.body).toContain(`a.hotroom#L${locations[0]!.physicalLocation.region!.startLine}`);
    }
});

describe('the columns a reader cuts out with', () => {
    /** What the region of a result covers, read as SARIF 2.1.0 says: lines by CR LF, LF or CR, columns in UTF-16 units from 1, the end behind the last (3.30, from memory). */
    const covered = (text: string, log: SarifLog, rule: string): readonly string[] => log.runs[0]!.results.filter(({ ruleId }) => ruleId === rule).map(({ locations }) => {
        const { startLine, startColumn, endLine, endColumn } = locations[0]!.physicalLocation.region!;
        expect(endLine).toBe(startLine);
        return text.split(/\r\n|\n|\r/)[startLine - 1]!.slice(startColumn - 1, endColumn - 1);
    });
    test.each([
        ['tabs', 'job j {\n\t\ttopp 37"\n}\n'], ['an emoji before it on the line', 'job j {\n    number "🔥🔥"; topp 37"\n}\n'], ['CR LF', 'job j {\r\n\r\n    topp 37"\r\n}\r\n'], ['CR LF, tabs and emoji', '// 🔥\r\njob j {\r\n\tnumber "🔥";\ttopp 37"\r\n}\r\n'],
        ['a byte order mark', '\ufeffjob j {\n    topp 37"\n}\n'], ['letters that combine', 'job j {\n    number "e\u0301\u0301"; topp 37"\n}\n'],
    ])('%s', async (_, text) => {
        const log = await sarifOf({ 'a.hotroom': text });
        expect(log.runs[0]).toMatchObject({ columnKind: 'utf16CodeUnits' });
        expect(covered(text, log, 'unknown-word')).toEqual(['topp']);
    });
});

test('the problem matcher reads every line `hotroom check` begins a finding with, and no other', async () => {
    const manifest = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8')) as { contributes: { problemMatchers: readonly [{ pattern: { regexp: string; file: number; line: number; column: number; severity: number; code: number; message: number } }] } };
    const [{ pattern }] = manifest.contributes.problemMatchers;
    const folder = new Folder({ ...catalogue, 'jobs/a b.hotroom': exampleText('birch-point.hotroom').replaceAll('"catalogue/', '"../catalogue/').replace('front 8"', 'front 1"').replace('top       37"', 'top       44"'), 'hotroom.json': '{ "severities": { "feet-below-stones": "hint" } }' });
    const [{ out }, { out: data }] = [await folder.run(['check', 'jobs']), await folder.run(['check', 'jobs', '--format', 'json'])];
    const { findings } = JSON.parse(data) as { findings: readonly { rule: string; severity: string; message: string; at: { file: string; start: { line: number; column: number } } }[] };
    const read = out.split('\n').flatMap(line => { const found = new RegExp(pattern.regexp).exec(line); return found ? [[found[pattern.file], Number(found[pattern.line]), Number(found[pattern.column]), found[pattern.severity], found[pattern.code], found[pattern.message]]] : []; });
    expect(read).toEqual(findings.map(({ rule, severity, message, at }) => [at.file, at.start.line, at.start.column, severity, rule, message]));
    expect(new Set(findings.map(({ severity }) => severity))).toEqual(new Set(['error', 'warning', 'info', 'hint']));
});
