import { airState, dewPoint, heatOfSteam, humidityRatio, ladle, moistAirDensity, moistAirEnthalpy, moistAirVolume, relativeHumidity, saturationPressure, steamVolume, vapourPressure, vapourPressureRise, vapourPressureOf } from '../../language/src/engines/climate/psychrometrics.js';
import type { PublishedRow } from './table.js';

const table3 = { source: 'ASHRAE Handbook, Fundamentals 2017, chapter 1', clause: 'table 3' } as const;
const example1 = { source: 'ASHRAE Handbook, Fundamentals 2017, chapter 1', clause: 'example 1, 40 degC dry bulb and 20 degC wet bulb' } as const;
const gas = { source: 'ideal gas law with SI constants (CODATA 2018; 18.01528 g/mol)', toleranceReason: 'a product of constants', fromMemory: true } as const;
const saturation = (celsius: number, published: number): PublishedRow => ({
    ...table3, what: `saturation pressure at ${celsius} degC, Pa`, published, ours: () => saturationPressure(celsius), tolerance: published * 3e-4,
    toleranceReason: 'the equation and the table of the same chapter agree within 0.03 %', checks: 'saturationPressure',
});
/** The humidity ratio the example states; what follows from it is checked with it. */
const w1 = 0.0065;
const room = (kg: number) => ladle(kg, 8, airState(80, vapourPressure(80, 0.1)), 20);

export const steamRows: readonly PublishedRow[] = [
    saturation(25, 3169.7), saturation(50, 12351.3), saturation(100, 101418), saturation(150, 476101.4),
    { ...table3, what: 'humidity ratio at saturation, 25 degC', published: 0.020173, ours: () => humidityRatio(saturationPressure(25)) ?? NaN, tolerance: 0.020173 * 0.006, toleranceReason: 'the table counts real-gas enhancement, about 0.5 %', checks: 'humidityRatio' },
    { ...table3, what: 'enthalpy at saturation, 50 degC, J/kg', published: 275_353, ours: () => airState(50, saturationPressure(50)).enthalpy ?? NaN, tolerance: 275_353 * 0.006, toleranceReason: 'the table counts real-gas enhancement, about 0.5 %', checks: 'airState' },
    { ...example1, what: 'enthalpy, kJ/kg', published: 56.7, ours: () => moistAirEnthalpy(40, w1) / 1000, tolerance: 0.4, toleranceReason: 'the ratio is read from a chart to 0.0001, which is 0.26 kJ/kg', checks: 'moistAirEnthalpy' },
    { ...example1, what: 'volume, m3/kg', published: 0.896, ours: () => moistAirVolume(40, w1), tolerance: 0.001, toleranceReason: 'read from a chart to 0.001', checks: 'moistAirVolume' },
    { ...example1, what: 'dew point, degC', published: 7, ours: () => dewPoint(vapourPressureOf(w1)) ?? NaN, tolerance: 0.75, toleranceReason: 'read from a chart to about half a degree', checks: 'dewPoint' },
    { ...example1, what: 'relative humidity, %', published: 14, ours: () => 100 * relativeHumidity(40, vapourPressureOf(w1)), tolerance: 0.5, toleranceReason: 'read from a chart to a whole per cent', checks: 'relativeHumidity' },
    { source: 'PsychroLib 1.1.1', clause: 'GetMoistAirDensity', what: '80 degC, 10 %, kg/m3', published: 0.9819, ours: () => moistAirDensity(80, 0.030530), tolerance: 0.0001, toleranceReason: 'four published digits', checks: 'moistAirDensity' },
    { ...gas, clause: 'V = RT/Mp', what: 'volume of 1 kg of vapour at 80 degC, m3', published: 1.6086, ours: () => steamVolume(80), tolerance: 0.0001, checks: 'steamVolume' },
    { ...gas, clause: 'p = mRT/MV', what: 'rise of the vapour pressure by 1 kg in 8 m3 at 80 degC, Pa', published: 20_373, ours: () => vapourPressureRise(1, 8, 80), tolerance: 1, checks: 'vapourPressureRise' },
    { ...gas, clause: 'p = mRT/MV', what: 'relative humidity gained by 0.2 kg in 8 m3 at 80 degC, points', published: 8.6, ours: () => 100 * (room(0.2).after.humidity - room(0.2).before.humidity), tolerance: 0.05, toleranceReason: 'one published decimal', checks: 'ladle' },
    { source: 'heat of evaporation of water, steam tables', clause: '100 degC', what: '1 kg of 20 degC to steam, kJ', published: 2592, ours: () => heatOfSteam(20) / 1000, tolerance: 1, toleranceReason: 'heats of water to four digits', fromMemory: true, checks: 'heatOfSteam' },
];
