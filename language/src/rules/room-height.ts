import { showCitation, type Citation } from '../core/citation.js';
import { longest, minus, plus, type Length } from '../core/length.js';
import type { Span } from '../core/span.js';
import { manualCitation } from '../engines/heater/casing.js';
import { benchesAstray } from './astray.js';
import { governing, showRequired } from './governing.js';
import type { RuleInput } from './rule.js';

/** Something that wants more height under the ceiling lining than there is. */
export interface HeightDemand {
    /** `heater stove needs 75" (its manual)`, as it stands in a list. */
    readonly words: string;
    /** Inside height that satisfies it. */
    readonly height: Length;
    readonly citation: Citation;
    readonly at: Span;
    /** Heaters and doors cannot be built at all; a seat can, and does not make a room too low by itself. */
    readonly isHard: boolean;
    /** The bench that wants it. */
    readonly bench?: string;
}

/** What wants more inside height than the room has, in the order heaters, doors, benches. */
export function unmetHeights(input: RuleInput): readonly HeightDemand[] {
    const { results: { inside, heaters, doors, benches }, job: { unit }, show } = input;
    if (!inside) return [];
    const head = governing(input.ruleSets, 'bench.head-clearance');
    return [
        ...heaters.flatMap(({ name, manual, block }): HeightDemand[] => manual.roomHeight === undefined || manual.roomHeight <= inside.height ? [] : [{
            words: `heater ${name} needs ${showRequired(manual.roomHeight, unit)} (${manual.title})`, height: manual.roomHeight, citation: manualCitation(manual), at: block.head, isHard: true,
        }]),
        ...doors.flatMap(({ name, block, problems }) => problems.flatMap((problem): HeightDemand[] => problem.kind !== 'door-higher-than-room' ? [] : [{
            words: `the frame of door ${name} needs ${show(problem.top)}`, height: problem.top, citation: { kind: 'geometry', text: 'the frame of a door stands under the ceiling lining' }, at: block.head, isHard: true,
        }])),
        ...(benches?.result.benches ?? []).flatMap(({ name, top, isHighest }): HeightDemand[] => {
            const block = benches?.blocks.get(name);
            if (!head || !block || !isHighest || plus(top, head.figure.value) <= inside.height) return [];
            return [{ words: `bench ${name} needs ${show(plus(top, head.figure.value))} for heads (${showCitation(head.clause.citation)})`, height: plus(top, head.figure.value), citation: head.clause.citation, at: block.head, isHard: false, bench: name }];
        }),
    ];
}

/** Whether two things or more that are what they are want a higher room: then the room is the cause, and is told once. */
export const isRoomTooLow = (input: RuleInput): boolean => unmetHeights(input).filter(({ isHard }) => isHard).length > 1;

/**
 * The height to write for the room so that all that wants a higher one is served at once: messages about a heater, a door and a bench name the same figure.
 * A bench that has to come down anyway, because its climb is too high or it stands out of place, does not count.
 * @returns nothing when the room is high enough or its height is not known
 */
export function neededRoomHeight(input: RuleInput): Length | undefined {
    const { results: { inside, benches }, job: { room } } = input;
    const height = room?.values.height;
    if (!inside || !height) return undefined;
    const comeDown = new Set([...benchesAstray(input), ...(benches?.result.problems ?? []).flatMap(problem => problem.kind === 'climb-too-high' ? [problem.bench] : [])]);
    const wanted = unmetHeights(input).filter(({ bench }) => bench === undefined || !comeDown.has(bench)).map(demand => demand.height);
    return wanted.length === 0 ? undefined : plus(height.value, minus(longest(inside.height, ...wanted), inside.height));
}
