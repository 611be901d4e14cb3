import { propertyKinds } from './property-kinds.js';

/** Unit words people write, and the one of the language; they mean nothing else behind a figure. */
const written: Readonly<Record<string, string>> = {
    feet: 'ft', foot: 'ft', inch: 'in', inches: 'in', ins: 'in', millimetre: 'mm', millimetres: 'mm', millimeter: 'mm', millimeters: 'mm', centimetre: 'cm', centimetres: 'cm', centimeter: 'cm', centimeters: 'cm',
    metre: 'm', metres: 'm', meter: 'm', meters: 'm', amp: 'A', amps: 'A', ampere: 'A', amperes: 'A', volt: 'V', volts: 'V', watt: 'W', watts: 'W', kilowatt: 'kW', kilowatts: 'kW', kw: 'kW',
    pound: 'lb', pounds: 'lb', lbs: 'lb', kilogram: 'kg', kilograms: 'kg', kilos: 'kg', kgs: 'kg', minute: 'min', minutes: 'min', mins: 'min', hour: 'h', hours: 'h', hr: 'h', hrs: 'h',
    fahrenheit: 'degF', celsius: 'degC', degf: 'degF', degc: 'degC', ft: 'ft', in: 'in', min: 'min', mm: 'mm', cm: 'cm', lb: 'lb', kg: 'kg',
};
/** Letters that are units where the fact takes such a value, and may be a name anywhere else. */
const letters: Readonly<Record<string, readonly [unit: string, ...kinds: string[]]>> = {
    f: ['degF', 'temperature'], c: ['degC', 'temperature'], a: ['A', 'current'], v: ['V', 'voltage', 'supply', 'supplies'], w: ['W', 'power'],
};

const areas: Readonly<Record<string, string>> = { in: 'in2', inch: 'in2', inches: 'in2', ft: 'ft2', foot: 'ft2', feet: 'ft2', m: 'm2', metre: 'm2', metres: 'm2', meters: 'm2', cm: 'cm2' };
const volumes: Readonly<Record<string, string>> = { ft: 'ft3', foot: 'ft3', feet: 'ft3', m: 'm3', metre: 'm3', metres: 'm3', meters: 'm3' };
/** The unit that two words behind a figure mean: `sq in`, `cubic feet`. */
export function unitOfTwoWords(first: string, second: string): string | undefined {
    const table = /^(?:sq|square)$/i.test(first) ? areas : /^(?:cu|cubic)$/i.test(first) ? volumes : undefined;
    const word = second.toLowerCase();
    return table && Object.hasOwn(table, word) ? table[word] : undefined;
}

/**
 * The unit a word behind a figure means.
 * @param key first word of the fact it stands in
 */
export function unitMeant(word: string, key: string): string | undefined {
    const small = word.toLowerCase();
    if (Object.hasOwn(written, small)) return written[small];
    const [unit, ...kinds] = (Object.hasOwn(letters, small) ? letters[small] : undefined) ?? [];
    // In a condition a word behind a figure can be nothing else.
    return unit !== undefined && ['condition', ...kinds].some(kind => propertyKinds(key).kinds.has(kind)) ? unit : undefined;
}
