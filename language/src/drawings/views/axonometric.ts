import { shift, type Wall } from '../../core/geometry.js';
import { ticks } from '../../core/length.js';
import type { Solid } from '../../scene/scene.js';
import { bounds } from '../../scene/boxes.js';
import { around, isometricFrame, rectangleOf, strokesOf } from '../projection.js';
import type { View, ViewInput } from './view.js';

/** The room put together, or taken apart: walls moved outward, the ceiling up. */
export function axonometricView(way: 'whole' | 'exploded', { scene }: ViewInput): View {
    const height = scene.outside.z.to;
    const solids = way === 'whole' ? scene.solids : scene.solids.map(solid => moved(solid, height));
    const strokes = strokesOf(solids, isometricFrame);
    const picture = around(solids.flatMap(({ boxes }) => boxes.map(one => rectangleOf(isometricFrame, one))));
    const name = way === 'whole' ? 'axonometric' : 'exploded';
    return {
        name, title: way === 'whole' ? 'The room from outside' : 'The room taken apart',
        figures: [{
            caption: 'Isometric, from before the right front corner and above; no measures are taken from it', picture, isPictorial: true,
            draw(draft) {
                draft.strokes(strokes);
                const seen = new Set(strokes.flatMap(({ of }) => of ?? []));
                const marked = new Set<string>();
                for (const solid of solids) {
                    const { mark, layer, id } = solid;
                    if (mark === undefined || marked.has(mark) || !seen.has(id) || !(layer === 'walls' || layer === 'ceiling' || (way === 'exploded' && (layer === 'base' || /ledger|leg|rail/.test(solid.kind))))) continue;
                    marked.add(mark);
                    const own = strokes.filter(({ of }) => of === id);
                    const face = around(own.map(({ from, to }) => ({ left: Math.min(from.x, to.x), right: Math.max(from.x, to.x), bottom: Math.min(from.y, to.y), top: Math.max(from.y, to.y) })));
                    draft.label(mark, face, { of: id, mayTurn: false });
                }
            },
        }],
        notes: [way === 'whole' ? 'Every panel carries its mark on it, on the list and on the sheets of its wall.' : 'Parts are moved apart along the axes of the room; the order of building is not shown by it.'],
    };
}

const outward: Readonly<Record<Wall, readonly [number, number]>> = { front: [0, -0.62], back: [0, 0.3], left: [-0.3, 0], right: [0.62, 0] };

/** Walls by a share of the height of the room, the ceiling by half of it; what stands in the room stays. */
function moved(solid: Solid, height: number): Solid {
    const [right, back] = solid.wall === undefined || solid.layer === 'base' || solid.layer === 'blocking' ? [0, 0] : outward[solid.wall];
    const up = solid.layer === 'ceiling' ? 0.5 : solid.layer === 'base' ? -0.12 : 0;
    const by = (share: number) => ticks(Math.round(height * share));
    return bounds(solid.boxes).z.to < 0 ? solid : { ...solid, boxes: solid.boxes.map(({ x, y, z }) => ({ x: shift(x, by(right)), y: shift(y, by(back)), z: shift(z, by(up)) })) };
}
