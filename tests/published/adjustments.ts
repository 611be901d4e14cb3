import { bearingArea, loadDuration, repetitiveMember, sizeInBending, sizeInCompression, temperatureFactor, temperatureTrend, wetService } from '../../language/src/engines/strength/adjustment.js';
import type { PublishedRow } from './table.js';

const exact = { tolerance: 1e-9, toleranceReason: 'a printed factor' } as const;
const celsius = (fahrenheit: number): number => (fahrenheit - 32) * 5 / 9;
const row = (source: string, clause: string, what: string, published: number, ours: () => number, checks: string): PublishedRow => ({ source, clause, what, published, ours, checks, ...exact, fromMemory: true });

export const adjustmentRows: readonly PublishedRow[] = [
    row('NDS 2018', 'Table 2.3.2', 'CD of ten years', 1, () => loadDuration('ten_years', 'bending'), 'loadDuration'),
    row('NDS 2018', 'Table 2.3.2', 'CD of seven days', 1.25, () => loadDuration('seven_days', 'shear'), 'loadDuration'),
    row('NDS 2018', 'Table 2.3.2', 'CD of ten minutes', 1.6, () => loadDuration('ten_minutes', 'bending'), 'loadDuration'),
    row('NDS 2018', '4.3.2', 'CD does not touch compression perpendicular to grain', 1, () => loadDuration('ten_minutes', 'compression_perpendicular'), 'loadDuration'),
    row('NDS 2018', 'Table 2.3.3', 'Ct of bending at 100 °F, dry', 1, () => temperatureFactor(celsius(100), 'bending'), 'temperatureFactor'),
    row('NDS 2018', 'Table 2.3.3', 'Ct of bending at 120 °F, dry', 0.8, () => temperatureFactor(celsius(120), 'bending'), 'temperatureFactor'),
    row('NDS 2018', 'Table 2.3.3', 'Ct of bending at 150 °F, dry', 0.7, () => temperatureFactor(celsius(150), 'bending'), 'temperatureFactor'),
    row('NDS 2018', 'Table 2.3.3', 'Ct of stiffness at 150 °F', 0.9, () => temperatureFactor(celsius(150), 'elasticity'), 'temperatureFactor'),
    row('Wood Handbook', 'Table 5-15', 'bending strength at 50 °C, 11 to 15 % moisture', 0.8, () => temperatureTrend(50, 'bending'), 'temperatureTrend'),
    row('Wood Handbook', 'Table 5-15', 'modulus of elasticity at 50 °C, 12 % moisture', 0.93, () => temperatureTrend(50, 'elasticity'), 'temperatureTrend'),
    {
        ...row('NDS 2018', 'Table 2.3.3', 'the trend that is carried on, at the end of the published factors: strength at 150 °F', 0.7, () => temperatureTrend(celsius(150), 'bending'), 'temperatureTrend'),
        tolerance: 0.005, toleranceReason: 'the factors are printed to one decimal; the trend is from another source',
    },
    {
        ...row('NDS 2018', 'Table 2.3.3', 'the trend that is carried on, at the end of the published factors: stiffness at 150 °F', 0.9, () => temperatureTrend(celsius(150), 'elasticity'), 'temperatureTrend'),
        tolerance: 0.01, toleranceReason: 'the factors are printed to one decimal; the trend is from another source',
    },
    row('NDS Supplement 2018', 'Table 4A', 'CM of bending', 0.85, () => wetService(true, 'bending'), 'wetService'),
    row('NDS Supplement 2018', 'Table 4A', 'CM of compression perpendicular to grain', 0.67, () => wetService(true, 'compression_perpendicular'), 'wetService'),
    row('NDS Supplement 2018', 'Table 4A', 'CF of bending of a 2x4 on edge', 1.5, () => sizeInBending('table_4a', { breadth: 1.5, depth: 3.5 }), 'sizeInBending'),
    row('NDS Supplement 2018', 'Table 4A', 'CF of bending of a 2x6 on edge', 1.3, () => sizeInBending('table_4a', { breadth: 1.5, depth: 5.5 }), 'sizeInBending'),
    row('NDS Supplement 2018', 'Table 4A', 'CF and Cfu of bending of a 2x4 laid flat', 1.65, () => sizeInBending('table_4a', { breadth: 3.5, depth: 1.5 }), 'sizeInBending'),
    row('NDS Supplement 2018', 'Table 4A', 'CF of compression of a 2x4', 1.15, () => sizeInCompression('table_4a', 1.5, 3.5), 'sizeInCompression'),
    row('ASTM D245', '7.3', 'depth factor of a piece 11.25 in deep', (2 / 11.25) ** (1 / 9), () => sizeInBending('depth', { breadth: 1.5, depth: 11.25 }), 'sizeInBending'),
    row('NDS 2018', '4.3.9', 'CR of five members 16 in apart', 1.15, () => repetitiveMember(5, 16), 'repetitiveMember'),
    row('NDS 2018', '4.3.9', 'CR of two members', 1, () => repetitiveMember(2, 16), 'repetitiveMember'),
    ...([[0.5, 1.75], [1, 1.38], [1.5, 1.25], [2, 1.19], [3, 1.13]] as const).map(([length, published]): PublishedRow => ({
        ...row('NDS 2018', 'Table 3.10.4', `Cb of a bearing ${length} in long`, published, () => bearingArea(length, 12), 'bearingArea'), tolerance: 0.0051, toleranceReason: 'printed to two decimals',
    })),
    {
        ...row('NDS 2018', 'Table 3.10.4', 'Cb of a bearing 4 in long', 1.1, () => bearingArea(4, 12), 'bearingArea'), tolerance: 0.0063, toleranceReason: 'the formula beside the table gives 1.094, which the table rounds up',
    },
    row('NDS 2018', '3.10.4', 'Cb of a bearing at the end of the piece', 1, () => bearingArea(1.5, 0), 'bearingArea'),
];
