import type { Citation } from '../core/citation.js';
import type { ClauseKey, FigureOf, Sense } from './keys.js';

/** What a demand can depend on, and how that reads after the demand. */
export const conditions = {
    gas_heater: 'gas heaters',
    remote_sensor: 'where the thermostat is not part of the heater',
    timer_provided: 'where a timer is provided',
    gas_heater_with_timer: 'gas heaters, where a timer is provided',
    timer_apart: 'where the timer is not part of the heater',
    bench_off_wall: 'where the bench is not against a wall',
    wet_place: 'where the bench is in a wet place',
    hosed: 'where water jets clean the room',
    other_circuits: 'circuits other than the heater, and the heater where its manual recommends it',
    extra_low_voltage: 'SELV and PELV circuits',
    private_use: 'private use',
    shared_use: 'flats and hotels',
    remote_start: 'where the heater is started from elsewhere',
    upper_bench: 'upper bench',
} as const;
export type Condition = keyof typeof conditions;

/** One demand of one document. */
export interface Clause<K extends ClauseKey = ClauseKey> {
    readonly key: K;
    readonly figure: FigureOf<K>;
    readonly citation: Citation;
    /** When the demand applies, where it does not always. */
    readonly when?: Condition;
    /** How this clause means its figure when that is not how the key is usually meant. */
    readonly sense?: Sense;
    /** An older edition's figure, kept so that a conflict can be shown; it never governs. */
    readonly isSuperseded?: true;
    /** The figure was remembered without certainty: show it, do not judge by it. */
    readonly isUncertain?: true;
    /** The job follows this one where texts disagree. */
    readonly isChosen?: true;
    /** The job follows another text: shown, and never governs. */
    readonly isSetAside?: true;
    /** What falls short of it may not be waived, whatever the rule otherwise allows. */
    readonly isNeverWaived?: true;
}
/** A clause of any key, its figure typed by the key. */
export type AnyClause = { readonly [K in ClauseKey]: Clause<K> }[ClauseKey];

export interface RuleDocument {
    readonly title: string;
    readonly edition: string;
    /** What the document covers, in our words. */
    readonly scope: string;
}

/** The electrical rules a set brings: `us` calculates by the National Electrical Code, `iec` by IEC 60364; `any` says nothing about it. */
export type RuleFamily = 'us' | 'iec' | 'any';

export interface RuleSet<Id extends string = string> {
    readonly id: Id;
    readonly title: string;
    readonly family: RuleFamily;
    readonly scope: string;
    readonly documents: readonly RuleDocument[];
    readonly clauses: readonly AnyClause[];
    /** What the documents also contain and the tool does not check. */
    readonly notChecked: readonly string[];
}

type ClauseOptions = Pick<Clause, 'when' | 'sense' | 'isSuperseded' | 'isUncertain' | 'isNeverWaived'>;

/** A clause whose figure has to be of the kind its key names. */
export const clause = <K extends ClauseKey>(key: K, figure: FigureOf<K>, citation: Citation, options: ClauseOptions = {}): Clause<K> =>
    ({ key, figure, citation, ...options });
