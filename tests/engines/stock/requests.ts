import * as fc from 'fast-check';
import { feet, inches, ticks, zero, type Length } from '../../../language/src/core/length.js';
import type { Money, StockLength, StockPiece, StockRequest } from '../../../language/src/engines/stock/request.js';

export const usd = (minor: number): Money => ({ minor, currency: 'USD' });
export const piece = (mark: string, length: Length, count = 1): StockPiece => ({ mark, length, count });
export const board = (length: Length, price?: Money, onHand?: number): StockLength => ({ length, price, onHand });

/** A request without kerf and trim unless told otherwise. */
export const request = (pieces: readonly StockPiece[], stock: readonly StockLength[], losses: Partial<Pick<StockRequest, 'kerf' | 'endTrim'>> = {}): StockRequest =>
    ({ pieces, stock, kerf: zero, endTrim: zero, ...losses });

/** The least cost of a small request, found by trying every board for every piece: independent of the engine, and only for a handful of pieces. */
export function leastCostByTrying({ pieces, stock, kerf, endTrim }: StockRequest): number {
    const lengths = pieces.flatMap(({ length, count }) => Array.from({ length: count }, () => length)).sort((a, b) => b - a);
    const open: { rest: number }[] = [];
    let best = Infinity;
    const place = (at: number, cost: number): void => {
        if (cost >= best) return;
        const length = lengths[at];
        if (length === undefined) { best = cost; return; }
        for (const one of open) {
            if (one.rest < length) continue;
            const before = one.rest;
            one.rest -= length + kerf;
            place(at + 1, cost);
            one.rest = before;
        }
        for (const { length: full, price } of stock) {
            const usable = full - 2 * endTrim;
            if (usable < length) continue;
            open.push({ rest: usable - length - kerf });
            place(at + 1, cost + (price?.minor ?? full));
            open.pop();
        }
    };
    place(0, 0);
    return best;
}

const sixteenths = (least: number, most: number): fc.Arbitrary<Length> => fc.integer({ min: least * 16, max: most * 16 }).map(count => inches(0, count, 16));

/** Jobs such as a shop has: boards of 6 to 16 ft at uneven prices, a saw kerf, some pieces of one length under two marks. */
export const jobs = (mostTypes: number, mostOfEach: number): fc.Arbitrary<StockRequest> => fc.record({
    pieces: fc.array(fc.record({ mark: fc.constantFrom('A', 'B', 'C', 'D', 'E'), length: sixteenths(4, 110), count: fc.integer({ min: 0, max: mostOfEach }) }), { minLength: 1, maxLength: mostTypes }),
    stock: fc.uniqueArray(fc.record({ feet: fc.constantFrom(6, 8, 10, 12, 16), cents: fc.integer({ min: 80, max: 160 }) }), { minLength: 1, maxLength: 3, selector: one => one.feet })
        .map(lengths => lengths.map(({ feet: length, cents }) => board(feet(length), usd(length * cents)))),
    kerf: fc.constantFrom(zero, inches(0, 1, 8), ticks(7)),
    endTrim: fc.constantFrom(zero, inches(0, 1, 2)),
});
