import { expect } from 'vitest';
import type { Analysis } from '../../language/src/analyze.js';
import type { Fix, ReportedFinding } from '../../language/src/core/finding.js';
import type { Rule } from '../../language/src/rules/rule.js';
import { dedent } from './dedent.js';
import { withStandardJob } from './standard-job.js';
import { analyzeText } from './workspace.js';

/** Findings of `rule` alone on a whole text. */
export async function findingsOf(rule: Rule, text: string): Promise<ReportedFinding[]> {
    const analysis = await analyzeText(text, { rules: [sabotaged(rule)] });
    return analysis.findings.filter(finding => finding.rule === rule.id);
}

/** A test that cannot fail is a defect: tests/rules/sabotage.full.test.ts runs the rule tests with blind and with chattering rules and wants failures. */
function sabotaged(rule: Rule): Rule {
    switch (process.env['HOTROOM_SABOTAGE']) {
        case 'blind': return { ...rule, check: () => [] };
        case 'chattering': return { ...rule, check: function* (input) { yield* rule.check(input); yield { at: input.job.block.head, message: 'One finding too many.' }; } };
        default: return rule;
    }
}

/**
 * Checks that `rule` reports exactly what the remarks in `snippet` say, the snippet standing in the standard job. A remark
 * `//      ^^^^^ error: message` marks the columns of the line above it; a leading 💡 means a fix is offered. Where carets cannot reach,
 * `//@ 1-4 error: message` names the columns, `//@head error: message` any place on the line above. A message ending in … is a beginning.
 */
export async function checkFindings(rule: Rule, snippet: string): Promise<void> {
    const source = withStandardJob(snippet);
    compare(source, await findingsOf(rule, source));
}

/** The same on a whole text, for language problems and several rules at once. */
export function compare(source: string, findings: readonly ReportedFinding[]): void {
    const expected = markersIn(source);
    const actual = findings.map(finding => show(source, finding));
    expect(actual.map(item => fit(item, expected)).sort()).toEqual(expected.map(item => item.text).sort());
}

interface Marker { readonly text: string; readonly start: string; readonly isBeginning: boolean }

function markersIn(source: string): Marker[] {
    const lines = source.split('\n');
    return lines.flatMap((line, i): Marker[] => {
        const carets = /^(\s*\/\/\s*)(\^+)\s+(.*)$/.exec(line);
        const columns = /^\s*\/\/@\s*(?:(\d+)-(\d+)|(head))\s+(.*)$/.exec(line);
        if (!carets && !columns) return [];
        let above = i - 1;
        while (/^\s*\/\/(\s*\^|@)/.test(lines[above] ?? '')) above--;
        const place = carets ? `${(carets[1] ?? '').length + 1}-${(carets[1] ?? '').length + 1 + (carets[2] ?? '').length}` : columns?.[3] ? 'head' : `${columns?.[1] ?? ''}-${columns?.[2] ?? ''}`;
        const label = (carets ? carets[3] : columns?.[4]) ?? '';
        const isBeginning = label.endsWith('…');
        const text = `${above + 1}:${place} ${label}`;
        return [{ text, isBeginning, start: isBeginning ? text.slice(0, -1) : text }];
    });
}

function show(source: string, { at, severity, message, fixes }: ReportedFinding): { readonly exact: string; readonly head: string } {
    const before = source.slice(0, at.start).split('\n');
    const column = (before.at(-1) ?? '').length + 1;
    const label = `${fixes?.length ? '💡 ' : ''}${severity}: ${message}`;
    return { exact: `${before.length}:${column}-${column + at.end - at.start} ${label}`, head: `${before.length}:head ${label}` };
}

/** The marker an actual finding answers to, or the finding itself when none does. */
function fit(actual: { readonly exact: string; readonly head: string }, expected: readonly Marker[]): string {
    const match = expected.find(marker => [actual.exact, actual.head].some(text => marker.isBeginning ? text.startsWith(marker.start) : text === marker.text));
    return match?.text ?? actual.exact;
}

/** Applies a fix of the only finding in `before` (the one called `title`, else the first) and compares the whole snippet with `after`, where the rule must be silent. */
export async function checkFix(rule: Rule, before: string, after: string, title?: string): Promise<void> {
    const source = withStandardJob(before);
    const findings = await findingsOf(rule, source);
    expect(findings).toHaveLength(1);
    const fixes = findings[0]?.fixes ?? [];
    const fix = title === undefined ? fixes[0] : fixes.find(candidate => candidate.title === title);
    expect(fix, `a fix${title === undefined ? '' : ` called ${title}`} among ${fixes.map(f => f.title).join(', ')}`).toBeDefined();
    const fixed = applyFix(source, fix as Fix);
    expect(fixed).toContain(dedent(after));
    expect(await findingsOf(rule, fixed), 'the fix must silence the rule').toEqual([]);
}

/** The text with all edits of a fix made; they must lie in one document. */
export function applyFix(source: string, fix: Fix): string {
    return [...fix.edits].sort((a, b) => b.span.start - a.span.start).reduce((text, { span, newText }) => text.slice(0, span.start) + newText + text.slice(span.end), source);
}

/** Every finding as `rule: message`, for tests that look at the whole. */
export const summary = (analysis: Analysis): string[] => analysis.findings.map(finding => `${finding.severity} ${finding.rule}: ${finding.message}`);
