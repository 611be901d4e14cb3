import type { LengthUnit } from '../core/show.js';
import { spanContains } from '../core/span.js';
import { isKind, type Block, type Given } from './block.js';
import type { Waiver } from './waivers.js';

/** One job with its blocks by kind, in the order written. Engines and rules read this. */
export interface Job {
    readonly block: Block<'job'>;
    readonly decisions: readonly Block<'decision'>[];
    readonly site?: Block<'site'>;
    readonly obstructions: readonly Block<'obstruction'>[];
    readonly room?: Block<'room'>;
    readonly climate?: Block<'climate'>;
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
    /** The unit messages and documents answer in: the one the designer writes lengths in, unless the project chooses another. */
    readonly unit: LengthUnit;
    /** What somebody has accepted, as the job records it. */
    readonly waivers: readonly Waiver[];
    /** Who signed which revision, as the text of this job or variant itself says; another's signature is not its own. */
    readonly signOffs: readonly Block<'sign_off'>[];
    /** Set for a variant of a job. */
    readonly variant?: { readonly name: string };
    /** Whether every block of the job was read; only then may a block be called missing. */
    readonly isWhole: boolean;
}

/** A file after reading: its jobs, its catalogues, and what was wrong with the text. */
export interface HotroomFile {
    readonly uri: string;
    readonly jobs: readonly Job[];
    readonly catalogues: readonly Block<'catalogue'>[];
    readonly series: readonly Block<'series'>[];
    /** House rules at the top of the file and in its catalogues. */
    readonly rules: readonly Block<'rule'>[];
}

/**
 * Sorts the blocks of a job by kind.
 * @param unit to answer in; without it the one the job is written in
 */
export function toJob(block: Block<'job'>, waivers: readonly Waiver[] = [], unit: LengthUnit = writtenUnit(block)): Job {
    const all = <K extends Block['kind']>(kind: K): readonly Block<K>[] => block.children.filter(child => isKind(child, kind));
    const one = <K extends Block['kind']>(kind: K): Block<K> | undefined => all(kind)[0];
    const site = one('site');
    const room = one('room');
    const climate = one('climate');
    const thermometer = one('thermometer');
    return {
        block,
        ...(site && { site }), ...(room && { room }), ...(climate && { climate }), ...(thermometer && { thermometer }),
        decisions: all('decision'),
        obstructions: (site?.children ?? []).filter(child => isKind(child, 'obstruction')),
        doors: all('door'), windows: all('window'), benches: all('bench'), heaters: all('heater'), circuits: all('circuit'), sensors: all('sensor'),
        controls: all('control'), vents: all('vent'), lights: all('light'), signs: all('sign'), receptacles: all('receptacle'), fittings: all('fitting'),
        duckboards: all('duckboard'),
        unit, waivers, signOffs: all('sign_off').filter(({ span }) => spanContains(block.span, span)),
        isWhole: block.isWhole,
    };
}

/** The unit of the room's width, else of the first length in the job; inches when there is none. */
export function writtenUnit(job: Block): LengthUnit {
    const units: readonly LengthUnit[] = ['in', 'ft_in', 'ft', 'mm', 'cm', 'm'];
    const isUnit = (unit: string | undefined): unit is LengthUnit => units.includes(unit as LengthUnit);
    const room = job.children.find(child => isKind(child, 'room'));
    const ofRoom = (room as Block<'room'> | undefined)?.values.width?.unit;
    if (isUnit(ofRoom)) return ofRoom;
    for (const block of job.children) for (const unit of unitsIn(block)) if (isUnit(unit)) return unit;
    return 'in';
}

const unitsIn = (block: Block): readonly (string | undefined)[] => Object.values<Given<unknown>>(block.values as Readonly<Record<string, Given<unknown>>>).map(({ unit }) => unit);
