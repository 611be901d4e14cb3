import type { Citation } from '../../core/citation.js';
import { insideRun, neighbours, type Box, type InsideSize, type Wall } from '../../core/geometry.js';
import { inches, minus, plus, zero, type Length } from '../../core/length.js';
import type { LengthRange } from '../../vocabulary/values.js';
import { onWall } from '../fittings/wall-frame.js';
import { manualCitation, type PlacedHeater } from './casing.js';
import type { Requirement } from './clearances.js';

/** A band below the ceiling lining, both ends allowed, and whose it is. */
export interface SensorBand { readonly range: LengthRange; readonly citation: Citation }

export interface SensorDemands {
    /** Greatest distance of a remote element below the ceiling by each published code of the job. */
    readonly codes: readonly Requirement[];
    /** What practice aims at; it yields to manual and codes. */
    readonly practice?: { readonly belowCeiling?: Length; readonly beside?: Length };
}

/** Common practice, no source. */
export const sensorPractice = { belowCeiling: inches(12), beside: inches(12) } as const;
const practiceCitation = (text: string): Citation => ({ kind: 'practice', text });

/** Two bands that do not meet. The one of higher authority prevails and the local authority decides. */
export interface SensorConflict { readonly prevails: SensorBand; readonly against: SensorBand }

export interface SensorHeight {
    /** The band that satisfies every demand of manual and codes; what prevails when they do not meet. */
    readonly band: SensorBand;
    /** Every demand that shaped the band, highest authority first. */
    readonly from: readonly SensorBand[];
    readonly conflicts: readonly SensorConflict[];
    /** Practice aims at another height and yields. */
    readonly yielded?: SensorBand;
    /** The height to choose when nothing else decides: practice when it lies in the band, else the end of the band nearest to it. */
    readonly chosen: Length;
}

/** The height band in order of authority: manual, then codes, then practice; first what satisfies all, and only when they do not meet what prevails. */
export function sensorHeight(heater: PlacedHeater, demands: SensorDemands, insideHeight: Length): SensorHeight {
    const { manual } = heater;
    const aim = demands.practice?.belowCeiling ?? sensorPractice.belowCeiling;
    const practice: SensorBand = { range: { from: aim, to: aim }, citation: practiceCitation('sensor below the ceiling') };
    const bands: SensorBand[] = [
        ...(manual.sensorBelowCeiling ? [{ range: manual.sensorBelowCeiling, citation: manualCitation(manual) }] : []),
        ...demands.codes.map(({ value, citation }) => ({ range: { from: zero, to: value }, citation })),
    ];
    let band: SensorBand | undefined;
    const conflicts: SensorConflict[] = [];
    for (const next of bands) {
        const meet = band ? intersection(band.range, next.range) : next.range;
        if (!meet) { if (band) conflicts.push({ prevails: band, against: next }); continue; }
        // The citation follows whoever narrowed it: that is the demand a message has to name.
        band = band && sameRange(meet, band.range) ? band : { range: meet, citation: next.citation };
    }
    if (!band) return { band: practice, from: [practice], conflicts: [], chosen: Math.min(aim, insideHeight) as Length };
    const chosen = aim < band.range.from ? band.range.from : aim > band.range.to ? band.range.to : aim;
    return { band, from: bands, conflicts, chosen, ...(chosen !== aim && { yielded: practice }) };
}

const intersection = (a: LengthRange, b: LengthRange): LengthRange | undefined => {
    const from = Math.max(a.from, b.from) as Length;
    const to = Math.min(a.to, b.to) as Length;
    return from <= to ? { from, to } : undefined;
};
const sameRange = (a: LengthRange, b: LengthRange): boolean => a.from === b.from && a.to === b.to;

/** How far beside the heater the element stands at least: the manual's figure, else practice. */
export const sensorBeside = (heater: PlacedHeater, demands: SensorDemands): Requirement => heater.manual.sensorFromSide !== undefined
    ? { value: heater.manual.sensorFromSide, citation: manualCitation(heater.manual) }
    : { value: demands.practice?.beside ?? sensorPractice.beside, citation: practiceCitation('sensor from the side of the heater') };

/** A place that satisfies all there is to satisfy, for a quick fix or a drawing; positions are u of the element on `wall`. */
export interface SensorCandidate {
    readonly wall: Wall;
    readonly belowCeiling: Length;
    /** Where along the wall, both ends allowed; several when it may stand on either side, none when the wall is too short. */
    readonly along: readonly LengthRange[];
}

export function sensorCandidate(heater: PlacedHeater, demands: SensorDemands, inside: InsideSize): SensorCandidate | undefined {
    const { manual, wall, onWall: { u, w } } = heater;
    if (manual.sensor === 'built_in') return undefined;
    const belowCeiling = sensorHeight(heater, demands, inside.height).chosen;
    const run = insideRun(wall, inside);
    if (manual.sensor === 'on_wall_over_heater') return { wall, belowCeiling, along: [{ from: u.from, to: u.to }] };
    const beside = sensorBeside(heater, demands).value;
    const left = { from: zero, to: minus(u.from, beside) };
    const right = { from: plus(u.to, beside), to: run };
    if (manual.sensor !== 'on_side_wall') return { wall, belowCeiling, along: [left, right].filter(({ from, to }) => from <= to) };
    // On a neighbouring wall every point is as far to the side as that wall's lining; the nearer wall that is far enough is taken.
    const ends = neighbours[wall];
    const options = [{ wall: ends.left, gap: u.from }, { wall: ends.right, gap: minus(run, u.to) }]
        .filter(({ gap }) => gap >= beside).sort((a, b) => a.gap - b.gap);
    const nearest = options[0];
    if (!nearest) return { wall: ends.left, belowCeiling, along: [] };
    const depth = insideRun(nearest.wall, inside);
    const isLeft = nearest.wall === ends.left;
    // The heater's wall ends the left neighbour on its right (high u) and the right neighbour on its left (low u).
    const before = isLeft ? { from: minus(depth, w.to), to: minus(depth, w.from) } : { from: w.from, to: w.to };
    return { wall: nearest.wall, belowCeiling, along: [before] };
}

export interface SensorInput {
    readonly name: string;
    readonly wall: Wall;
    /** The sensing element, in the room frame; a point when its size is not known. */
    readonly box: Box;
    readonly cable?: Length;
}

export type SensorProblem =
    | { readonly kind: 'sensor-missing' }
    | { readonly kind: 'sensor-not-needed' }
    | { readonly kind: 'sensor-place-missing-in-manual' }
    | { readonly kind: 'sensor-on-wrong-wall'; readonly wanted: 'on_wall_over_heater' | 'on_side_wall'; readonly wall: Wall }
    | { readonly kind: 'sensor-not-over-heater' }
    | { readonly kind: 'sensor-too-low'; readonly measured: Length; readonly required: SensorBand }
    | { readonly kind: 'sensor-too-high'; readonly measured: Length; readonly required: SensorBand }
    | { readonly kind: 'sensor-too-near-heater'; readonly measured: Length; readonly required: Requirement }
    | { readonly kind: 'sensor-cable-too-long'; readonly measured: Length; readonly required: Requirement };

export interface SensorPlace {
    /** A thermostat built into the heater is not a remote element: the codes' distance below the ceiling does not apply to it. */
    readonly isRemote: boolean;
    readonly height?: SensorHeight;
    readonly beside?: Requirement;
    readonly candidate?: SensorCandidate;
    /** From the ceiling lining to the top of the element. */
    readonly belowCeiling?: Length;
    /** Along the heater's wall from the side of the casing to the element; zero over the casing. */
    readonly fromSide?: Length;
    readonly problems: readonly SensorProblem[];
}

/** Judges the sensor of one heater, or says where to put it. */
export function sensorPlace(heater: PlacedHeater, sensor: SensorInput | undefined, demands: SensorDemands, inside: InsideSize): SensorPlace {
    const { manual } = heater;
    if (manual.sensor === 'built_in') return { isRemote: false, problems: sensor ? [{ kind: 'sensor-not-needed' }] : [] };
    const height = sensorHeight(heater, demands, inside.height);
    const candidate = sensorCandidate(heater, demands, inside);
    // Over the heater there is no distance to its side to keep.
    const beside = manual.sensor === 'on_wall_over_heater' ? undefined : sensorBeside(heater, demands);
    const shared = { isRemote: true, height, ...(beside && { beside }), ...(candidate && { candidate }) };
    const unknown: SensorProblem[] = manual.sensor === undefined ? [{ kind: 'sensor-place-missing-in-manual' }] : [];
    if (!sensor) return { ...shared, problems: [{ kind: 'sensor-missing' }, ...unknown] };

    const seen = onWall(heater.wall, sensor.box, inside);
    const belowCeiling = minus(inside.height, seen.v.to);
    const fromSide = Math.max(zero, seen.u.from - heater.onWall.u.to, heater.onWall.u.from - seen.u.to) as Length;
    const problems: SensorProblem[] = [...unknown];
    if (manual.sensor === 'on_wall_over_heater') {
        if (sensor.wall !== heater.wall) problems.push({ kind: 'sensor-on-wrong-wall', wanted: manual.sensor, wall: sensor.wall });
        else if (seen.u.from < heater.onWall.u.from || seen.u.to > heater.onWall.u.to) problems.push({ kind: 'sensor-not-over-heater' });
    }
    const isNeighbour = sensor.wall === neighbours[heater.wall].left || sensor.wall === neighbours[heater.wall].right;
    if (manual.sensor === 'on_side_wall' && !isNeighbour) problems.push({ kind: 'sensor-on-wrong-wall', wanted: manual.sensor, wall: sensor.wall });
    if (belowCeiling > height.band.range.to) problems.push({ kind: 'sensor-too-low', measured: belowCeiling, required: height.band });
    if (belowCeiling < height.band.range.from) problems.push({ kind: 'sensor-too-high', measured: belowCeiling, required: height.band });
    if (beside && fromSide < beside.value) problems.push({ kind: 'sensor-too-near-heater', measured: fromSide, required: beside });
    if (sensor.cable !== undefined && manual.sensorCable !== undefined && sensor.cable > manual.sensorCable) {
        problems.push({ kind: 'sensor-cable-too-long', measured: sensor.cable, required: { value: manual.sensorCable, citation: manualCitation(manual) } });
    }
    return { ...shared, belowCeiling, fromSide, problems };
}
