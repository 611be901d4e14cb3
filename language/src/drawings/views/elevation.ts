import { insideRun, type Box, type Wall } from '../../core/geometry.js';
import { ticks } from '../../core/length.js';
import { onWall } from '../../engines/fittings/wall-frame.js';
import type { Draft, Stop } from '../draft.js';
import { point, type Point } from '../drawing.js';
import { around, clipped, cutFaces, everywhere, hatching, rectangleOf, strokesOf, wallFrames, type Frame, type Look } from '../projection.js';
import { sign } from './plan.js';
import { endsOf, isPoint, middleOf, planeNear, shower, thingsOn, type OnWall, type View, type ViewInput } from './view.js';

/** One wall from inside, from the middle of the room on: its panels, what is let into it and fixed to it, and what stands against it. */
export function elevationView(wall: Wall, input: ViewInput): View {
    const { scene, results, unit } = input;
    const show = shower(unit);
    const frame = wallFrames(scene.inside)[wall];
    const run = insideRun(wall, scene.inside);
    const { keep, cut } = halfOf(wall, input);
    const wanted = scene.solids.filter(({ layer, wall: own }) => layer !== 'ceiling' && (own === undefined || own === wall));
    const solids = clipped(wanted, keep);
    const look: Look = { cut, asHidden: ({ kind, layer, wall: own }) => layer === 'blocking' || (kind === 'bench ledger' && own === undefined) };
    const strokes = strokesOf(solids, frame, look);
    const room = { left: 0, right: run, bottom: 0, top: scene.inside.height };
    const things = thingsOn(wall, input);
    return {
        name: `elevation-${wall}`, title: `Inside elevation, ${wall} wall`,
        figures: [{
            caption: `${wall[0]?.toUpperCase() ?? ''}${wall.slice(1)} wall from inside: ${endsOf(wall)}`, picture: room,
            draw(draft) {
                draft.rectangle('walls', 'cut', room);
                draft.strokes(strokes);
                draft.strokes(hatching(cutFaces(solids, frame, cut), draft.paper(2.2)));
                const at = (u: number): Point => point(u, 0);
                const joints = results.shell?.result.walls[wall].joints ?? [];
                draft.chain('bottom', [0, ...joints.map(joint => joint.at).filter(u => u > 0 && u < run), run].map(at), { overall: true });
                draft.running('bottom', at(0), alongStops(wall, things, input));
                draft.running('right', point(run, 0), heightStops(wall, things, input));
                label(draft, wall, things, input, frame);
            },
        }],
        notes: [
            `Figures along the bottom: panel joints between the linings, then set-out from the ${endsOf(wall).split(' ')[0] ?? ''} wall's lining, at the left. Figures at the right: heights over the finished floor.`,
            'Dashed: ledgers and blocking behind what is seen. Hatched: what the middle of the room cuts.',
            ...fastenings(wall, input, show),
        ],
    };
}

/** The half of the room a wall is in, and the plane it begins at. */
function halfOf(wall: Wall, input: ViewInput): { readonly keep: Box; readonly cut: NonNullable<Look['cut']> } {
    const { inside } = input.scene;
    const { x, y, z } = everywhere;
    const [midX, midY] = [planeNear(inside.width / 2, 0, input), planeNear(inside.depth / 2, 1, input)];
    const roomX = { from: ticks(0), to: inside.width };
    const roomY = { from: ticks(0), to: inside.depth };
    const height = { from: z.from, to: inside.height };
    switch (wall) {
        case 'front': return { keep: { x: roomX, y: { from: y.from, to: midY }, z: height }, cut: { axis: 1, at: midY } };
        case 'back': return { keep: { x: roomX, y: { from: midY, to: y.to }, z: height }, cut: { axis: 1, at: midY } };
        case 'left': return { keep: { x: { from: x.from, to: midX }, y: roomY, z: height }, cut: { axis: 0, at: midX } };
        case 'right': return { keep: { x: { from: midX, to: x.to }, y: roomY, z: height }, cut: { axis: 0, at: midX } };
    }
}

const edgeWords = (words: string, { kind }: OnWall): string => kind === 'door' ? `${words}, clear` : kind === 'window' ? `${words}, glass` : words;

/** Edges of what has a width, middles of what has none, and ends of ledgers. */
function alongStops(wall: Wall, things: readonly OnWall[], { results, scene }: ViewInput): readonly Stop[] {
    const run = insideRun(wall, scene.inside);
    const stop = (u: number, words: string): Stop[] => u > 0 && u < run ? [{ at: point(u, 0), words }] : [];
    return [
        ...things.filter(({ kind }) => kind !== 'guard').flatMap(thing => isPoint(thing.at.u) ? stop(thing.at.u.from, `${thing.words}, middle`)
            : [...stop(thing.at.u.from, edgeWords(thing.words, thing)), ...stop(thing.at.u.to, edgeWords(thing.words, thing))]),
        ...(results.benches?.result.benches ?? []).flatMap(bench => bench.ledgers.filter(ledger => ledger.wall === wall).flatMap(({ u }) => [...stop(u.from, 'ledger'), ...stop(u.to, 'ledger')])),
        ...results.heaters.flatMap(({ heater, fastening }) => heater?.wall === wall ? (fastening?.points ?? []).flatMap(({ u }) => stop(u, 'screw')) : []),
    ];
}

function heightStops(wall: Wall, things: readonly OnWall[], { results, scene }: ViewInput): readonly Stop[] {
    const run = insideRun(wall, scene.inside);
    const stop = (v: number, words: string): Stop => ({ at: point(run, v), words });
    return [
        ...things.flatMap((thing): readonly Stop[] => {
            const { kind, at: { v }, words } = thing;
            if (isPoint(v)) return [stop(v.from, words)];
            switch (kind) {
                case 'door': return [stop(v.to, `${words}, clear height`)];
                case 'heater': return [stop(v.from, `${words}, underside`), stop(v.to, `${words}, top`)];
                case 'guard': return [stop(v.to, `${words}, top`)];
                case 'window': return [stop(v.from, `${words}, sill`), stop(v.to, `${words}, head`)];
                default: return [stop(v.from, `${words}, lower edge`), stop(v.to, `${words}, upper edge`)];
            }
        }),
        ...(results.benches?.result.benches ?? []).flatMap(bench => bench.runs.some(one => one.wall === wall) || bench.ledgers.some(one => one.wall === wall)
            ? [stop(bench.top, `${bench.name.toUpperCase()} bench top`), stop(bench.ledgerTop, `${bench.name.toUpperCase()} top of ledgers and rails`), stop(bench.railUnderside, `${bench.name.toUpperCase()} underside of rails`)] : []),
        ...results.heaters.flatMap(({ heater, fastening }) => heater?.wall === wall ? (fastening?.points ?? []).slice(0, 1).map(({ v }) => stop(v, 'upper screws of the heater')) : []),
        stop(scene.inside.height, 'ceiling lining'),
    ];
}

function label(draft: Draft, wall: Wall, things: readonly OnWall[], input: ViewInput, frame: Frame): void {
    const { scene, results } = input;
    const run = insideRun(wall, scene.inside);
    const { height } = scene.inside;
    for (const { mark, at } of results.shell?.result.walls[wall].panels ?? []) {
        const [left, right] = [Math.max(0, at.from), Math.min(run, at.to)];
        if (left < right) draft.label(mark, { left, right, bottom: Math.round(height * 0.8), top: Math.round(height * 0.93) }, { heightMm: 2.5, of: mark });
    }
    for (const { name, at: { u, v }, words, kind } of things) {
        if (isPoint(u) && isPoint(v)) { sign(draft, point(u.from, v.from), name); draft.label(words, { left: u.from, right: u.from, bottom: v.from, top: v.from }, { of: name }); continue; }
        if (kind !== 'guard') draft.label(words, { left: u.from, right: u.to, bottom: kind === 'door' ? Math.round(v.to * 0.5) : v.from, top: kind === 'door' ? Math.round(v.to * 0.7) : v.to }, { of: name });
    }
    for (const { heater, fastening, blocking, name } of results.heaters) if (heater?.wall === wall) {
        for (const { u, v } of fastening?.points ?? []) sign(draft, point(u, v), name);
        const board = scene.solids.find(({ layer, wall: own }) => layer === 'blocking' && own === wall);
        if (blocking && board?.mark !== undefined) draft.label(board.mark, { left: blocking.u.to, right: blocking.u.to, bottom: middleOf(blocking.v), top: middleOf(blocking.v) }, { of: board.id });
    }
    for (const { heater, name } of results.heaters) if (heater && heater.wall !== wall && isBefore([heater.casing], wall, input)) draft.label(name, rectangleOf(frame, heater.casing), { of: name });
    const marked = new Set<string>();
    for (const solid of scene.solids) {
        if (solid.layer !== 'benches' || solid.mark === undefined || marked.has(solid.mark) || !isShownPiece(solid.kind)) continue;
        const rectangle = around(solid.boxes.map(one => rectangleOf(frame, one)));
        if (!isBefore(solid.boxes, wall, input)) continue;
        marked.add(solid.mark);
        draft.label(solid.mark, rectangle, { of: solid.id, mayTurn: true });
    }
}

const isShownPiece = (kind: string): boolean => /ledger|leg|front rail|fascia|back rest/.test(kind);
/** Whether a body stands in the half of the room the wall is in. */
const isBefore = (boxes: readonly Box[], wall: Wall, { scene: { inside } }: ViewInput): boolean =>
    boxes.every(one => { const { w } = onWall(wall, one, inside); return w.to <= Math.floor((wall === 'front' || wall === 'back' ? inside.depth : inside.width) / 2); });

function fastenings(wall: Wall, { results }: ViewInput, show: (length: ReturnType<typeof ticks>) => string): readonly string[] {
    return (results.benches?.result.benches ?? []).flatMap(bench => bench.ledgers.filter(ledger => ledger.wall === wall).map(({ mark, v }) => `${mark}: bottom ${show(v.from)}, top ${show(v.to)}; solid wood behind the lining where it is screwed.`));
}
