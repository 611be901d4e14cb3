import type { HeaterRating, HeaterSupply, Phases, SiteSupply } from './circuit.js';

/**
 * Current a resistance heater draws.
 * @param load power in W, voltage between the lines in V, phases
 * @returns A in each line: P/V, or P/(√3·V) for a balanced three-phase load
 * Source: Ohm's law and the definition of power; 6000 W at 240 V single-phase is 25 A.
 */
export const heaterCurrent = ({ watts, volts, phases }: { readonly watts: number; readonly volts: number; readonly phases: Phases }): number =>
    phases === 'three' ? watts / (Math.sqrt(3) * volts) : watts / volts;

/**
 * Power of a resistance element at a voltage that is not its own: P·(V/Vn)², its resistance taken as unchanged.
 * @returns W; 1000 W at 240 V give 751.1 W at 208 V
 */
export const powerAtVoltage = (ratedWatts: number, ratedVolts: number, volts: number): number => ratedWatts * (volts / ratedVolts) ** 2;

/** `a <= b`, letting go of the last few bits a product or root leaves, so that a figure equal to its limit passes. */
export const isAtMost = (a: number, b: number): boolean => a <= b + Math.abs(b) * 1e-9;

export type Connection = 'line_to_line' | 'line_to_neutral' | 'three_phase';
/** How the heater meets the supply. */
export interface SupplyMatch {
    readonly fit: 'right' | 'wrong-voltage' | 'wrong-phase';
    readonly rating: HeaterRating;
    readonly connection: Connection;
    /** Voltage across the heater; its own one when the phases are wrong, since it cannot then run on the site's. */
    readonly volts: number;
    readonly watts: number;
}

/**
 * Picks the nameplate rating the supply serves. A single-phase heater also runs on a three-phase supply, between two lines or from a line to neutral.
 * With no rating of the site's voltage, takes the nearest of the right phases and the power it gives there.
 * @returns `undefined` when the heater states no rating
 */
export function matchSupply(heater: HeaterSupply, supply: SiteSupply): SupplyMatch | undefined {
    const offers = offered(supply);
    for (const { connection, volts, isNominal } of offers) {
        const rating = heater.ratings.find(candidate => candidate.phases === phasesOf(connection)
            && (isNominal ? candidate.volts === volts : Math.abs(candidate.volts - volts) <= 1));
        if (rating) return { fit: 'right', rating, connection, volts: rating.volts, watts: rating.watts };
    }
    const byNearness = offers
        .flatMap(({ connection, volts }) => heater.ratings
            .filter(({ phases }) => phases === phasesOf(connection))
            .map(rating => ({ rating, connection, volts, miss: Math.abs(rating.volts - volts) })))
        .sort((a, b) => a.miss - b.miss || a.rating.volts - b.rating.volts);
    const nearest = byNearness[0];
    if (nearest) {
        const { rating, connection, volts } = nearest;
        return { fit: 'wrong-voltage', rating, connection, volts, watts: powerAtVoltage(rating.watts, rating.volts, volts) };
    }
    const own = heater.ratings[0];
    return own && { fit: 'wrong-phase', rating: own, connection: 'three_phase', volts: own.volts, watts: own.watts };
}

const phasesOf = (connection: Connection): Phases => connection === 'three_phase' ? 'three' : 'single';

/** What a supply offers, in the order it is tried. The voltage to neutral is a rounded nominal one (231 V is sold as 230 V). */
function offered({ volts, phases }: SiteSupply): readonly { readonly connection: Connection; readonly volts: number; readonly isNominal: boolean }[] {
    return phases === 'single' ? [{ connection: 'line_to_line', volts, isNominal: true }] : [
        { connection: 'three_phase', volts, isNominal: true },
        { connection: 'line_to_line', volts, isNominal: true },
        { connection: 'line_to_neutral', volts: Math.round(volts / Math.sqrt(3)), isNominal: false },
    ];
}
