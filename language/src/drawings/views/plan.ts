import { grow, walls, type Wall } from '../../core/geometry.js';
import { inches, mm, negate, zero, ticks, type Length } from '../../core/length.js';
import { isMetric } from '../../core/show.js';
import type { Door } from '../../engines/openings/door.js';
import { zoneSolids } from '../../engines/electrical/zones.js';
import type { Draft } from '../draft.js';
import { point, type Point } from '../drawing.js';
import { around, aroundPoints, clipped, cutFaces, everywhere, hatching, planFrame, rectangleOf, strokesOf, type Rectangle } from '../projection.js';
import { isPoint, middleOf, planPoint, shower, sideOf, thingsOn, type View, type ViewInput } from './view.js';

/** The room cut at breast height, looking down: what lies higher is dashed. */
export function planView(input: ViewInput): View {
    const { scene, results, unit } = input;
    const at: Length = isMetric(unit) ? mm(1200) : inches(48);
    const show = shower(unit);
    const kept = scene.solids.filter(({ layer, kind }) => layer !== 'ceiling' && layer !== 'base' && layer !== 'blocking' && kind !== 'door leaf');
    const solids = clipped(kept, { ...everywhere, z: { from: everywhere.z.from, to: at } });
    const cut = { axis: 2, at } as const;
    const strokes = strokesOf(solids, planFrame, { cut, asHidden: () => false });
    const picture = around([rectangleOf(planFrame, scene.outside), ...results.doors.flatMap(({ door }) => door ? [swingOf(door, input).reach] : [])]);
    return {
        name: 'plan', title: 'Plan',
        figures: [{
            caption: `Plan, cut ${show(at)} above the finished floor, front wall at the bottom`, picture,
            draw(draft) {
                draft.strokes(strokes);
                draft.strokes(hatching(cutFaces(solids, planFrame, cut), draft.paper(2.2)));
                for (const { door } of results.doors) if (door) drawSwing(draft, door, input);
                drawVents(draft, input);
                drawZones(draft, input);
                drawFree(draft, input);
                chains(draft, input);
                benchDepths(draft, input);
                for (const solid of solids) if (solid.layer === 'walls' && solid.mark !== undefined) draft.label(solid.mark, around(solid.boxes.map(one => rectangleOf(planFrame, one))), { of: solid.id });
                names(draft, input);
            },
        }],
        notes: [
            ...results.doors.flatMap(({ door, name }) => door ? [`Door ${name}: ${door.hand.hand}, seen from ${door.hand.seenFrom}, the pull side; clear ${show(door.clearWidth)} x ${show(door.clearHeight)}, leaf ${show(door.leafSize.width)} x ${show(door.leafSize.height)}, gap under the leaf ${show(door.gaps.bottom)}.`] : []),
            ...thicknesses(input),
            ...(results.heaters.some(({ heater }) => heater) ? ['Dash-dot-dot round a heater: what its manual wants free at the side and in front; over it see the sheet of the heater wall.'] : []),
            ...(results.zones ? ['Zones of IEC 60364-7-703 are drawn to the linings. Zone 1 reaches from floor to ceiling; outside it zone 2 lies below and zone 3 above.'] : []),
            ...outsideThings(input),
        ],
    };
}

function thicknesses({ results, unit }: ViewInput): readonly string[] {
    const { room } = results;
    if (!room) return [];
    const show = shower(unit);
    const texts = walls.map(wall => `${room.base.wallLayers[wall].filter(({ thickness }) => thickness > 0).map(({ role, name, thickness }) => `${role.replace('_', ' ')} ${role === 'air_gap' ? '' : `${name} `}${show(thickness)}`).join(', ')}; in all ${show(room.thickness[wall])}`);
    return new Set(texts).size === 1 ? [`Walls from inside to outside: ${texts[0] ?? ''}.`] : walls.map((wall, i) => `${wall} wall from inside to outside: ${texts[i] ?? ''}.`);
}

/** What has no place on the drawing: it stands outside the room, or nobody said where. */
function outsideThings({ job, unit }: ViewInput): readonly string[] {
    const show = shower(unit);
    return [
        ...job.controls.flatMap(({ values: { stands, height } }) => stands ? [`Heater control: ${stands.value === 'outside' ? 'outside the room' : 'inside the room'}${height ? `, ${show(height.value)} above the floor` : ''}.`] : []),
        ...(job.signs.length > 0 ? [`Signs: ${job.signs.map(({ values: { says, stands } }) => `${says?.value ?? 'sign'} ${stands?.value ?? 'outside'}`).join('; ')}.`] : []),
    ];
}

/** The open leaf and the quarter it sweeps, in plan. */
function swingOf(door: Door, { scene, results }: ViewInput): { readonly pivot: Point; readonly shut: Point; readonly open: Point; readonly reach: Rectangle; readonly leaf: Rectangle } {
    const { swing, wall, leaf } = door;
    const face = swing.side === 'outside' ? negate(results.room?.thickness[wall] ?? zero) : zero;
    const away = swing.side === 'outside' ? -1 : 1;
    const shutU = swing.latchAt === 'higher_u' ? swing.pivot + (leaf.u.to - leaf.u.from) : swing.pivot - (leaf.u.to - leaf.u.from);
    const thick = Math.sqrt(Number(swing.radiusSquared) - swing.reach ** 2);
    const place = (u: number, w: number): Point => planPoint(wall, u, w, scene);
    const [pivot, shut, open] = [place(swing.pivot, face), place(shutU, face), place(swing.pivot, face + away * swing.reach)];
    const inner = swing.latchAt === 'higher_u' ? 1 : -1;
    return { pivot, shut, open, reach: aroundPoints([pivot, shut, open]), leaf: aroundPoints([pivot, place(swing.pivot + inner * Math.round(thick), face + away * swing.reach)]) };
}

function drawSwing(draft: Draft, door: Door, input: ViewInput): void {
    const { pivot, shut, open, leaf } = swingOf(door, input);
    const id = `${door.name}-leaf`;
    draft.rectangle('swing', 'visible', leaf, id);
    const angle = (to: Point): number => Math.round(Math.atan2(to.y - pivot.y, to.x - pivot.x) * 2 / Math.PI) * 90;
    const [a, b] = [angle(shut), angle(open)];
    const start = ((b - a + 360) % 360 === 90 ? a : b) + 360;
    draft.items.push({ kind: 'arc', layer: 'swing', style: 'moving', centre: pivot, radius: door.swing.reach, fromDegrees: start % 360, toDegrees: start % 360 + 90, of: id });
    const arc = [0, 15, 30, 45, 60, 75, 90].map(more => { const turn = (start + more) * Math.PI / 180; return point(pivot.x + door.swing.reach * Math.cos(turn), pivot.y + door.swing.reach * Math.sin(turn)); });
    for (const [i, end] of arc.slice(1).entries()) draft.placement.addLine(arc[i] ?? end, end);
    draft.label(`door ${door.name.replaceAll('_', ' ')}`, aroundPoints([shut, open]), { of: id, mayTurn: false });
}

/** Vents below the cut lie hidden in the wall; the hole is dashed through it. */
function drawVents(draft: Draft, { results }: ViewInput): void {
    for (const { vent } of results.air?.vents ?? []) if (vent) draft.rectangle('openings', 'hidden', rectangleOf(planFrame, vent.box), vent.name);
}

function drawFree(draft: Draft, { results, scene }: ViewInput): void {
    for (const { heater, figures, name } of results.heaters) {
        if (!heater) continue;
        const { u, w } = heater.onWall;
        const wide = grow(u, figures.side?.value ?? zero);
        const corners = [planPoint(heater.wall, wide.from, 0, scene), planPoint(heater.wall, wide.to, w.to + (figures.front?.value ?? 0), scene)];
        draft.rectangle('clearances', 'moving', aroundPoints(corners), name);
    }
}

/** Zone 1 is cut off where the room ends, so its rounded corners may be too. */
function drawZones(draft: Draft, { results, scene }: ViewInput): void {
    const casing = results.zones && results.heaters.find(({ heater }) => heater)?.heater?.casing;
    if (!casing) return;
    const { one } = zoneSolids(casing, scene.inside);
    const { x, y, cornerRadius: r, clip } = one;
    const within = (low: number, high: number, { from, to }: { readonly from: number; readonly to: number }): readonly [number, number] => [Math.max(low, from), Math.min(high, to)];
    for (const edge of [y.from, y.to]) if (edge > clip.y.from && edge < clip.y.to) { const [a, b] = within(x.from + r, x.to - r, clip.x); if (a < b) draft.line('zones', 'moving', point(a, edge), point(b, edge)); }
    for (const edge of [x.from, x.to]) if (edge > clip.x.from && edge < clip.x.to) { const [a, b] = within(y.from + r, y.to - r, clip.y); if (a < b) draft.line('zones', 'moving', point(edge, a), point(edge, b)); }
    for (const [cx, cy, from] of [[x.to - r, y.to - r, 0], [x.from + r, y.to - r, 90], [x.from + r, y.from + r, 180], [x.to - r, y.from + r, 270]] as const) {
        const isIn = (degrees: number): boolean => {
            const [px, py] = [cx + r * Math.cos(degrees * Math.PI / 180), cy + r * Math.sin(degrees * Math.PI / 180)];
            return px >= clip.x.from && px <= clip.x.to && py >= clip.y.from && py <= clip.y.to;
        };
        // a quarter of a circle leaves an upright rectangle at most once at each end; a tenth of a degree is a fifth of a pencil line here
        const inside = Array.from({ length: 901 }, (_, i) => from + i / 10).filter(isIn);
        const [first, last] = [inside[0], inside.at(-1)];
        if (first !== undefined && last !== undefined && last > first) draft.items.push({ kind: 'arc', layer: 'zones', style: 'moving', centre: point(cx, cy), radius: r, fromDegrees: first, toDegrees: last });
    }
    const from = point(Math.max(x.from, clip.x.from), Math.max(y.from, clip.y.from));
    draft.label('zone 1', aroundPoints([from, point(Math.min(x.to, clip.x.to), Math.min(y.to, clip.y.to))]), { layer: 'zones' });
    draft.label('zones 2 and 3', aroundPoints([point(clip.x.from, clip.y.from), point(clip.x.to, clip.y.to)]), { layer: 'zones' });
}

/** On each side: openings, heaters and what is fixed there between the linings, then the panels, then the whole. */
function chains(draft: Draft, input: ViewInput): void {
    const { scene, results } = input;
    for (const wall of walls) {
        const face = (u: number): Point => planPoint(wall, u, 0 - (results.room?.thickness[wall] ?? 0), scene);
        const made = results.shell?.result.walls[wall];
        if (!made) continue;
        const run = wall === 'front' || wall === 'back' ? scene.inside.width : scene.inside.depth;
        const edges = thingsOn(wall, input).filter(({ kind }) => kind === 'door' || kind === 'window' || kind === 'heater').flatMap(({ at: { u } }) => [u.from, u.to]);
        draft.chain(sideOf[wall], [0, ...edges, run].map(face));
        const outside = wallEnds(wall, input);
        draft.chain(sideOf[wall], [outside[0], ...made.panels.flatMap(({ at }) => [at.from, at.to]), outside[1]].map(face), { overall: true });
    }
}

/** The outside corners of a wall in its own u. */
function wallEnds(wall: Wall, { scene: { outside, inside } }: ViewInput): readonly [number, number] {
    switch (wall) {
        case 'back': return [outside.x.from, outside.x.to];
        case 'front': return [inside.width - outside.x.to, inside.width - outside.x.from];
        case 'left': return [outside.y.from, outside.y.to];
        case 'right': return [inside.depth - outside.y.to, inside.depth - outside.y.from];
    }
}

function benchDepths(draft: Draft, { results, scene }: ViewInput): void {
    for (const bench of results.benches?.result.benches ?? []) for (const run of bench.runs) {
        const u = run.u.from + Math.round((run.u.to - run.u.from) * (bench.isHighest ? 0.2 : 0.3));
        draft.single(planPoint(run.wall, u, run.w.from, scene), planPoint(run.wall, u, run.w.to, scene));
    }
}

function names(draft: Draft, input: ViewInput): void {
    const { results, scene } = input;
    const show = shower(input.unit);
    for (const bench of results.benches?.result.benches ?? []) for (const [i, run] of bench.runs.entries()) {
        draft.label(`bench ${bench.name.replaceAll('_', ' ')}, top ${show(bench.top)}`, aroundPoints([planPoint(run.wall, run.u.from, run.w.from, scene), planPoint(run.wall, run.u.to, run.w.to, scene)]), { heightMm: 2.5, of: `${bench.name}-${i}` });
    }
    for (const { name, heater, model } of results.heaters) if (heater) draft.label(`${name} ${model.name?.value ?? ''}`.trim(), rectangleOf(planFrame, heater.casing), { heightMm: 2.5, of: name });
    for (const wall of walls) for (const { kind, name, at, words } of thingsOn(wall, input)) {
        if (kind === 'door' || kind === 'heater' || kind === 'guard' || kind === 'window') continue;
        const [u, w] = [middleOf(at.u), kind === 'vent' ? middleOf(at.w) : at.w.to];
        const spot = planPoint(wall, u, w, scene);
        if (kind !== 'vent') sign(draft, spot, name);
        draft.label(words, { left: spot.x, right: spot.x, bottom: spot.y, top: spot.y }, { of: name });
    }
    for (const { thing, name } of results.fittings) if (thing?.kind === 'duckboard' && !isPoint(thing.box.x)) draft.label(name.replaceAll('_', ' '), rectangleOf(planFrame, thing.box), { of: name });
    for (const { name, window } of results.windows) if (window) {
        const spot = planPoint(window.wall, middleOf(window.glass.u), 0 - (results.room?.thickness[window.wall] ?? 0) / 2, scene);
        draft.label(`window ${name.replaceAll('_', ' ')}`, { left: spot.x, right: spot.x, bottom: spot.y, top: spot.y }, { of: name });
    }
}

/** The sign of something whose size is not drawn: a small cross at its place. */
export function sign(draft: Draft, { x, y }: Point, of: string): void {
    const arm = draft.paper(1);
    draft.line('fittings', 'visible', point(ticks(x - arm), y), point(ticks(x + arm), y), of);
    draft.line('fittings', 'visible', point(x, ticks(y - arm)), point(x, ticks(y + arm)), of);
}
