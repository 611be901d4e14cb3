import { expect, test } from 'vitest';
import { bathingSignMissing as rule } from '../../../language/src/rules/heater/bathing-sign-missing.js';
import { checkFindings, findingsOf } from '../../support/check.js';
import { withStandardJob } from '../../support/standard-job.js';

test('reports the job', async () => {
    const source = withStandardJob('// without sign bathing');
    const findings = await findingsOf(rule, source);
    expect(findings.map(({ at, severity, message }) => [source.slice(at.start, at.end), severity, message])).toEqual([
        ['job standard', 'hint', 'No sign says how to bathe; one is usually packed with the room (common practice, no source). Write sign bathing { says bathing; stands outside }.'],
    ]);
});

test('accepts a sign on either side', () => checkFindings(rule, `
    sign bathing {
        says      bathing
        stands    inside
    }
`));

test('stays silent while a sign is being typed', () => checkFindings(rule, `
    // without sign bathing
    sign {
        says
    }
`));
