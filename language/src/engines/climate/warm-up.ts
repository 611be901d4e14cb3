import type { EnvelopeElement, EnvelopeLayer, ElementLoss } from './envelope.js';
import { flowThrough, layerResistance } from './envelope.js';
import type { ThermalMaterial } from './materials.js';
import { airDensity, runRoom, type RoomRun, type RoomRunInput, type RoomState, type StackSupply } from './room-run.js';
import type { Slab, SlabLayer } from './room-grid.js';
import { practice, type SourcedFigure } from './sources.js';

/** Stones get about this much warmer than the air at full power, K: what couples them to the air. Specific heat of granite and its like, J/(kg K). */
export const stonesOverAir: SourcedFigure = { value: 250, citation: practice('stones about 250 K over the air at full power'), isDefault: true };
export const stoneHeat: SourcedFigure = { value: 1000, citation: practice('stones of 1000 J/(kg K), as ISO 10456 has granite'), isDefault: true };

export interface WarmUpInput {
    readonly losses: readonly Pick<ElementLoss, 'element' | 'insideResistance' | 'outsideResistance'>[];
    readonly volumeM3: number;
    /** Of everything in the room and its shell before the heater is switched on. */
    readonly startC: number;
    readonly bathingC: number;
    readonly supply?: StackSupply;
    readonly watts: number;
    readonly stonesKg: number;
    readonly holdS: number;
}

/** Longest warm-up that is followed, s. */
export const longestWarmUpS = 4 * 3600;
/** Grid and steps are made for an hour of warming. */
const scaleS = 3600;
const firstLevel = 0;
const lastLevel = 4;
/** Error that is good enough: a fiftieth of the time, or a quarter of a minute. */
const goodEnough = (seconds: number): number => Math.max(15, seconds / 50);

const solid = (thicknessM: number, material: ThermalMaterial): SlabLayer => ({ thicknessM, conductivity: material.conductivity.value, heatCapacity: material.densityKgPerM3.value * material.specificHeat.value });

/** Slabs of an element: one through the insulation and one through the frame, each with its share of the area. */
function slabsOf({ element, insideResistance, outsideResistance }: WarmUpInput['losses'][number], startC: number): readonly Slab[] {
    const bridge = element.layers.find(layer => layer.kind === 'bridged');
    const share = bridge?.share ?? 0;
    const slab = (name: string, areaM2: number, layers: readonly SlabLayer[]): Slab => ({ name, areaM2, layers, insideResistance, outsideResistance, outsideC: element.outsideC, startC });
    return [
        slab(element.name, element.areaM2 * (1 - share), element.layers.map(layer => asSlabLayer(layer, element, 'clear'))),
        ...(share > 0 ? [slab(`${element.name}, frame`, element.areaM2 * share, element.layers.map(layer => asSlabLayer(layer, element, 'frame')))] : []),
    ].filter(({ areaM2, layers }) => areaM2 > 0 && layers.some(({ heatCapacity, thicknessM }) => heatCapacity > 0 && thicknessM > 0));
}

function asSlabLayer(layer: EnvelopeLayer, element: EnvelopeElement, path: 'clear' | 'frame'): SlabLayer {
    if (layer.kind === 'solid') return solid(layer.thicknessM, layer.material);
    if (layer.kind === 'bridged') return solid(layer.thicknessM, path === 'frame' ? layer.frame : layer.material);
    const [part] = layerResistance(layer, flowThrough(element.kind)).parts;
    return { thicknessM: layer.thicknessM, conductivity: layer.thicknessM / (part?.resistance || Infinity), heatCapacity: 0 };
}

/** The room as the run takes it. @param watts in place of the heater's own */
export function roomRunInput(input: WarmUpInput, watts = input.watts, limitS = longestWarmUpS + input.holdS): RoomRunInput {
    const { startC, bathingC, volumeM3, stonesKg } = input;
    return {
        slabs: input.losses.flatMap(loss => slabsOf(loss, startC)), airStartC: startC, targetC: bathingC, holdS: input.holdS, limitS, scaleS,
        airJPerK: volumeM3 * airDensity((startC + bathingC) / 2) * 1006,
        heater: { watts, ...(stonesKg > 0 && { stones: { joulePerK: stonesKg * stoneHeat.value, wattPerK: input.watts / stonesOverAir.value } }) },
        ...(input.supply && { supply: input.supply }),
    };
}

export interface WarmUp {
    /** Seconds to bathing temperature, by the finer of the last two runs; absent when it is not reached in `longestWarmUpS`. */
    readonly seconds?: number;
    /** How far the last two runs differ, s: halving cells and steps once more changes the answer by less. */
    readonly errorS: number;
    readonly atTarget?: RoomState;
    /** After the session. */
    readonly end: RoomState;
    /** Electricity of the whole session, and where it went, J. */
    readonly energy: RoomRun['energy'];
    readonly stepS: number;
    readonly cells: number;
    readonly level: number;
}

/** Heats the room at finer and finer cells and steps until two runs agree well enough. */
export function warmUp(input: WarmUpInput): WarmUp {
    const room = roomRunInput(input);
    let coarse = runRoom(room, firstLevel);
    for (let level = firstLevel + 1; ; level++) {
        const fine = runRoom(room, level);
        const errorS = coarse.reachedS === undefined || fine.reachedS === undefined ? (coarse.reachedS === fine.reachedS ? 0 : Infinity) : Math.abs(fine.reachedS - coarse.reachedS);
        if (level === lastLevel || errorS <= goodEnough(fine.reachedS ?? longestWarmUpS)) {
            return {
                ...(fine.reachedS !== undefined && { seconds: fine.reachedS }), ...(fine.atTarget && { atTarget: fine.atTarget }),
                errorS: errorS + 1, end: fine.end, energy: fine.energy, stepS: fine.stepS, cells: fine.cells, level,
            };
        }
        coarse = fine;
    }
}

/**
 * Power in W that brings the room to bathing temperature in `withinS`, the stones coupled as they are. Found by the secant on the air's temperature at that moment, which is
 * nearly straight in the power; within 0.05 K.
 * @returns nothing when no power below a hundred times the heater's does it
 */
export function powerNeeded(input: WarmUpInput, withinS: number, level = 1): number | undefined {
    const room = roomRunInput({ ...input, holdS: 0 }, input.watts, withinS);
    const excess = (watts: number): number => runRoom({ ...room, targetC: Infinity, heater: { ...room.heater, watts } }, level).end.airC - input.bathingC;
    let [low, atLow] = [0, input.startC - input.bathingC];
    if (atLow >= 0) return 0;
    let [high, atHigh] = [input.watts, excess(input.watts)];
    for (let i = 0; i < 20 && Math.abs(atHigh) > 0.05; i++) {
        if (atHigh === atLow) return undefined;
        const next = high - atHigh * (high - low) / (atHigh - atLow);
        [low, atLow] = [high, atHigh];
        high = Math.max(0, next);
        if (!(high < 100 * input.watts)) return undefined;
        atHigh = excess(high);
    }
    return high;
}
