import type { Citation } from '../../core/citation.js';
import { intervalsOverlap, type InsideSize, type Interval } from '../../core/geometry.js';
import { minus, zero, type Length } from '../../core/length.js';
import type { Thing } from '../fittings/things.js';
import { onWall, type WallBox } from '../fittings/wall-frame.js';
import { manualCitation, type HeaterManual, type PlacedHeater } from './casing.js';

export interface Requirement { readonly value: Length; readonly citation: Citation }

/** Which figure of a manual a clearance is held to. `bench` stands for `side` and `front` where the manual gives benches a figure of their own. */
export type ClearanceFigure = 'side' | 'front' | 'above' | 'below' | 'bench';
export type ClearanceFigures = Readonly<Partial<Record<ClearanceFigure, Requirement>>>;

/** From the casing, as seen facing its wall. `behind` is the heater's own wall. */
export type Direction = 'side' | 'front' | 'above' | 'below' | 'behind';

export interface Clearance {
    readonly thing: Thing;
    readonly direction: Direction;
    readonly figure: ClearanceFigure | 'off_wall';
    /** Free distance in that direction; zero when the thing reaches into the casing's solid. */
    readonly measured: Length;
    /** Absent when neither the manual nor a rule set gives the figure. */
    readonly required?: Requirement;
    readonly status: 'clear' | 'short' | 'missing' | 'exempt';
    readonly isOk: boolean;
    /** The thing stands where the heater stands, or between it and its wall. */
    readonly collides: boolean;
    readonly exemption?: 'belongs_to_heater' | 'floor_does_not_burn';
}

/** The figures in order of authority: the manual first, a rule set only where the manual is silent. */
export function clearanceFigures(manual: HeaterManual, ruleSet: ClearanceFigures = {}): ClearanceFigures {
    const citation = manualCitation(manual);
    const stated = { side: manual.clearSide, front: manual.clearFront, above: manual.clearAbove, below: manual.clearBelow, bench: manual.clearBench };
    const figures: Partial<Record<ClearanceFigure, Requirement>> = { ...ruleSet };
    for (const [name, value] of Object.entries(stated) as [ClearanceFigure, Length | undefined][]) if (value !== undefined) figures[name] = { value, citation };
    return figures;
}

export interface ClearanceOptions {
    readonly inside: InsideSize;
    /** The clearance under a heater is to a floor that burns. */
    readonly isFloorCombustible: boolean;
}

/**
 * Measures the heater against every thing, box to box.
 *
 * What must stay free is the casing grown by the side figure to both sides, by the front figure into the room, by the figures above and below, and back
 * through its own wall: one box with square corners, the strictest reading of separate figures. A thing is clear of it when it is clear in ANY ONE direction,
 * so the result names the direction with most to spare when it is clear and, when it is not, the one that needs the smallest move.
 * The heater's own wall is measured `behind` against the distance the manual hangs it at.
 * @returns one entry per thing, in the order given; the heater itself is left out
 */
export function checkClearances(heater: PlacedHeater, things: readonly Thing[], figures: ClearanceFigures, options: ClearanceOptions): readonly Clearance[] {
    return things.filter(thing => !(thing.kind === 'heater' && thing.name === heater.name)).map(thing => clearance(heater, thing, figures, options));
}

function clearance(heater: PlacedHeater, thing: Thing, figures: ClearanceFigures, options: ClearanceOptions): Clearance {
    if (thing.kind === 'wall' && thing.name === heater.wall) return ownWall(heater, thing);
    const apart = separations(heater.onWall, onWall(heater.wall, thing.box, options.inside));
    const judged = apart.map(({ direction, measured }) => judge(direction, measured, thing, figures));
    const best = mostToSpare(judged.filter(({ status }) => status === 'clear')) ?? judged.find(({ status }) => status === 'missing') ?? mostToSpare(judged);
    const found: Clearance = best ?? { ...judge('side', zero, thing, figures), status: 'short', isOk: false, collides: true };
    if (thing.belongsTo === heater.name) return exempt(found, 'belongs_to_heater');
    if (thing.kind === 'floor' && !options.isFloorCombustible) return exempt(found, 'floor_does_not_burn');
    return found;
}

/** Directions in which a thing lies wholly beyond the casing, with the free distance. None when it reaches into the casing or behind it. */
export function separations(casing: WallBox, thing: WallBox): readonly { readonly direction: Exclude<Direction, 'behind'>; readonly measured: Length }[] {
    const beside = apart(casing.u, thing.u);
    const found: { direction: Exclude<Direction, 'behind'>; measured: Length }[] = [];
    if (beside !== undefined) found.push({ direction: 'side', measured: beside });
    if (thing.w.from >= casing.w.to) found.push({ direction: 'front', measured: minus(thing.w.from, casing.w.to) });
    if (thing.v.from >= casing.v.to) found.push({ direction: 'above', measured: minus(thing.v.from, casing.v.to) });
    else if (thing.v.to <= casing.v.from) found.push({ direction: 'below', measured: minus(casing.v.from, thing.v.to) });
    return found;
}

/** `undefined` when they overlap; a point strictly inside overlaps, one on an edge does not. */
function apart(a: Interval, b: Interval): Length | undefined {
    if (intervalsOverlap(a, b)) return undefined;
    return b.from >= a.to ? minus(b.from, a.to) : minus(a.from, b.to);
}

/** Benches and their rests have a figure of their own to the side and the front, when the manual gives one. */
export function figureFor(direction: Exclude<Direction, 'behind'>, thing: Thing, figures: ClearanceFigures): ClearanceFigure {
    const isBench = thing.kind === 'bench' || thing.kind === 'rest';
    return isBench && figures.bench && (direction === 'side' || direction === 'front') ? 'bench' : direction;
}

function judge(direction: Exclude<Direction, 'behind'>, measured: Length, thing: Thing, figures: ClearanceFigures): Clearance {
    const figure = figureFor(direction, thing, figures);
    const required = figures[figure];
    const status = !required ? 'missing' : measured >= required.value ? 'clear' : 'short';
    return { thing, direction, figure, measured, status, isOk: status === 'clear', collides: false, ...(required && { required }) };
}

function ownWall(heater: PlacedHeater, thing: Thing): Clearance {
    const { manual, onWall: { w } } = heater;
    const required = manual.offWall === undefined ? undefined : { value: manual.offWall, citation: manualCitation(manual) };
    const status = required ? 'clear' : 'missing';
    return { thing, direction: 'behind', figure: 'off_wall', measured: w.from, status, isOk: status === 'clear', collides: false, ...(required && { required }) };
}

const exempt = (found: Clearance, exemption: NonNullable<Clearance['exemption']>): Clearance => ({ ...found, status: 'exempt', isOk: true, exemption });

/** Ties go to the earlier direction. */
function mostToSpare(judged: readonly Clearance[]): Clearance | undefined {
    const spare = ({ measured, required }: Clearance): number => measured - (required?.value ?? zero);
    return judged.reduce<Clearance | undefined>((best, one) => best && spare(best) >= spare(one) ? best : one, undefined);
}
