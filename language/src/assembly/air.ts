import type { InsideSize } from '../core/geometry.js';
import { airPaths, exhaustPlace, shortCircuits, ventPosition, type AirPaths, type ExhaustPlace, type ShortCircuit, type VentPosition } from '../engines/ventilation/air-paths.js';
import { placeVent, ventThing, type Vent, type VentProblem, type VentRole } from '../engines/ventilation/vents.js';
import type { Thing } from '../engines/fittings/things.js';
import type { Job } from '../model/job.js';
import { given, placeOf, wallOf } from './catalogue-values.js';
import type { AssembledHeater } from './heaters.js';
import { nameBlocks, type NamedBlock } from './naming.js';
import type { AssembledDoor } from './openings.js';
import type { RoomShell } from './room.js';

export interface AssembledVent extends NamedBlock<'vent'> {
    readonly vent?: Vent;
    readonly problems: readonly VentProblem[];
    readonly thing?: Thing;
    readonly position?: VentPosition;
    /** Of an exhaust, when there is a heater. */
    readonly exhaust?: ExhaustPlace;
}
export interface AssembledAir {
    readonly vents: readonly AssembledVent[];
    readonly paths: AirPaths;
    readonly shortCircuits: readonly ShortCircuit[];
}

export function assembleAir(job: Job, room: RoomShell, inside: InsideSize, doors: readonly AssembledDoor[], heaters: readonly AssembledHeater[]): AssembledAir {
    const placedDoors = doors.flatMap(({ door }) => door ?? []);
    const main = heaters.find(({ heater }) => heater)?.heater;
    const vents = nameBlocks(job.vents).flatMap(({ name, block }): AssembledVent[] => {
        const wall = wallOf(block);
        const { size, role, free, bottom, below_ceiling: belowCeiling, behind, air } = block.values;
        if (!wall || !size) return [];
        const behindHeater = behind && heaters.find(heater => heater.name === behind.value.name)?.heater;
        const { vent, problems } = placeVent({
            name, wall, size: size.value, height: given({ bottom: bottom?.value, belowCeiling: belowCeiling?.value }), air: air?.value ?? 'unknown',
            ...given({ role: role?.value ?? roleByName(name), freePercent: free?.value, place: placeOf(block), behind: behindHeater }),
        }, inside, room.thickness[wall]);
        if (!vent) return [{ name, block, problems }];
        return [{
            name, block, vent, problems, thing: ventThing(vent, main), position: ventPosition(vent, main),
            ...(main && vent.role === 'exhaust' && { exhaust: exhaustPlace(vent, main, placedDoors, inside) }),
        }];
    });
    const placed = vents.flatMap(({ vent }) => vent ?? []);
    return { vents, paths: airPaths(placed, placedDoors), shortCircuits: shortCircuits(placed, inside) };
}

const roleByName = (name: string): VentRole | undefined => name === 'intake' || name === 'exhaust' ? name : undefined;
