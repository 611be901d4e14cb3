import { inWords, lengthFigure, type Finding, type Fix } from '../../core/finding.js';
import { showCitation } from '../../core/citation.js';
import { extent } from '../../core/geometry.js';
import { minus, plus, rootDown, shortest, type Length } from '../../core/length.js';
import type { AssembledVent } from '../../assembly/air.js';
import { ventPractice, type ExhaustPlace } from '../../engines/ventilation/air-paths.js';
import { imc, practice } from '../../rule-sets/documents.js';
import { showConflict } from '../../rule-sets/index.js';
import { isRoomOverfull, isVentAstray } from '../astray.js';
import { showAtLeast, showAtMost } from '../rounding.js';
import { defineRule, type RuleInput } from '../rule.js';
import { alongSpan, exhausts, governs, heightSpan, placeWords, setLowerEdge, ventTitle } from './air-findings.js';

export const exhaustNotInPlace = defineRule({
    id: 'exhaust-not-in-place',
    family: 'air',
    title: 'The exhaust is not where the rules or practice want it',
    severity: 'warning',
    why: 'Where the air leaves decides which way it goes through the room. A published text and good practice name different places, so both are told.',
    bad: 'rules us_commercial, good_practice\nvent exhaust on front { size 8" x 4"; from left 8"; bottom 8"; air room }',
    good: 'rules us_commercial, good_practice\nvent exhaust on front { size 8" x 4"; from left 8"; below_ceiling 3"; air room }',
    sources: [imc('914.5', 'The opening is near the top of the door into the room.'), practice('Exhaust low on the opposite wall or under the bench.')],
    isWaivable: true,
    fixes: 'review',
    *check(input): Generator<Finding> {
        const rule = governs(input, 'vent.opening-place');
        const placed = exhausts(input).flatMap(vent => vent.exhaust ? [{ ...vent, exhaust: vent.exhaust }] : []);
        const [first] = placed;
        if (!rule || !first || placed.some(isVentAstray) || isRoomOverfull(input) || placed.some(({ exhaust }) => isAt(exhaust, rule.figure.value))) return;
        const source = showCitation(rule.clause.citation);
        const conflicts = rule.conflicts.map(conflict => ` ${showConflict(conflict, input.job.unit)}`).join('');
        const isNearDoor = rule.figure.value === 'near_top_of_door';
        const cure = isNearDoor ? besideDoorTop(first, input) : undefined;
        yield {
            at: isNearDoor && first.exhaust.nearTopOfDoor.isOnDoorWall ? heightSpan(first.block) : alongSpan(first.block),
            severity: rule.clause.citation.kind === 'standard' ? 'warning' : 'info',
            message: isNearDoor
                ? `${ventTitle(first.block)} is ${fromDoor(first.exhaust, input)}; near the top of the door is where the opening is wanted (${source}; near is read as within ${input.show(ventPractice.nearDoorTop)}, common practice, no source).${conflicts} ${cure?.text ?? 'Move it to the wall of the door, or ask the local authority.'}`
                : `${ventTitle(first.block)} is ${fromHeater(first.exhaust, input)}; low and across the room from the heater, ${showAtLeast(first.exhaust.acrossTheRoom.leastPlanDistance, input.job.unit)} or more from it, is the usual place (${source}; across is read as half the diagonal of the room). Move it ${moves(first.exhaust)}, unless a local text wants it elsewhere.`,
            citation: rule.clause.citation, ...(isNearDoor ? doorFigures(first.exhaust) : heaterFigures(first.exhaust)), subject: `${first.name}.lower_edge`, fixes: cure?.fixes ?? [],
        };
    },
});

/** Whether an exhaust is at a place as a rule set words it. */
export const isAt = ({ nearTopOfDoor, acrossTheRoom }: ExhaustPlace, place: string): boolean => place === 'near_top_of_door' ? nearTopOfDoor.isMet : acrossTheRoom.isMet;

type Figures = Required<Pick<Finding, 'measured' | 'required'>>;
const doorFigures = ({ vent, nearTopOfDoor: { fromDoorTop } }: ExhaustPlace): Figures => fromDoorTop === undefined
    ? { measured: inWords(`on the ${vent.wall} wall`), required: inWords(placeWords('near_top_of_door')) }
    : { measured: lengthFigure(fromDoorTop), required: lengthFigure(ventPractice.nearDoorTop) };
const heaterFigures = ({ vent, acrossTheRoom: { planDistanceSquared, leastPlanDistance, isAcross } }: ExhaustPlace): Figures => isAcross
    ? { measured: lengthFigure(vent.lowerEdge), required: inWords('in the lower half of the room') }
    : rootDown(planDistanceSquared) < leastPlanDistance
        ? { measured: lengthFigure(rootDown(planDistanceSquared)), required: lengthFigure(leastPlanDistance) }
        : { measured: inWords('on the wall of the heater'), required: inWords('on another wall') };

const fromDoor = ({ vent, nearTopOfDoor: { fromDoorTop } }: ExhaustPlace, { show }: RuleInput): string =>
    fromDoorTop === undefined ? `on the ${vent.wall} wall, away from the door` : `${show(fromDoorTop)} from the top of the door`;
function fromHeater({ vent, acrossTheRoom: { planDistanceSquared, isAcross, isLow } }: ExhaustPlace, { job }: RuleInput): string {
    const far = showAtMost(rootDown(planDistanceSquared), job.unit);
    return isAcross ? `high on the ${vent.wall} wall` : `${far} from the heater on the ${vent.wall} wall${isLow ? '' : ', and high'}`;
}

const moves = ({ acrossTheRoom: { isAcross, isLow } }: ExhaustPlace): string => [...(isAcross ? [] : ['away from the heater']), ...(isLow ? [] : ['down'])].join(' and ');

/** The heights that bring it near the top of a door of its wall. */
function besideDoorTop({ block, vent }: AssembledVent, input: RuleInput): { readonly text: string; readonly fixes: readonly Fix[] } | undefined {
    const { inside, doors } = input.results;
    const head = doors.find(({ door }) => door && door.wall === vent?.wall)?.door?.clear.v.to;
    if (!vent || !inside || head === undefined) return undefined;
    const size = extent(vent.onWall.v);
    const lowest = minus(minus(head, ventPractice.nearDoorTop), size);
    const highest = shortest(plus(head, ventPractice.nearDoorTop), minus(inside.height, size));
    const nearest: Length = vent.lowerEdge < lowest ? lowest : highest;
    return {
        text: `A lower edge ${input.show(lowest)} to ${input.show(highest)} over the floor is near it; or ask the local authority.`,
        fixes: setLowerEdge(block, nearest, { height: inside.height, size }, input),
    };
}
