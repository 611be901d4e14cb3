import { inCubicMetres, inSquareInches, type Area, type Length, type Volume } from '../core/length.js';
import { isMetric, type LengthUnit, showLength, showNumber, spoken } from '../core/show.js';

/** Every kind of figure a clause can state, by its name. Lengths, areas and volumes are exact; the rest is in the unit the field's name says. */
export interface Figures {
    readonly length: { readonly kind: 'length'; readonly value: Length };
    /** Two sides of an opening or a floor space, in no order of orientation: `shorter` <= `longer`. */
    readonly size: { readonly kind: 'size'; readonly shorter: Length; readonly longer: Length };
    readonly area: { readonly kind: 'area'; readonly value: Area };
    readonly volume: { readonly kind: 'volume'; readonly value: Volume };
    /** A point on the temperature scale, not a difference. */
    readonly temperature: { readonly kind: 'temperature'; readonly celsius: number };
    readonly duration: { readonly kind: 'duration'; readonly minutes: number };
    readonly current: { readonly kind: 'current'; readonly amperes: number };
    readonly voltage: { readonly kind: 'voltage'; readonly volts: number };
    readonly power: { readonly kind: 'power'; readonly watts: number };
    readonly force: { readonly kind: 'force'; readonly newtons: number };
    readonly mass: { readonly kind: 'mass'; readonly kilograms: number };
    readonly thermal_resistance: { readonly kind: 'thermal_resistance'; readonly squareMetreKelvinPerWatt: number };
    readonly air_changes: { readonly kind: 'air_changes'; readonly perHour: number };
    /** A share of something, 1 being the whole; the key's title says of what. */
    readonly ratio: { readonly kind: 'ratio'; readonly value: number };
    readonly count: { readonly kind: 'count'; readonly value: number };
    /** One of the words its key lists. */
    readonly word: { readonly kind: 'word'; readonly value: string };
    /** Whether the thing named by the key is required, allowed or exempt; the key's title says which. */
    readonly yes_no: { readonly kind: 'yes_no'; readonly value: boolean };
}
export type FigureKind = keyof Figures;
export type Figure = Figures[FigureKind];

export const newtonsPerPoundForce = 4.4482216152605;
/** 1 h·ft²·°F/Btu in m²·K/W. */
export const squareMetreKelvinPerWattPerR = 0.1761102;

export const length = (value: Length): Figures['length'] => ({ kind: 'length', value });
export const size = (shorter: Length, longer: Length): Figures['size'] => ({ kind: 'size', shorter, longer });
export const fahrenheit = (degrees: number): Figures['temperature'] => ({ kind: 'temperature', celsius: (degrees - 32) * 5 / 9 });
export const celsius = (degrees: number): Figures['temperature'] => ({ kind: 'temperature', celsius: degrees });
export const minutes = (count: number): Figures['duration'] => ({ kind: 'duration', minutes: count });
export const hours = (count: number): Figures['duration'] => ({ kind: 'duration', minutes: 60 * count });
export const amperes = (value: number): Figures['current'] => ({ kind: 'current', amperes: value });
export const volts = (value: number): Figures['voltage'] => ({ kind: 'voltage', volts: value });
export const watts = (value: number): Figures['power'] => ({ kind: 'power', watts: value });
export const poundsForce = (value: number): Figures['force'] => ({ kind: 'force', newtons: value * newtonsPerPoundForce });
export const kilograms = (value: number): Figures['mass'] => ({ kind: 'mass', kilograms: value });
export const rValue = (value: number): Figures['thermal_resistance'] =>
    ({ kind: 'thermal_resistance', squareMetreKelvinPerWatt: value * squareMetreKelvinPerWattPerR });
export const airChanges = (perHour: number): Figures['air_changes'] => ({ kind: 'air_changes', perHour });
export const ratio = (value: number): Figures['ratio'] => ({ kind: 'ratio', value });
export const count = (value: number): Figures['count'] => ({ kind: 'count', value });
export const word = <const W extends string>(value: W): { readonly kind: 'word'; readonly value: W } => ({ kind: 'word', value });
export const yes: Figures['yes_no'] = { kind: 'yes_no', value: true };
export const no: Figures['yes_no'] = { kind: 'yes_no', value: false };

/** What figures of one kind are ordered by, for comparing demands; `undefined` for kinds that have no order. */
export function magnitude(figure: Figure): number | bigint | undefined {
    switch (figure.kind) {
        case 'length': case 'area': case 'volume': case 'ratio': case 'count': return figure.value;
        case 'size': return BigInt(figure.shorter) * BigInt(figure.longer);
        case 'temperature': return figure.celsius;
        case 'duration': return figure.minutes;
        case 'current': return figure.amperes;
        case 'voltage': return figure.volts;
        case 'power': return figure.watts;
        case 'force': return figure.newtons;
        case 'mass': return figure.kilograms;
        case 'thermal_resistance': return figure.squareMetreKelvinPerWatt;
        case 'air_changes': return figure.perHour;
        case 'word': case 'yes_no': return undefined;
    }
}

/** Whether two figures say the same. A published pair of units that differs in the last printed digit counts as one figure, so 1e-9 of it is let go. */
export function sameFigure(a: Figure, b: Figure): boolean {
    if (a.kind !== b.kind) return false;
    if (a.kind === 'size' && b.kind === 'size') return a.shorter === b.shorter && a.longer === b.longer;
    if ((a.kind === 'word' && b.kind === 'word') || (a.kind === 'yes_no' && b.kind === 'yes_no')) return a.value === b.value;
    const [first, second] = [magnitude(a), magnitude(b)];
    if (typeof first === 'number' && typeof second === 'number') return Math.abs(first - second) <= 1e-9 * Math.abs(first);
    return first === second;
}

/** The figure as text, lengths in `unit`: `6"`, `4" x 8"`, `194 °F (90 °C)`, `48 A`. Words have their underscores replaced by spaces. */
export function showFigure(figure: Figure, unit: LengthUnit = 'in'): string {
    switch (figure.kind) {
        case 'length': return showLength(figure.value, unit, 'drawing');
        case 'size': return `${showLength(figure.shorter, unit, 'drawing')} x ${showLength(figure.longer, unit, 'drawing')}`;
        case 'area': return `${showNumber(inSquareInches(figure.value), 1)} in2`;
        case 'volume': return `${showNumber(inCubicMetres(figure.value), 2)} m3`;
        case 'temperature': {
            const [fahrenheit, celsius] = [`${showNumber(figure.celsius * 9 / 5 + 32, 0)} °F`, `${showNumber(figure.celsius, 1)} °C`];
            return isMetric(unit) ? `${celsius} (${fahrenheit})` : `${fahrenheit} (${celsius})`;
        }
        case 'duration': return figure.minutes % 60 === 0 ? `${figure.minutes / 60} h` : `${figure.minutes} min`;
        case 'current': return figure.amperes < 1 ? `${showNumber(figure.amperes * 1000, 1)} mA` : `${showNumber(figure.amperes)} A`;
        case 'voltage': return `${showNumber(figure.volts)} V`;
        case 'power': return `${showNumber(figure.watts / 1000)} kW`;
        case 'force': return `${showNumber(figure.newtons / newtonsPerPoundForce, 0)} lbf (${showNumber(figure.newtons, 0)} N)`;
        case 'mass': return `${showNumber(figure.kilograms, 1)} kg`;
        case 'thermal_resistance': return `R-${showNumber(figure.squareMetreKelvinPerWatt / squareMetreKelvinPerWattPerR, 1)}`;
        case 'air_changes': return `${showNumber(figure.perHour, 1)} air changes an hour`;
        case 'ratio': return `${showNumber(figure.value * 100, 1)} %`;
        case 'count': return showNumber(figure.value);
        case 'word': return spoken(figure.value);
        case 'yes_no': return figure.value ? 'yes' : 'no';
    }
}
