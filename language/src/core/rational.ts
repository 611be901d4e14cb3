/** Exact fraction in lowest terms, denominator above zero. Expressions of the language are evaluated in these. */
export interface Rational {
    readonly n: bigint;
    readonly d: bigint;
}

/** Throws on a zero denominator; callers test for division by zero first and report it. */
export function rational(n: bigint, d: bigint = 1n): Rational {
    if (d === 0n) throw new Error('Division by zero');
    const sign = d < 0n ? -1n : 1n;
    const divisor = gcd(n < 0n ? -n : n, d < 0n ? -d : d) || 1n;
    return { n: sign * n / divisor, d: sign * d / divisor };
}

export const add = (a: Rational, b: Rational): Rational => rational(a.n * b.d + b.n * a.d, a.d * b.d);
export const subtract = (a: Rational, b: Rational): Rational => rational(a.n * b.d - b.n * a.d, a.d * b.d);
export const multiply = (a: Rational, b: Rational): Rational => rational(a.n * b.n, a.d * b.d);
export const divide = (a: Rational, b: Rational): Rational => rational(a.n * b.d, a.d * b.n);
export const compare = (a: Rational, b: Rational): number => {
    const difference = a.n * b.d - b.n * a.d;
    return difference < 0n ? -1 : difference > 0n ? 1 : 0;
};
export const isZero = (a: Rational): boolean => a.n === 0n;
export const isWhole = (a: Rational): boolean => a.d === 1n;
export const toNumber = (a: Rational): number => Number(a.n) / Number(a.d);

/** Nearest whole number, halves to even. */
export function roundHalfEven({ n, d }: Rational): bigint {
    const floor = n >= 0n ? n / d : -((-n + d - 1n) / d);
    const twice = 2n * (n - floor * d);
    if (twice < d) return floor;
    if (twice > d) return floor + 1n;
    return floor % 2n === 0n ? floor : floor + 1n;
}

/** Reads `12`, `12.75`, `3/4`, `34 3/4` and `34-3/4`; `undefined` for anything else or a zero denominator. */
export function parseRational(text: string): Rational | undefined {
    const match = /^(?:(\d+)(?:\.(\d+))?)?(?:(?:[ \t]+|-|^)(\d+)\/(\d+))?$/.exec(text.trim());
    const bare = /^(\d+)\/(\d+)$/.exec(text.trim());
    if (bare) {
        const d = BigInt(bare[2] ?? '0');
        return d === 0n ? undefined : rational(BigInt(bare[1] ?? '0'), d);
    }
    if (!match || (match[1] === undefined && match[3] === undefined)) return undefined;
    if (match[2] !== undefined && match[3] !== undefined) return undefined;
    const decimals = match[2] ?? '';
    let value = rational(BigInt((match[1] ?? '0') + decimals), 10n ** BigInt(decimals.length));
    if (match[3] !== undefined) {
        const d = BigInt(match[4] ?? '0');
        if (d === 0n) return undefined;
        value = add(value, rational(BigInt(match[3]), d));
    }
    return value;
}

function gcd(a: bigint, b: bigint): bigint {
    while (b !== 0n) [a, b] = [b, a % b];
    return a;
}
