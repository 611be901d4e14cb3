import { expect, test } from 'vitest';
import { checkLayout } from './layout.js';
import { checkMirror } from './mirror.js';
import { checkLets, checkOverrides, checkSeries } from './names.js';
import { checkStock } from './stock.js';
import { checkOrder, checkUnits } from './units-and-order.js';

test('mirror, many jobs', async () => { expect((await checkMirror(600, 101)).jobs).toBe(600); });
test('inches and millimetres, many jobs', () => checkUnits(600, 102));
test('order of facts and blocks, many jobs', () => checkOrder(600, 103));
test('names, many jobs', () => checkLets(400, 106));
test('series, many jobs', () => checkSeries(400, 107));
test('overrides and variants, many jobs', () => checkOverrides(400, 108));
test('layout, many jobs', () => checkLayout(400, 104));
test('stock plans, many jobs', async () => { expect((await checkStock(120, 105)).boards).toBeGreaterThan(1000); });
