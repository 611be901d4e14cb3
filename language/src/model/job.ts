import type { LengthUnit } from '../core/show.js';
import type { Block } from './block.js';

/** One job with its blocks by kind, in the order written. Engines and rules read this. */
export interface Job {
    readonly block: Block<'job'>;
    readonly site?: Block<'site'>;
    readonly obstructions: readonly Block<'obstruction'>[];
    readonly room?: Block<'room'>;
    readonly doors: readonly Block<'door'>[];
    readonly windows: readonly Block<'window'>[];
    readonly benches: readonly Block<'bench'>[];
    readonly heaters: readonly Block<'heater'>[];
    readonly circuits: readonly Block<'circuit'>[];
    readonly sensors: readonly Block<'sensor'>[];
    readonly controls: readonly Block<'control'>[];
    readonly vents: readonly Block<'vent'>[];
    readonly lights: readonly Block<'light'>[];
    readonly thermometer?: Block<'thermometer'>;
    readonly signs: readonly Block<'sign'>[];
    readonly receptacles: readonly Block<'receptacle'>[];
    readonly fittings: readonly Block<'fitting'>[];
    readonly duckboards: readonly Block<'duckboard'>[];
    /** The unit the designer writes lengths in; messages and documents answer in it. */
    readonly unit: LengthUnit;
    /** Whether every block of the job was read; only then may a block be called missing. */
    readonly isWhole: boolean;
}

/** A file after reading: its jobs, its catalogues, and what was wrong with the text. */
export interface HotroomFile {
    readonly uri: string;
    readonly jobs: readonly Job[];
    readonly catalogues: readonly Block<'catalogue'>[];
}
