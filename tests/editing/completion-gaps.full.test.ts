import { expect, test } from 'vitest';
import { allConstructs } from './all-constructs.js';
import { sightOfConstructs, tryAll } from './try-offers.js';

test('whatever is offered at any gap of a file that uses every construct can stand there', { timeout: 240_000 }, async () => {
    const { offered, tried } = await tryAll(allConstructs, sightOfConstructs);
    expect(offered).toBeGreaterThan(3500);
    expect(tried).toBeGreaterThan(1000);
});
