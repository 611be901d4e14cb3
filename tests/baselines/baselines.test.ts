import { readdirSync } from 'node:fs';
import { beforeAll, describe, expect, test } from 'vitest';
import type { Analysis } from '../../language/src/analyze.js';
import type { ReportedFinding } from '../../language/src/core/finding.js';
import { walls } from '../../language/src/core/geometry.js';
import { isLanguageRule } from '../../language/src/model/language-rules.js';
import { ruleById } from '../../language/src/rules/index.js';
import { examplePaths, exampleText } from '../support/workspace.js';
import { annotate } from './annotate.js';
import { openExamples, pathOfExample } from './examples.js';
import { listJobs } from './list-facts.js';

const paths = examplePaths();
const mistakes = paths.filter(path => path.startsWith('mistakes/'));
const sound = paths.filter(path => !path.startsWith('mistakes/'));
const grave = ['error', 'warning'];
const baseline = (path: string, kind: 'findings' | 'facts'): string => `./${path.replace(/\.hotroom$/, '')}.${kind}.txt`;
/** The rule a file of mistakes/ shows is its name. */
const shownRule = (path: string): string => path.replace(/^.*\//, '').replace(/\.hotroom$/, '');

let analysisOf: (path: string) => Analysis;
beforeAll(async () => { analysisOf = await openExamples(); });

describe.each(paths)('%s', path => {
    test('has the findings of its baseline, each in its place', async () => {
        const { file, findings } = analysisOf(path);
        const findFile = (uri: string): { path: string; text: string } => ({ path: pathOfExample(uri), text: exampleText(pathOfExample(uri)) });
        await expect(annotate(exampleText(path), findings, file.uri, findFile)).toMatchFileSnapshot(baseline(path, 'findings'));
    });
    test('has the facts and parts of its baseline', async () => {
        const { jobs } = analysisOf(path);
        if (jobs.length > 0) await expect(listJobs(jobs)).toMatchFileSnapshot(baseline(path, 'facts'));
    });
    test('begins with a remark that says it is fictional and what it shows', () => {
        const remarks = exampleText(path).split('\n').findIndex(line => !line.startsWith('//'));
        expect(remarks).toBeGreaterThanOrEqual(1);
        expect(remarks).toBeLessThanOrEqual(6);
        expect(exampleText(path).split('\n').slice(0, remarks).join(' ')).toMatch(/fiction|none of them exists/i);
    });
});

describe('sound examples', () => {
    test.each(sound)('%s has no error and no warning', path => {
        expect(analysisOf(path).findings.filter(({ severity }) => grave.includes(severity)).map(({ rule, message }) => `${rule}: ${message}`)).toEqual([]);
    });
    test.each(sound)('%s has few remarks besides', path => { expect(analysisOf(path).findings.length).toBeLessThanOrEqual(4 * Math.max(1, analysisOf(path).jobs.length)); });
    test.each(sound.filter(path => /^(job|series) /m.test(exampleText(path))))('%s is worked out in full', path => {
        const jobs = analysisOf(path).jobs;
        expect(jobs.length).toBeGreaterThan(0);
        for (const { job, results } of jobs) {
            expect(job.isWhole).toBe(true);
            expect(walls.filter(wall => !results.shell?.result.walls[wall].panels.length)).toEqual([]);
            expect(results.shell?.result.ceiling?.panels.length ?? 0).toBeGreaterThan(0);
            expect(results.benches?.result.problems.filter(({ kind }) => kind !== 'across-opening')).toEqual([]);
            expect(results.heaters.length).toBeGreaterThan(0);
            expect(results.circuits.map(({ result }) => result.deviceA !== undefined && result.conductor !== undefined)).toEqual([true]);
            expect(results.parts.length).toBeGreaterThan(15);
        }
    });
});

describe('examples of mistakes', () => {
    test('are at least twelve', () => { expect(mistakes.length).toBeGreaterThanOrEqual(12); });
    test.each(mistakes)('%s shows the mistake it is named after', path => {
        const id = shownRule(path);
        const isHouseRule = analysisOf(path).findings.some(({ rule, citation }) => rule === id && citation?.kind === 'house');
        expect(isLanguageRule(id) || ruleById(id) !== undefined || isHouseRule, `a rule ${id}`).toBe(true);
        expect(analysisOf(path).findings.map(({ rule }) => rule)).toContain(id);
    });
    test.each(mistakes)('%s shows nothing else', path => {
        // A finding whose waiver ran out is there again beside that.
        const isShown = ({ rule, severity }: ReportedFinding): boolean => rule === shownRule(path) || !grave.includes(severity) || (shownRule(path) === 'waiver-expired' && new RegExp(`^ +waive +${rule} on `, 'm').test(exampleText(path)));
        expect(analysisOf(path).findings.filter(finding => !isShown(finding)).map(({ rule, message }) => `${rule}: ${message}`)).toEqual([]);
    });
});

/** How often each finding is reported, told apart by its rule and its words. */
function tally({ findings }: Analysis): Map<string, number> {
    const counts = new Map<string, number>();
    for (const { rule, message } of findings) counts.set(`${rule}: ${message}`, (counts.get(`${rule}: ${message}`) ?? 0) + 1);
    return counts;
}

test('each safe fix takes its finding away and brings none', async () => {
    // A mistake of the language can hide a part of the job; what that part then has to say of itself may be told, unless it is grave.
    let tried = 0;
    for (const path of paths) {
        const before = tally(analysisOf(path));
        for (const { rule, message, fixes } of analysisOf(path).findings) {
            for (const fix of (fixes ?? []).filter(({ safety }) => safety === 'safe')) {
                tried++;
                const text = [...fix.edits].sort((a, b) => b.span.start - a.span.start).reduce((whole, { span, newText }) => {
                    expect(pathOfExample(span.uri)).toBe(path);
                    return whole.slice(0, span.start) + newText + whole.slice(span.end);
                }, exampleText(path));
                const fixed = (await openExamples({ path, text }))(path);
                const after = tally(fixed);
                const gravest = new Set(fixed.findings.filter(({ severity }) => grave.includes(severity)).map(({ rule: other, message: words }) => `${other}: ${words}`));
                const key = `${rule}: ${message}`;
                expect(after.get(key) ?? 0, `${path}: ${fix.title}`).toBeLessThan(before.get(key) ?? 0);
                const isHidden = (known: string): boolean => isLanguageRule(rule) && !gravest.has(known);
                expect([...after].filter(([other, count]) => count > (before.get(other) ?? 0) && !isHidden(other)), `${path}: ${fix.title}`).toEqual([]);
            }
        }
    }
    expect(tried).toBeGreaterThan(0);
});

test('every baseline belongs to an example', () => {
    const expected = new Set(paths.flatMap(path => [baseline(path, 'findings'), baseline(path, 'facts')].map(name => name.slice(2))));
    const stale = readdirSync(new URL('.', import.meta.url), { recursive: true, encoding: 'utf8' }).map(name => name.replaceAll('\\', '/')).filter(name => name.endsWith('.txt') && !expected.has(name));
    expect(stale).toEqual([]);
});
