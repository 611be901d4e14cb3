/**
 * Exact lengths. A length is a whole number of 12.5 nm ticks, so every dimension a shop writes (1/128", 0.1 mm, feet) is an
 * integer and sums, comparisons, kerf and packing are exact. Safe as a `number` up to 112 000 km; a product of two lengths is not,
 * so areas, squared distances and volumes are `bigint`.
 */
export type Length = number & { readonly __unit: 'tick' };

/** Square ticks. */
export type Area = bigint & { readonly __unit: 'tick2' };
/** Cubic ticks. */
export type Volume = bigint & { readonly __unit: 'tick3' };

export const TICKS_PER_MM = 80_000;
export const TICKS_PER_INCH = 2_032_000;
export const TICKS_PER_FOOT = 12 * TICKS_PER_INCH;
export const TICKS_PER_METRE = 1000 * TICKS_PER_MM;

/** Takes a tick count; throws when it is not a whole, safe number, because a length that is not exact is a defect of ours. */
export function ticks(count: number): Length {
    if (!Number.isSafeInteger(count)) throw new Error(`Not a whole number of ticks: ${count}`);
    return (count === 0 ? 0 : count) as Length;
}

/** `whole + numerator/denominator` inches, for constants in code: `inches(34, 3, 4)` is 34 3/4". Throws unless it is a whole number of ticks. */
export const inches = (whole: number, numerator = 0, denominator = 1): Length =>
    ticks((whole * denominator + numerator) * TICKS_PER_INCH / denominator);
export const feet = (whole: number, inch = 0): Length => ticks(whole * TICKS_PER_FOOT + inch * TICKS_PER_INCH);
/** Millimetres, for constants in code; tenths are exact. Throws unless it is a whole number of ticks. */
export const mm = (value: number): Length => {
    const count = Math.round(value * TICKS_PER_MM);
    if (Math.abs(count - value * TICKS_PER_MM) > 1e-3) throw new Error(`${value} mm is not a whole number of ticks`);
    return ticks(count);
};

export const zero: Length = 0 as Length;
export const sum = (...parts: readonly Length[]): Length => ticks(parts.reduce((total, part) => total + part, 0));
export const plus = (a: Length, b: Length): Length => ticks(a + b);
export const minus = (a: Length, b: Length): Length => ticks(a - b);
export const times = (length: Length, count: number): Length => ticks(length * count);
export const negate = (length: Length): Length => ticks(0 - length);
export const longest = (...lengths: readonly [Length, ...Length[]]): Length => Math.max(...lengths) as Length;
export const shortest = (...lengths: readonly [Length, ...Length[]]): Length => Math.min(...lengths) as Length;

/** Half of a length; the odd tick (12.5 nm) goes down. */
export const half = (length: Length): Length => ticks(Math.floor(length / 2));

/** `count` equal whole-tick shares and what is left over; `share * count + rest === length`, `0 <= rest < count`. */
export function splitEvenly(length: Length, count: number): { readonly share: Length; readonly rest: Length } {
    const share = Math.floor(length / count);
    return { share: ticks(share), rest: ticks(length - share * count) };
}

export const area = (width: Length, height: Length): Area => (BigInt(width) * BigInt(height)) as Area;
export const volume = (width: Length, depth: Length, height: Length): Volume => (BigInt(width) * BigInt(depth) * BigInt(height)) as Volume;

/** Smallest whole-tick length whose square is at least `square`: for a length that is REQUIRED. */
export function rootUp(square: bigint): Length {
    const floor = integerRoot(square);
    return ticks(Number(floor * floor === square ? floor : floor + 1n));
}
/** Largest whole-tick length whose square is at most `square`: for a length that is AVAILABLE. */
export const rootDown = (square: bigint): Length => ticks(Number(integerRoot(square)));

function integerRoot(square: bigint): bigint {
    if (square < 0n) throw new Error(`No real root of ${square}`);
    if (square < 2n) return square;
    let guess = BigInt(Math.floor(Math.sqrt(Number(square)))) + 1n;
    for (;;) {
        const next = (guess + square / guess) / 2n;
        if (next >= guess) break;
        guess = next;
    }
    while (guess * guess > square) guess -= 1n;
    while ((guess + 1n) * (guess + 1n) <= square) guess += 1n;
    return guess;
}

export const inMm = (length: Length): number => length / TICKS_PER_MM;
export const inInches = (length: Length): number => length / TICKS_PER_INCH;
export const inMetres = (length: Length): number => length / TICKS_PER_METRE;
export const inSquareMetres = (value: Area): number => Number(value) / TICKS_PER_METRE ** 2;
export const inSquareFeet = (value: Area): number => Number(value) / TICKS_PER_FOOT ** 2;
export const inSquareInches = (value: Area): number => Number(value) / TICKS_PER_INCH ** 2;
export const inCubicMetres = (value: Volume): number => Number(value) / TICKS_PER_METRE ** 3;
export const inCubicFeet = (value: Volume): number => Number(value) / TICKS_PER_FOOT ** 3;
