import type { Box, Wall } from '../../core/geometry.js';
import { point } from '../drawing.js';
import { clipped, cutFaces, everywhere, hatching, rectangleOf, strokesOf, wallFrames, type Look } from '../projection.js';
import { endsOf, planeNear, shower, type View, type ViewInput } from './view.js';

/** Two cuts through the middle of the room: across it, looking to the front or back, and along it, looking left or right; each toward the heater when that hangs there. */
export function sectionView(way: 'across' | 'along', input: ViewInput): View {
    const { scene, results } = input;
    const { inside, outside, solids: all } = scene;
    const ofHeater = results.heaters.find(({ heater }) => heater)?.heater?.wall;
    const choices: readonly Wall[] = way === 'across' ? ['back', 'front'] : ['right', 'left'];
    const wall = choices.find(one => one === ofHeater) ?? choices[0] ?? 'back';
    const frame = wallFrames(inside)[wall];
    const at = planeNear((way === 'across' ? inside.depth : inside.width) / 2, way === 'across' ? 1 : 0, input);
    const cut: NonNullable<Look['cut']> = { axis: way === 'across' ? 1 : 0, at };
    const near = wall === 'front' || wall === 'left';
    const stretch = near ? { from: everywhere.x.from, to: at } : { from: at, to: everywhere.x.to };
    const keep: Box = way === 'across' ? { ...everywhere, y: stretch } : { ...everywhere, x: stretch };
    const solids = clipped(all, keep);
    const strokes = strokesOf(solids, frame, { cut });
    const picture = rectangleOf(frame, outside);
    const faces = cutFaces(solids, frame, cut);
    return {
        name: `section-${way}`, title: way === 'across' ? 'Section across the room' : 'Section along the room',
        figures: [{
            caption: `Cut ${shower(input.unit)(at)} from the lining of the ${way === 'across' ? 'front' : 'left'} wall, looking to the ${wall} wall: ${endsOf(wall)}`, picture,
            draw(draft) {
                draft.strokes(strokes);
                draft.strokes(hatching(faces, draft.paper(2.2)));
                draft.line('notes', 'visible', point(picture.left - draft.paper(4), 0), point(picture.right + draft.paper(4), 0));
                const lining = way === 'across' ? inside.width : inside.depth;
                const benches = results.benches?.result.benches ?? [];
                const depths = benches.flatMap(bench => bench.runs.filter(run => run.wall !== wall && isBeside(run.wall, wall)).flatMap(run => {
                    const box = rectangleOf(frame, run.box);
                    return [box.left, box.right];
                }));
                const inRoom = [...new Set([0, ...depths.filter(u => u > 0 && u < lining), lining])];
                if (inRoom.length > 2) draft.chain('bottom', inRoom.map(u => point(u, 0)));
                draft.chain('bottom', [picture.left, 0, lining, picture.right].map(u => point(u, 0)), { overall: true });
                const left = (v: number) => point(picture.left, v);
                draft.chain('left', [0, scene.plateThickness, inside.height, picture.top].map(left), { overall: true });
                draft.running('right', point(picture.right, 0), [
                    ...benches.flatMap(({ top, ledgerTop, name }) => [{ at: point(picture.right, top), words: `${name.toUpperCase()} bench top` }, { at: point(picture.right, ledgerTop), words: `${name.toUpperCase()} top of ledgers and rails` }]),
                    { at: point(picture.right, inside.height), words: 'ceiling lining' },
                ]);
                for (const { solid, face } of faces) if (solid.mark !== undefined && (solid.layer === 'walls' || solid.layer === 'ceiling' || solid.layer === 'base')) draft.label(solid.mark, face, { of: solid.id });
                const [highest] = benches.filter(({ isHighest }) => isHighest);
                const run = highest?.runs.find(one => isBeside(one.wall, wall) || one.wall === wall);
                if (highest && run) {
                    const box = rectangleOf(frame, run.box);
                    const u = Math.round(box.left + (box.right - box.left) / 2);
                    draft.single(point(u, highest.top), point(u, inside.height), 'over the bench');
                }
            },
        }],
        notes: [
            `Left: base plate, wall panels with the plate's height under them, ceiling panels. Walls stand on the plates; ceiling panels lie on the wall tops.`,
            'The hatching changes its direction from part to part; wood is hatched closer than panels.',
        ],
    };
}

/** Whether a bench against one wall is seen from its end when looking at the other. */
const isBeside = (wall: Wall, toward: Wall): boolean => (wall === 'front' || wall === 'back') !== (toward === 'front' || toward === 'back');
