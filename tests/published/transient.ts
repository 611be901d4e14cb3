import { runRoom, type RoomRunInput, type SlabState } from '../../language/src/engines/climate/room-run.js';
import type { Slab } from '../../language/src/engines/climate/room-grid.js';
import type { PublishedRow } from './table.js';

/** Walls in air of one temperature: the room's air holds so much heat that nothing moves it. */
interface Bath { readonly bathC: number; readonly seconds: number; readonly level?: number }
const fixed = 1e-9;
const none = 1e12;
function inBath(slab: Omit<Slab, 'name' | 'areaM2'>, { bathC, seconds, level = 4 }: Bath): SlabState {
    const input: RoomRunInput = { slabs: [{ ...slab, name: 'wall', areaM2: 1 }], airJPerK: 1e30, airStartC: bathC, heater: { watts: 0 }, targetC: Infinity, holdS: 0, limitS: seconds, scaleS: seconds };
    const [state] = runRoom(input, level).end.slabs;
    if (!state) throw new Error('No wall came back');
    return state;
}
/** A flux into a thick wall through air that holds nothing. */
function underFlux(slab: Omit<Slab, 'name' | 'areaM2'>, watts: number, seconds: number): SlabState {
    const input: RoomRunInput = { slabs: [{ ...slab, name: 'wall', areaM2: 1 }], airJPerK: 1e-9, airStartC: slab.startC, heater: { watts }, targetC: Infinity, holdS: 0, limitS: seconds, scaleS: seconds };
    const [state] = runRoom(input, 4).end.slabs;
    if (!state) throw new Error('No wall came back');
    return state;
}
/** Straight between the middles of two cells. */
export function atDepth({ depths, celsius }: SlabState, depth: number): number {
    const i = Math.max(1, depths.findIndex(d => d >= depth));
    const [d0, d1, t0, t1] = [depths[i - 1] ?? NaN, depths[i] ?? NaN, celsius[i - 1] ?? NaN, celsius[i] ?? NaN];
    return t0 + (depth - d0) / (d1 - d0) * (t1 - t0);
}
function depthOf({ depths, celsius }: SlabState, target: number): number {
    const i = celsius.findIndex((t, n) => n > 0 && ((celsius[n - 1] ?? NaN) - target) * (t - target) <= 0);
    const [d0, d1, t0, t1] = [depths[i - 1] ?? NaN, depths[i] ?? NaN, celsius[i - 1] ?? NaN, celsius[i] ?? NaN];
    return d0 + (target - t0) / (t1 - t0) * (d1 - d0);
}
const day = 86_400;
const soil = (depthM: number, conductivity: number, alpha: number, startC: number): Omit<Slab, 'name' | 'areaM2'> => ({
    layers: [{ thicknessM: depthM, conductivity, heatCapacity: conductivity / alpha }], insideResistance: fixed, outsideResistance: none, outsideC: startC, startC,
});
const brass = (): SlabState => inBath({ layers: [{ thicknessM: 0.04, conductivity: 110, heatCapacity: 110 / 33.9e-6 }], insideResistance: 1 / 120, outsideResistance: 1 / 120, outsideC: 500, startC: 20 }, { bathC: 500, seconds: 420 });
const pipe = (): SlabState => inBath({ layers: [{ thicknessM: 0.04, conductivity: 63.9, heatCapacity: 63.9 / 18.8e-6 }], insideResistance: 1 / 500, outsideResistance: none, outsideC: 60, startC: -20 }, { bathC: 60, seconds: 480 });
const checks = 'runRoom';
const exact = (share: string): string => `cells of a ${share} of the depth and 480 steps: the method's own error`;

const incropera = 'Incropera and others, Fundamentals of Heat and Mass Transfer';
const cengel = 'Cengel, Heat Transfer';
/** One-term solution of a plane wall: table 5.1, centre temperature of a wall of 20 mm half thickness at Fo 1. */
const oneTerm = (biot: number, zeta: number, c1: number): PublishedRow => ({
    source: incropera, clause: 'table 5.1, one-term coefficients', what: `middle of a wall at Bi ${biot}, Fo 1, share of the first difference`, published: c1 * Math.exp(-zeta * zeta), tolerance: 0.0006,
    toleranceReason: 'four published digits of the root, squared in an exponent, and the one term left out at Fo 1', checks,
    ours: () => {
        // Half the wall, its middle insulated; 1 W/(m K), 1 m, 1 J/(m3 K) make Bi the surface coefficient and Fo the seconds.
        const state = inBath({ layers: [{ thicknessM: 1, conductivity: 1, heatCapacity: 1 }], insideResistance: 1 / biot, outsideResistance: none, outsideC: 0, startC: 1 }, { bathC: 0, seconds: 1 });
        const [last, before] = [state.celsius.at(-1) ?? NaN, state.celsius.at(-2) ?? NaN];
        // The middle lies half a cell beyond the last one; the profile is flat there.
        return last + (last - before) / 8;
    },
});

export const transientRows: readonly PublishedRow[] = [
    { source: incropera, clause: 'example 5.6, exact', what: 'depth of 0 degC in soil after 60 days, m', published: 0.6766, ours: () => depthOf(inBath(soil(6, 0.52, 0.52 / (2050 * 1840), 20), { bathC: -15, seconds: 60 * day }), 0), tolerance: 0.002, toleranceReason: exact('hundredth'), checks },
    { source: cengel, clause: 'example 4-6, exact', what: 'depth of 0 degC in soil after 90 days, m', published: 0.801, ours: () => depthOf(inBath(soil(6, 0.4, 0.15e-6, 15), { bathC: -10, seconds: 90 * day }), 0), tolerance: 0.002, toleranceReason: exact('hundredth'), checks },
    { source: cengel, clause: 'example 4-4, series', what: 'middle of a brass plate after 7 min, degC', published: 277.18, ours: () => atDepth(brass(), 0.02), tolerance: 0.2, toleranceReason: exact('thirtieth'), checks },
    { source: cengel, clause: 'example 4-4, series', what: 'surface of a brass plate after 7 min, degC', published: 279.58, ours: () => brass().insideSurfaceC, tolerance: 0.2, toleranceReason: exact('thirtieth'), checks },
    { source: incropera, clause: 'example 5.4, series', what: 'insulated face of a steel wall after 8 min, degC', published: 43.02, ours: () => pipe().outsideSurfaceC, tolerance: 0.1, toleranceReason: exact('thirtieth'), checks },
    { source: incropera, clause: 'example 5.4, series', what: 'heated face of a steel wall after 8 min, degC', published: 45.36, ours: () => pipe().insideSurfaceC, tolerance: 0.1, toleranceReason: exact('thirtieth'), checks },
    { source: incropera, clause: 'example 5.4, series', what: 'heat flux at the heated face, W/m2', published: 7318, ours: () => 500 * (60 - pipe().insideSurfaceC), tolerance: 40, toleranceReason: 'a tenth of a degree of the face', checks },
    { source: cengel, clause: 'example 4-7', what: 'surface under 1250 W/m2 for 20 min, k 1.26, degC', published: 148.6, ours: () => underFlux(soil(1.5, 1.26, 1.1e-5, 20), 1250, 1200).insideSurfaceC, tolerance: 0.6, toleranceReason: exact('sixtieth'), checks },
    { source: cengel, clause: 'example 4-7', what: 'surface under 1250 W/m2 for 20 min, aluminium, degC', published: 22.03, ours: () => underFlux(soil(4, 237, 9.71e-5, 20), 1250, 1200).insideSurfaceC, tolerance: 0.02, toleranceReason: exact('sixtieth'), checks },
    {
        source: 'Holman, Heat Transfer', clause: 'example 4-5, exact', what: '40 mm deep in aluminium after 3561 s in air of 70 degC, degC', published: 120, tolerance: 0.3, toleranceReason: exact('hundredth'), checks,
        ours: () => atDepth(inBath({ ...soil(4, 215, 8.4e-5, 200), insideResistance: 1 / 525 }, { bathC: 70, seconds: 3561 }), 0.04),
    },
    {
        source: incropera, clause: 'example 5.1 as a plate', what: 'a thin wall of one temperature after 5.16 time constants, degC', published: 199, tolerance: 0.1, toleranceReason: 'one whole degree of a difference of 174 K, and a Biot number of 0.001', checks,
        ours: () => { const state = inBath({ layers: [{ thicknessM: 400 / (8500 * 400), conductivity: 400, heatCapacity: 8500 * 400 }], insideResistance: 1 / 400, outsideResistance: none, outsideC: 25, startC: 25 }, { bathC: 200, seconds: 5.16 }); return state.insideSurfaceC; },
    },
    oneTerm(0.1, 0.3111, 1.0161), oneTerm(0.5, 0.6533, 1.0701), oneTerm(1, 0.8603, 1.1191), oneTerm(5, 1.3138, 1.2402), oneTerm(10, 1.4289, 1.2620),
];
