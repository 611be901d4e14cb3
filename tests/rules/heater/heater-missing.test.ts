import { expect, test } from 'vitest';
import { heaterMissing as rule } from '../../../language/src/rules/heater/heater-missing.js';
import { checkFindings, findingsOf } from '../../support/check.js';
import { withStandardJob } from '../../support/standard-job.js';

test('reports the job', async () => {
    const source = withStandardJob('// without heater stove\n// without circuit stove_feed\n// without vent intake');
    const findings = await findingsOf(rule, source);
    expect(findings.map(({ at, severity, message }) => [source.slice(at.start, at.end), severity, message])).toEqual([
        ['job standard', 'warning', 'Job standard has no heater, so clearances, sensor, circuit and air are not checked. Write a block such as heater stove on right { model …; from front …; guard yes }, its model named in a catalogue this file uses.'],
    ]);
});

test('accepts a heater anywhere', () => checkFindings(rule, 'heater stove on back { model Tarn60 }'));

test('stays silent while a heater is being typed', () => checkFindings(rule, `
    // without circuit stove_feed
    // without vent intake
    heater stove on
`));
