import { inches, mm, zero, type Length } from '../../language/src/core/length.js';
import { squareEnds, type Part } from '../../language/src/engines/parts/part.js';
import type { StockOffer } from '../../language/src/renderings/stock-offers.js';

const section = { thickness: inches(1, 1, 2), width: inches(3, 1, 2) };

/** A shop part of fictional stock `oak_2x4`, 20" long, with what a test wants otherwise. */
export const part = (mark: string, more: Partial<Part> = {}): Part => ({
    mark, what: 'rail', count: 1, material: { stock: 'oak_2x4' }, nominal: '2x4', section, length: inches(20), ends: squareEnds, notches: [],
    cut: 'shop', goesTo: 'bench', ...more,
});

/** Fictional boards with 8' and 10' lengths at 1.00 USD a foot. */
export const offer = (name = 'oak_2x4', more: Partial<StockOffer> = {}): StockOffer => ({
    name, title: 'Oak 2x4', nominal: '2x4', section, lengths: [inches(120), inches(96)], price: { minor: 100, currency: 'USD', per: 'ft' },
    kerf: inches(0, 1, 8), endTrim: zero, at: { uri: 'memory:/stock.hotroom', start: 0, end: 5 }, ...more,
});

export const metricSection = { thickness: mm(38), width: mm(89) };
export const length = (value: number): Length => inches(value);
export const noStock: { material: Part['material'] } = { material: {} };
