import { expect, test } from 'vitest';
import { checkStock } from './stock.js';

test('boards add up, and every part is cut exactly once', async () => {
    const { boards } = await checkStock(15, 41);
    expect(boards).toBeGreaterThan(100);
});
