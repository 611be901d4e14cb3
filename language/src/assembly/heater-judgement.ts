import type { InsideSize } from '../core/geometry.js';
import { area } from '../core/length.js';
import { duckboardsUnderStones } from '../engines/heater/casing.js';
import type { GuardProblem } from '../engines/heater/casing.js';
import { rangeThatClears, type ClearRange } from '../engines/heater/clear-range.js';
import { checkClearances, clearanceFigures, type Clearance, type ClearanceFigures } from '../engines/heater/clearances.js';
import { heaterControls, type Controls, type ControlInput } from '../engines/heater/controls.js';
import { removalPath, type RemovalPath } from '../engines/heater/removal.js';
import { sensorPlace, type SensorDemands, type SensorPlace } from '../engines/heater/sensor.js';
import { sizeByVolume, type ColdSurface, type VolumeSizing } from '../engines/heater/sizing.js';
import type { Thing } from '../engines/fittings/things.js';
import { neighbours } from '../core/geometry.js';
import type { Job } from '../model/job.js';
import { clausesOf, type RuleSet } from '../rule-sets/index.js';
import type { AssembledFitting } from './fittings.js';
import { guardProblems, type AssembledHeater } from './heaters.js';
import type { AssembledDoor, AssembledWindow } from './openings.js';
import { given, placeOf } from './catalogue-values.js';
import { areRulesKnown } from './known.js';
import { nameBlocks } from './naming.js';
import { once } from './once.js';

/** Everything a heater has to answer for, once the whole room is known. */
export interface JudgedHeater extends AssembledHeater {
    readonly figures: ClearanceFigures;
    readonly clearances: readonly Clearance[];
    /** Positions along its wall that clear everything, from the wall its place is measured from. */
    readonly range: ClearRange | undefined;
    readonly guardProblems: readonly GuardProblem[];
    readonly sensor: SensorPlace | undefined;
    /** The sensor that was judged. */
    readonly sensorFitting: AssembledFitting | undefined;
    readonly controls: Controls;
    readonly sizing: VolumeSizing;
    readonly removal: RemovalPath | undefined;
    readonly duckboardsUnderStones: readonly Thing[];
}

export interface Surroundings {
    readonly inside: InsideSize;
    readonly things: readonly Thing[];
    readonly doors: readonly AssembledDoor[];
    readonly windows: readonly AssembledWindow[];
    readonly fittings: readonly AssembledFitting[];
    readonly isFloorCombustible: boolean;
}

/** Each answer is worked out when it is first read: whoever asks one question of a heater does not pay for the others. */
export function judgeHeater(heater: AssembledHeater, job: Job, ruleSets: readonly RuleSet[], around: Surroundings): JudgedHeater {
    const { inside, things, doors, fittings, isFloorCombustible } = around;
    const { manual, model, block } = heater;
    const figures = clearanceFigures(manual);
    const controls = heaterControls(manual, nameBlocks(job.controls).flatMap(({ name, block: control }): ControlInput[] => {
        const { stands, height, timer } = control.values;
        return stands ? [{ name, stands: stands.value, ...given({ height: height?.value, timerMinutes: timer && timer.value / 60 }) }] : [];
    }));
    const sizing = sizeByVolume(inside, coldSurfaces(job, around), model.values.volume?.value);
    const base = { ...heater, figures, controls, sizing };
    const placed = heater.heater;
    if (!placed) return { ...base, clearances: [], guardProblems: [], duckboardsUnderStones: [], range: undefined, sensor: undefined, sensorFitting: undefined, removal: undefined };
    const from = placeOf(block)?.from ?? neighbours[placed.wall].left;
    const range = once(() => rangeThatClears(placed, from, things, figures, inside));
    const sensorFitting = fittings.find(({ block: { kind }, thing }) => kind === 'sensor' && thing?.belongsTo === heater.name);
    const sensor = once(() => {
        if (!areRulesKnown(job)) return undefined;
        const block = job.sensors.find(sensor => sensor === sensorFitting?.block);
        const element = sensorFitting?.thing;
        const [wall] = block?.walls ?? [];
        const demands: SensorDemands = {
            codes: clausesOf(ruleSets, 'sensor.below-ceiling').filter(({ clause }) => clause.citation.kind === 'standard' && !clause.isSuperseded).map(({ clause }) => ({ value: clause.figure.value, citation: clause.citation })),
        };
        return sensorPlace(placed, element && block && wall ? { name: element.name, wall: wall.value, box: element.box, ...given({ cable: block.values.cable?.value }) } : undefined, demands, inside);
    });
    const [door] = doors.flatMap(item => item.door ?? []);
    const clearances = once(() => checkClearances(placed, things, figures, { inside, isFloorCombustible }));
    const guard = once(() => guardProblems(heater, inside, things));
    const duckboards = once(() => duckboardsUnderStones(placed, things, inside));
    const removal = once(() => door && removalPath(placed, door, things, inside));
    return {
        ...base, sensorFitting,
        get clearances() { return clearances(); }, get guardProblems() { return guard(); }, get duckboardsUnderStones() { return duckboards(); },
        get range() { return range(); }, get sensor() { return sensor(); }, get removal() { return removal(); },
    };
}

function coldSurfaces(job: Job, { doors, windows }: Surroundings): readonly ColdSurface[] {
    const stone = job.room?.values.stone_or_tile?.value;
    return [
        ...doors.flatMap(({ name, door }): ColdSurface[] => door?.paneArea ? [{ name, kind: 'glass', area: door.paneArea }] : []),
        ...windows.flatMap(({ name, window }): ColdSurface[] => window ? [{ name, kind: 'glass', area: window.glassArea }] : []),
        ...(stone ? [{ name: 'stone or tile', kind: 'stone_or_tile' as const, area: area(stone.width, stone.height) }] : []),
    ];
}
