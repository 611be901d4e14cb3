import { expect, test } from 'vitest';
import { roomMissing as rule } from '../../../language/src/rules/shell/room-missing.js';
import { checkFindings, findingsOf } from '../../support/check.js';
import { withStandardJob } from '../../support/standard-job.js';

test('reports the job, so that a job without a room does not pass as sound', async () => {
    const source = withStandardJob('// without room');
    expect((await findingsOf(rule, source)).map(({ at, severity, message }) => [source.slice(at.start, at.end), severity, message])).toEqual([
        ['job standard', 'error', 'The job has no room, so nothing of it was checked (everything is worked out from the shell of the room). Write room { system …; width …; depth …; height … }, the system named in a catalogue this file uses.'],
    ]);
});

test('accepts any room, sound or not', () => checkFindings(rule, `
    room { system Skerry; width 11"; depth 79 1/2"; height 7'0" }
`));

test('stays silent while another block is being typed', () => checkFindings(rule, `
    // without room
    bench upper on back {
        build     Slatted
        top
    }
`));
