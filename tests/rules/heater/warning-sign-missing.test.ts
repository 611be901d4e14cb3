import { expect, test } from 'vitest';
import { warningSignMissing as rule } from '../../../language/src/rules/heater/warning-sign-missing.js';
import { applyFix, checkFindings, findingsOf } from '../../support/check.js';
import { withStandardJob } from '../../support/standard-job.js';

test('reports the job', async () => {
    const source = withStandardJob('rules us_commercial\n// without sign caution');
    const findings = await findingsOf(rule, source);
    expect(findings.map(({ at, severity, message }) => [source.slice(at.start, at.end), severity, message])).toEqual([
        ['job standard', 'error', 'The warning notice outside the room is missing; it is required (IMC 2018, 914.5.1). Take its wording from the code itself.'],
    ]);
});

// IMC 914.5.1, from memory: required outside one- and two-family dwellings; a second rule set does not undo it.
test('a dwelling named beside it does not undo the demand', async () => {
    expect(await findingsOf(rule, withStandardJob('rules us_dwelling, us_commercial\n// without sign caution'))).toHaveLength(1);
});

test('a fix adds it with letters of the least height', async () => {
    const source = withStandardJob('rules us_commercial\n// without sign caution');
    const [fix] = (await findingsOf(rule, source))[0]?.fixes ?? [];
    const fixed = fix ? applyFix(source, fix) : '';
    expect(fixed).toContain('sign warning { says warning; stands outside; letters 1/4" }');
    expect(await findingsOf(rule, fixed)).toEqual([]);
});

test('one- and two-family dwellings are exempt', () => checkFindings(rule, `
    // without sign caution
`));

test('accepts a sign outside', () => checkFindings(rule, `
    rules us_commercial
    sign caution {
        says      warning
        stands    outside
        letters   1/4"
    }
`));

test('leaves a sign inside to that rule', () => checkFindings(rule, `
    rules us_commercial
    sign caution {
        says      warning
        stands    inside
        letters   1/4"
    }
`));

test('stays silent while a sign is being typed', () => checkFindings(rule, `
    rules us_commercial
    // without sign caution
    sign {
        says
    }
`));
