import type { Citation } from '../../core/citation.js';
import { iecCitations, zoneThreeCableC, zoneThreeEquipmentC } from '../../rule-sets/iec-figures.js';
import type { Zone } from './zones.js';

/** What stands in the room, as far as the zones ask. */
export interface ZonedEquipment {
    readonly name: string;
    /** `heater` is the heater and whatever belongs to it: its stones, guard, sensor and limiter. */
    readonly kind: 'heater' | 'light' | 'cable' | 'socket_outlet' | 'switchgear' | 'other';
    readonly zones: readonly Zone[];
    /** Ambient temperature it withstands; for a cable, what insulation and sheath withstand, °C. */
    readonly ratingC?: number;
    /** Second figure of the IP code: 4 in IPX4 and IP24. */
    readonly waterDigit?: number;
}
export type ZoneProblem = { readonly name: string; readonly citation: Citation } & (
    | { readonly kind: 'not-of-the-heater'; readonly zone: 1 }
    | { readonly kind: 'rating-too-low'; readonly zone: 3; readonly ratingC: number; readonly requiredC: number }
    | { readonly kind: 'water-protection-too-low'; readonly waterDigit: number; readonly required: number }
    | { readonly kind: 'not-in-the-room' }
);

/** Whether the room is cleaned with water jets, which asks for a higher degree of protection. */
export interface Cleaning { readonly isHosed: boolean }

/**
 * What each piece of equipment may not do where it stands. A missing rating is not a problem but is named in `lacks`.
 * Source: IEC 60364-7-703 ed. 2.0, 703.512.2, and BS 7671 for the degree of protection; clause by clause in the problems.
 */
export function checkZones(equipment: readonly ZonedEquipment[], { isHosed }: Cleaning): { readonly problems: readonly ZoneProblem[]; readonly lacks: readonly string[] } {
    const problems: ZoneProblem[] = [];
    const lacks: string[] = [];
    for (const { name, kind, zones, ratingC, waterDigit } of equipment) {
        if (zones.length === 0) continue;
        if (kind === 'socket_outlet' || kind === 'switchgear') {
            problems.push({ name, kind: 'not-in-the-room', citation: kind === 'socket_outlet' ? iecCitations.socketOutlet : iecCitations.switchgear });
            continue;
        }
        if (kind === 'heater') continue;
        if (zones.includes(1)) problems.push({ name, kind: 'not-of-the-heater', zone: 1, citation: iecCitations.zoneOneEquipment });
        if (zones.includes(3)) {
            const requiredC = kind === 'cable' ? zoneThreeCableC : zoneThreeEquipmentC;
            if (ratingC === undefined) lacks.push(`temperature rating of ${name}`);
            else if (ratingC < requiredC) problems.push({
                name, kind: 'rating-too-low', zone: 3, ratingC, requiredC, citation: kind === 'cable' ? iecCitations.zoneThreeCable : iecCitations.zoneThreeEquipment,
            });
        }
        if (kind === 'cable') continue;
        const required = isHosed ? 5 : 4;
        if (waterDigit === undefined) lacks.push(`degree of protection of ${name}`);
        else if (waterDigit < required) problems.push({
            name, kind: 'water-protection-too-low', waterDigit, required, citation: isHosed ? iecCitations.ingressHosed : iecCitations.ingress,
        });
    }
    return { problems, lacks };
}
