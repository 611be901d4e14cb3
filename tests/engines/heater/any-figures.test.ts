import fc from 'fast-check';
import { expect, test } from 'vitest';
import { neighbours, type Wall } from '../../../language/src/core/geometry.js';
import { ticks } from '../../../language/src/core/length.js';
import { ceilingMouldings } from '../../../language/src/engines/fittings/ceiling-moulding.js';
import { duckboardBuild } from '../../../language/src/engines/fittings/duckboard.js';
import { roomThings } from '../../../language/src/engines/fittings/things.js';
import { heaterGuard, placeHeater } from '../../../language/src/engines/heater/casing.js';
import { checkClearances, clearanceFigures } from '../../../language/src/engines/heater/clearances.js';
import { rangeThatClears } from '../../../language/src/engines/heater/clear-range.js';
import { checkScrew } from '../../../language/src/engines/heater/hanging.js';
import { removalPath } from '../../../language/src/engines/heater/removal.js';
import { sensorPlace } from '../../../language/src/engines/heater/sensor.js';
import { placeDoor } from '../../../language/src/engines/openings/door.js';
import { placeVent } from '../../../language/src/engines/ventilation/vents.js';
import { leaf24, shell, tarn } from '../fittings/demo-room.js';

const any = fc.integer({ min: -1e10, max: 1e10 }).map(ticks);
const size = fc.record({ width: any, height: any });
const wall = fc.constantFrom<Wall[]>('front', 'left', 'back', 'right');

test('no figure a designer can write makes an engine throw, and equal figures give equal results', () => {
    fc.assert(fc.property(wall, wall, size, size, size, fc.array(any, { minLength: 8, maxLength: 8 }), (one, other, a, b, c, [p, q, r, s, t, u, v, x]) => {
        const inside = { width: a.width, depth: a.height, height: p! };
        const run = () => {
            const { door, problems } = placeDoor({ ...leaf24, wall: one, hinge: neighbours[one].left, swing: 'inward', place: { from: other, distance: q!, to: 'middle' }, leaf: b, clear: c, section: r!, threshold: s! }, inside);
            const manual = { ...tarn, body: b, depth: t!, clearSide: u!, clearFront: v!, guardOffset: x!, sensorBelowCeiling: { from: p!, to: q! }, sensor: 'on_side_wall' } as const;
            const { heater } = placeHeater({ name: 'stove', wall: one, place: { from: neighbours[one].right, distance: s!, to: 'near_edge' }, manual }, inside);
            const vent = placeVent({ name: 'intake', role: 'intake', wall: other, size: c, place: { from: one, distance: r!, to: 'middle' }, height: { belowCeiling: t! }, air: 'room' }, inside, u!);
            const things = roomThings({ inside, shell, doors: door ? [door] : [], windows: [], placed: [] });
            return {
                problems, door, vent,
                clearances: checkClearances(heater!, things, clearanceFigures(manual), { inside, isFloorCombustible: true }),
                range: rangeThatClears(heater!, neighbours[one].left, things, clearanceFigures(manual), inside),
                guard: heaterGuard(heater!, { isBuilt: true, inside, things }),
                sensor: sensorPlace(heater!, undefined, { codes: [{ value: v!, citation: { kind: 'practice', text: 'made up' } }] }, inside),
                screw: checkScrew({ length: p! }, { lining: q!, backing: r!, toFacing: s! }),
                way: door && removalPath(heater!, door, things, inside),
                boards: duckboardBuild({ name: 'walk', width: t!, depth: u!, slat: { stock: 'slat', section: { thickness: v!, width: x! } } }),
                mouldings: ceilingMouldings({ stock: 'cove', section: { thickness: v!, width: x! }, inside, longest: p! }),
            };
        };
        expect(run()).toEqual(run());
    }), { numRuns: 300 });
});
