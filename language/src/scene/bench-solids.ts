import type { AssembledBenches } from '../assembly/benches.js';
import { box, interval, type Box, type Wall } from '../core/geometry.js';
import { minus, plus } from '../core/length.js';
import type { Span } from '../core/span.js';
import type { BenchLeg, BenchPiece } from '../engines/benches/bench-result.js';
import type { Notch } from '../engines/parts/part.js';
import { withoutAll } from './boxes.js';
import { idOf, type Solid } from './scene.js';

/** Every piece of wood of every bench, legs with their notches. */
export function benchSolids(benches: AssembledBenches | undefined, spanOf: (name: string) => Span | undefined): readonly Solid[] {
    return (benches?.result.benches ?? []).flatMap(bench => {
        const seen = new Map<string, number>();
        const span = spanOf(bench.name);
        const numbered = (mark: string): number => { const number = (seen.get(mark) ?? 0) + 1; seen.set(mark, number); return number; };
        const made = (piece: Pick<BenchPiece, 'mark' | 'box' | 'kind'>, leg?: BenchLeg): Solid => ({
            id: idOf(piece.mark, numbered(piece.mark)), mark: piece.mark, kind: `bench ${piece.kind}`, layer: 'benches',
            boxes: leg ? withoutAll([piece.box], leg.notches.flatMap(notch => notchBox(leg.box, notch))) : [piece.box], ...(span && { span }),
        });
        const pieces = bench.pieces.map(piece => made(piece, bench.legs.find(leg => leg.mark === piece.mark && sameBox(leg.box, piece.box))));
        // a layout may keep its legs apart from its other pieces
        const missing = bench.legs.filter(leg => !bench.pieces.some(piece => sameBox(piece.box, leg.box)));
        return [...pieces, ...missing.map(leg => made({ mark: leg.mark, box: leg.box, kind: leg.line === 'rear' ? 'rear leg' : leg.line === 'front' ? 'front leg' : 'box leg post' }, leg))];
    });
}

const sameBox = (a: Box, b: Box): boolean => (['x', 'y', 'z'] as const).every(axis => a[axis].from === b[axis].from && a[axis].to === b[axis].to);

/** What a notch takes of a standing leg: from its head down, into the side that looks toward its wall. */
function notchBox({ x, y, z }: Box, { toward, from, length, depth }: Notch): readonly Box[] {
    if (toward === undefined) return [];
    const height = interval(minus(z.to, plus(from, length)), minus(z.to, from));
    const sides: Readonly<Record<Wall, Box>> = {
        front: box(x, interval(y.from, plus(y.from, depth)), height), back: box(x, interval(minus(y.to, depth), y.to), height),
        left: box(interval(x.from, plus(x.from, depth)), y, height), right: box(interval(minus(x.to, depth), x.to), y, height),
    };
    return [sides[toward]];
}
