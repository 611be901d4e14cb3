import type { InsideSize } from '../core/geometry.js';
import { plus, zero, type Length } from '../core/length.js';
import { duckboardBuild, type DuckboardProblem } from '../engines/fittings/duckboard.js';
import { duckboardThing, placeFitting, usualThermometerBelowCeiling } from '../engines/fittings/placed-fitting.js';
import type { Thing, ThingKind } from '../engines/fittings/things.js';
import type { PlaceProblem, WallHeight } from '../engines/fittings/wall-place.js';
import type { Part } from '../engines/parts/part.js';
import type { Block } from '../model/block.js';
import type { Job } from '../model/job.js';
import type { BlockKind } from '../vocabulary/index.js';
import { given, placeOf, stockOf, wallOf } from './catalogue-values.js';
import { nameBlocks, type NamedBlock } from './naming.js';

/** Something fixed to a wall inside, or lying on the floor. */
export interface AssembledFitting extends NamedBlock<BlockKind> {
    readonly thing?: Thing;
    readonly problems: readonly PlaceProblem[];
    readonly duckboardProblem?: DuckboardProblem;
    readonly parts: readonly Part[];
    /** °C it withstands, where that matters. */
    readonly ratingC?: number;
    /** °C its cable withstands. */
    readonly cableRatingC?: number;
    readonly waterDigit?: number;
    readonly isElectrical: boolean;
}

/**
 * Sensors, lights, thermometer, inside controls, receptacles and signs that have a place, other fittings and duckboards, in the order of the kinds.
 * @param heaterName the heater the sensors serve
 */
export function assembleFittings(job: Job, inside: InsideSize, heaterName: string | undefined): readonly AssembledFitting[] {
    const owner = heaterName === undefined ? {} : { belongsTo: heaterName };
    return [
        ...nameBlocks(job.sensors).flatMap(named => onWall(named, 'sensor', { belowCeiling: named.block.values.below_ceiling?.value, bottom: named.block.values.height?.value }, inside, { ...owner })),
        ...nameBlocks(job.lights).flatMap(named => light(named, inside)),
        ...(job.thermometer ? onWall({ name: 'thermometer', block: job.thermometer }, 'thermometer', { belowCeiling: job.thermometer.values.below_ceiling?.value ?? usualThermometerBelowCeiling }, inside) : []),
        ...nameBlocks(job.fittings).flatMap(({ name, block }) => {
            const { what, size, depth, bottom, is_electrical: isElectrical } = block.values;
            const kind: ThingKind = what?.value ?? 'other';
            return onWall({ name, block }, kind, { bottom: bottom?.value }, inside, given({ size: size?.value, depth: depth?.value, isElectrical: isElectrical?.value }));
        }),
        ...nameBlocks(job.duckboards).flatMap(named => duckboard(named)),
    ];
}

interface Details { readonly size?: { readonly width: Length; readonly height: Length }; readonly depth?: Length; readonly belongsTo?: string; readonly isElectrical?: boolean }
type Placed = Block<'sensor'> | Block<'light'> | Block<'thermometer'> | Block<'fitting'>;

function onWall(named: { readonly name: string; readonly block: Placed }, kind: ThingKind, height: { readonly [K in keyof WallHeight]?: Length | undefined }, inside: InsideSize, details: Details = {}): AssembledFitting[] {
    const wall = wallOf(named.block);
    if (!wall) return [];
    const { isElectrical = kind === 'sensor' || kind === 'light', ...more } = details;
    const { thing, problems } = placeFitting({ kind, name: named.name, wall, height: given<WallHeight>(height), ...more, ...given({ place: placeOf(named.block) }) }, inside);
    return [{ ...named, problems, parts: [], isElectrical, ...(thing && { thing }) }];
}

function light(named: NamedBlock<'light'>, inside: InsideSize): AssembledFitting[] {
    const { model, height, rating } = named.block.values;
    const values = model?.value.block?.values;
    const protection = values?.protection?.value;
    const digit = protection === undefined || protection === 'none' ? undefined : Number(protection.at(-1));
    return onWall(named, 'light', { bottom: height?.value }, inside, given({ size: values?.body?.value, depth: values?.depth?.value })).map(placed => ({
        ...placed, ...given({ ratingC: rating?.value ?? values?.rating?.value, cableRatingC: values?.cable_rating?.value, waterDigit: digit }),
    }));
}

function duckboard({ name, block }: NamedBlock<'duckboard'>): AssembledFitting[] {
    const { from_left: fromLeft, from_front: fromFront, width, depth, slat } = block.values;
    if (!fromLeft || !fromFront || !width || !depth) return [];
    const stock = stockOf(slat?.value);
    const built = stock && duckboardBuild({ name, width: width.value, depth: depth.value, slat: stock });
    const thickness = stock ? plus(stock.section.thickness, stock.section.thickness) : zero;
    return [{
        name, block, problems: [], parts: built?.build?.parts ?? [], isElectrical: false,
        thing: duckboardThing({ name, fromLeft: fromLeft.value, fromFront: fromFront.value, width: width.value, depth: depth.value, thickness }),
        ...(built?.problem && { duckboardProblem: built.problem }),
    }];
}
