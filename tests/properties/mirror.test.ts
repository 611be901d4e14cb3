import { expect, test } from 'vitest';
import { checkMirror } from './mirror.js';

test('a job in a mirror has the mirrored parts and the same findings', async () => {
    const { jobs, walls } = await checkMirror(40, 21);
    expect(walls, 'walls that had nothing to choose').toBeGreaterThan(jobs);
});
