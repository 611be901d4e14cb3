import { spoken } from '../core/show.js';
import type { Wall } from '../core/geometry.js';
import type { Length } from '../core/length.js';
import type { Value } from '../core/value.js';

/** Figures in SI with the unit in the type; lengths stay exact ticks. */
export interface Size { readonly width: Length; readonly height: Length }
export interface LengthRange { readonly from: Length; readonly to: Length }
export interface NumberRange { readonly from: number; readonly to: number }
/** Distance from a neighbouring wall's lining, to the near edge (`from`) or the middle (`centre from`). */
export interface Place { readonly wall: Wall; readonly distance: Length }
export interface WallLength { readonly wall: Wall; readonly length: Length }
export interface Supply { readonly volts: number; readonly phases: 'single' | 'three' }
/** An amount of money in whole hundredths of its currency. */
export interface Money { readonly minor: number; readonly currency: string }
export interface Price extends Money { readonly per: 'ft' | 'm' | 'each' | 'ft2' | 'm2' }
/** What a kilowatt-hour costs; electricity is sold by fractions of a hundredth. */
export interface Tariff { readonly perKwh: number; readonly currency: string }
/** kg per m3. */
export interface Density { readonly kgPerM3: number }
/** A reference by name to a block of one of the kinds `K`; the model resolves it. */
export interface Named<K extends string> { readonly name: string; readonly kinds: readonly K[] }
export interface Layer<K extends string> { readonly of: Named<K>; readonly thickness: Length }
export interface CalendarDate { readonly year: number; readonly month: number; readonly day: number }
/** A date as the language writes it: `2027-03-01`. */
export const showDate = ({ year, month, day }: CalendarDate): string => `${year}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;

/** A condition of a house rule: the model gives it the means to be worked out for one job and one thing in it. */
export interface Condition { readonly text: string }

/** How a value is written, read, described and completed. One entry serves lowering, completion, hover and the reference page. */
export interface ValueType<T> {
    readonly kind: ValueKind;
    /** With its article, for messages: `a length, such as 34 3/4"`. */
    readonly words: string;
    readonly choices?: readonly string[];
    readonly refersTo?: readonly string[];
    /** Never set; carries the type of the value. */
    readonly holds?: T;
}
export type ValueKind =
    | 'length' | 'lengths' | 'size' | 'length-range' | 'place' | 'centre-place' | 'wall-lengths'
    | 'number' | 'count' | 'percent' | 'text' | 'date' | 'choice' | 'choices' | 'flag' | 'walls'
    | 'power' | 'voltage' | 'current' | 'mass' | 'temperature' | 'area' | 'volume' | 'time' | 'pressure' | 'volume-range'
    | 'supply' | 'supplies' | 'price' | 'tariff' | 'density' | 'reference' | 'references' | 'layer' | 'value' | 'values' | 'holds' | 'condition';

const type = <T>(kind: ValueKind, words: string, more: Partial<ValueType<T>> = {}): ValueType<T> => ({ kind, words, ...more });

export const length = type<Length>('length', 'a length, such as 34 3/4" or 885 mm');
export const lengths = type<readonly Length[]>('lengths', 'lengths divided by commas, such as 24", 18", 12"');
export const size = type<Size>('size', 'a width x height, such as 8" x 4"');
export const lengthRange = type<LengthRange>('length-range', 'a range of lengths, such as 6" to 23 7/8"');
export const place = type<Place>('place', 'a neighbouring wall and a distance, such as left 12 1/2"');
export const centrePlace = type<Place>('centre-place', 'the word from, a neighbouring wall and a distance, such as from left 20"');
export const wallLengths = type<readonly WallLength[]>('wall-lengths', 'walls each with a length, such as front 40", left 2"');
export const wallList = type<readonly Wall[]>('walls', 'walls divided by commas, such as front, right', { choices: ['front', 'left', 'back', 'right'] });
export const number = type<number>('number', 'a number');
export const count = type<number>('count', 'a whole number');
export const percent = type<number>('percent', 'a number from 0 to 100');
export const text = type<string>('text', 'a text in quotes');
export const date = type<CalendarDate>('date', 'a date, such as 2027-03-01');
export const flag = type<boolean>('flag', 'yes or no', { choices: ['yes', 'no'] });
export const power = type<number>('power', 'a power, such as 6 kW');
export const voltage = type<number>('voltage', 'a voltage, such as 240 V');
export const current = type<number>('current', 'a current, such as 40 A');
export const mass = type<number>('mass', 'a mass, such as 45 lb or 20 kg');
export const temperature = type<number>('temperature', 'a temperature, such as 68 degF or 20 degC');
export const area = type<number>('area', 'an area, such as 12 ft2 or 1.1 m2');
export const volume = type<number>('volume', 'a volume, such as 250 ft3 or 7 m3');
export const time = type<number>('time', 'a time, such as 60 min');
export const pressure = type<number>('pressure', 'a pressure or stress, such as 850 psi');
export const volumeRange = type<NumberRange>('volume-range', 'a range of volumes, such as 170 ft3 to 300 ft3');
export const supply = type<Supply>('supply', 'a voltage and single_phase or three_phase, such as 240 V single_phase', { choices: ['single_phase', 'three_phase'] });
export const supplies = type<readonly Supply[]>('supplies', 'supplies divided by commas, such as 240 V single_phase, 208 V three_phase', { choices: ['single_phase', 'three_phase'] });
export const price = type<Price>('price', 'money per ft, m, ft2, m2 or each, such as 1.20 USD per ft', { choices: ['per', 'ft', 'm', 'ft2', 'm2', 'each'] });
export const tariff = type<Tariff>('tariff', 'money per kWh, such as 0.18 USD per kWh', { choices: ['per', 'kWh'] });
export const density = type<Density>('density', 'a mass per m3 or ft3, such as 350 kg per m3', { choices: ['per', 'm3', 'ft3'] });

/** Any single value; what it has to be is decided by whoever reads it. */
export const value = type<Value>('value', 'a value, such as 72" or left');
export const valueList = type<readonly Value[]>('values', 'values divided by commas, such as 60", 72", 84"');
/** A condition that is worked out where it stands. */
export const holds = type<boolean>('holds', 'a comparison, such as layout = corner, or yes or no');
/** A condition that is worked out anew for each thing it is about. */
export const condition = type<Condition>('condition', 'a comparison, such as bench.top <= 40"');

export const choice = <const C extends readonly string[]>(...choices: C): ValueType<C[number]> =>
    type<C[number]>('choice', choices.length > 1 ? `${choices.slice(0, -1).join(', ')} or ${choices.at(-1)}` : choices.join(), { choices });
export const choices = <const C extends readonly string[]>(...words: C): ValueType<readonly C[number][]> =>
    type<readonly C[number][]>('choices', `one or more of ${words.slice(0, -1).join(', ')} and ${words.at(-1)}, divided by commas`, { choices: words });
export const reference = <const K extends readonly string[]>(...kinds: K): ValueType<Named<K[number]>> =>
    type<Named<K[number]>>('reference', `the name of a ${kinds.map(spoken).join(' or ')}`, { refersTo: kinds });
export const references = <const K extends readonly string[]>(...kinds: K): ValueType<readonly Named<K[number]>[]> =>
    type<readonly Named<K[number]>[]>('references', `names of ${kinds.map(k => `${spoken(k)}s`).join(' or ')}, divided by commas`, { refersTo: kinds });
export const layer = <const K extends readonly string[]>(...kinds: K): ValueType<Layer<K[number]>> =>
    type<Layer<K[number]>>('layer', `the name of a ${kinds.join(' or ')} and its thickness, such as cedar_1x4 3/4"`, { refersTo: kinds });
