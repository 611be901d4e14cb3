import { expect, test } from 'vitest';
import { thermometerMissing as rule } from '../../../language/src/rules/heater/thermometer-missing.js';
import { checkFindings, findingsOf } from '../../support/check.js';
import { withStandardJob } from '../../support/standard-job.js';

test('reports the job', async () => {
    const source = withStandardJob('// without thermometer');
    const findings = await findingsOf(rule, source);
    expect(findings.map(({ at, severity, message }) => [source.slice(at.start, at.end), severity, message])).toEqual([
        ['job standard', 'info', 'The room has no thermometer; one is usual (common practice, no source). Write a block such as thermometer on left { from front … }: it goes 6" below the ceiling, away from the heater.'],
    ]);
});

test('accepts a thermometer anywhere', () => checkFindings(rule, `
    thermometer on back {
        from      left 30"
    }
`));

test('stays silent while it is being typed', () => checkFindings(rule, `
    thermometer on
`));
