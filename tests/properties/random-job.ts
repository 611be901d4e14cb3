import fc from 'fast-check';
import { neighbours, walls, type Wall } from '../../language/src/core/geometry.js';
import { block, fact, length, mirrorBlock, side, type BlockText, type FactText, type FileText, type Piece } from './job-text.js';

/**
 * Random jobs that a designer could have written: every name stands in the catalogues of examples/, every fact has a value of its kind, and the
 * sizes are those of the trade. Not every one can be built (a wall may not close, a heater may be too near a bench), which is wanted.
 */
export interface RandomJob { readonly job: BlockText; readonly mirrored: BlockText }

export const catalogueUses = ['catalogue/skerry.hotroom', 'catalogue/heaters.hotroom'] as const;
export const fileOf = (...jobs: readonly BlockText[]): FileText => ({ uses: catalogueUses, jobs });

const wall = fc.constantFrom(...walls);
/** Whole eighths of an inch, in sixteenths. */
const eighths = (from: number, to: number): fc.Arbitrary<number> => fc.integer({ min: from * 8, max: to * 8 }).map(n => 2 * n);
const yesOrNo = fc.constantFrom('yes', 'no');

/** A place on a wall, given from one of its two neighbours. */
const placeOn = (on: Wall, near: number, isFromLeft: boolean): readonly Piece[] => [side(neighbours[on][isFromLeft ? 'left' : 'right']), length(near)];
const onWall = (min: number, max: number): fc.Arbitrary<{ on: Wall; near: number; isFromLeft: boolean }> =>
    fc.record({ on: wall, near: eighths(min, max), isFromLeft: fc.boolean() });

const sizes = {
    width: eighths(60, 120), depth: eighths(60, 120), height: eighths(80, 92),
    spareWidth: eighths(2, 30), spareDepth: eighths(2, 30), spareHeight: eighths(0, 18),
};
const site = {
    floor: fc.constantFrom('tile', 'concrete', 'vinyl', 'stone'), free: fc.uniqueArray(wall, { minLength: 1 }), clearFloor: eighths(24, 60), capacity: fc.integer({ min: 30, max: 80 }), ambient: fc.integer({ min: 40, max: 90 }),
    fall: fc.option(fc.record({ by: eighths(0, 1), to: wall }), { nil: undefined }),
    drain: fc.option(fc.record({ x: eighths(10, 50), y: eighths(10, 50) }), { nil: undefined }),
    pipe: fc.option(fc.record({ x: eighths(0, 50), y: eighths(0, 50), width: eighths(2, 10), depth: eighths(2, 10) }), { nil: undefined }),
};
const shell = {
    ceiling: fc.constantFrom('spans_front_to_back', 'spans_left_to_right'), corners: fc.option(fc.constantFrom('front_and_back', 'sides'), { nil: undefined }),
    noFacing: fc.option(wall, { nil: undefined }),
};
const door = fc.record({ place: onWall(6, 50), model: fc.constantFrom('Leaf24', 'Glass24'), isHingedLeft: fc.boolean() });
const window = fc.option(fc.record({ place: onWall(6, 60), sill: eighths(24, 48) }), { nil: undefined });
const benchWalls = fc.tuple(wall, fc.constantFrom('straight' as const, 'left' as const, 'right' as const));
const bench = fc.record({
    on: benchWalls, top: eighths(34, 40), lowTop: eighths(15, 20), depth: eighths(18, 24), lowDepth: eighths(14, 22), hasLower: fc.boolean(), overlap: fc.option(eighths(0, 3), { nil: undefined }),
    length: fc.option(fc.record({ size: eighths(40, 90), isFromLeft: fc.boolean(), near: eighths(0, 10) }), { nil: undefined }), fascia: yesOrNo, headRest: yesOrNo, backRest: fc.option(eighths(10, 16), { nil: undefined }),
    isOnLegs: fc.boolean(),
});
const heater = fc.record({
    place: onWall(4, 40), model: fc.constantFrom('Tarn45', 'Tarn60', 'Tarn80', 'Beck60'), guard: yesOrNo, backing: eighths(0, 2), sensorAt: eighths(6, 40), sensorDown: eighths(2, 12), cable: eighths(60, 160),
    feet: fc.integer({ min: 5, max: 60 }), timer: fc.constantFrom('60 min', '30 min', '90 min'),
});
const fittings = fc.record({
    exhaust: onWall(4, 50), exhaustDown: eighths(1, 12), intakeBottom: eighths(2, 10), ventWidth: eighths(4, 12), lamp: onWall(4, 60), lampHeight: eighths(50, 70), thermometer: onWall(4, 60),
    hook: fc.option(onWall(4, 60), { nil: undefined }), duckboard: fc.option(fc.record({ x: eighths(0, 20), y: eighths(0, 20), width: eighths(20, 40), depth: eighths(16, 40) }), { nil: undefined }),
});
const rules = fc.constantFrom('us_dwelling', 'us_dwelling, good_practice', 'us_commercial, good_practice', 'ca_electrical', 'good_practice');

const parameters = fc.record({ sizes: fc.record(sizes), site: fc.record(site), shell: fc.record(shell), door, window, bench, heater, fittings, rules, number: fc.integer({ min: 1000, max: 9999 }) });
type Parameters = typeof parameters extends fc.Arbitrary<infer T> ? T : never;

/** A job and the same job in a mirror. */
export const randomJob: fc.Arbitrary<RandomJob> = parameters.map(given => ({ job: jobBlock(given, 'as given'), mirrored: jobBlock(given, 'mirrored') }));

/** Thickness of a Skerry wall, 3 3/4", in sixteenths: what lies inside is measured from the left lining. */
const skerryWall = 60;

function jobBlock(given: Parameters, hand: 'as given' | 'mirrored'): BlockText {
    const { sizes: { width, depth, height }, shell: room } = given;
    // What is measured from the left in plan, whatever wall it stands on, changes its figure in the mirror and not its words.
    // What reaches past the right wall reaches past the left one in the mirror, which only a calculation can say.
    const fromLeft = (whole: number, near: number, own: number): readonly Piece[] => {
        const from = hand === 'mirrored' ? whole - near - own : near;
        return from < 0 ? [length(0), '-', length(-from)] : [length(from)];
    };
    const inside = width - skerryWall - (room.noFacing === 'left' || room.noFacing === 'right' ? skerryWall - 8 : skerryWall);
    const parts = [
        siteBlock(given, fromLeft),
        block(['room'], fact('system', 'Skerry'), fact('width', length(width)), fact('depth', length(depth)), fact('height', length(height)), fact('ceiling', room.ceiling),
            ...(room.corners ? [fact('corners', room.corners)] : []), ...(room.noFacing ? [fact('no_facing', side(room.noFacing))] : [])),
        doorBlock(given), ...windowBlocks(given), ...benchBlocks(given), ...heaterBlocks(given), ...fittingBlocks(given),
        ...(given.fittings.duckboard ? [block(['duckboard'], fact('from_left', ...fromLeft(inside, given.fittings.duckboard.x, given.fittings.duckboard.width)), fact('from_front', length(given.fittings.duckboard.y)),
            fact('width', length(given.fittings.duckboard.width)), fact('depth', length(given.fittings.duckboard.depth)))] : []),
    ];
    const job = block(['job', `job_${given.number}`, `"Job ${given.number}"`], fact('number', `"${given.number}"`), fact('revision', '"A"'), fact('rules', given.rules), ...parts);
    return hand === 'mirrored' ? mirrorBlock(job) : job;
}

function siteBlock({ sizes: { width, depth, height, spareWidth, spareDepth, spareHeight }, site: { floor, free, clearFloor, capacity, ambient, fall, drain, pipe } }: Parameters, fromLeft: (whole: number, near: number, own: number) => readonly Piece[]): BlockText {
    const whole = width + spareWidth;
    return block(['site'],
        fact('width', length(whole)), fact('depth', length(depth + spareDepth)), fact('ceiling', length(height + spareHeight)), fact('floor', floor),
        fact('free', ...listed(free.map(side))), fact('clear', ...listed(free.map(one => [side(one), length(clearFloor)])).flat()),
        fact('doorway', length(32 * 16), 'x', length(80 * 16)), fact('supply', '240 V single_phase'), fact('capacity', `${capacity} A`), fact('ambient', `${ambient} degF`),
        ...(fall ? [fact('floor_fall', length(fall.by)), fact('falls_to', side(fall.to))] : []),
        ...(drain ? [fact('drain_from_left', ...fromLeft(whole, drain.x, 0)), fact('drain_from_front', length(drain.y))] : []),
        ...(pipe ? [block(['obstruction', 'pipe'], fact('from_left', ...fromLeft(whole, pipe.x, pipe.width)), fact('from_front', length(pipe.y)), fact('width', length(pipe.width)), fact('depth', length(pipe.depth)))] : []));
}

const listed = <T>(items: readonly T[]): (T | string)[] => items.flatMap((item, i) => i === 0 ? [item] : [',', item]);

const doorBlock = ({ door: { place: { on, near, isFromLeft }, model, isHingedLeft } }: Parameters): BlockText =>
    block(['door', 'entry', 'on', side(on)], fact('model', model), fact('from', ...placeOn(on, near, isFromLeft)), fact('hinge', side(neighbours[on][isHingedLeft ? 'left' : 'right'])));

const windowBlocks = ({ window: given }: Parameters): BlockText[] => given
    ? [block(['window', 'view', 'on', side(given.place.on)], fact('model', 'View18'), fact('from', ...placeOn(given.place.on, given.place.near, given.place.isFromLeft)), fact('sill', length(given.sill)))]
    : [];

function benchBlocks({ bench: given }: Parameters): BlockText[] {
    const [first, shape] = given.on;
    const on = shape === 'straight' ? [side(first)] : [side(first), ',', side(neighbours[first][shape])];
    const more = (top: number, depth: number): FactText[] => [fact('build', 'Slatted'), fact('top', length(top)), fact('depth', length(depth)), fact('load_path', given.isOnLegs ? 'back_ledger_and_legs' : 'end_ledgers')];
    const upper = block(['bench', 'upper', 'on', ...on], ...more(given.top, given.depth), fact('fascia', given.fascia), fact('head_rest', given.headRest),
        ...(given.backRest === undefined ? [] : [fact('back_rest', length(given.backRest))]),
        ...(given.length ? [fact('length', length(given.length.size)), fact('from', ...placeOn(first, given.length.near, given.length.isFromLeft))] : []));
    return given.hasLower
        ? [upper, block(['bench', 'lower', 'on', side(first)], ...more(given.lowTop, given.lowDepth), fact('in_front_of', 'upper'), ...(given.overlap === undefined ? [] : [fact('overlap', length(given.overlap))]))]
        : [upper];
}

const heaterBlocks = ({ heater: { place: { on, near, isFromLeft }, model, guard, backing, sensorAt, sensorDown, cable, feet, timer } }: Parameters): BlockText[] => [
    block(['heater', 'stove', 'on', side(on)], fact('model', model), fact('from', ...placeOn(on, near, isFromLeft)), fact('guard', guard), fact('backing', length(backing))),
    block(['circuit', 'feed'], fact('feeds', 'stove'), fact('disconnect_in_sight', 'yes'), block(['segment', 'cellar'], fact('length', length(feet * 12 * 16)), fact('ambient', '68 degF'))),
    block(['sensor', 'on', side(on)], fact('centre', 'from', ...placeOn(on, sensorAt, isFromLeft)), fact('below_ceiling', length(sensorDown)), fact('cable', length(cable))),
    block(['control', 'on', side('front')], fact('stands', 'outside'), fact('height', length(54 * 16)), fact('timer', timer)),
];

function fittingBlocks({ fittings: given, heater: { place } }: Parameters): BlockText[] {
    const from = ({ on, near, isFromLeft }: { on: Wall; near: number; isFromLeft: boolean }): FactText => fact('from', ...placeOn(on, near, isFromLeft));
    return [
        block(['vent', 'intake', 'on', side(place.on)], fact('size', length(given.ventWidth), 'x', length(64)), fact('behind', 'stove'), fact('bottom', length(given.intakeBottom)), fact('air', 'outdoors')),
        block(['vent', 'exhaust', 'on', side(given.exhaust.on)], fact('size', length(given.ventWidth), 'x', length(64)), from(given.exhaust), fact('below_ceiling', length(given.exhaustDown)), fact('air', 'room')),
        block(['light', 'lamp', 'on', side(given.lamp.on)], fact('model', 'Ember'), from(given.lamp), fact('height', length(given.lampHeight))),
        block(['thermometer', 'on', side(given.thermometer.on)], from(given.thermometer)),
        block(['sign', 'bathing'], fact('says', 'bathing'), fact('stands', 'outside')),
        block(['sign', 'caution'], fact('says', 'warning'), fact('stands', 'outside'), fact('letters', length(4))),
        ...(given.hook ? [block(['fitting', 'hook', 'on', side(given.hook.on)], fact('what', 'hook'), fact('size', length(32), 'x', length(64)), fact('depth', length(48)), from(given.hook), fact('bottom', length(60 * 16)))] : []),
    ];
}
