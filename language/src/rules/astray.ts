import type { AssembledVent } from '../assembly/air.js';
import type { AssembledCircuit } from '../assembly/circuits.js';
import type { Wall } from '../core/geometry.js';
import type { BenchProblemKind } from '../engines/benches/bench-problem.js';
import type { Thing } from '../engines/fittings/things.js';
import type { RuleInput } from './rule.js';

/*
 * One cause, one message: what is wrongly placed has a finding that says so, and is judged no further. Everything that would be told of it besides
 * (clearances, climbs, floor before the door) follows from that place and changes with it.
 */

/** A bench with one of these stands nowhere it could be built. */
const outOfPlace: ReadonlySet<BenchProblemKind> = new Set(['outside-room', 'top-below-build-up']);
/** And with this one the order of its tiers is unknown. */
const outOfOrder: ReadonlySet<BenchProblemKind> = new Set(['in-front-of-not-higher']);

/** Benches that stand out of place, with the tiers before and behind them: one depth carries another bench out of the room. */
export const benchesOutOfPlace = (input: RuleInput): ReadonlySet<string> => withTheirTiers(input, outOfPlace);
/** The same, and benches whose tiers are in no order: what is told of comfort and clearances would be told of the wrong bench. */
export const benchesAstray = (input: RuleInput): ReadonlySet<string> => new Set([...benchesOutOfPlace(input), ...withTheirTiers(input, outOfOrder)]);

function withTheirTiers({ results: { benches } }: RuleInput, kinds: ReadonlySet<BenchProblemKind>): ReadonlySet<string> {
    if (!benches) return new Set();
    const astray = new Set(benches.result.problems.filter(({ kind }) => kinds.has(kind)).map(({ bench }) => bench));
    if (astray.size === 0) return astray;
    const pairs = [
        ...benches.result.benches.flatMap(({ name, inFrontOf }) => inFrontOf === undefined ? [] : [[name, inFrontOf] as const]),
        ...[...benches.blocks].flatMap(([name, { values }]) => values.in_front_of ? [[name, values.in_front_of.value.name] as const] : []),
    ];
    for (let before = -1; before !== astray.size;) {
        before = astray.size;
        for (const [one, other] of pairs) if (astray.has(one) || astray.has(other)) astray.add(one).add(other);
    }
    return astray;
}

/** Whether a thing of the room is one of `benches`, or the rest of one. */
export const belongsToBench = ({ kind, name }: Thing, benches: ReadonlySet<string>): boolean =>
    (kind === 'bench' && benches.has(name)) || (kind === 'rest' && [...benches].some(bench => name.startsWith(`${bench} `)));

/** A vent that lies past the floor, the ceiling or the end of its wall. */
export const isVentAstray = ({ problems }: Pick<AssembledVent, 'problems'>): boolean => problems.some(({ kind }) => kind === 'runs-off-the-wall' || kind === 'above-the-ceiling' || kind === 'below-the-floor');

/** A supply of other voltage or phases than the heater's: currents worked out on it are not those the circuit will carry. */
export const isSupplyWrong = ({ result }: AssembledCircuit): boolean => result.problems.some(({ kind }) => kind === 'wrong-voltage' || kind === 'wrong-phase');

/** Walls past which a door, a window, a heater or a bench reaches: the room is too small for it, or its place is wrong. */
export function wallsReachedPast({ results: { doors, windows, heaters, benches } }: RuleInput): ReadonlySet<Wall> {
    const placed: readonly { readonly problems: readonly { readonly kind: string }[] }[] = [...doors, ...windows, ...heaters];
    const past = placed.flatMap(({ problems }) => problems.flatMap(problem => problem.kind === 'runs-off-the-wall' && 'past' in problem ? [problem.past as Wall] : []));
    const outside = (benches?.result.problems ?? []).flatMap(problem => problem.kind === 'outside-room' && problem.side !== 'ceiling' && problem.side !== 'floor' ? [problem.side] : []);
    return new Set([...past, ...outside]);
}

/** Whether something large does not fit between the walls. Volume, distances and the way out of a room that changes for it are not told as well. */
export const isRoomOverfull = (input: RuleInput): boolean => wallsReachedPast(input).size > 0;
