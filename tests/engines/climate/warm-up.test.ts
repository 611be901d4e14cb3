import fc from 'fast-check';
import { createRequire } from 'node:module';
import { describe, expect, test } from 'vitest';
import { envelopeLoss, type EnvelopeElement } from '../../../language/src/engines/climate/envelope.js';
import { buildingMaterials, thermalMaterial, type ThermalMaterial } from '../../../language/src/engines/climate/materials.js';
import { slabGrid } from '../../../language/src/engines/climate/room-grid.js';
import { runRoom, type RoomRunInput } from '../../../language/src/engines/climate/room-run.js';
import { powerNeeded, roomRunInput, warmUp, type WarmUpInput } from '../../../language/src/engines/climate/warm-up.js';

/** The package ships TypeScript of its own that is not strict; what is asked of it is written down here. */
const { Solver } = createRequire(import.meta.url)('odex') as { readonly Solver: new (unknowns: number) => { absoluteTolerance: number; relativeTolerance: number; maxSteps: number; solve(rates: (t: number, y: number[]) => number[], from: number, start: number[], to: number): { readonly y: number[] } } };

const known = (material: ThermalMaterial | undefined): ThermalMaterial => { if (!material) throw new Error('a material without figures'); return material; };
const lining = known(thermalMaterial({ name: 'lining', kind: 'wood', species: 'aspen', densityKgPerM3: 410 }));
const wool = known(thermalMaterial({ name: 'wool', kind: 'insulation', conductivity: 0.037, densityKgPerM3: 45, specificHeat: 1030 }));
const facing = known(thermalMaterial({ name: 'facing', kind: 'wood', species: 'spruce' }));

/** A room of 1.9 x 1.75 x 2 m in a cellar of 20 degC: panels with a frame, a floor of tile. */
function room({ watts = 6000, coreM = 0.0635, stonesKg = 25, bathingC = 80, holdS = 0, flow = 0.006, liningM = 0.019 } = {}): WarmUpInput {
    const element = (name: string, kind: EnvelopeElement['kind'], areaM2: number): EnvelopeElement => ({
        name, kind, areaM2, outsideC: 20, isInTheOpen: false,
        layers: kind === 'floor' ? [{ kind: 'solid', role: 'finish', thicknessM: 0.01, material: buildingMaterials.tile }, { kind: 'solid', role: 'slab', thicknessM: 0.1, material: buildingMaterials.concrete }]
            : [{ kind: 'solid', role: 'lining', thicknessM: liningM, material: lining }, { kind: 'bridged', role: 'core', thicknessM: coreM, material: wool, frame: facing, share: 0.17 }, { kind: 'solid', role: 'facing', thicknessM: 0.0127, material: facing }],
    });
    const losses = envelopeLoss([element('walls', 'wall', 13.5), element('ceiling', 'ceiling', 3.3), element('floor', 'floor', 3.3)], bathingC);
    return { losses, volumeM3: 6.7, startC: 20, bathingC, watts, stonesKg, holdS, ...(flow > 0 && { supply: { flowM3PerS: flow, atC: bathingC, supplyC: 20 } }) };
}
const seconds = (options: Parameters<typeof room>[0], level = 2): number => runRoom(roomRunInput(room(options)), level).reachedS ?? Infinity;

describe('convergence', () => {
    test('halving cells and steps changes the answer by less than its stated error, for any room', () => fc.assert(fc.property(
        fc.integer({ min: 4000, max: 12_000 }), fc.integer({ min: 30, max: 150 }), fc.integer({ min: 10, max: 60 }), fc.integer({ min: 60, max: 95 }), (watts, coreMm, stonesKg, bathingC) => {
            const input = room({ watts, coreM: coreMm / 1000, stonesKg, bathingC });
            const { seconds: found, errorS, level } = warmUp(input);
            const finer = runRoom(roomRunInput(input), level + 1).reachedS;
            if (found === undefined || finer === undefined) expect(finer).toBe(found);
            else expect(Math.abs(finer - found)).toBeLessThan(errorS);
        }), { numRuns: 25 }));
    test('every halving brings the answer nearer', () => {
        const best = seconds({}, 6);
        const errors = [0, 1, 2, 3, 4].map(level => Math.abs(seconds({}, level) - best));
        // At least by half: second order would give a quarter, but the target is met between two steps.
        for (const [i, error] of errors.entries()) if (i > 0) expect(error).toBeLessThan((errors[i - 1] ?? NaN) * 0.6);
    });
});

describe('energy', () => {
    test('of warming up and a session closes within 0.5 %', () => fc.assert(fc.property(fc.integer({ min: 3000, max: 15_000 }), fc.integer({ min: 0, max: 60 }), fc.double({ min: 0, max: 0.03, noNaN: true }), (watts, stonesKg, flow) => {
        const { energy } = warmUp(room({ watts, stonesKg, flow, holdS: 3600 }));
        expect(energy.imbalance).toBeLessThan(0.005);
        // What the method itself promises: it neither makes nor loses heat.
        expect(energy.imbalance).toBeLessThan(1e-9);
    }), { numRuns: 20 }));
    test('a room left hot without a thermostat settles where the steady loss says', () => {
        const input = room({ flow: 0, watts: 900, stonesKg: 0 });
        const { airC } = runRoom({ ...roomRunInput(input), targetC: Infinity, limitS: 40 * 86_400, scaleS: 20 * 86_400 }, 1).end;
        // Frame and insulation are paths of their own here: the upper limit of the combined method.
        const conductance = input.losses.reduce((total, loss) => { const { element, hot } = loss as ReturnType<typeof envelopeLoss>[number]; return total + element.areaM2 / hot.upper; }, 0);
        expect(airC).toBeCloseTo(20 + 900 / conductance, 3);
    });
});

// The referee is the npm package odex, Hairer's explicit extrapolation with its own error control, on the same cells written down as one system of equations.
test('beside a general solver of differential equations', () => {
    const input: RoomRunInput = { ...roomRunInput(room({ flow: 0 })), targetC: Infinity, limitS: 1800, scaleS: 3600 };
    const level = 3;
    const grids = input.slabs.map(slab => slabGrid(slab, input.scaleS, level));
    const { stones, watts } = { stones: input.heater.stones, watts: input.heater.watts };
    if (!stones) throw new Error('The room has stones');
    const starts = grids.reduce<number[]>((at, { cells }) => [...at, (at.at(-1) ?? 0) + cells], [2]);
    const rates = (_t: number, y: number[]): number[] => {
        const rate = new Array<number>(y.length).fill(0);
        const [air = NaN, warm = NaN] = y;
        let toAir = stones.wattPerK * (warm - air);
        rate[1] = (watts - stones.wattPerK * (warm - air)) / stones.joulePerK;
        grids.forEach((grid, s) => {
            const first = starts[s] ?? 0;
            for (let i = 0; i < grid.cells; i++) {
                const here = y[first + i] ?? NaN;
                const left = i === 0 ? grid.fromAir * (air - here) : (grid.between[i - 1] ?? NaN) * ((y[first + i - 1] ?? NaN) - here);
                const right = i === grid.cells - 1 ? grid.toOutside * (grid.slab.outsideC - here) : (grid.between[i] ?? NaN) * ((y[first + i + 1] ?? NaN) - here);
                rate[first + i] = (left + right) / (grid.capacity[i] ?? NaN);
                if (i === 0) toAir -= left;
            }
        });
        rate[0] = toAir / input.airJPerK;
        return rate;
    };
    const unknowns = starts.at(-1) ?? 0;
    const solver = Object.assign(new Solver(unknowns), { absoluteTolerance: 1e-6, relativeTolerance: 1e-7, maxSteps: 1_000_000 });
    const theirs = solver.solve(rates, 0, new Array<number>(unknowns).fill(20), 1800).y;
    const { end } = runRoom(input, level);
    // Steps of 15 s against none: 0.05 K of 60 K.
    expect(Math.abs(end.airC - (theirs[0] ?? NaN))).toBeLessThan(0.05);
    expect(Math.abs((end.stonesC ?? NaN) - (theirs[1] ?? NaN))).toBeLessThan(0.05);
    end.slabs.forEach(({ celsius }, s) => { celsius.forEach((t, i) => { expect(Math.abs(t - (theirs[(starts[s] ?? 0) + i] ?? NaN))).toBeLessThan(0.05); }); });
});

describe('what never goes the wrong way', () => {
    const power = fc.integer({ min: 3500, max: 15_000 });
    const runs = { numRuns: 25 };
    test('higher power never lengthens the warm-up', () => fc.assert(fc.property(power, fc.integer({ min: 1, max: 3000 }), (watts, more) => { expect(seconds({ watts: watts + more })).toBeLessThanOrEqual(seconds({ watts })); }), runs));
    test('more stones, a thicker lining and more air never shorten it', () => fc.assert(fc.property(power, fc.integer({ min: 1, max: 30 }), (watts, more) => {
        const now = seconds({ watts });
        expect(seconds({ watts, stonesKg: 25 + more })).toBeGreaterThanOrEqual(now);
        expect(seconds({ watts, flow: 0.006 + more / 5000 })).toBeGreaterThanOrEqual(now);
        expect(seconds({ watts, liningM: 0.019 + more / 1000 })).toBeGreaterThanOrEqual(now - 20);
    }), runs));
    test('thicker insulation never raises the power that holds the temperature', () => fc.assert(fc.property(fc.integer({ min: 20, max: 150 }), fc.integer({ min: 5, max: 100 }), (mm, more) => {
        const loss = (coreM: number): number => (room({ coreM }).losses as ReturnType<typeof envelopeLoss>).reduce((total, { lossW }) => total + lossW, 0);
        expect(loss((mm + more) / 1000)).toBeLessThan(loss(mm / 1000));
    })));
    test('a hotter bath never takes less power or less time, and a shorter time never less power', () => fc.assert(fc.property(power, fc.integer({ min: 1, max: 15 }), (watts, more) => {
        expect(seconds({ watts, bathingC: 75 + more })).toBeGreaterThanOrEqual(seconds({ watts, bathingC: 75 }));
        const needed = (minutes: number, bathingC = 80): number => powerNeeded(room({ watts, bathingC }), minutes * 60) ?? Infinity;
        expect(needed(45, 80 + more)).toBeGreaterThan(needed(45));
        expect(needed(45 - more)).toBeGreaterThan(needed(45));
    }), runs));
});

test('the power needed brings the room there in the time that was asked for', () => fc.assert(fc.property(fc.integer({ min: 25, max: 120 }), minutes => {
    const watts = powerNeeded(room(), minutes * 60, 3) ?? NaN;
    const reached = runRoom(roomRunInput(room(), watts), 3).reachedS ?? NaN;
    // 0.05 K at the slowest rise of about 0.01 K/s.
    expect(Math.abs(reached - minutes * 60)).toBeLessThan(30);
}), { numRuns: 15 }));
test('a room that is hot already needs no power, and one that no power heats has no answer', () => {
    expect(powerNeeded({ ...room(), startC: 85 }, 600)).toBe(0);
    expect(powerNeeded(room(), 1)).toBeUndefined();
    expect(warmUp(room({ watts: 500 })).seconds).toBeUndefined();
});
