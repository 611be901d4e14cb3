import { TICKS_PER_FOOT, TICKS_PER_METRE, area, type Length } from '../core/length.js';
import { rational, roundHalfEven } from '../core/rational.js';
import type { Part, Section } from '../engines/parts/part.js';
import type { Money, StockPlan, StockRequest } from '../engines/stock/request.js';
import { cutListGroups, type CutListLine } from './cut-list.js';
import type { StockOffer } from './stock-offers.js';

/** Everything that is cut from one stock. */
export interface StockTask {
    /** Catalogue name; absent for parts whose job names no stock. */
    readonly stock?: string;
    readonly offer?: StockOffer;
    /** In the order of the cut list. */
    readonly parts: readonly Part[];
    /** What the planner is asked; absent when there is nothing to plan with, and then `whyNot` says why. */
    readonly request?: StockRequest;
    readonly whyNot?: string;
}

/** A task with the plan made for it. */
export interface PlannedStock extends StockTask {
    readonly plan?: StockPlan;
    /** Why the plan is only the quick one, when the time allowed was over. */
    readonly cutShort?: string;
}

/**
 * What has to be planned, one task a stock, in the order of the cut list. Parts cut on site are in it at the length they ship in: their wood comes from
 * the same boards. Parts of other sections named after one stock are ripped from it and take a board's whole width.
 */
export function stockTasks(parts: readonly Part[], offers: ReadonlyMap<string, StockOffer>): readonly StockTask[] {
    const byStock = new Map<string | undefined, Part[]>();
    for (const { stock, lines } of cutListGroups(parts.map((part): CutListLine => ({ part })))) {
        const own = lines.map(({ part }) => part);
        const known = byStock.get(stock);
        if (known) known.push(...own); else byStock.set(stock, own);
    }
    return [...byStock].map(([stock, own]): StockTask => {
        if (stock === undefined) return { parts: own, whyNot: 'the job names no stock for these parts' };
        const offer = offers.get(stock);
        if (!offer) return { stock, parts: own, whyNot: `no catalogue in use offers ${stock} whole` };
        if (offer.lengths.length === 0) return { stock, offer, parts: own, whyNot: `the catalogue gives no lengths of ${stock}` };
        return { stock, offer, parts: own, request: requestFor(own, offer) };
    });
}

function requestFor(parts: readonly Part[], offer: StockOffer): StockRequest {
    const { lengths, kerf, endTrim, price, section } = offer;
    return {
        pieces: parts.map(({ mark, length, count }) => ({ mark, length, count })),
        stock: lengths.map(length => ({ length, ...(price && { price: boardPrice(price, length, section) }) })),
        kerf, endTrim,
    };
}

/**
 * Price of one board, rounded once to whole hundredths, half to even. A price by area is taken on the wide face.
 * @param length of the board; @param section of the board as bought
 */
export function boardPrice(price: NonNullable<StockOffer['price']>, length: Length, section: Section): Money {
    const { minor, currency } = price;
    const share = (amount: bigint, whole: bigint): Money => ({ minor: Number(roundHalfEven(rational(BigInt(minor) * amount, whole))), currency });
    switch (price.per) {
        case 'each': return { minor, currency };
        case 'ft': return share(BigInt(length), BigInt(TICKS_PER_FOOT));
        case 'm': return share(BigInt(length), BigInt(TICKS_PER_METRE));
        case 'ft2': return share(area(length, section.width), BigInt(TICKS_PER_FOOT) ** 2n);
        case 'm2': return share(area(length, section.width), BigInt(TICKS_PER_METRE) ** 2n);
    }
}

/**
 * Plans every task, one after the other.
 * @param plan plans one request; a failure of it is the caller's
 */
export async function planTasks(tasks: readonly StockTask[], plan: (request: StockRequest) => Promise<Pick<PlannedStock, 'plan' | 'cutShort'>>): Promise<readonly PlannedStock[]> {
    const planned: PlannedStock[] = [];
    for (const task of tasks) planned.push(task.request ? { ...task, ...await plan(task.request) } : task);
    return planned;
}
