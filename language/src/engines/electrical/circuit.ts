import type { Citation } from '../../core/citation.js';
import type { Length } from '../../core/length.js';
import type { ConductorSize } from './conductor.js';

export type Phases = 'single' | 'three';

/** One voltage the heater is built for and what it draws there, from its nameplate. */
export interface HeaterRating {
    /** Between the lines it is connected to. */
    readonly volts: number;
    readonly phases: Phases;
    readonly watts: number;
}
/** What the heater's own manual says about its supply. A field left out is not in the manual; the engine then says so and does not invent it. */
export interface HeaterSupply {
    /** The manual as a message names it: `Tarn 60 manual`. */
    readonly manual: string;
    readonly ratings: readonly HeaterRating[];
    readonly maximumDeviceA?: number;
    readonly minimumConductor?: ConductorSize;
    /** The wire of the final connection in the manual's words: `copper, 90 °C`. */
    readonly finalConnection?: string;
    /** In how many equal, separately protected sets the elements are divided. */
    readonly elementSets?: number;
    readonly residualCurrentDevice?: 'recommended' | 'not_recommended';
}
/** The supply on site. */
export interface SiteSupply {
    /** Between the lines; a three-phase supply of 400 V also offers 230 V to neutral. */
    readonly volts: number;
    readonly phases: Phases;
    /** Spare amperes at the panel. */
    readonly capacityA?: number;
}
/** A circuit that is already there. */
export interface ExistingCircuit {
    readonly deviceA?: number;
    readonly conductor?: ConductorSize;
}
/** A stretch of the run with one ambient temperature. */
export interface RunSegment {
    readonly name: string;
    readonly length?: Length;
    /** Highest ambient temperature in °C. Never taken as 30 °C when missing. */
    readonly ambientC?: number;
}

export type Unit = 'A' | 'V' | 'W' | 'Ω/1000 ft' | 'Ω·mm²/m' | '%' | 'm' | '°C' | '';
/** One step of the calculation, kept whole so that a hover can show where a figure comes from. */
export interface Step {
    readonly key: string;
    readonly label: string;
    /** The figure, with `unit`; a conductor, a place or a ratio has text only. */
    readonly value?: number;
    readonly unit: Unit;
    readonly text: string;
    readonly formula: string;
    readonly inputs: readonly { readonly name: string; readonly text: string }[];
    readonly citation: Citation;
    readonly note?: string;
}

/** Something wrong with the circuit; `weight` tells what stops the work from what is only to be known. */
export type CircuitProblem = { readonly weight: 'problem' | 'info'; readonly citation: Citation } & (
    | { readonly kind: 'wrong-voltage'; readonly suppliedVolts: number; readonly ratedVolts: readonly number[]; readonly wattsAtSupply: number; readonly ratedWatts: number }
    | { readonly kind: 'wrong-phase'; readonly supplied: Phases; readonly needed: Phases }
    | { readonly kind: 'capacity-too-small'; readonly neededA: number; readonly availableA: number }
    | { readonly kind: 'existing-device-too-small'; readonly deviceA: number; readonly neededA: number }
    | { readonly kind: 'existing-device-too-large'; readonly deviceA: number; readonly allowedA: number; readonly because: 'manual' | 'conductor' | 'elements' }
    | { readonly kind: 'existing-conductor-too-small'; readonly conductor: ConductorSize; readonly needed?: ConductorSize }
    | { readonly kind: 'manual-device-exceeded'; readonly neededA: number; readonly allowedA: number }
    | { readonly kind: 'not-subdivided'; readonly currentA: number; readonly sets: number; readonly setA: number; readonly limitA: number }
    | { readonly kind: 'ambient-beyond-table'; readonly segment: string; readonly ambientC: number; readonly conductorC: number }
    | { readonly kind: 'conductor-beyond-table'; readonly neededA: number }
    | { readonly kind: 'device-beyond-table'; readonly neededA: number; readonly largestA: number }
    | { readonly kind: 'disconnect-not-in-sight' }
    | { readonly kind: 'voltage-drop-high'; readonly share: number; readonly limit: number }
    | { readonly kind: 'outside-heater-standard'; readonly what: 'power' | 'voltage'; readonly value: number; readonly limit: number }
);
export type CircuitProblemKind = CircuitProblem['kind'];

export interface VoltageDrop {
    readonly volts: number;
    /** Of the supply voltage; 0.03 is 3 %. */
    readonly share: number;
    readonly run: Length;
}
export interface CircuitConductor {
    readonly size: ConductorSize;
    /** Line and neutral conductors that carry the load, without the protective one. */
    readonly loaded: 2 | 3;
    /** Lowest ampacity on the run, corrected for temperature and held down by the terminals. */
    readonly ampacityA: number;
    readonly isSetByManual: boolean;
}

/** The circuit as far as the inputs allow; what could not be worked out is absent and named in `lacks`. */
export interface CircuitResult {
    readonly family: 'us' | 'iec';
    readonly steps: readonly Step[];
    readonly wattsAtSupply?: number;
    readonly currentA?: number;
    /** What conductor and device have to carry: 125 % of the current by the NEC, the current itself by IEC. */
    readonly designCurrentA?: number;
    readonly deviceA?: number;
    readonly conductor?: CircuitConductor;
    readonly protectiveConductor?: ConductorSize;
    readonly voltageDrop?: VoltageDrop;
    readonly elementSets?: { readonly sets: number; readonly setA: number; readonly deviceA?: number };
    readonly lacks: readonly string[];
    readonly problems: readonly CircuitProblem[];
    readonly notChecked: readonly string[];
}
