import { feet, mm } from '../../language/src/core/length.js';
import { iecCircuit, showConductor, usCircuit, type CircuitResult, type InstallationMethod, type Phases } from '../../language/src/engines/electrical/index.js';
import type { PublishedRow } from './table.js';

/**
 * Whole circuits, each looked up step by step by hand in the published tables: current and 125 % of it, next standard device, conductor by the terminal
 * column and the correction, equipment ground. The tables themselves are compared row by row in `electrical.ts` and `electrical-iec.ts`.
 */
type Us = readonly [watts: number, volts: number, phases: Phases, ambientC: number, terminalsC: 60 | 75, insulationC: 60 | 75 | 90, published: string];
const us: readonly Us[] = [
    [4500, 240, 'single', 30, 60, 60, '25 A, 10 AWG, ground 10 AWG'],
    [6000, 240, 'single', 30, 60, 60, '35 A, 8 AWG, ground 10 AWG'],
    [6000, 208, 'single', 30, 60, 60, '40 A, 8 AWG, ground 10 AWG'],
    [8000, 240, 'single', 30, 60, 60, '45 A, 6 AWG, ground 10 AWG'],
    [8000, 240, 'single', 30, 75, 75, '45 A, 8 AWG, ground 10 AWG'],
    [10_500, 240, 'single', 30, 60, 60, '60 A, 6 AWG, ground 10 AWG'],
    [15_000, 208, 'three', 30, 60, 60, '60 A, 6 AWG, ground 10 AWG'],
    // 8 AWG: 40 × 0.58 = 23.2 A is below 25 A; 6 AWG: 55 × 0.58 = 31.9 A, and 35 A is the next rating up.
    [6000, 240, 'single', 50, 60, 60, '35 A, 6 AWG, ground 10 AWG'],
    // 8 AWG: 55 × 0.82 = 45.1 A, held down by the terminals to 40 A.
    [6000, 240, 'single', 50, 60, 90, '35 A, 8 AWG, ground 10 AWG'],
];
const usSays = ({ deviceA, conductor, protectiveConductor }: CircuitResult): string => `${deviceA ?? 'no'} A, ${conductor ? showConductor(conductor.size) : 'none'}, ground ${protectiveConductor ? showConductor(protectiveConductor) : 'none'}`;
const usCase = (watts: number, volts: number, phases: Phases, more: Pick<Parameters<typeof usCircuit>[0], 'run' | 'terminalsC' | 'insulationC'>): CircuitResult =>
    usCircuit({ heater: { manual: 'test manual', ratings: [{ watts, volts, phases }] }, supply: { volts, phases }, ...more });

type Iec = readonly [watts: number, volts: number, phases: Phases, method: InstallationMethod, ambientC: number, published: string];
const iec: readonly Iec[] = [
    [6000, 400, 'three', 'B2', 30, '10 A, 1.5 mm2, earth 1.5 mm2'],
    [9000, 400, 'three', 'B2', 30, '13 A, 1.5 mm2, earth 1.5 mm2'],
    // 15 × 0.87 = 13.05 A still carries 13 A; 15 × 0.79 = 11.85 A does not, 20 × 0.79 = 15.8 A does.
    [9000, 400, 'three', 'B2', 40, '13 A, 1.5 mm2, earth 1.5 mm2'],
    [9000, 400, 'three', 'B2', 45, '13 A, 2.5 mm2, earth 2.5 mm2'],
    [12_000, 400, 'three', 'B2', 30, '20 A, 2.5 mm2, earth 2.5 mm2'],
    [15_000, 400, 'three', 'C', 30, '25 A, 4 mm2, earth 4 mm2'],
    [3000, 230, 'single', 'A1', 30, '16 A, 2.5 mm2, earth 2.5 mm2'],
    [6000, 230, 'single', 'C', 30, '32 A, 4 mm2, earth 4 mm2'],
    [6000, 230, 'single', 'A2', 30, '32 A, 6 mm2, earth 6 mm2'],
];
const iecSays = ({ deviceA, conductor, protectiveConductor }: CircuitResult): string => `${deviceA ?? 'no'} A, ${conductor ? showConductor(conductor.size) : 'none'}, earth ${protectiveConductor ? showConductor(protectiveConductor) : 'none'}`;
const iecCase = (watts: number, volts: number, phases: Phases, method: InstallationMethod, ambientC: number, metres = 10): CircuitResult =>
    iecCircuit({ heater: { manual: 'test manual', ratings: [{ watts, volts, phases }] }, supply: { volts, phases }, run: [{ name: 'run', length: mm(metres * 1000), ambientC, method }], insulation: 'pvc' });

const byHand = { tolerance: 0, toleranceReason: 'sizes are steps of a table' } as const;
export const circuitRows: readonly PublishedRow[] = [
    ...us.map(([watts, volts, phases, ambientC, terminalsC, insulationC, published]): PublishedRow => ({
        source: 'NEC 2023', clause: '424.4(B), 240.6(A), Tables 310.16, 310.15(B)(1) and 250.122', fromMemory: true,
        what: `${watts / 1000} kW at ${volts} V ${phases}-phase, ${ambientC} °C, terminals ${terminalsC} °C, insulation ${insulationC} °C`, published,
        ours: () => usSays(usCase(watts, volts, phases, { run: [{ name: 'run', length: feet(20), ambientC }], terminalsC, insulationC })), ...byHand, checks: 'usCircuit',
    })),
    // R = 0.778·[1 + 0.00323·(60 − 75)] = 0.7403 Ω/1000 ft; 2 × 25 A × 0.07403 Ω = 3.70 V.
    {
        source: 'NEC 2023', clause: 'chapter 9, Table 8, and Ohm\'s law', what: '6 kW at 240 V over 100 ft of 8 AWG, V lost', published: 3.70, tolerance: 0.005, toleranceReason: 'worked to two decimals', fromMemory: true, checks: 'usCircuit',
        ours: () => usCase(6000, 240, 'single', { run: [{ name: 'run', length: feet(100), ambientC: 30 }], terminalsC: 60, insulationC: 60 }).voltageDrop?.volts ?? Number.NaN,
    },
    ...iec.map(([watts, volts, phases, method, ambientC, published]): PublishedRow => ({
        source: 'IEC 60364-5-52 ed. 3.0 (2009)', clause: 'Tables B.52.2, B.52.4 and B.52.14 with IEC 60898-1 and 60364-5-54', fromMemory: true,
        what: `${watts / 1000} kW at ${volts} V ${phases}-phase, method ${method}, ${ambientC} °C`, published, ours: () => iecSays(iecCase(watts, volts, phases, method, ambientC)), ...byHand, checks: 'iecCircuit',
    })),
    // 2 × 26.09 A × 0.0225 Ω·mm²/m × 20 m / 4 mm² = 5.87 V.
    {
        source: 'IEC 60364-5-52 ed. 3.0 (2009)', clause: 'Annex G', what: '6 kW at 230 V over 20 m of 4 mm2, V lost', published: 5.87, tolerance: 0.005, toleranceReason: 'worked to two decimals', fromMemory: true, checks: 'iecCircuit',
        ours: () => iecCase(6000, 230, 'single', 'C', 30, 20).voltageDrop?.volts ?? Number.NaN,
    },
];
