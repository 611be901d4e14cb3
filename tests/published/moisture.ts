import { boardMovement } from '../../language/src/engines/climate/movement.js';
import { dimensionalChange, equilibriumMoisture, speciesOf } from '../../language/src/engines/climate/wood.js';
import type { PublishedRow } from './table.js';

const fahrenheit = (t: number): number => (t - 32) / 1.8;
const moisture = (t: number, humidity: number, published: number): PublishedRow => ({
    source: 'Wood Handbook, table 4-2', clause: `${t} degF, ${humidity} %`, what: 'equilibrium moisture content, %', published, ours: () => equilibriumMoisture(fahrenheit(t), humidity / 100), tolerance: 0.15,
    toleranceReason: 'the table was tabulated before the equation was fitted; one published decimal', checks: 'equilibriumMoisture',
});
const coefficient = (words: string, radial: number, tangential: number): readonly PublishedRow[] => ([['across the rings', radial, 'radial'], ['along the rings', tangential, 'tangential']] as const).map(([way, published, key]) => ({
    source: 'Wood Handbook, FPL-GTR-282', clause: 'table 13-5', what: `change of ${words} for each per cent, ${way}`, published, ours: () => speciesOf(words)?.[key] ?? NaN, tolerance: 0, toleranceReason: 'a row of the table', checks: 'speciesOf',
}));

export const moistureRows: readonly PublishedRow[] = [
    moisture(70, 40, 7.7), moisture(70, 25, 5.3), moisture(70, 60, 11.1), moisture(70, 84, 17.6),
    {
        source: 'equilibrium moisture of wood at 140 degF and 55 %', clause: 'regression equation', what: 'equilibrium moisture content, %', published: 8.4, ours: () => equilibriumMoisture(60, 0.55), tolerance: 0.05, toleranceReason: 'one published decimal', checks: 'equilibriumMoisture',
    },
    {
        source: 'equilibrium moisture of wood at 140 degF and 55 %', clause: 'older table', what: 'equilibrium moisture content, %', published: 8.0, ours: () => equilibriumMoisture(60, 0.55), tolerance: 0.5,
        toleranceReason: 'equation and table differ by up to half a per cent of moisture, as their authors say', checks: 'equilibriumMoisture',
    },
    ...coefficient('quaking aspen', 0.00119, 0.00234), ...coefficient('basswood', 0.00230, 0.00330), ...coefficient('red alder', 0.00151, 0.00256),
    { source: 'Wood Handbook, FPL-GTR-282', clause: 'eq. 13-2, 5.5 in of flat-sawn aspen from 12 to 4 %', what: 'change, in', published: -0.10296, ours: () => dimensionalChange(5.5, 0.00234, 12, 4), tolerance: 1e-9, toleranceReason: 'a product', checks: 'dimensionalChange' },
    {
        source: 'Wood Handbook, FPL-GTR-282', clause: 'eq. 13-2, 5.5 in of flat-sawn aspen from 12 to 4 %', what: 'left of a tongue of 1/4 in, in', published: 0.25 - 0.10296, tolerance: 1e-9, toleranceReason: 'a product', checks: 'boardMovement',
        ours: () => boardMovement({ widthM: 5.5, tongueM: 0.25, coefficient: 0.00234 }, 12, 4).tongueLeftM,
    },
];
