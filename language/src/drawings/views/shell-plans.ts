import { rootUp, ticks } from '../../core/length.js';
import { walls } from '../../core/geometry.js';
import { point } from '../drawing.js';
import { around, planFrame, rectangleOf, strokesOf } from '../projection.js';
import { shower, sideOf, type View, type ViewInput } from './view.js';

/** The base plates from above, with what squares them and where the room stands. */
export function basePlan(input: ViewInput): View | undefined {
    const { scene, results, unit } = input;
    const show = shower(unit);
    const plates = scene.solids.filter(({ layer }) => layer === 'base');
    const shell = results.shell;
    if (plates.length === 0 || !shell) return undefined;
    const strokes = strokesOf(plates, planFrame);
    const outline = rectangleOf(planFrame, scene.outside);
    const ring = around(plates.flatMap(({ boxes }) => boxes.map(one => rectangleOf(planFrame, one))));
    const { setIn } = shell.input.system.plate;
    const { stand } = results.site ?? {};
    const closing = shell.result.closing;
    return {
        name: 'base', title: 'Base plan',
        figures: [{
            caption: 'Base plates from above, front wall at the bottom', picture: outline,
            draw(draft) {
                draft.rectangle('walls', 'moving', outline);
                draft.strokes(strokes);
                const diagonal = rootUp(BigInt(ring.right - ring.left) ** 2n + BigInt(ring.top - ring.bottom) ** 2n);
                draft.line('dimensions', 'thin', point(ring.left, ring.bottom), point(ring.right, ring.top));
                draft.line('dimensions', 'thin', point(ring.left, ring.top), point(ring.right, ring.bottom));
                for (const plate of plates) if (plate.mark !== undefined) draft.label(plate.mark, around(plate.boxes.map(one => rectangleOf(planFrame, one))), { of: plate.id, heightMm: 2.5 });
                draft.diagonal(point(ring.left, ring.bottom), point(ring.right, ring.top), diagonal, 'both diagonals, corner to corner of the plates');
                for (const wall of walls) {
                    const own = plates.filter(plate => plate.wall === wall).flatMap(({ boxes }) => boxes.map(one => rectangleOf(planFrame, one)));
                    const isAcross = wall === 'front' || wall === 'back';
                    const line = wall === 'front' ? outline.bottom : wall === 'back' ? outline.top : wall === 'left' ? outline.left : outline.right;
                    const at = (value: number) => isAcross ? point(value, line) : point(line, value);
                    draft.chain(sideOf[wall], own.flatMap(one => isAcross ? [one.left, one.right] : [one.bottom, one.top]).map(at));
                    if (wall === 'front' || wall === 'left') draft.chain(sideOf[wall], (isAcross ? [outline.left, ring.left, ring.right, outline.right] : [outline.bottom, ring.bottom, ring.top, outline.top]).map(at), { overall: true });
                }
            },
        }],
        notes: [
            `Plates lie flat, ${show(shell.input.system.plate.section.width)} wide and ${show(shell.input.system.plate.section.thickness)} high, their outer edges ${show(setIn)} inside the outside of the wall panels (dash-dot-dot).`,
            'Level them with shims, square them by the two equal diagonals, and anchor them before the first panel; joints of the plates are not under joints of the panels.',
            ...(closing ? [`Last corner: ${closing.corner.replace('_', ' ')}. Panel ${closing.panel} closes the ${closing.wall} wall; the plate of the ${closing.swings} wall stays unfastened there until it is in, so that the wall can swing out by ${show(closing.by)}.`] : []),
            ...(stand?.left !== undefined || stand?.front !== undefined ? [`The outside of the room stands ${[stand.left === undefined ? [] : [`${show(stand.left)} from the left of the site`], stand.front === undefined ? [] : [`${show(stand.front)} from its front`]].flat().join(' and ')}.`] : []),
            ...results.doors.flatMap(({ door, name }) => door ? [door.threshold.kind === 'cut_out' ? `The plate is cut out under door ${name}.` : `The plate stays under door ${name} as a threshold, ${show(door.threshold.height)} high.`] : []),
        ],
    };
}

/** The ceiling panels from above with their joints, over the walls they lie on. */
export function ceilingPlan(input: ViewInput): View | undefined {
    const { scene, results, unit } = input;
    const show = shower(unit);
    const { shell } = results;
    const ceiling = shell?.result.ceiling;
    const panels = scene.solids.filter(({ layer }) => layer === 'ceiling');
    if (!shell || !ceiling || panels.length === 0) return undefined;
    const wallsBelow = scene.solids.filter(({ layer }) => layer === 'walls');
    const strokes = strokesOf(panels, planFrame);
    const picture = rectangleOf(planFrame, scene.outside);
    const { inside } = scene;
    return {
        name: 'ceiling', title: 'Ceiling plan',
        figures: [{
            caption: 'Ceiling panels from above, front wall at the bottom; dashed: the linings of the walls below', picture,
            draw(draft) {
                draft.strokes(strokes);
                draft.rectangle('walls', 'hidden', { left: 0, right: inside.width, bottom: 0, top: inside.depth });
                const edges = panels.flatMap(({ boxes }) => boxes.map(one => rectangleOf(planFrame, one)));
                if (ceiling.acrossAxis === 'x') {
                    draft.chain('bottom', edges.flatMap(({ left, right }) => [left, right]).map(x => point(x, picture.bottom)), { overall: true });
                    draft.chain('left', [picture.bottom, 0, inside.depth, picture.top].map(y => point(picture.left, y)), { overall: true });
                } else {
                    draft.chain('left', edges.flatMap(({ bottom, top }) => [bottom, top]).map(y => point(picture.left, y)), { overall: true });
                    draft.chain('bottom', [picture.left, 0, inside.width, picture.right].map(x => point(x, picture.bottom)), { overall: true });
                }
                for (const [i, panel] of panels.entries()) {
                    const made = ceiling.panels[i];
                    if (panel.mark !== undefined) draft.label(`${panel.mark}${made ? `, cover ${show(made.cover)}` : ''}`, around(panel.boxes.map(one => rectangleOf(planFrame, one))), { of: panel.id, heightMm: 2.5 });
                }
                for (const { at, rise, between } of ceiling.joints) {
                    const spot = ceiling.acrossAxis === 'x' ? point(at + scene.outside.x.from, ticks(Math.round(inside.depth * 0.8))) : point(ticks(Math.round(inside.width * 0.8)), at + scene.outside.y.from);
                    draft.label(`rises ${show(rise)} to interlock`, { left: spot.x, right: spot.x, bottom: spot.y, top: spot.y }, { of: between.join('-') });
                }
            },
        }],
        notes: [
            `Panels span ${ceiling.span.replaceAll('_', ' ')} and lie on the tops of ${wallsBelow.length} wall panels over the whole outside rectangle; they are ${show(ticks(scene.outside.z.to - inside.height))} thick.`,
            'To interlock a joint both panels are raised there by the figure at it and let down together.',
            `Free height needed to put it up: ${show(shell.result.headroom.required)}.`,
        ],
    };
}
