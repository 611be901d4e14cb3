import type { Edit, Finding, Fix } from '../../core/finding.js';
import { extent, insideRun, neighbours, type Wall } from '../../core/geometry.js';
import { half, minus, plus, zero, type Length } from '../../core/length.js';
import type { Span } from '../../core/span.js';
import type { SensorBand, SensorPlace, SensorProblem } from '../../engines/heater/sensor.js';
import { onWall } from '../../engines/fittings/wall-frame.js';
import type { JudgedHeater } from '../../assembly/heater-judgement.js';
import type { Block } from '../../model/block.js';
import { showRequired } from '../governing.js';
import type { RuleInput } from '../rule.js';
import { heaterFindings, placeEdits, reviewFix, writable } from './heater-findings.js';

export interface SensorCase<K extends SensorProblem['kind']> {
    readonly judged: JudgedHeater;
    readonly place: SensorPlace;
    readonly problem: Extract<SensorProblem, { readonly kind: K }>;
    readonly block: Block<'sensor'>;
}

/** Findings about the problems of one kind of a sensor that is there. */
export const sensorFindings = <K extends SensorProblem['kind']>(input: RuleInput, kind: K, make: (found: SensorCase<K>) => Finding | undefined): Generator<Finding> =>
    heaterFindings(input, judged => {
        const place = judged.sensor;
        const block = input.job.sensors.find(sensor => sensor === judged.sensorFitting?.block);
        if (!place || !block) return [];
        return place.problems.flatMap(problem => {
            if (problem.kind !== kind) return [];
            const made = make({ judged, place, problem: problem as Extract<SensorProblem, { readonly kind: K }>, block });
            return made ? [made] : [];
        });
    });

export const sensorHeightSpan = ({ values, head }: Block<'sensor'>): Span => (values.height ?? values.below_ceiling)?.span ?? head;

/** `4" to 8"`, or `6" or less` where the band begins at the ceiling. */
export const showBand = ({ range: { from, to } }: SensorBand, { job: { unit } }: RuleInput): string =>
    from === 0 ? `${showRequired(to, unit, 'most')} or less` : from === to ? showRequired(to, unit) : `${showRequired(from, unit)} to ${showRequired(to, unit, 'most')}`;

/** A place that satisfies all demands, written from a wall the sensor's own wall meets: the nearest to where the sensor is, the middle for one that is nowhere yet. */
export interface SensorSpot { readonly wall: Wall; readonly from: Wall; readonly distance: Length; readonly belowCeiling: Length }

export function sensorSpot({ sensor, sensorFitting, block }: JudgedHeater, { results: { inside } }: RuleInput): SensorSpot | undefined {
    const candidate = sensor?.candidate;
    if (!candidate || !inside) return undefined;
    const { wall, along, belowCeiling } = candidate;
    const element = sensorFitting?.thing;
    const now = element && sensorFitting.block.walls[0]?.value === wall ? onWall(wall, element.box, inside).u.from : undefined;
    const spots = along.map(({ from, to }) => now === undefined ? plus(from, half(minus(to, from))) : Math.min(Math.max(now, from), to) as Length);
    const [u] = now === undefined ? spots : [...spots].sort((a, b) => Math.abs(a - now) - Math.abs(b - now));
    if (u === undefined) return undefined;
    // Measured from where its heater is measured from, or from the heater's wall when it stands beside that.
    const ends = neighbours[wall];
    const written = (block.values.from ?? block.values.centre)?.value.wall;
    const from = [written, block.walls[0]?.value].find(end => end === ends.left || end === ends.right) ?? ends.left;
    return { wall, from, belowCeiling, distance: from === ends.left ? u : minus(insideRun(wall, inside), u) };
}

/** Moves the sensor to a spot; its height stays. */
export function moveSensorEdits(block: Block<'sensor'>, spot: SensorSpot, { job }: RuleInput): readonly Edit[] {
    const wall = block.walls[0];
    const place = placeEdits(block, spot.from, spot.distance, zero, job.unit);
    if (!wall || place.length === 0) return [];
    return wall.value === spot.wall ? place : [{ span: wall.span, newText: spot.wall }, ...place];
}

/** Puts the sensor at another distance below the ceiling, written the way its height is written now. */
export function sensorHeightEdits({ values }: Block<'sensor'>, belowCeiling: Length, { job, results: { inside } }: RuleInput): readonly Edit[] {
    if (values.height) return inside ? [{ span: values.height.span, newText: writable(minus(inside.height, belowCeiling), job.unit) }] : [];
    return values.below_ceiling ? [{ span: values.below_ceiling.span, newText: writable(belowCeiling, job.unit) }] : [];
}

/** What is said of a sensor on a wall beside the heater's: how its distance is measured, what does not help, and where the heater would go instead. */
export interface SideWallWords { readonly measuredAlong: string; readonly why: string; readonly move: string; readonly fixes: readonly Fix[] }

/**
 * Every place on a side wall is as far from the side of the heater as the wall itself: only the heater's place, or another wall, changes that.
 * @returns nothing for a sensor on the heater's own wall or the one opposite
 */
export function besideOnSideWall(judged: JudgedHeater, block: Block<'sensor'>, short: Length, { job: { unit }, results: { inside } }: RuleInput): SideWallWords | undefined {
    const { heater, range, name } = judged;
    const wall = block.walls[0]?.value;
    if (!heater || !inside || !wall) return undefined;
    const ends = neighbours[heater.wall];
    if (wall !== ends.left && wall !== ends.right) return undefined;
    const words = { measuredAlong: `, measured along the ${heater.wall} wall from that side to the ${wall} wall`, why: `Another place on the ${wall} wall changes nothing.` };
    const { u } = heater.onWall;
    const width = extent(u);
    const last = minus(insideRun(heater.wall, inside), width);
    const left = wall === ends.left ? plus(u.from, short) : minus(u.from, short);
    const near = range?.from === ends.left ? left : minus(last, left);
    if (!range?.ranges.some(({ from, to }) => from <= near && near <= to)) return { ...words, move: '', fixes: [] };
    const { from, centre } = judged.block.values;
    const isCentre = !from && centre !== undefined;
    const place = `${range.from} ${writable(isCentre ? plus(near, half(width)) : near, unit)}`;
    return {
        ...words, move: `With the heater ${isCentre ? 'centre from' : 'from'} ${place} the sensor may stay.`,
        fixes: reviewFix(`Move heater ${name} to ${isCentre ? 'centre from ' : ''}${place}`, placeEdits(judged.block, range.from, near, width, unit)),
    };
}
