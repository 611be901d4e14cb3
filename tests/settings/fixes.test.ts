import { expect, test } from 'vitest';
import { allRules } from '../../language/src/rules/index.js';
import { readSettings } from '../../language/src/settings/read-settings.js';
import { resolveSettings } from '../../language/src/settings/resolve.js';
import { applyFix } from '../support/check.js';
import { withStandardJob } from '../support/standard-job.js';
import { analyzeText } from '../support/workspace.js';

/** A fix is read back: whatever unit the project is answered in, it must be a text of the language that says what was meant. */
test.each(['mm', 'm', 'ft_in', 'in'])('with %s, every fix of every rule can be read', { timeout: 120_000 }, async units => {
    const settings = resolveSettings([{ path: 'job.hotroom', file: readSettings(JSON.stringify({ units }), 'memory:/jobs/hotroom.json') }])!;
    let fixes = 0;
    for (const rule of allRules.filter(one => one.fixes !== 'none')) {
        const source = withStandardJob(rule.bad);
        const { findings } = await analyzeText(source, { rules: [rule], settings });
        for (const fix of findings.flatMap(finding => finding.fixes ?? [])) {
            fixes++;
            const inserted = fix.edits.map(({ newText }) => newText).join('\n');
            expect(inserted, `${rule.id}: ${fix.title}`).not.toContain('≈');
            const after = await analyzeText(applyFix(source, fix), { rules: [], settings });
            expect(after.findings.filter(({ severity }) => severity === 'error').map(({ message }) => message), `${rule.id}: ${fix.title}`).toEqual([]);
        }
    }
    expect(fixes).toBeGreaterThan(20);
});
