import { extent } from '../../core/geometry.js';
import { inches, plus, times, type Length } from '../../core/length.js';
import type { Wall } from '../../core/geometry.js';
import { squareEnds, type Part } from '../parts/part.js';
import type { BenchInput, BenchStock } from './bench-input.js';
import type { BenchLeg, BenchPiece, BenchRun, PieceKind } from './bench-result.js';
import { markStem, type NumberedBench } from './number-pieces.js';

/** A loose head rest: three slats 16" long on two bearers. Common practice, no source. */
const headRestLength: Length = inches(16);
const headRestSlats = 3;

/** Rows of the cut list of one bench, piece by piece in the order of the marks; equal pieces under one mark are one row. */
export function benchParts(bench: BenchInput, runs: readonly BenchRun[], numbered: NumberedBench): readonly Part[] {
    const legs = new Map(numbered.legs.map(leg => [leg.mark, leg]));
    const rows = new Map<string, BenchPiece[]>();
    for (const piece of numbered.pieces) {
        const row = rows.get(piece.mark);
        if (row) row.push(piece);
        else rows.set(piece.mark, [piece]);
    }
    const parts: Part[] = [];
    for (const kinds of cutOrder) {
        for (const [mark, pieces] of rows) {
            const [piece] = pieces;
            const run = piece && runs[piece.run];
            if (!piece || !run || !kinds.includes(piece.kind)) continue;
            const leg = legs.get(mark);
            parts.push(leg ? legPart(bench, leg, piece.kind, run) : boardPart(bench, piece, pieces.length, run));
        }
    }
    return bench.hasHeadRest ? [...parts, ...headRest(bench)] : parts;
}

/** What is put up first stands first. */
const cutOrder: readonly (readonly PieceKind[])[] = [
    ['ledger'], ['box leg head'], ['rear rail', 'front rail'], ['rear leg', 'front leg', 'box leg post'], ['bearer'], ['slat'], ['fascia'], ['back rest'],
];

const stockOf = ({ stock, nominal, section }: BenchStock): Pick<Part, 'material' | 'nominal' | 'section'> => ({
    material: stock === undefined ? {} : { stock }, ...(nominal !== undefined && { nominal }), section,
});

function legPart(bench: BenchInput, leg: BenchLeg, kind: PieceKind, run: BenchRun): Part {
    return {
        mark: leg.mark, what: `bench ${kind}`, count: 1, ...stockOf(bench.build.leg), length: leg.shippedLength, ends: squareEnds, notches: leg.notches,
        cut: 'site', goesTo: `under ${leg.under}, ${placeOf(bench, run)}`,
        measure: `Set ${leg.under} level at its height, measure from the floor at this place to the underside of ${leg.under}, and cut the foot; the head and its notches are finished.`,
    };
}

function boardPart(bench: BenchInput, piece: BenchPiece, count: number, run: BenchRun): Part {
    const { build } = bench;
    const isAcross = piece.kind === 'bearer' || ((piece.kind === 'ledger' || piece.kind === 'box leg head') && !isAlong(piece, run));
    const length = extent(runsAlongX(run.wall) === isAcross ? piece.box.y : piece.box.x);
    return { mark: piece.mark, what: words[piece.kind], count, ...stockOf(stockFor(piece.kind)), length, ends: squareEnds, notches: [], cut: 'shop', goesTo: goesTo(piece.kind) };

    function stockFor(kind: PieceKind): BenchStock {
        switch (kind) {
            case 'slat': return build.slat;
            case 'bearer': return build.bearer;
            case 'front rail': case 'rear rail': return build.rail;
            case 'ledger': case 'box leg head': return build.ledger;
            case 'front leg': case 'rear leg': case 'box leg post': return build.leg;
            case 'fascia': return build.fascia ?? build.slat;
            case 'back rest': return build.backRest ?? build.slat;
        }
    }
    function goesTo(kind: PieceKind): string {
        const place = placeOf(bench, run);
        switch (kind) {
            case 'slat': return `top of ${place}`;
            case 'bearer': return `on the rails and ledgers of ${place}`;
            case 'front rail': case 'fascia': return `front of ${place}`;
            case 'rear rail': return `back of ${place}`;
            case 'ledger': return `wall, under ${place}`;
            case 'box leg head': return `on its posts at the end of ${place}`;
            case 'front leg': case 'rear leg': case 'box leg post': return place;
            case 'back rest': return `${run.wall} wall, over ${place}`;
        }
    }
}

const words: Readonly<Record<PieceKind, string>> = {
    slat: 'bench slat', bearer: 'bench cross-bearer', 'front rail': 'bench front rail', 'rear rail': 'bench rear rail', ledger: 'bench ledger',
    'box leg head': 'box leg head', 'front leg': 'bench front leg', 'rear leg': 'bench rear leg', 'box leg post': 'box leg post', fascia: 'bench fascia', 'back rest': 'back rest',
};

const runsAlongX = (wall: Wall): boolean => wall === 'front' || wall === 'back';
/** Whether a ledger lies along its run (a back ledger) and not across its end. */
const isAlong = (piece: BenchPiece, run: BenchRun): boolean => {
    const [alongRun, acrossRun] = runsAlongX(run.wall) ? [piece.box.x, piece.box.y] : [piece.box.y, piece.box.x];
    return extent(alongRun) > extent(acrossRun);
};
const placeOf = (bench: BenchInput, run: BenchRun): string => `bench ${bench.name} on the ${run.wall} wall`;

function headRest(bench: BenchInput): readonly Part[] {
    const { slat, slatGap, bearer } = bench.build;
    const stem = `${markStem(bench.name)}-HEAD-REST`;
    const deep = plus(times(slat.section.width, headRestSlats), times(slatGap.from, headRestSlats - 1));
    const shared = { ends: squareEnds, notches: [], cut: 'shop', goesTo: `loose on bench ${bench.name}` } as const;
    return [
        { mark: `${stem}-BEARER-1`, what: 'head rest bearer', count: 2, ...stockOf(bearer), length: deep, ...shared },
        { mark: `${stem}-SLAT-1`, what: 'head rest slat', count: headRestSlats, ...stockOf(slat), length: headRestLength, ...shared },
    ];
}

