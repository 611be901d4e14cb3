import { expect, test } from 'vitest';
import { languageRules } from '../../language/src/model/language-rules.js';
import { applyFix, compare } from '../support/check.js';
import { dedent } from '../support/dedent.js';
import { analyzeText } from '../support/workspace.js';
import { mistakes } from './mistakes.js';

test.each(Object.entries(mistakes))('%s', async (rule, { text, fixed, others, today }) => {
    const source = dedent(text);
    const analysis = await analyzeText(source, { rules: [], ...(today && { today }) }, 'job.hotroom', others);
    compare(source, analysis.findings);
    expect(analysis.findings.some(finding => finding.rule === rule)).toBe(true);
    if (fixed === undefined) { expect(analysis.findings.flatMap(finding => finding.fixes ?? [])).toEqual([]); return; }
    const fix = analysis.findings.find(finding => finding.rule === rule)?.fixes?.[0];
    if (!fix) throw new Error('no fix is offered');
    const cured = applyFix(source, fix);
    expect(cured).toContain(dedent(fixed));
    expect((await analyzeText(cured, { rules: [] }, 'job.hotroom', others)).findings.filter(finding => finding.rule === rule)).toEqual([]);
});

test('every mistake of the language has its test, its reason and its cure', () => {
    const tested = new Set(Object.keys(mistakes));
    // The first needs all rules: waivers.test.ts. The second cannot be brought about by any text; the fuzz run holds that.
    expect(Object.keys(languageRules).filter(id => !tested.has(id))).toEqual(['waiver-not-needed', 'reading-failed']);
    for (const rule of Object.values(languageRules)) expect(rule.why.length).toBeGreaterThan(10);
});
