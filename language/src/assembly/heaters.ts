import { insideRun, type InsideSize } from '../core/geometry.js';
import { sum, zero, type Length } from '../core/length.js';
import { heaterGuard, heaterThings, placeHeater, type Guard, type GuardProblem, type HeaterManual, type PlacedHeater } from '../engines/heater/casing.js';
import { checkScrew, blockingNeeded, fasteningPoints, fasteningZone, type FasteningPoints, type ScrewCheck } from '../engines/heater/hanging.js';
import { blockingParts, guardBuild } from '../engines/heater/heater-parts.js';
import type { Part } from '../engines/parts/part.js';
import type { PlaceProblem } from '../engines/fittings/wall-place.js';
import type { Thing } from '../engines/fittings/things.js';
import type { Block } from '../model/block.js';
import type { Job } from '../model/job.js';
import { given, placeOf, stockOf, wallOf } from './catalogue-values.js';
import { nameBlocks, type NamedBlock } from './naming.js';
import type { RoomShell } from './room.js';

/** A heater placed and hung, before the rest of the room is known. */
export interface AssembledHeater extends NamedBlock<'heater'> {
    readonly model: Block<'heater_model'>;
    readonly manual: HeaterManual;
    readonly heater?: PlacedHeater;
    readonly problems: readonly PlaceProblem[];
    readonly guard?: Guard;
    readonly fastening?: FasteningPoints;
    readonly zone?: ReturnType<typeof fasteningZone>;
    readonly blocking?: NonNullable<ReturnType<typeof blockingNeeded>>;
    readonly screw?: ScrewCheck;
    readonly things: readonly Thing[];
    /** Guard and blocking, where the job names their stock. */
    readonly parts: readonly Part[];
}

export function assembleHeaters(job: Job, room: RoomShell, inside: InsideSize): readonly AssembledHeater[] {
    return nameBlocks(job.heaters).flatMap(({ name, block }): AssembledHeater[] => {
        const model = block.values.model?.value.block;
        const wall = wallOf(block);
        const manual = model && manualOf(model);
        if (!model || !wall || !manual) return [];
        const hasGuard = block.values.guard?.value ?? false;
        const { heater, problems } = placeHeater({ name, wall, manual, ...given({ place: placeOf(block) }) }, inside);
        if (!heater) return [{ name, block, model, manual, problems, things: [], parts: [] }];
        const { guard } = heaterGuard(heater, { isBuilt: hasGuard, inside, things: [] });
        const blocking = blockingNeeded(heater);
        const [guardStock, blockingStock] = [stockOf(block.values.guard_stock?.value), stockOf(block.values.backing_stock?.value)];
        const parts = [
            ...(guard && guardStock ? guardBuild(heater, guard, guardStock, insideRun(wall, inside))?.parts ?? [] : []),
            ...(blocking && blockingStock ? blockingParts(heater, blocking, blockingStock, insideRun(wall, inside)) : []),
        ];
        return [{
            name, block, model, manual, heater, problems, fastening: fasteningPoints(heater), zone: fasteningZone(heater), screw: screwCheck(model, block, room, wall),
            things: heaterThings(heater, guard), parts, ...(guard && { guard }), ...(blocking && { blocking }),
        }];
    });
}

/** What is wrong with the guard, once everything it could meet is known. */
export const guardProblems = ({ heater, block }: AssembledHeater, inside: InsideSize, things: readonly Thing[]): readonly GuardProblem[] =>
    heater ? heaterGuard(heater, { isBuilt: block.values.guard?.value ?? false, inside, things }).problems : [];

function manualOf({ name, values }: Block<'heater_model'>): HeaterManual | undefined {
    if (!values.body || !values.depth) return undefined;
    return {
        title: values.manual?.value ?? `the manual of ${name?.value ?? 'this heater'}`, body: values.body.value, depth: values.depth.value,
        ...given({
            offWall: values.off_wall?.value, offFloor: values.off_floor?.value, clearSide: values.clear_side?.value, clearFront: values.clear_front?.value,
            clearAbove: values.clear_above?.value, clearBelow: values.clear_below?.value, clearBench: values.clear_bench?.value, roomHeight: values.room_height?.value,
            fastenHeight: values.fasten_height?.value, fastenWidth: values.fasten_width?.value, stoneTop: values.stone_top?.value, guard: values.guard?.value,
            guardOffset: values.guard_offset?.value, sensor: values.sensor?.value, sensorBelowCeiling: values.sensor_below_ceiling?.value,
            sensorFromSide: values.sensor_from_side?.value, sensorCable: values.sensor_cable?.value, control: values.control?.value, limiter: values.limiter?.value,
            timerMinutes: values.timer && values.timer.value / 60,
        }),
    };
}

function screwCheck(model: Block<'heater_model'>, block: Block<'heater'>, room: RoomShell, wall: PlacedHeater['wall']): ScrewCheck {
    const layers = room.base.wallLayers[wall];
    const thickness = (role: string): Length => sum(zero, ...layers.filter(layer => layer.role === role).map(layer => layer.thickness));
    const screw = model.values.fasten_screw?.value.block;
    const length = screw?.values.length?.value;
    return checkScrew(
        length === undefined ? undefined : { length, ...given({ penetration: screw?.values.penetration?.value }) },
        { lining: thickness('lining'), airGap: thickness('air_gap'), toFacing: sum(...layers.filter(layer => layer.role !== 'facing').map(layer => layer.thickness)), ...given({ backing: block.values.backing?.value ?? stockOf(block.values.backing_stock?.value)?.section.thickness }) },
    );
}
