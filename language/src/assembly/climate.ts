import type { InsideSize } from '../core/geometry.js';
import { inCubicMetres, inMetres, inSquareMetres, volume } from '../core/length.js';
import { envelopeLoss, type ElementLoss } from '../engines/climate/envelope.js';
import { airState, ladle, vapourPressure, type Steam } from '../engines/climate/psychrometrics.js';
import { airChanges, stackAir, type AirOpening, type StackAir } from '../engines/climate/stack-flow.js';
import { powerNeeded, warmUp, type WarmUp, type WarmUpInput } from '../engines/climate/warm-up.js';
import type { ShellResult } from '../engines/shell/shell-result.js';
import type { Job } from '../model/job.js';
import { clausesOf, type RuleSet } from '../rule-sets/index.js';
import type { AssembledAir } from './air.js';
import { climateConditions, type ClimateConditions } from './climate-conditions.js';
import { climateShell, type ClimateShell } from './climate-shell.js';
import { liningMovement, woodMoisture, type LiningMovement, type WoodMoisture } from './climate-moisture.js';
import type { AssembledHeater } from './heaters.js';
import { once } from './once.js';
import type { AssembledDoor, AssembledWindow } from './openings.js';
import { remembered } from './remember.js';
import type { RoomShell } from './room.js';

export interface ClimateAir {
    /** At bathing temperature and in the unheated room, air changes each hour and m3/s. */
    readonly hot: StackAir & { readonly changes: number };
    readonly cold: StackAir & { readonly changes: number };
    /** Of the air that comes in, degC. */
    readonly supplyC: number;
    /** Loss at bathing temperature, W. */
    readonly lossW: number;
}

/** Heat, air, steam and moisture of one job, each part when it is first read. */
export interface AssembledClimate {
    readonly conditions: ClimateConditions;
    readonly volumeM3: number;
    readonly shell: ClimateShell;
    /** Every element of the shell that is wholly known. */
    readonly losses: readonly ElementLoss[];
    /** W at bathing temperature through all of the shell; absent while a layer is not known. */
    readonly transmissionW: number | undefined;
    /** Absent without openings. */
    readonly air: ClimateAir | undefined;
    readonly steam: Steam;
    /** Of every heater whose power is known, as if it heated alone. */
    readonly heating: readonly Heating[];
    /** Of the lining and the slats; absent while the species is not known. */
    readonly lining: LiningMovement | undefined;
    readonly moisture: WoodMoisture;
}

export interface Heating {
    readonly name: string;
    readonly model: AssembledHeater['model'];
    /** Absent while a layer of the shell is not known. */
    readonly warmUp: WarmUp | undefined;
    /** For the time that is asked for, W. */
    readonly neededW: number | undefined;
    readonly watts: number;
    readonly stonesKg: number;
}

export interface ClimateSurroundings {
    readonly job: Job;
    readonly ruleSets: readonly RuleSet[];
    readonly room: RoomShell;
    readonly inside: InsideSize;
    readonly shell: ShellResult | undefined;
    readonly doors: readonly AssembledDoor[];
    readonly windows: readonly AssembledWindow[];
    readonly air: AssembledAir | undefined;
    readonly heaters: readonly Pick<AssembledHeater, 'name' | 'model'>[];
}

const lossesOf = remembered('envelope', ({ elements, bathingC }: { readonly elements: ClimateShell['elements']; readonly bathingC: number }) => envelopeLoss(elements, bathingC));

const warmUpOf = remembered('warm-up', warmUp);
const neededOf = remembered('power-needed', ({ input, withinS }: { readonly input: WarmUpInput; readonly withinS: number }) => powerNeeded(input, withinS));

/** Temperatures and volumes a room for bathing can have; beyond them the equations were never meant. */
const isPossible = ({ around, outdoors, bathing, shop, store }: ClimateConditions, volumeM3: number): boolean =>
    [around, outdoors, shop, store].every(({ value }) => value >= -60 && value <= 60) && bathing.value > around.value && bathing.value <= 150 && volumeM3 > 0.5 && volumeM3 < 1000;

/** @returns nothing for temperatures or sizes no such room has */
export function assembleClimate(around: ClimateSurroundings): AssembledClimate | undefined {
    const { job, room, inside } = around;
    const conditions = climateConditions(job, warmUpAsked(around.ruleSets));
    const volumeM3 = inCubicMetres(volume(inside.width, inside.depth, inside.height));
    if (!isPossible(conditions, volumeM3)) return undefined;
    const shell = once(() => climateShell(job, room, inside, around.shell, around.doors, around.windows, { aroundC: conditions.around.value, outdoorsC: conditions.outdoors.value, isInTheOpen: conditions.isInTheOpen }));
    const losses = once(() => lossesOf({ elements: shell().elements, bathingC: conditions.bathing.value }));
    const air = once(() => climateAir(around, conditions, volumeM3));
    const steam = once(() => {
        const outside = vapourPressure(conditions.around.value, conditions.aroundHumidity.value);
        return ladle(conditions.ladleKg.value, volumeM3, airState(conditions.bathing.value, outside), conditions.around.value);
    });
    const heating = once(() => around.heaters.flatMap(({ name, model }): Heating[] => {
        const watts = model.values.power?.value ?? 0;
        if (watts <= 0) return [];
        const stonesKg = model.values.stones?.value ?? 0;
        const input = once((): WarmUpInput | undefined => {
            if (shell().lacks.length > 0) return undefined;
            const stack = air();
            return {
                losses: losses().map(({ element, insideResistance, outsideResistance }) => ({ element, insideResistance, outsideResistance })), volumeM3, startC: conditions.around.value, bathingC: conditions.bathing.value,
                watts, stonesKg, holdS: conditions.session.value, ...(stack && { supply: { flowM3PerS: stack.hot.flowM3PerS, atC: conditions.bathing.value, supplyC: stack.supplyC } }),
            };
        });
        const withinS = conditions.within?.value ?? 0;
        return [{
            name, model, watts, stonesKg,
            get warmUp() { const known = input(); return known && warmUpOf(known); },
            get neededW() { const known = input(); return known && withinS > 0 ? neededOf({ input: { ...known, holdS: 0 }, withinS }) : undefined; },
        }];
    }));
    const moisture = once(() => woodMoisture(conditions, steam()));
    const lining = once(() => liningMovement(room, moisture()));
    return {
        conditions, volumeM3,
        get shell() { return shell(); }, get losses() { return losses(); }, get air() { return air(); }, get steam() { return steam(); }, get heating() { return heating(); }, get lining() { return lining(); }, get moisture() { return moisture(); },
        get transmissionW() { return shell().lacks.length > 0 ? undefined : losses().reduce((total, { lossW }) => total + lossW, 0); },
    };
}

/** The longest warm-up the rule sets of the job speak of, in seconds. */
function warmUpAsked(ruleSets: readonly RuleSet[]): { readonly value: number; readonly citation: ClimateConditions['around']['citation'] } | undefined {
    const [first] = clausesOf(ruleSets, 'heater.heat-up-maximum');
    return first && { value: first.clause.figure.minutes * 60, citation: first.clause.citation };
}

/** `air` and `doors` are read when they are needed, so that nothing is worked out for nobody. */
function climateAir({ air, doors }: ClimateSurroundings, { bathing, around, outdoors }: ClimateConditions, volumeM3: number): ClimateAir | undefined {
    const vents = (air?.vents ?? []).flatMap(({ vent }) => vent ?? []);
    const openings: AirOpening[] = [
        ...vents.map((vent): AirOpening => ({ name: vent.name, areaM2: inSquareMetres(vent.free), bottomM: inMetres(vent.onWall.v.from), topM: inMetres(vent.onWall.v.to) })),
        ...doors.flatMap(({ name, door }): AirOpening[] => door ? [{ name: `under ${name}`, areaM2: inSquareMetres(door.underLeaf), bottomM: 0, topM: inMetres(door.gaps.bottom) }] : []),
    ];
    // Air from outdoors comes in as cold as it is there; every other way in draws on the air around the room.
    const intakes = vents.filter(({ role }) => role === 'intake');
    const supplyC = intakes.length > 0 && intakes.every(intake => intake.air === 'outdoors') ? outdoors.value : around.value;
    const at = (insideC: number): ClimateAir['hot'] | undefined => {
        const flow = stackAir(openings, insideC, supplyC);
        return flow && { ...flow, changes: airChanges(flow.flowM3PerS, volumeM3) };
    };
    const [hot, cold] = [at(bathing.value), at(around.value)];
    const density = airState(bathing.value, vapourPressure(around.value, 0.5)).density ?? 1;
    return hot && cold && { hot, cold, supplyC, lossW: hot.flowM3PerS * density * 1006 * (bathing.value - supplyC) };
}
