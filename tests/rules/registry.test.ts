import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { isLanguageRule } from '../../language/src/model/language-rules.js';
import { allRules } from '../../language/src/rules/index.js';
import { findingsOf } from '../support/check.js';
import { withStandardJob } from '../support/standard-job.js';

const folder = new URL('../../language/src/rules/', import.meta.url);
const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).map(path => path.replaceAll('\\', '/'))
    .filter(path => path.includes('/') && path.endsWith('.ts') && readFileSync(new URL(path, folder), 'utf8').includes('= defineRule('));

test('every rule file is registered under its own name, in its family', () => {
    expect(allRules.map(rule => `${rule.family}/${rule.id}.ts`).sort()).toEqual(files.sort());
});
test('ids are unique, kebab-case and not those of the language', () => {
    expect(new Set(allRules.map(rule => rule.id)).size).toBe(allRules.length);
    expect(allRules.filter(rule => !/^[a-z]+(-[a-z0-9]+)+$/.test(rule.id) || isLanguageRule(rule.id)).map(rule => rule.id)).toEqual([]);
});

describe.each(allRules)('$id', rule => {
    test('has a test file', () => { expect(existsSync(new URL(`${rule.family}/${rule.id}.test.ts`, import.meta.url))).toBe(true); });
    test('reports its bad example and accepts its good one', async () => {
        expect(await findingsOf(rule, withStandardJob(rule.bad))).not.toEqual([]);
        expect(await findingsOf(rule, withStandardJob(rule.good))).toEqual([]);
    });
    test('says why, where from, what was measured against what, and whether it can be mended', async () => {
        expect(rule.why.length).toBeGreaterThan(20);
        expect(rule.sources.length).toBeGreaterThan(0);
        const findings = await findingsOf(rule, withStandardJob(rule.bad));
        for (const finding of findings) expect({ measured: finding.measured, required: finding.required }, finding.message).toEqual({ measured: expect.anything() as unknown, required: expect.anything() as unknown });
        const fixes = findings.flatMap(finding => finding.fixes ?? []);
        if (rule.fixes === 'none') expect(fixes).toEqual([]);
        if (rule.fixes === 'safe') expect(fixes.some(fix => fix.safety === 'safe')).toBe(true);
        if (rule.fixes === 'review') expect(fixes.every(fix => fix.safety === 'review')).toBe(true);
    });
});
