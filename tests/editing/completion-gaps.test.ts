import { expect, test } from 'vitest';
import { completionsAt } from '../../language/src/editing/complete.js';
import { exampleText } from '../support/workspace.js';
import { allConstructs } from './all-constructs.js';
import { rawOf } from './sample.js';
import { sight, sightOfConstructs, tryAll } from './try-offers.js';

test('whatever is offered at any gap of a job can stand there', { timeout: 120_000 }, async () => {
    const { offered, tried } = await tryAll(exampleText('birch-point.hotroom'), () => sight);
    expect(offered).toBeGreaterThan(1500);
    expect(tried).toBeGreaterThan(120);
});

test('and at every seventeenth gap of a file that uses every construct', { timeout: 120_000 }, async () => {
    const { offered } = await tryAll(allConstructs, sightOfConstructs, 17);
    expect(offered).toBeGreaterThan(150);
});

test.each([['birch-point.hotroom', exampleText('birch-point.hotroom')], ['every construct', allConstructs]])('completion answers at every offset of every cut-off beginning: %s', (_, text) => {
    for (let length = 0; length <= text.length; length += 7) {
        const raw = rawOf(text.slice(0, length));
        expect(Array.isArray(completionsAt(raw, length, sight))).toBe(true);
    }
});
