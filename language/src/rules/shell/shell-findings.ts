import type { Finding, Fix } from '../../core/finding.js';
import { lengthFigure } from '../../core/finding.js';
import type { Wall } from '../../core/geometry.js';
import { plus, type Length } from '../../core/length.js';
import type { Citation } from '../../core/citation.js';
import type { Span } from '../../core/span.js';
import { nearAfterMove } from '../../engines/shell/opening-place.js';
import type { ShellOpening } from '../../engines/shell/shell-input.js';
import type { ShellProblem, ShellResult } from '../../engines/shell/shell-result.js';
import type { MoveSuggestion, Suggestion } from '../../engines/shell/division-suggestions.js';
import type { Block, Given } from '../../model/block.js';
import { writtenLength } from '../fixes.js';
import type { RuleInput } from '../rule.js';

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

/** Other places of openings on a wall, each as the distance to write. */
export function movedOpenings(input: RuleInput, suggestions: readonly MoveSuggestion[]): readonly { readonly opening: ShellOpening; readonly near: Length; readonly fix: Fix | undefined }[] {
    return suggestions.flatMap(({ section, change }) => {
        const opening = input.results.shell?.input.openings.find(one => one.name === section);
        const block = opening && openingBlock(input, section);
        if (!opening || !block) return [];
        const near = nearAfterMove(opening, change);
        if (near < 0) return [];
        const from = block.values.from;
        const newText = `${opening.from} ${writtenLength(near, input.job.unit)}`;
        return [{ opening, near, fix: from && { title: `Move ${block.kind} ${section} to ${opening.from} ${input.show(near)}`, safety: 'review' as const, edits: [{ span: from.span, newText }] } }];
    });
}
export const showMoves = (moves: ReturnType<typeof movedOpenings>, { show }: RuleInput): string => moves.map(({ opening, near }) => `${opening.name} from ${opening.from} ${show(near)}`).join(' or ');
export const fixesOf = (moves: ReturnType<typeof movedOpenings>): readonly Fix[] => moves.flatMap(({ fix }) => fix ?? []);

export const shellResult = ({ results }: RuleInput): ShellResult | undefined => results.shell?.result;
/** A finding measured against a required length. */
export const measuredAgainst = (measured: Length, required: Length): Pick<Finding, 'measured' | 'required'> => ({ measured: lengthFigure(measured), required: lengthFigure(required) });
