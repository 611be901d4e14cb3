import { insideRun, neighbours, walls, type Box, type Wall } from '../../core/geometry.js';
import { inches, ticks } from '../../core/length.js';
import { onWall, type WallBox } from '../../engines/fittings/wall-frame.js';
import type { BenchLayout, BenchRun } from '../../engines/benches/bench-result.js';
import { showSlatGap, slatGaps } from '../../renderings/slat-gaps.js';
import type { Solid } from '../../scene/scene.js';
import type { Draft } from '../draft.js';
import { point } from '../drawing.js';
import { around, clipped, cutFaces, everywhere, hatching, planFrame, rectangleOf, strokesOf, wallFrames, type Look } from '../projection.js';
import { planPoint, shower, sideOf, type Figure, type View, type ViewInput } from './view.js';

/** Every piece of the benches: the frames from above without their slats, from the front, or cut across their length. */
export function benchesView(what: 'frames' | 'fronts' | 'sections', input: ViewInput): View | undefined {
    const { scene, results } = input;
    const benches = results.benches?.result.benches ?? [];
    const solids = scene.solids.filter(({ layer }) => layer === 'benches');
    if (benches.length === 0 || solids.length === 0) return undefined;
    const against = walls.filter(wall => benches.some(bench => bench.runs.some(run => run.wall === wall)));
    const measures = results.parts.flatMap(({ mark, measure, notches }) => measure !== undefined && solids.some(solid => solid.mark === mark)
        ? [`${mark}: ${measure}${notches.map(({ from, length, depth }) => ` Notch from ${shower(input.unit)(from)} below its head, ${shower(input.unit)(length)} long, ${shower(input.unit)(depth)} deep.`).join('')}`] : []);
    if (what === 'fronts') return { name: 'bench-fronts', title: 'Benches from the front', figures: against.map(wall => frontFigure(wall, solids, benches, input)), notes: ['Legs are set out from the left lining to their near edge. Pieces behind others are dashed.', ...measures] };
    return what === 'frames' ? {
        name: 'benches', title: 'Benches from above',
        figures: [frameFigure(solids, benches, input)],
        notes: [
            ...benches.map(bench => `Bench ${bench.name}: carried by ${bench.loadPath.replaceAll('_', ' ')}.`),
            'Set-out along a bench is from its left end, seen from inside facing the wall, to the near edge of each cross-bearer and leg. Pieces that are under others are dashed.',
        ],
    } : {
        name: 'bench-sections', title: 'Bench sections',
        figures: against.flatMap(wall => sectionFigure(wall, solids, benches, input)),
        notes: slatGaps({ results }).map(gap => showSlatGap(gap, { unit: input.unit, purpose: 'drawing' })),
    };
}

/** Without slats: the frame the slats lie on, with legs dashed under it. */
function frameFigure(all: readonly Solid[], benches: readonly BenchLayout[], { scene }: ViewInput): Figure {
    const solids = all.filter(({ kind }) => kind !== 'bench slat');
    const strokes = strokesOf(solids, planFrame, { asHidden: ({ kind }) => /rail|leg|ledger/.test(kind) });
    const { inside } = scene;
    const room = { left: 0, right: inside.width, bottom: 0, top: inside.depth };
    const picture = around(all.flatMap(({ boxes }) => boxes.map(one => rectangleOf(planFrame, one))));
    return {
        caption: 'Bench frames from above, slats left off', picture,
        draw(draft) {
            outline(draft, room, picture);
            draft.strokes(strokes);
            for (const bench of benches) for (const [i, run] of bench.runs.entries()) {
                const bearers = bench.pieces.filter(({ kind, run: own }) => kind === 'bearer' && own === i).map(({ box }) => onWall(run.wall, box, inside).u.from);
                const legs = bench.legs.filter(({ run: own }) => own === i);
                const side = bench.isHighest ? sideOf[run.wall] : opposite[sideOf[run.wall]];
                const w = bench.isHighest ? run.w.from : run.w.to;
                draft.running(side, planPoint(run.wall, run.u.from, w, scene), [
                    ...bearers.map(u => ({ at: planPoint(run.wall, u, w, scene), words: 'bearer' })), ...legs.map(({ u, line }) => ({ at: planPoint(run.wall, u.from, w, scene), words: `${line} leg` })),
                    { at: planPoint(run.wall, run.u.to, w, scene), words: 'end' },
                ]);
            }
            const [wall, ...others] = [...new Set(benches.flatMap(({ runs }) => runs.map(run => run.wall)))];
            if (wall !== undefined && others.length === 0) {
                const isAcross = wall === 'front' || wall === 'back';
                const end = Math.min(...benches.flatMap(({ runs }) => runs.map(({ u }) => u.from)));
                draft.chain(isAcross ? 'left' : 'bottom', [0, ...benches.flatMap(({ runs }) => runs.flatMap(({ w }) => [w.from, w.to]))].map(w => planPoint(wall, end, w, scene)), { overall: true });
            }
            markAll(draft, solids, ({ kind }) => /rail|ledger|bearer/.test(kind), one => rectangleOf(planFrame, one));
        },
    };
}

const opposite = { bottom: 'top', top: 'bottom', left: 'right', right: 'left' } as const;

/** The linings near the benches, as far as the picture reaches. */
function outline(draft: Draft, room: { readonly left: number; readonly right: number; readonly bottom: number; readonly top: number }, { left, right, bottom, top }: typeof room): void {
    if (bottom <= room.bottom) draft.line('walls', 'cut', point(left, room.bottom), point(right, room.bottom));
    if (top >= room.top) draft.line('walls', 'cut', point(left, room.top), point(right, room.top));
    if (left <= room.left) draft.line('walls', 'cut', point(room.left, bottom), point(room.left, top));
    if (right >= room.right) draft.line('walls', 'cut', point(room.right, bottom), point(room.right, top));
}

/** Across the length of the benches at one wall, seen from their left end; cut beside the middle so that a leg there is seen and not cut. */
function sectionFigure(wall: Wall, all: readonly Solid[], benches: readonly BenchLayout[], { scene, results }: ViewInput): readonly Figure[] {
    const { inside } = scene;
    const runs = benches.flatMap(bench => bench.runs.filter(run => run.wall === wall).map(run => ({ bench, run })));
    const [first] = runs;
    if (!first) return [];
    const u = cutPlace(runs.map(({ run }) => run), all, wall, inside);
    // looking along the wall to its right end
    const frame = wallFrames(inside)[neighbours[wall].right];
    const axis = wall === 'front' || wall === 'back' ? 0 : 1;
    const at = wall === 'front' ? ticks(inside.width - u) : wall === 'right' ? ticks(inside.depth - u) : ticks(u);
    const isUp = wall === 'back' || wall === 'left';
    const stretch = isUp ? { from: at, to: everywhere.x.to } : { from: everywhere.x.from, to: at };
    // what reaches past the front belongs to another leg of the bench, a leg of wood excepted that stands a little before it
    const front = Math.max(...runs.map(({ run }) => run.w.to));
    const end = Math.max(...runs.map(({ run }) => run.u.to));
    const isOfRuns = ({ u: along, w }: WallBox): boolean => along.from < end && w.from < front && w.to <= front + inches(4);
    const keep: Box = axis === 0 ? { ...everywhere, x: stretch } : { ...everywhere, y: stretch };
    const solids = clipped(all.filter(({ boxes }) => boxes.every(one => isOfRuns(onWall(wall, one, inside)))), keep);
    const look: Look = { cut: { axis, at } };
    const strokes = strokesOf(solids, frame, look);
    const place = (w: number, v: number) => { const box = onWallPoint(wall, u, w, inside); return frame.project([box[0], box[1], v]); };
    const [lining, edge] = [place(0, 0), place(front, 0)];
    const top = Math.max(...runs.map(({ bench }) => bench.top));
    const picture = { left: Math.min(lining.x, edge.x), right: Math.max(lining.x, edge.x), bottom: 0, top };
    return [{
        caption: `Across the benches on the ${wall} wall, looking to the ${neighbours[wall].right} wall`, picture,
        draw(draft) {
            draft.line('walls', 'cut', lining, point(lining.x, top + draft.paper(6)));
            draft.line('notes', 'visible', point(picture.left - draft.paper(2), 0), point(picture.right + draft.paper(2), 0));
            draft.strokes(strokes);
            draft.strokes(hatching(cutFaces(solids, frame, { axis, at }), draft.paper(2)));
            draft.chain('bottom', [0, ...runs.flatMap(({ run }) => [run.w.from, run.w.to])].map(w => place(w, 0)), { overall: true });
            const slatted = runs.find(({ bench }) => bench.slats);
            const thickness = results.parts.find(({ what, mark }) => what === 'bench slat' && slatted !== undefined && mark.startsWith(slatted.bench.name.toUpperCase()))?.section.width;
            if (slatted?.bench.slats && thickness !== undefined) draft.chain('top', slatted.bench.slats.starts.flatMap(start => [slatted.run.w.from + start, slatted.run.w.from + start + thickness]).map(w => place(w, top)));
            draft.running(lining.x < edge.x ? 'right' : 'left', edge, runs.flatMap(({ bench }) => [
                { at: point(edge.x, bench.top), words: `${bench.name.toUpperCase()} bench top` }, { at: point(edge.x, bench.ledgerTop), words: 'top of ledgers and rails' },
                { at: point(edge.x, bench.railUnderside), words: 'underside of rails' },
            ]));
            markAll(draft, solids, () => true, one => rectangleOf(frame, one));
        },
    }];
}

/** A place a little before the first leg of the runs, so that it is seen, and off anything that would be cut lengthwise there; without a leg near the middle. */
function cutPlace(runs: readonly BenchRun[], all: readonly Solid[], wall: Wall, inside: ViewInput['scene']['inside']): number {
    const [from, to] = [Math.max(...runs.map(({ u }) => u.from)), Math.min(...runs.map(({ u }) => u.to))];
    const legs = all.filter(({ kind }) => kind.includes('leg')).flatMap(({ boxes }) => boxes.map(one => onWall(wall, one, inside)));
    const cross = all.filter(({ kind }) => /bearer|leg|ledger/.test(kind)).flatMap(({ boxes }) => boxes.map(one => onWall(wall, one, inside).u));
    const own = legs.filter(({ u, w }) => u.from > from && u.to < to && w.from < Math.max(...runs.map(run => run.w.to))).map(({ u }) => u.from);
    const before = own.length > 0 ? [0.02, 0.03, 0.04, 0.06, 0.08, 0.1].map(share => (Math.min(...own) - from) / (to - from) - share) : [];
    const free = [...before, 0.4, 0.42, 0.45, 0.37, 0.33, 0.3, 0.55, 0.6, 0.25].map(share => Math.round(from + (to - from) * share)).find(u => u > from && u < to && !cross.some(at => at.from <= u && u <= at.to));
    return free ?? Math.round((from + to) / 2);
}

function onWallPoint(wall: Wall, u: number, w: number, { width, depth }: ViewInput['scene']['inside']): readonly [number, number] {
    switch (wall) {
        case 'front': return [width - u, w];
        case 'back': return [u, depth - w];
        case 'left': return [w, u];
        case 'right': return [width - w, depth - u];
    }
}

/** The benches of one wall from the front: rails, legs and what shows of the rest. */
function frontFigure(wall: Wall, all: readonly Solid[], benches: readonly BenchLayout[], { scene }: ViewInput): Figure {
    const { inside } = scene;
    const frame = wallFrames(inside)[wall];
    const own = benches.filter(bench => bench.runs.some(run => run.wall === wall));
    const solids = all.filter(({ mark = '', boxes }) => own.some(bench => bench.parts.some(part => part.mark === mark)) && boxes.every(one => runsAt(own, wall).some(run => { const at = onWall(wall, one, inside); return at.w.from < run.w.to && at.u.from < run.u.to && at.u.to > run.u.from; })));
    const strokes = strokesOf(solids, frame, { asHidden: ({ kind }) => /leg|ledger/.test(kind) });
    const run = insideRun(wall, inside);
    const top = Math.max(...own.map(bench => bench.top));
    const picture = { left: 0, right: run, bottom: 0, top };
    return {
        caption: `Benches on the ${wall} wall from the front`, picture,
        draw(draft) {
            draft.line('notes', 'visible', point(-draft.paper(3), 0), point(run + draft.paper(3), 0));
            draft.running('right', point(run, 0), own.flatMap(bench => [{ at: point(run, bench.top), words: `${bench.name.toUpperCase()} bench top` }, { at: point(run, bench.ledgerTop), words: 'top of ledgers and rails' }, { at: point(run, bench.railUnderside), words: 'underside of rails' }]));
            draft.line('walls', 'cut', point(0, 0), point(0, top + draft.paper(5)));
            draft.line('walls', 'cut', point(run, 0), point(run, top + draft.paper(5)));
            draft.strokes(strokes);
            draft.running('bottom', point(0, 0), own.flatMap(bench => bench.legs.filter(leg => bench.runs[leg.run]?.wall === wall).map(({ u, line }) => ({ at: point(u.from, 0), words: `${line} leg` }))));
            draft.chain('top', [0, ...runsAt(own, wall).flatMap(({ u }) => [u.from, u.to]), run].map(u => point(u, top)));
            markAll(draft, solids, ({ kind }) => /leg|front rail|slat|fascia|ledger/.test(kind), one => rectangleOf(frame, one));
        },
    };
}

const runsAt = (benches: readonly BenchLayout[], wall: Wall): readonly BenchRun[] => benches.flatMap(({ runs }) => runs.filter(run => run.wall === wall));

/** Each mark once, at the first piece that carries it. */
function markAll(draft: Draft, solids: readonly Solid[], wanted: (solid: Solid) => boolean, rectangle: (one: Box) => ReturnType<typeof rectangleOf>): void {
    const done = new Set<string>();
    for (const solid of solids) {
        if (solid.mark === undefined || done.has(solid.mark) || !wanted(solid)) continue;
        done.add(solid.mark);
        draft.label(solid.mark, around(solid.boxes.map(rectangle)), { of: solid.id });
    }
}
