import { extent, insideRun, type InsideSize, type Wall } from '../../core/geometry.js';
import { inches, plus, times, type Length } from '../../core/length.js';
import { onWall } from '../fittings/wall-frame.js';
import { squareEnds, type Part, type PartPlace } from '../parts/part.js';
import { legAllowance, type BenchInput, type BenchStock } from './bench-input.js';
import type { BenchLedger, BenchLeg, BenchPiece, BenchRun, PieceKind } from './bench-result.js';
import { markStem, type NumberedBench } from './number-pieces.js';

/** A loose head rest: three slats 16" long on two bearers. Common practice, no source. */
const headRestLength: Length = inches(16);
const headRestSlats = 3;

/** Rows of the cut list of one bench, piece by piece in the order of the marks; equal pieces under one mark are one row. */
export function benchParts(bench: BenchInput, runs: readonly BenchRun[], numbered: NumberedBench, inside: InsideSize): readonly Part[] {
    const ledgers = new Map(numbered.ledgers.map(ledger => [ledger.mark, ledger]));
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
            const place = placeOfPieces(pieces, run, ledgers.get(mark), inside);
            parts.push({ ...(leg ? legPart(bench, leg, piece.kind, run, inside) : boardPart(bench, piece, pieces.length, run, ledgers.get(mark))), place });
        }
    }
    return bench.hasHeadRest ? [...parts, ...headRest(bench)] : parts;
}

/** What is put up first stands first. */
const cutOrder: readonly (readonly PieceKind[])[] = [
    ['ledger'], ['box leg head'], ['rear rail', 'front rail'], ['rear leg', 'front leg', 'box leg post'], ['bearer'], ['slat'], ['fascia'], ['back rest'],
];

/** A ledger goes onto the wall it is screwed to, everything else along the wall of its run; slats lie one behind the other over one stretch. */
function placeOfPieces(pieces: readonly BenchPiece[], run: BenchRun, ledger: BenchLedger | undefined, inside: InsideSize): PartPlace {
    const wall = ledger?.wall ?? run.wall;
    const stretches = pieces.map(({ box }) => onWall(wall, box, inside).u);
    const [first] = pieces;
    return {
        wall, run: insideRun(wall, inside), between: 'linings',
        stretches: stretches.filter(({ from }, index) => stretches.findIndex(other => other.from === from) === index),
        ...(first && (ledger || first.kind === 'back rest') && { heights: first.box.z }),
    };
}

const stockOf = ({ stock, nominal, section }: BenchStock): Pick<Part, 'material' | 'nominal' | 'section'> => ({
    material: stock === undefined ? {} : { stock }, ...(nominal !== undefined && { nominal }), section,
});

function legPart(bench: BenchInput, leg: BenchLeg, kind: PieceKind, run: BenchRun, inside: InsideSize): Part {
    // The two posts of a box leg stand one behind the other, so their place along the wall does not tell them apart.
    const end = kind !== 'box leg post' ? '' : onWall(run.wall, leg.box, inside).w.from === run.w.from ? 'the rear end of ' : 'the front end of ';
    return {
        mark: leg.mark, what: `bench ${kind}`, count: 1, ...stockOf(bench.build.leg), length: leg.shippedLength, allowance: legAllowance, ends: squareEnds, notches: leg.notches,
        cut: 'site', goesTo: `under ${end}${leg.under}, ${placeOf(bench, run)}`,
        measure: `Set ${leg.under} level at its height, measure from the floor at this place to the underside of ${leg.under}, and cut the foot; the head${leg.notches.length > 0 ? ' and its notches are' : ' is'} finished.`,
    };
}

function boardPart(bench: BenchInput, piece: BenchPiece, count: number, run: BenchRun, ledger: BenchLedger | undefined): Part {
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
            case 'ledger': return ledger ? `onto the ${ledger.wall} wall, under the ${ledger.holds === 'back' ? 'back edge' : ledger.holds} of ${place}` : `under ${place}`;
            case 'box leg head': return `on its posts, under the end of ${place}`;
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

