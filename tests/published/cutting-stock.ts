import { inches, ticks, zero, type Length } from '../../language/src/core/length.js';
import { linearBound } from '../../language/src/engines/stock/column-generation.js';
import { createValueTable } from '../../language/src/engines/stock/knapsack.js';
import { MasterProgram } from '../../language/src/engines/stock/master-program.js';
import { planStock } from '../../language/src/engines/stock/plan-stock.js';
import { cuttingProblem } from '../../language/src/engines/stock/problem.js';
import type { StockPlan, StockRequest } from '../../language/src/engines/stock/request.js';
import { verifyStockPlan } from '../../language/src/engines/stock/verify.js';
import { PatientSolver } from '../support/patient-solver.js';
import type { PublishedRow } from './table.js';

/** An instance with stock of one length, in which every board costs one. */
interface Instance {
    readonly source: string;
    readonly clause: string;
    readonly fromMemory?: true;
    readonly stock: number;
    readonly kerf?: Length;
    /** Length and count. */
    readonly pieces: readonly (readonly [number, number])[];
    readonly boards: number;
    /** Gilmore and Gomory's linear bound, over all patterns or over those that hold no more of a piece than is asked for. */
    readonly linear: number;
    readonly patterns?: 'within demand';
    /** The optimum stands in the source, or was found outside this product by listing every pattern. */
    readonly optimumFrom: 'source' | 'full enumeration';
}

const triplets: readonly (readonly [number, number, number])[] = [
    [406, 265, 329], [404, 255, 341], [461, 256, 283], [387, 290, 323], [356, 290, 354], [417, 269, 314], [359, 317, 324],
    [467, 250, 283], [459, 251, 290], [356, 266, 378], [356, 315, 329], [400, 263, 337], [397, 273, 330], [458, 268, 274],
    [473, 254, 273], [408, 287, 305], [384, 295, 321], [414, 264, 322], [413, 278, 309], [391, 291, 318],
];

const amplRolls: readonly (readonly [number, number])[] = [[20, 48], [45, 35], [50, 24], [55, 10], [75, 8]];

const instances: readonly Instance[] = [
    {
        source: 'V. Chvatal, Linear Programming, as restated in the NEOS Guide case study of the cutting-stock problem', clause: 'ch. 13, four orders from rolls of 100',
        stock: 100, pieces: [[45, 97], [36, 610], [31, 395], [14, 211]], boards: 453, linear: 452.25, optimumFrom: 'source',
    },
    {
        source: 'Encyclopedia example of the cutting-stock problem', clause: 'paper machine with 13 widths from rolls of 5600', stock: 5600,
        pieces: [[1380, 22], [1520, 25], [1560, 12], [1710, 14], [1820, 18], [1880, 18], [1930, 20], [2000, 10], [2050, 12], [2100, 14], [2140, 16], [2150, 18], [2200, 20]],
        boards: 73, linear: 72.917, optimumFrom: 'source',
    },
    { source: 'Fourer, Gay, Kernighan, AMPL: A Modeling Language for Mathematical Programming, 2nd ed.', clause: 'cut.dat, rolls of 110 in', stock: 110, pieces: amplRolls, boards: 47, linear: 46.25, optimumFrom: 'source' },
    {
        source: 'Fourer, Gay, Kernighan, AMPL: A Modeling Language for Mathematical Programming, 2nd ed.', clause: 'cut.dat with a kerf of 1/2 in added', stock: 110, kerf: inches(0, 1, 2),
        pieces: amplRolls, boards: 50, linear: 49.167, optimumFrom: 'full enumeration',
    },
    { source: 'Textbook case of a lumber yard', clause: '25 ft boards, 700 of 7 ft, 1200 of 9 ft, 300 of 10 ft', stock: 25, pieces: [[7, 700], [9, 1200], [10, 300]], boards: 775, linear: 775, optimumFrom: 'full enumeration' },
    { source: 'Textbook case of a lumber yard', clause: 'the same with 500 of 10 ft', stock: 25, pieces: [[7, 700], [9, 1200], [10, 500]], boards: 875, linear: 875, optimumFrom: 'full enumeration' },
    { source: 'W. Winston, Operations Research', clause: '17 ft boards', fromMemory: true, stock: 17, pieces: [[3, 25], [5, 20], [9, 15]], boards: 19, linear: 18.333, optimumFrom: 'full enumeration' },
    { source: 'MiniZinc sample model cutstock', clause: 'pieces of 7, 5 and 3 from 10', stock: 10, pieces: [[7, 2], [5, 2], [3, 4]], boards: 4, linear: 3.667, optimumFrom: 'full enumeration' },
    {
        source: 'Fieldhouse and Dyckhoff, family of instances without the integer round-up property', clause: '44, 33 and 12 from 132', fromMemory: true,
        stock: 132, pieces: [[44, 2], [33, 3], [12, 6]], boards: 3, linear: 259 / 132, optimumFrom: 'full enumeration',
    },
    { source: 'OR-Library, bin packing, triplet class', clause: 'first 60 items of a t120 file', stock: 1000, pieces: triplets.flat().map(length => [length, 1] as const), boards: 20, linear: 20, optimumFrom: 'source' },
    {
        source: 'BPPLib, instance PM_u010_01', clause: 'ten items in bins of 150', stock: 150,
        pieces: [24, 44, 76, 78, 52, 96, 58, 67, 74, 59].map(length => [length, 1] as const), boards: 5, linear: 4.5, patterns: 'within demand', optimumFrom: 'full enumeration',
    },
];

const requestOf = ({ stock, kerf, pieces }: Instance): StockRequest => ({
    pieces: pieces.map(([length, count], at) => ({ mark: `P${at + 1}`, length: inches(length), count })),
    stock: [{ length: inches(stock), price: { minor: 1, currency: 'XXX' } }],
    kerf: kerf ?? zero,
    endTrim: zero,
});

const solver = new PatientSolver();
const plans: StockPlan[] = [];
for (const instance of instances) plans.push(await planStock(requestOf(instance), solver));

function boundOf(instance: Instance): number {
    const problem = cuttingProblem(requestOf(instance), { patternsWithinDemand: instance.patterns === 'within demand' });
    const boards = instance.pieces.reduce((total, [, count]) => total + count, 0);
    const bound = linearBound(problem, new MasterProgram(problem), { least: [0], most: [boards] }, createValueTable(problem), () => false);
    return Number(bound.scaledBound) / bound.scale;
}

const optima = instances.map((instance, at): PublishedRow => ({
    source: instance.source,
    clause: instance.clause,
    what: `boards needed (${instance.optimumFrom === 'source' ? 'as the source states' : 'proven outside this product by full enumeration of patterns'})`,
    published: instance.boards,
    ours: () => {
        const plan = plans[at];
        return plan?.proof === 'proven' ? plan.totalBoards : `not proven: ${plan?.totalBoards}`;
    },
    tolerance: 0,
    toleranceReason: 'a proven optimum is one number',
    ...(instance.fromMemory && { fromMemory: instance.fromMemory }),
    checks: 'planStock',
}));

const soundness = instances.map((instance, at): PublishedRow => ({
    source: instance.source,
    clause: instance.clause,
    what: 'every piece asked for is cut once and every board adds up',
    published: '',
    ours: () => verifyStockPlan(plans[at] ?? plans[0] as StockPlan, requestOf(instance)).join(' '),
    tolerance: 0,
    toleranceReason: 'whole numbers',
    ...(instance.fromMemory && { fromMemory: instance.fromMemory }),
    checks: 'verifyStockPlan',
}));

const bounds = instances.map((instance): PublishedRow => ({
    source: instance.source,
    clause: instance.clause,
    what: `linear bound over ${instance.patterns === undefined ? 'all patterns' : 'patterns within the demand'}`,
    published: instance.linear,
    ours: () => boundOf(instance),
    tolerance: 0.0005,
    toleranceReason: 'the published bound has three decimals',
    ...(instance.fromMemory && { fromMemory: instance.fromMemory }),
    checks: 'linearBound',
}));

/** Kerf between pieces is the same as one kerf more on every piece and on the board: both ways must give one answer. */
const kerfIdentity: PublishedRow = {
    source: 'Gilmore and Gomory, A linear programming approach to the cutting-stock problem', clause: 'kerf as part of the piece', fromMemory: true,
    what: 'boards needed for cut.dat with 1/2 in on every width and on the roll, no kerf',
    published: 50,
    ours: () => widened.totalBoards,
    tolerance: 0,
    toleranceReason: 'the identity is exact',
    checks: 'planStock',
};
const widened = await planStock({
    pieces: amplRolls.map(([length, count], at) => ({ mark: `P${at + 1}`, length: ticks(inches(length) + inches(0, 1, 2)), count })),
    stock: [{ length: inches(110, 1, 2), price: { minor: 1, currency: 'XXX' } }], kerf: zero, endTrim: zero,
}, solver);

export const cuttingStock: readonly PublishedRow[] = [...optima, ...soundness, ...bounds, kerfIdentity];
