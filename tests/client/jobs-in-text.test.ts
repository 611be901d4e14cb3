import { expect, test } from 'vitest';
import { jobAtLine, jobsInText } from '../../client/src/jobs-in-text.js';

const text = [
    'use "catalogue/skerry.hotroom"',
    '// job in_a_comment "Not a job" {',
    'job first "Larch Bank, \\"north\\"" {',
    '    number "2501"',
    '}',
    '  job second-unit is cottage(72", 96")',
    'jobs third {',
    'job',
].join('\r\n');

test('finds the headers, with titles unescaped, and nothing that only looks like one', () => {
    expect(jobsInText(text)).toEqual([
        { name: 'first', title: 'Larch Bank, "north"', line: 2 },
        { name: 'second-unit', title: undefined, line: 5 },
    ]);
});

test.each([[0, undefined], [2, 'first'], [4, 'first'], [5, 'second-unit'], [99, 'second-unit']])('at line %i stands %s', (line, name) => {
    expect(jobAtLine(jobsInText(text), line)?.name).toBe(name);
});
