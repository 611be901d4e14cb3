import { extent, interval, overlap, boxOnWall, insideRun, neighbours, type InsideSize } from '../../core/geometry.js';
import { longest, minus, plus, zero, type Length } from '../../core/length.js';
import { bodyMeasure, type BodyMeasure, type Person } from '../../rule-sets/anthropometry.js';
import type { BenchLayout } from '../benches/bench-result.js';
import { seatLength } from '../benches/comfort.js';
import type { Thing, ThingKind } from '../fittings/things.js';

/** A body measure that governs, and whose it is. */
export interface Governing { readonly measure: BodyMeasure; readonly person: Person; readonly length: Length }

/** What the people meant ask of a bench: the largest of them need room, the smallest have to reach. */
export interface Sitters {
    /** From the seat to the top of the head. */
    readonly height: Governing;
    /** From the sole to the hollow of the knee. */
    readonly lowerLeg: Governing;
    /** From the back to the hollow of the knee. */
    readonly thigh: Governing;
    /** From the back to the front of the knee. */
    readonly knees: Governing;
    /** From the seat to the upper side of the thigh. */
    readonly thighHeight: Governing;
    /** Over both forearms. */
    readonly elbows: Governing;
}

/** The measures that govern among some people. */
export function sittersOf(people: readonly [Person, ...Person[]]): Sitters {
    const pick = (measure: BodyMeasure, isBetter: (a: Length, b: Length) => boolean): Governing => people.map((person): Governing => ({ measure, person, length: bodyMeasure(measure, person) }))
        .reduce((best, one) => isBetter(one.length, best.length) ? one : best);
    const most = (measure: BodyMeasure): Governing => pick(measure, (a, b) => a > b);
    const least = (measure: BodyMeasure): Governing => pick(measure, (a, b) => a < b);
    return {
        height: most('sitting_height'), lowerLeg: least('popliteal_height'), thigh: least('buttock_popliteal_length'), knees: most('buttock_knee_length'),
        thighHeight: most('thigh_clearance'), elbows: most('elbow_breadth'),
    };
}

/** How a bench fits those who are to sit on it; what is above zero is missing. */
export interface BenchFit {
    /** Sitting height less the clearance over the bench. */
    readonly headShort: Length;
    /** How far the soles hang over what feet stand on, the hollow of the knee resting on the front edge. */
    readonly feetShort: Length;
    /** How much of the seat reaches beyond the hollow of the knee, the back at its rear edge. */
    readonly seatOver: Length;
    /** Seats by the length common practice gives each, and by the elbows of the largest. */
    readonly seats: number;
    readonly seatsByElbows: number;
    /** What the knees of somebody who leans back meet. */
    readonly atKnees: readonly Thing[];
}

const meetsKnees: ReadonlySet<ThingKind> = new Set(['bench', 'rest', 'heater', 'guard', 'wall']);

/**
 * How a bench fits the people meant, who sit with their back at its rear edge and their feet on the next lower tier, or on the floor.
 * @param things everything in the room, surfaces included
 */
export function benchFit(bench: BenchLayout, sitters: Sitters, things: readonly Thing[], inside: InsideSize): BenchFit {
    const { comfort, depth, runs, top, name } = bench;
    const atKnees = runs.flatMap(run => {
        const w = interval(run.w.to, plus(run.w.from, sitters.knees.length));
        if (w.to <= w.from) return [];
        // Knees before the end of another run of an L are those of nobody: there one sits along the other wall.
        const knees = boxOnWall(run.wall, run.u, interval(top, plus(top, sitters.thighHeight.length)), w, inside);
        return things.filter(thing => meetsKnees.has(thing.kind) && thing.name !== name && thing.name !== `${name} back rest` && overlap(thing.box, knees)
            && (thing.kind !== 'wall' || w.to > insideRun(neighbours[run.wall].left, inside)));
    });
    return {
        headShort: longest(zero, minus(sitters.height.length, comfort.headClearance)), feetShort: longest(zero, minus(comfort.rise, sitters.lowerLeg.length)),
        seatOver: longest(zero, minus(depth, sitters.thigh.length)), seats: comfort.seats,
        seatsByElbows: runs.reduce((count, run) => count + Math.floor(extent(run.u) / longest(seatLength, sitters.elbows.length)), 0), atKnees: [...new Set(atKnees)],
    };
}
