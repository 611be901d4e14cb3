import { parallel, plainLayer, combinedResistance, airLayerResistance, surfaceResistance, type CombinedResistance } from '../../language/src/engines/climate/resistance.js';
import { glassU } from '../../language/src/engines/climate/glass.js';
import { stackAir, stackFlow } from '../../language/src/engines/climate/stack-flow.js';
import { woodConductivity, woodSpecificHeat } from '../../language/src/engines/climate/wood.js';
import type { PublishedRow } from './table.js';

/** Timber-frame wall: bricks, cavity, plywood, 9.5 % studs in mineral wool, plasterboard. */
const frameWall = (): CombinedResistance => combinedResistance([
    plainLayer('bricks', 0.132), plainLayer('cavity', 0.09), plainLayer('plywood', 0.146),
    { name: 'mineral wool and studs', parts: [{ share: 0.905, resistance: 3.333 }, { share: 0.095, resistance: 1.077 }] }, plainLayer('plasterboard', 0.1),
], 0.13, 0.04);
const scottish = { source: 'Scottish building standards, technical handbook', clause: 'annex 6.B.2, timber-frame wall', tolerance: 0.0006, toleranceReason: 'three published decimals', checks: 'combinedResistance' } as const;
const surface = (flow: 'up' | 'horizontal' | 'down', published: number): PublishedRow => ({
    source: 'ISO 6946:2017', clause: 'table 7 by annex C', what: `inside surface resistance, heat going ${flow === 'horizontal' ? 'sideways' : flow}, m2 K/W`, published, ours: () => surfaceResistance(flow, 20),
    tolerance: 0.005, toleranceReason: 'the table rounds to two decimals', fromMemory: true, checks: 'surfaceResistance',
});
const layer = (mm: number, flow: 'up' | 'horizontal' | 'down', published: number): PublishedRow => ({
    source: 'ISO 6946:2017', clause: 'table 8', what: `layer of air of ${mm} mm, heat going ${flow === 'horizontal' ? 'sideways' : flow}, m2 K/W`, published, ours: () => airLayerResistance(mm / 1000, flow),
    tolerance: 1e-9, toleranceReason: 'a row of the table', fromMemory: true, checks: 'airLayerResistance',
});
const pane = (mm: number, published: number): PublishedRow => ({
    source: 'EN 673:2011', clause: 'single glass by its formula', what: `U of ${mm} mm, W/(m2 K)`, published, ours: () => glassU({ panes: 1, paneM: mm / 1000, gapM: 0 }), tolerance: 0.006, toleranceReason: 'two published decimals', fromMemory: true, checks: 'glassU',
});
const glazing = (panes: number, gap: number, published: number): PublishedRow => ({
    source: 'EN ISO 10077-1', clause: 'table of glazing, uncoated, filled with air', what: `U of ${panes} panes of 4 mm, ${gap} mm apart, W/(m2 K)`, published, ours: () => glassU({ panes, paneM: 0.004, gapM: gap / 1000 }), tolerance: 0.05,
    toleranceReason: 'one published decimal', fromMemory: true, checks: 'glassU',
});
const wood = (species: string, gravity: number, dry: number, at12: number): readonly PublishedRow[] => ([[0, dry], [12, at12]] as const).map(([moisture, published]) => ({
    source: 'Wood Handbook, FPL-GTR-282', clause: 'table 4-7', what: `conductivity of ${species} at ${moisture} %, W/(m K)`, published, ours: () => woodConductivity(gravity, moisture), tolerance: published < 0.1 ? 0.0006 : 0.006,
    toleranceReason: 'two published figures', checks: 'woodConductivity',
}));

export const uValueRows: readonly PublishedRow[] = [
    { ...scottish, what: 'upper limit, m2 K/W', published: 3.530, ours: () => frameWall().upper },
    { ...scottish, what: 'lower limit, m2 K/W', published: 3.418, ours: () => frameWall().lower },
    { ...scottish, what: 'total resistance, m2 K/W', published: 3.474, ours: () => frameWall().total },
    { ...scottish, what: 'U, W/(m2 K)', published: 0.288, ours: () => frameWall().u },
    { ...scottish, what: 'half the distance of the limits, %', published: 1.6, ours: () => 100 * frameWall().greatestError, tolerance: 0.05, toleranceReason: 'one published decimal' },
    { source: 'R-value tables after ASHRAE', clause: 'parallel paths, 15 % framing', what: 'studs 7.12 and cavity 13.73, h ft2 degF/Btu', published: 12.05, ours: () => parallel([{ share: 0.15, resistance: 7.12 }, { share: 0.85, resistance: 13.73 }]), tolerance: 0.005, toleranceReason: 'two published decimals', checks: 'parallel' },
    surface('up', 0.10), surface('horizontal', 0.13), surface('down', 0.17),
    layer(5, 'up', 0.11), layer(15, 'horizontal', 0.17), layer(25, 'down', 0.19), layer(50, 'horizontal', 0.18),
    pane(4, 5.75), pane(6, 5.68), pane(8, 5.62), pane(10, 5.56),
    glazing(2, 6, 3.3), glazing(2, 8, 3.1), glazing(2, 12, 2.8), glazing(2, 16, 2.7), glazing(3, 6, 2.3), glazing(3, 12, 1.9),
    ...wood('western redcedar', 0.33, 0.083, 0.10), ...wood('northern white-cedar', 0.31, 0.079, 0.094), ...wood('basswood', 0.38, 0.092, 0.11), ...wood('quaking aspen', 0.40, 0.096, 0.12),
    { source: 'chemics, its test of wood heat capacity (Wood Handbook eq. 4-16)', clause: 'x 12 %, 340 K', what: 'specific heat, kJ/(kg K)', published: 1.91, ours: () => woodSpecificHeat(340 - 273.15, 12) / 1000, tolerance: 0.005, toleranceReason: 'two published decimals', checks: 'woodSpecificHeat' },
    {
        source: 'ASHRAE Handbook, Fundamentals 1997', clause: '25.13, eq. 37', what: 'flow through 0.02 m2 0.9 m from the neutral level, 80 and 20 degC, m3/s', published: 0.02252, ours: () => stackFlow(0.02, 0.9, 80, 20), tolerance: 0.00001,
        toleranceReason: 'four published figures', checks: 'stackFlow',
    },
    {
        source: 'ASHRAE Handbook, Fundamentals 1997', clause: '25.13, eq. 37', what: 'flow through two equal openings 1.8 m apart, 80 and 20 degC, m3/s', published: 0.02252, tolerance: 0.00003, toleranceReason: 'openings 100 mm high instead of points', checks: 'stackAir',
        ours: () => stackAir([{ name: 'low', areaM2: 0.02, bottomM: 0.1, topM: 0.2 }, { name: 'high', areaM2: 0.02, bottomM: 1.9, topM: 2 }], 80, 20)?.flowM3PerS ?? NaN,
    },
];
