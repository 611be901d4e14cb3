import { grow, insideRun, intervalsOverlap, neighbours } from '../../core/geometry.js';
import { ticks, zero } from '../../core/length.js';
import type { JudgedHeater } from '../../assembly/heater-judgement.js';
import type { Clearance } from '../../engines/heater/clearances.js';
import { onWall, type WallBox } from '../../engines/fittings/wall-frame.js';
import type { Solid } from '../../scene/scene.js';
import type { Draft, Stop } from '../draft.js';
import { point, type Point } from '../drawing.js';
import { clipped, cutFaces, everywhere, hatching, rectangleOf, strokesOf, wallFrames } from '../projection.js';
import { sign } from './plan.js';
import { isPoint, middleOf, shower, thingsOn, type Figure, type View, type ViewInput } from './view.js';

/** Where a heater hangs and what must stay free round it, from the front or from its side. */
export function heaterView(from: 'front' | 'side', input: ViewInput): View | undefined {
    const placed = input.results.heaters.filter(({ heater }) => heater);
    if (placed.length === 0) return undefined;
    const show = shower(input.unit);
    return {
        name: from === 'front' ? 'heater' : 'heater-side', title: from === 'front' ? 'Heater wall' : 'Heater from its side',
        figures: placed.map(judged => from === 'front' ? frontFigure(judged, input) : sideFigure(judged, input)),
        notes: [
            ...placed.flatMap(judged => {
                const { name, manual, figures, guard, fastening } = judged;
                return [
                    `${name}: ${judged.model.name?.value ?? 'heater'}; figures of ${manual.title}. The manual that comes with the heater goes before this sheet.`,
                    ...clearanceNotes(judged, input).map(note => `${name}, ${note}`),
                    ...(figures.above ? [] : [`${name}: its manual gives no clearance above; it was not checked.`]),
                    ...(guard ? [`Guard: ${show(guard.offset)} off the casing, from ${show(guard.onWall.v.from)} to ${show(guard.onWall.v.to)} over the floor.`] : []),
                    ...(fastening?.points ? [`Two upper screws ${show(ticks(fastening.points[1].u - fastening.points[0].u))} apart, ${show(fastening.points[0].v)} over the floor, into the blocking (dashed).`] : [`${name}: its manual does not say where its screws go; take them from the heater.`]),
                ];
            }),
            'Dash-dot-dot: what has to stay free, from the manual. The electrician confirms the connection; where the cable enters stands in the manual.',
        ],
    };
}

const wordOf: Readonly<Record<Gap['direction'], string>> = { left: 'to the left', right: 'to the right', front: 'in front', above: 'above', below: 'below' };

const nameOf = ({ thing: { kind, name } }: Clearance): string => kind === 'wall' ? `the ${name} wall` : kind === name ? `the ${name}` : `${kind.replaceAll('_', ' ')} ${name.replaceAll('_', ' ')}`;

/** What is nearest in each direction with the figure it is held to, and whatever is too near in any other way. */
function clearanceNotes(judged: JudgedHeater, input: ViewInput): readonly string[] {
    const show = shower(input.unit);
    const gaps = gapsOf(judged, input);
    const figureOf = ({ direction, clearance }: Gap): string => {
        const figures = judged.figures;
        const figure = direction === 'left' || direction === 'right' ? figures.side : figures[direction];
        const required = clearance.thing.kind === 'bench' || clearance.thing.kind === 'rest' ? figures.bench ?? figure : figure;
        return clearance.exemption === 'floor_does_not_burn' ? 'the floor does not burn' : required ? `${show(required.value)} required` : 'its manual gives no figure';
    };
    return [
        ...gaps.map(gap => `${wordOf[gap.direction]}: ${show(ticks(gap.size))} to ${nameOf(gap.clearance)}; ${figureOf(gap)}.`),
        ...judged.clearances.filter(({ status }) => status === 'short').map(({ thing, measured, required }) => `TOO NEAR: ${thing.kind} ${thing.name}, ${show(measured)}; ${required ? show(required.value) : 'more'} required.`),
    ];
}

/** What lies straight to a side of the casing, before, over or under it. */
interface Gap { readonly direction: 'left' | 'right' | 'front' | 'above' | 'below'; readonly thing: WallBox; readonly clearance: Clearance; readonly size: number }
function gapsOf(judged: JudgedHeater, input: ViewInput): readonly Gap[] {
    const { heater, clearances } = judged;
    if (!heater) return [];
    const { u, v, w } = heater.onWall;
    const best = new Map<Gap['direction'], { gap: Gap; size: number }>();
    for (const clearance of clearances) {
        if (clearance.direction === 'behind' || clearance.exemption === 'belongs_to_heater') continue;
        const thing = onWall(heater.wall, clearance.thing.box, input.scene.inside);
        const inLine = { u: intervalsOverlap(thing.u, u), v: intervalsOverlap(thing.v, v), w: intervalsOverlap(thing.w, w) };
        const candidates: readonly (readonly [Gap['direction'], boolean, number])[] = [
            ['left', inLine.v && inLine.w && thing.u.to <= u.from, u.from - thing.u.to], ['right', inLine.v && inLine.w && thing.u.from >= u.to, thing.u.from - u.to],
            ['front', inLine.u && inLine.v && thing.w.from >= w.to, thing.w.from - w.to],
            ['above', inLine.u && inLine.w && thing.v.from >= v.to, thing.v.from - v.to], ['below', inLine.u && inLine.w && thing.v.to <= v.from, v.from - thing.v.to],
        ];
        for (const [direction, lies, size] of candidates) {
            const known = best.get(direction);
            if (lies && (!known || size < known.size)) best.set(direction, { gap: { direction, thing, clearance, size }, size });
        }
    }
    return [...best.values()].map(({ gap }) => gap);
}

function frontFigure(judged: JudgedHeater, input: ViewInput): Figure {
    const { scene } = input;
    const { heater, name, figures, blocking, fastening } = judged;
    if (!heater) throw new Error('A heater without a place was to be drawn');
    const { wall, onWall: { u, v } } = heater;
    const frame = wallFrames(scene.inside)[wall];
    const run = insideRun(wall, scene.inside);
    const wanted: readonly Solid[] = scene.solids.filter(({ layer, wall: own, kind }) => layer === 'heater' || layer === 'guard' || (layer === 'blocking' && own === wall) || (layer === 'walls' && own === wall) || (layer === 'openings' && own === wall) || (layer === 'fittings' && kind !== 'duckboard'));
    const room = { left: 0, right: run, bottom: 0, top: scene.inside.height };
    const keep = { ...everywhere, x: { from: everywhere.x.from, to: everywhere.x.to }, z: { from: zero, to: scene.inside.height } };
    const solids = clipped(wanted, keep).filter(({ layer, boxes }) => layer !== 'fittings' || boxes.every(one => Math.abs(onWall(wall, one, scene.inside).w.from) < 1));
    const strokes = strokesOf(clipToRoom(solids, input), frame, { asHidden: ({ layer }) => layer === 'blocking' });
    const gaps = gapsOf(judged, input);
    return {
        caption: `${name}: the ${wall} wall from inside`, picture: room,
        draw(draft) {
            draft.rectangle('walls', 'cut', room);
            draft.strokes(strokes);
            const free = { left: grow(u, figures.side?.value ?? zero).from, right: grow(u, figures.side?.value ?? zero).to, bottom: v.from - (figures.below?.value ?? 0), top: v.to + (figures.above?.value ?? 0) };
            draft.rectangle('clearances', 'moving', free, name);
            const height = middleOf(v);
            const middleU = middleOf(u);
            for (const { direction, thing } of gaps) {
                if (direction === 'left') draft.single(point(thing.u.to, height), point(u.from, height));
                if (direction === 'right') draft.single(point(u.to, height), point(thing.u.from, height));
                if (direction === 'above') draft.single(point(middleU, v.to), point(middleU, thing.v.from));
                if (direction === 'below') draft.single(point(middleU, thing.v.to), point(middleU, v.from));
            }
            const things = thingsOn(wall, input);
            const along = (at: number, words: string): Stop => ({ at: point(at, 0), words });
            draft.running('bottom', point(0, 0), [
                along(u.from, 'casing'), along(u.to, 'casing'), ...(judged.guard ? [along(judged.guard.onWall.u.from, 'guard'), along(judged.guard.onWall.u.to, 'guard')] : []),
                ...(fastening?.points ?? []).map(one => along(one.u, 'screw')), ...(blocking ? [along(blocking.u.from, 'blocking'), along(blocking.u.to, 'blocking')] : []),
                ...things.filter(({ kind }) => kind === 'vent' || kind === 'sensor').flatMap(({ at, words }) => isPoint(at.u) ? [along(at.u.from, `${words}, middle`)] : [along(at.u.from, words), along(at.u.to, words)]),
                along(run, `${neighbours[wall].right} wall`),
            ].filter(({ at }) => at.x > 0));
            const up = (at: number, words: string): Stop => ({ at: point(run, at), words });
            draft.running('right', point(run, 0), [
                up(v.from, 'underside of casing'), up(v.to, 'top of casing'), ...(heater.stoneTop !== v.to ? [up(heater.stoneTop, 'top of stones')] : []), ...(fastening?.points ? [up(fastening.points[0].v, 'upper screws')] : []),
                ...(blocking ? [up(blocking.v.from, 'blocking, bottom'), up(blocking.v.to, 'blocking, top')] : []), ...(judged.guard ? [up(judged.guard.onWall.v.to, 'top of guard')] : []),
                ...things.filter(({ kind }) => kind === 'vent' || kind === 'sensor').flatMap(({ at, words }) => isPoint(at.v) ? [up(at.v.from, words)] : [up(at.v.from, `${words}, lower edge`), up(at.v.to, `${words}, upper edge`)]),
                up(scene.inside.height, 'ceiling lining'),
            ]);
            for (const one of fastening?.points ?? []) sign(draft, point(one.u, one.v), name);
            draft.label(`${name} ${judged.model.name?.value ?? ''}`.trim(), { left: u.from, right: u.to, bottom: v.from, top: v.to }, { of: name, heightMm: 2.5 });
            for (const { name: own, at, words, kind } of things) if (kind === 'sensor' || kind === 'vent') {
                if (isPoint(at.u)) sign(draft, point(at.u.from, at.v.from), own);
                draft.label(words, { left: at.u.from, right: at.u.to, bottom: at.v.from, top: at.v.to }, { of: own });
            }
            markGuard(draft, judged, solids, one => rectangleOf(frame, one));
        },
    };
}

const clipToRoom = (solids: readonly Solid[], { scene: { inside } }: ViewInput): readonly Solid[] => {
    const reach = everywhere.x;
    return solids.flatMap(solid => solid.layer === 'walls' && (solid.wall === 'front' || solid.wall === 'back') ? clipped([solid], { x: { from: zero, to: inside.width }, y: reach, z: reach }) : solid.layer === 'walls' ? clipped([solid], { x: reach, y: { from: zero, to: inside.depth }, z: reach }) : [solid]);
};

function markGuard(draft: Draft, { parts }: JudgedHeater, solids: readonly Solid[], rectangle: (one: Solid['boxes'][number]) => ReturnType<typeof rectangleOf>): void {
    for (const { mark } of parts) {
        const solid = solids.find(one => one.mark === mark);
        const [first] = solid?.boxes ?? [];
        if (solid && first) draft.label(mark, rectangle(first), { of: solid.id });
    }
}

/** Beside the heater, looking at it along its wall. */
function sideFigure(judged: JudgedHeater, input: ViewInput): Figure {
    const { scene } = input;
    const { inside } = scene;
    const { heater, name, figures, guard } = judged;
    if (!heater) throw new Error('A heater without a place was to be drawn');
    const { wall, onWall: { u, v, w } } = heater;
    // looking to the right end of the wall
    const toward = neighbours[wall].right;
    const frame = wallFrames(inside)[toward];
    const axis = wall === 'front' || wall === 'back' ? 0 : 1;
    const cutU = middleOf(u);
    const at = wall === 'front' ? ticks(inside.width - cutU) : wall === 'right' ? ticks(inside.depth - cutU) : cutU;
    const isUp = wall === 'back' || wall === 'left';
    const stretch = isUp ? { from: at, to: everywhere.x.to } : { from: everywhere.x.from, to: at };
    const keep = axis === 0 ? { ...everywhere, x: stretch } : { ...everywhere, y: stretch };
    const solids = clipped(scene.solids.filter(({ layer, wall: own }) => layer === 'heater' || layer === 'guard' || (layer === 'walls' && own === wall) || (layer === 'blocking' && own === wall)), keep);
    const cut = { axis, at } as const;
    const strokes = strokesOf(solids, frame, { cut });
    const place = (depth: number, height: number): Point => {
        const along = { front: [inside.width - cutU, depth], back: [cutU, inside.depth - depth], left: [depth, cutU], right: [inside.width - depth, inside.depth - cutU] } as const;
        return frame.project([along[wall][0], along[wall][1], height]);
    };
    const gap = gapsOf(judged, input).find(({ direction }) => direction === 'front');
    const thickness = input.results.room?.thickness[wall] ?? zero;
    const reach = Math.max(w.to + (figures.front?.value ?? 0), guard?.onWall.w.to ?? 0, gap ? gap.thing.w.from : 0);
    const [a, b] = [place(0 - thickness, 0), place(reach, 0)];
    const picture = { left: Math.min(a.x, b.x), right: Math.max(a.x, b.x), bottom: 0, top: inside.height };
    return {
        caption: `${name}: cut through its middle, looking to the ${toward} wall`, picture,
        draw(draft) {
            draft.line('notes', 'visible', place(0, 0), place(reach, 0));
            draft.line('ceiling', 'cut', place(0, inside.height), place(reach, inside.height));
            draft.strokes(strokes);
            draft.strokes(hatching(cutFaces(solids, frame, cut).filter(({ solid }) => solid.layer !== 'heater'), draft.paper(2.2)));
            const corners = [place(w.from, v.from - (figures.below?.value ?? 0)), place(w.to + (figures.front?.value ?? 0), v.to + (figures.above?.value ?? 0))] as const;
            draft.rectangle('clearances', 'moving', { left: Math.min(corners[0].x, corners[1].x), right: Math.max(corners[0].x, corners[1].x), bottom: corners[0].y, top: corners[1].y }, name);
            const stops = [0, w.from, w.to, ...(guard ? [guard.onWall.w.to] : [])];
            draft.chain('bottom', stops.map(depth => place(depth, 0)));
            if (gap) {
                draft.single(...ordered(place(w.to, v.to), place(gap.thing.w.from, v.to)), `free in front, to ${nameOf(gap.clearance)}`);
            }
            draft.label(name, rectangleOf(frame, heater.casing), { of: name, heightMm: 2.5 });
        },
    };
}

const ordered = (a: Point, b: Point): readonly [Point, Point] => a.x <= b.x ? [a, b] : [b, a];
