import type { Finding, Fix } from '../../core/finding.js';
import { lengthFigure } from '../../core/finding.js';
import type { Wall } from '../../core/geometry.js';
import { half, plus, type Length } from '../../core/length.js';
import type { Citation } from '../../core/citation.js';
import type { Span } from '../../core/span.js';
import { isPlaced, nearAfterMove } from '../../engines/shell/opening-place.js';
import type { ShellOpening } from '../../engines/shell/shell-input.js';
import type { ShellProblem, ShellResult } from '../../engines/shell/shell-result.js';
import type { MoveSuggestion, Suggestion } from '../../engines/shell/division-suggestions.js';
import type { Block, Given } from '../../model/block.js';
import { writtenLength } from '../fixes.js';
import type { RuleInput } from '../rule.js';
import { isFreeAt } from './opening-elsewhere.js';

export type Axis = 'width' | 'depth';
export type ProblemOf<K extends ShellProblem['kind']> = Extract<ShellProblem, { readonly kind: K }>;

/** What follows from the sizes of panels and room needs no document. */
export const closesExactly: Citation = { kind: 'geometry', text: 'cover widths of the panels sum to the run exactly' };
export const axisOf = (wall: Wall): Axis => wall === 'front' || wall === 'back' ? 'width' : 'depth';

/** Problems of one kind, when the shell was worked out. */
export const shellProblems = <K extends ShellProblem['kind']>({ results }: RuleInput, kind: K): readonly ProblemOf<K>[] =>
    (results.shell?.result.problems ?? []).filter((problem): problem is ProblemOf<K> => problem.kind === kind);

/** The outside size of the room along an axis, as written. */
export const sizeOf = ({ job }: RuleInput, axis: Axis): Given<Length> | undefined => job.room?.values[axis];

/** The block of a door or window by the name the engine knows it by. */
export function openingBlock({ results }: RuleInput, name: string): Block<'door'> | Block<'window'> | undefined {
    return results.doors.find(door => door.name === name)?.block ?? results.windows.find(window => window.name === name)?.block;
}
/** Where the place of an opening is written, else its header. */
export const placeSpan = (block: Block<'door'> | Block<'window'>): Span => (block.values.from ?? block.values.centre)?.span ?? block.head;

/** Other sizes of the room with which it closes, or saves a panel made to measure, nearest first. */
export const changedSizes = (size: Length, suggestions: readonly Suggestion[]): readonly Length[] => suggestions.map(({ change }) => plus(size, change)).filter(length => length > 0);
export const setSize = (axis: Axis, span: Span, length: Length, { job, show }: RuleInput): Fix => ({ title: `Set the ${axis} to ${show(length)}`, safety: 'review', edits: [{ span, newText: writtenLength(length, job.unit) }] });

/** Whether the place of every door and window is known: joints, and what a panel made to measure costs, follow from them. What is missing has its own finding. */
export const areOpeningsKnown = ({ job, results: { shell } }: RuleInput): boolean =>
    job.doors.length > 0 && shell?.input.openings.length === job.doors.length + job.windows.length && shell.input.openings.every(isPlaced);

/** Another place of an opening, in the fact its place is written with: the near edge for `from`, the middle for `centre`. */
export interface MovedOpening {
    readonly opening: ShellOpening;
    /** `front 2'9"`, or `centre from front 45"`, with the name before it. */
    readonly words: string;
    readonly fix: Fix | undefined;
}

/**
 * Other places of openings on a wall at which nothing new stands in the way.
 * @param mustMove whether the wall cannot be built as it is: then vents and fittings may have to give way
 */
export function movedOpenings(input: RuleInput, suggestions: readonly MoveSuggestion[], mustMove = true): readonly MovedOpening[] {
    return suggestions.flatMap(({ section, change }): MovedOpening[] => {
        const opening = input.results.shell?.input.openings.find(one => one.name === section);
        const block = opening && openingBlock(input, section);
        if (!opening || !block) return [];
        const near = nearAfterMove(opening, change);
        if (near < 0) return [];
        const { from, centre } = block.values;
        const isCentre = !from && centre !== undefined;
        const distance = isCentre ? plus(near, half(opening.clearWidth)) : near;
        if (!isFreeAt(input, section, block, distance, mustMove)) return [];
        const place = `${opening.from} ${input.show(distance)}`;
        const span = (from ?? centre)?.span;
        return [{
            opening, words: `${section} ${isCentre ? 'centre from' : 'from'} ${place}`,
            fix: span && {
                title: `Move ${block.kind} ${section} to ${isCentre ? `centre from ${place}` : place}`, safety: 'review' as const,
                edits: [{ span, newText: `${isCentre ? 'from ' : ''}${opening.from} ${writtenLength(distance, input.job.unit)}` }],
            },
        }];
    });
}
export const showMoves = (moves: readonly MovedOpening[]): string => moves.map(({ words }) => words).join(' or ');
export const fixesOf = (moves: readonly MovedOpening[]): readonly Fix[] => moves.flatMap(({ fix }) => fix ?? []);

export const shellResult = ({ results }: RuleInput): ShellResult | undefined => results.shell?.result;
/** A finding measured against a required length. */
export const measuredAgainst = (measured: Length, required: Length): Pick<Finding, 'measured' | 'required'> => ({ measured: lengthFigure(measured), required: lengthFigure(required) });
