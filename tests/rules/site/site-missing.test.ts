import { expect, test } from 'vitest';
import { siteMissing as rule } from '../../../language/src/rules/site/site-missing.js';
import { checkFindings, findingsOf } from '../../support/check.js';
import { withStandardJob } from '../../support/standard-job.js';

test('reports the job that says nothing of its place', async () => {
    const source = withStandardJob('// without site');
    const findings = await findingsOf(rule, source);
    expect(findings.map(({ at, severity, message }) => [source.slice(at.start, at.end), severity, message])).toEqual([
        ['job standard', 'info', 'The job has no site, so fit, headroom, way in, floor and supply are not checked (common practice, no source). Write the measured place, as site { width …; depth …; ceiling …; floor …; free …; doorway …; supply …; capacity … }.'],
    ]);
});

test('accepts a site of its necessary facts alone', () => checkFindings(rule, `
    site { width 96"; depth 108"; ceiling 7'6"; floor tile }
`));

test('stays silent while a line of the job is broken', () => checkFindings(rule, `
    // without site
    drawn_by
`));
