import { kelvin } from './psychrometrics.js';
import { slabGrid, slabStep, type Slab, type SlabGrid, type SlabStep } from './room-grid.js';

/** Air that passes the room by the stack: its flow goes with the root of the difference in temperature. */
export interface StackSupply {
    /** m3/s at `atC` inside. */
    readonly flowM3PerS: number;
    readonly atC: number;
    readonly supplyC: number;
}

export interface RoomRunInput {
    readonly slabs: readonly Slab[];
    /** Heat the air holds, J/K. */
    readonly airJPerK: number;
    readonly airStartC: number;
    readonly supply?: StackSupply;
    /** All power goes into the stones, and from them to the air. Without stones it goes into the air. */
    readonly heater: { readonly watts: number; readonly stones?: { readonly joulePerK: number; readonly wattPerK: number } };
    /** What the thermostat holds; above it the heater is off. */
    readonly targetC: number;
    /** How long it is held once it is reached, s. */
    readonly holdS: number;
    /** The longest run, s. */
    readonly limitS: number;
    /** The stretch of time the grid and the steps are made for, s. */
    readonly scaleS: number;
}

export interface SlabState {
    readonly name: string;
    readonly insideSurfaceC: number;
    readonly outsideSurfaceC: number;
    /** Middles of the cells from the inside, m, and their temperatures. */
    readonly depths: Float64Array;
    readonly celsius: Float64Array;
    /** Between layers: depth from the inside, m, and temperature. */
    readonly edges: readonly { readonly depth: number; readonly celsius: number }[];
}
export interface RoomState {
    readonly seconds: number;
    readonly airC: number;
    readonly stonesC?: number;
    readonly slabs: readonly SlabState[];
}
export interface RunEnergy {
    readonly heaterJ: number;
    readonly storedJ: number;
    readonly throughShellJ: number;
    readonly airedJ: number;
    /** What the sum misses, as a share of all heat that moved. */
    readonly imbalance: number;
}
export interface RoomRun {
    /** When the air reaches the target; absent when it does not. */
    readonly reachedS?: number;
    /** At the end of the step in which it does. */
    readonly atTarget?: RoomState;
    readonly end: RoomState;
    readonly energy: RunEnergy;
    readonly stepS: number;
    readonly cells: number;
}

/** Steps a run of `scaleS` is cut into at level 0. */
const stepsAtLevel0 = 30;
/** Of the two-stage method of Alexander (1977): second order, stable for every step, and quick changes die out at once. */
const gamma = 1 - Math.SQRT1_2;
/** The thermostat lets the air swing this far below its setting, K. */
const swing = 2;
const airHeat = 1006;

/** W for each K between room and supply. */
export function ventilationConductance({ flowM3PerS, atC, supplyC }: StackSupply, airC: number): number {
    const drive = (t: number): number => Math.sqrt(Math.abs(t - supplyC) / kelvin(Math.max(t, supplyC)));
    const reference = drive(atC);
    return reference === 0 ? 0 : flowM3PerS * drive(airC) / reference * airDensity(airC) * airHeat;
}
/** Of dry air at sea level, kg/m3. */
export const airDensity = (celsius: number): number => 101_325 / (287.042 * kelvin(celsius));

/**
 * Heats a room: one-dimensional conduction through every slab, all of them coupled to one well-mixed air, the air to the stones, the stones to the heater under a thermostat.
 * Implicit and stable for any step. @param level each level halves cells and steps
 */
export function runRoom(input: RoomRunInput, level: number): RoomRun {
    const grids = input.slabs.map(slab => slabGrid(slab, input.scaleS, level));
    // A whole number of steps ends at the limit.
    const dt = input.limitS / Math.max(1, Math.ceil(input.limitS / input.scaleS * stepsAtLevel0 * 2 ** level - 1e-9));
    const weight = gamma * dt;
    const steps = grids.map(grid => slabStep(grid, weight));
    const stage = makeStage(input, grids, steps, weight);
    const temperatures = grids.map(({ cells, slab }) => new Float64Array(cells).fill(slab.startC));
    const state = { air: input.airStartC, stones: input.airStartC, temperatures };
    const start = storedHeat(input, grids, state);
    let [seconds, heaterJ, throughShellJ, airedJ, previousAir] = [0, 0, 0, 0, state.air];
    let isOn = true;
    let reachedS: number | undefined;
    let atTarget: RoomState | undefined;
    const until = (): number => reachedS === undefined ? input.limitS : Math.min(input.limitS, reachedS + input.holdS);
    while (seconds < until() - 1e-9 * dt) {
        if (state.air >= input.targetC) isOn = false; else if (state.air <= input.targetC - swing || reachedS === undefined) isOn = true;
        const watts = isOn ? input.heater.watts : 0;
        // The flow at the middle of the step, carried on from the last one: second order like the rest.
        const middle = state.air + (state.air - previousAir) / 2;
        const aired = input.supply ? ventilationConductance(input.supply, middle) : 0;
        previousAir = state.air;
        const before = state.air;
        const flows = stage(state, watts, aired);
        seconds += dt;
        heaterJ += watts * dt;
        throughShellJ += flows.outsideW * dt;
        airedJ += flows.airedW * dt;
        if (reachedS === undefined && state.air >= input.targetC) {
            reachedS = seconds - dt * (state.air - input.targetC) / (state.air - before);
            atTarget = snapshot(input, grids, state, seconds);
        }
    }
    const storedJ = storedHeat(input, grids, state) - start;
    const moved = Math.max(Math.abs(heaterJ), Math.abs(storedJ) + Math.abs(throughShellJ) + Math.abs(airedJ), 1e-12);
    return {
        ...(reachedS !== undefined && { reachedS }), ...(atTarget && { atTarget }), end: snapshot(input, grids, state, seconds),
        energy: { heaterJ, storedJ, throughShellJ, airedJ, imbalance: Math.abs(heaterJ - storedJ - throughShellJ - airedJ) / moved },
        stepS: dt, cells: grids.reduce((total, { cells }) => total + cells, 0),
    };
}

interface Temperatures { air: number; stones: number; readonly temperatures: readonly Float64Array[] }

/** One whole step of two stages, done in place; gives the mean flows out of the room over the step. */
function makeStage(input: RoomRunInput, grids: readonly SlabGrid[], steps: readonly SlabStep[], weight: number): (state: Temperatures, watts: number, aired: number) => { readonly outsideW: number; readonly airedW: number } {
    const base = grids.map(({ cells }) => new Float64Array(cells));
    const right = grids.map(({ cells }) => new Float64Array(cells));
    const next = grids.map(({ cells }) => new Float64Array(cells));
    const { stones } = input.heater;
    const supplyC = input.supply?.supplyC ?? 0;

    /** Solves one stage from `base`; leaves the slabs in `next`. */
    const solve = (baseAir: number, baseStones: number, watts: number, aired: number): { readonly air: number; readonly stones: number } => {
        let diagonal = input.airJPerK + weight * aired;
        let sum = input.airJPerK * baseAir + weight * aired * supplyC;
        grids.forEach((grid, s) => {
            const [from, to, out, step] = [base[s], right[s], next[s], steps[s]];
            if (!from || !to || !out || !step) return;
            for (let i = 0; i < grid.cells; i++) to[i] = (grid.capacity[i] ?? 0) * (from[i] ?? 0);
            to[grid.cells - 1] = (to[grid.cells - 1] ?? 0) + weight * grid.toOutside * grid.slab.outsideC;
            step.solve(to, out);
            diagonal += weight * grid.fromAir * (1 - (step.response[0] ?? 0));
            sum += weight * grid.fromAir * (out[0] ?? 0);
        });
        if (stones) {
            const held = stones.joulePerK + weight * stones.wattPerK;
            const share = weight * stones.wattPerK / held;
            diagonal += weight * stones.wattPerK * (1 - share);
            sum += share * (stones.joulePerK * baseStones + weight * watts);
        } else sum += weight * watts;
        const air = sum / diagonal;
        grids.forEach((grid, s) => {
            const [out, step] = [next[s], steps[s]];
            if (out && step) for (let i = 0; i < grid.cells; i++) out[i] = (out[i] ?? 0) + (step.response[i] ?? 0) * air;
        });
        const warm = stones ? (stones.joulePerK * baseStones + weight * (watts + stones.wattPerK * air)) / (stones.joulePerK + weight * stones.wattPerK) : air;
        return { air, stones: warm };
    };
    const outside = (): number => grids.reduce((total, grid, s) => total + grid.toOutside * ((next[s]?.[grid.cells - 1] ?? 0) - grid.slab.outsideC), 0);

    return (state, watts, aired) => {
        grids.forEach((_, s) => base[s]?.set(state.temperatures[s] ?? []));
        const first = solve(state.air, state.stones, watts, aired);
        const outsideFirst = outside();
        // The second stage starts from what the first one's rates give after 1 - gamma of the step.
        const onward = (1 - gamma) / gamma;
        grids.forEach((grid, s) => {
            const [from, stage, old] = [base[s], next[s], state.temperatures[s]];
            if (from && stage && old) for (let i = 0; i < grid.cells; i++) from[i] = (old[i] ?? 0) + onward * ((stage[i] ?? 0) - (old[i] ?? 0));
        });
        const second = solve(state.air + onward * (first.air - state.air), state.stones + onward * (first.stones - state.stones), watts, aired);
        grids.forEach((_, s) => state.temperatures[s]?.set(next[s] ?? []));
        state.air = second.air;
        state.stones = second.stones;
        return {
            outsideW: (1 - gamma) * outsideFirst + gamma * outside(),
            airedW: aired * ((1 - gamma) * (first.air - supplyC) + gamma * (second.air - supplyC)),
        };
    };
}

/** Heat over 0 degC in air, stones and shell, J. */
function storedHeat(input: RoomRunInput, grids: readonly SlabGrid[], { air, stones, temperatures }: Temperatures): number {
    const shell = grids.reduce((total, grid, s) => { let sum = total; for (let i = 0; i < grid.cells; i++) sum += (grid.capacity[i] ?? 0) * (temperatures[s]?.[i] ?? 0); return sum; }, 0);
    return shell + input.airJPerK * air + (input.heater.stones ? input.heater.stones.joulePerK * stones : 0);
}

function snapshot(input: RoomRunInput, grids: readonly SlabGrid[], { air, stones, temperatures }: Temperatures, seconds: number): RoomState {
    return {
        seconds, airC: air, ...(input.heater.stones && { stonesC: stones }),
        slabs: grids.map(({ slab, cells, depths, edges, firstHalf, lastHalf }, s): SlabState => {
            const celsius = Float64Array.from(temperatures[s] ?? []);
            const [first, last] = [celsius[0] ?? NaN, celsius[cells - 1] ?? NaN];
            return {
                name: slab.name, depths, celsius,
                edges: edges.map(({ depth, cell, share }) => ({ depth, celsius: (celsius[cell] ?? NaN) + share * ((celsius[cell + 1] ?? NaN) - (celsius[cell] ?? NaN)) })),
                insideSurfaceC: air + (first - air) * slab.insideResistance / (slab.insideResistance + firstHalf),
                outsideSurfaceC: slab.outsideC + (last - slab.outsideC) * slab.outsideResistance / (slab.outsideResistance + lastHalf),
            };
        }),
    };
}
