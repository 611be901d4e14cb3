import type { InsideSize } from '../core/geometry.js';
import { sweptFloor, takenFloor } from '../engines/access/free-floor.js';
import { findTurningSpace, freeCircle, type TurningInput } from '../engines/access/turning-space.js';
import type { Thing } from '../engines/fittings/things.js';
import type { AssembledDoor } from './openings.js';
import { remembered } from './remember.js';

/** Asked for by rules and facts, so that a room nobody wants to turn in costs nothing. */
export const turningSpaceOf = remembered('turning space', findTurningSpace);
export const freeCircleOf = remembered('turning space', freeCircle);

/** The floor of the room as a wheelchair finds it. */
export const freeFloor = (things: readonly Thing[], doors: readonly AssembledDoor[], inside: InsideSize): TurningInput => ({
    inside, taken: takenFloor(things, inside), swept: sweptFloor(doors.flatMap(({ door }) => door ?? []), things),
});
