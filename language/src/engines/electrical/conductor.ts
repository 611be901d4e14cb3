/** American wire gauges of building wire, thinnest first. */
export const awgSizes = ['14', '12', '10', '8', '6', '4', '3', '2', '1', '1/0', '2/0', '3/0', '4/0'] as const;
export type Awg = typeof awgSizes[number];
/** Nominal cross-sections of copper conductors in mm2, thinnest first. */
export const mm2Sizes = [1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95] as const;
export type Mm2 = typeof mm2Sizes[number];

/** A copper conductor size, as a gauge or a cross-section. */
export type ConductorSize =
    | { readonly system: 'awg'; readonly awg: Awg }
    | { readonly system: 'mm2'; readonly mm2: Mm2 };

export const awg = (size: Awg): ConductorSize => ({ system: 'awg', awg: size });
export const mm2 = (size: Mm2): ConductorSize => ({ system: 'mm2', mm2: size });

/** `10 AWG` or `2.5 mm2`. */
export const showConductor = (size: ConductorSize): string => size.system === 'awg' ? `${size.awg} AWG` : `${size.mm2} mm2`;

/** The conductor of that text, as `showConductor` writes it; `AWG 10` and `2.5 mm²` are read too. `undefined` for any other text and for sizes not listed. */
export function parseConductor(text: string): ConductorSize | undefined {
    const gauge = /^(?:AWG\s*)?#?(\d+(?:\/0)?)(?:\s*AWG)?$/i.exec(text.trim());
    if (gauge && /awg|#/i.test(text)) {
        const found = awgSizes.find(size => size === gauge[1]);
        return found ? awg(found) : undefined;
    }
    const metric = /^(\d+(?:\.\d+)?)\s*mm(?:2|²)$/i.exec(text.trim());
    if (!metric) return undefined;
    const found = mm2Sizes.find(size => size === Number(metric[1]));
    return found === undefined ? undefined : mm2(found);
}

/**
 * Orders two sizes by cross-section: below zero when `a` is thinner.
 * @returns `undefined` when one is a gauge and the other a cross-section: the two systems have different tables, so the engine never trades one for the other
 */
export function compareConductors(a: ConductorSize, b: ConductorSize): number | undefined {
    if (a.system === 'awg' && b.system === 'awg') return awgSizes.indexOf(a.awg) - awgSizes.indexOf(b.awg);
    if (a.system === 'mm2' && b.system === 'mm2') return a.mm2 - b.mm2;
    return undefined;
}
