import type { Edit, Finding } from '../../core/finding.js';
import { insideRun, neighbours, type Wall } from '../../core/geometry.js';
import { half, minus, plus, zero, type Length } from '../../core/length.js';
import type { Span } from '../../core/span.js';
import type { SensorBand, SensorPlace, SensorProblem } from '../../engines/heater/sensor.js';
import { onWall } from '../../engines/fittings/wall-frame.js';
import type { JudgedHeater } from '../../assembly/heater-judgement.js';
import type { Block } from '../../model/block.js';
import { showRequired } from '../governing.js';
import type { RuleInput } from '../rule.js';
import { heaterFindings, placeEdits, writable } from './heater-findings.js';

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
