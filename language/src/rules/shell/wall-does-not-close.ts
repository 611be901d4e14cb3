import type { Finding } from '../../core/finding.js';
import { inWords, lengthFigure } from '../../core/finding.js';
import { showList } from '../../core/show.js';
import type { StretchFault } from '../../engines/shell/division.js';
import { defineRule, type RuleInput } from '../rule.js';
import { axisOf, changedSizes, closesExactly, fixesOf, movedOpenings, placeSpan, openingBlock, setSize, shellProblems, shellResult, showMoves, sizeOf, type Axis, type ProblemOf } from './shell-findings.js';

export const wallDoesNotClose = defineRule({
    id: 'wall-does-not-close',
    family: 'shell',
    title: 'A wall cannot be filled with the panels of the system',
    severity: 'error',
    why: 'A run is sections of doors and windows, whole modules, and at most one panel made to measure in each unbroken stretch. When no such sum is the run exactly, the room cannot be built.',
    bad: 'room { system Skerry; width 84"; depth 11"; height 7\'0"; ceiling spans_left_to_right }',
    good: 'room { system Skerry; width 84"; depth 79 1/2"; height 7\'0"; ceiling spans_left_to_right }',
    sources: [closesExactly],
    isWaivable: true,
    fixes: 'review',
    *check(input) {
        const problems = shellProblems(input, 'wall-does-not-close');
        for (const axis of ['width', 'depth'] as const) {
            const along = problems.filter(({ wall }) => axisOf(wall) === axis);
            const finding = along.length > 0 ? findingFor(input, axis, along) : undefined;
            if (finding) yield finding;
        }
    },
});

/** One message for an axis: the two walls along it have one size and mostly one cause. */
function findingFor(input: RuleInput, axis: Axis, problems: readonly ProblemOf<'wall-does-not-close'>[]): Finding | undefined {
    const size = sizeOf(input, axis);
    const [first] = problems;
    if (!size || !first) return undefined;
    const sizes = changedSizes(size.value, shellResult(input)?.sizes.find(one => one.axis === axis)?.sizesThatClose ?? []);
    const moves = problems.length === 1 ? movedOpenings(input, first.suggestions.placesThatClose) : [];
    const [move] = moves;
    const moved = move && openingBlock(input, move.opening.name);
    const cures = [
        ...(sizes.length > 0 ? [`the nearest outside ${axis} that closes is ${showList(sizes.map(input.show), 'or')}`] : []),
        ...(moves.length > 0 ? [`it also closes with ${showMoves(moves)}`] : []),
    ];
    return {
        at: moved ? placeSpan(moved) : size.span,
        message: `The ${showList(problems.map(({ wall }) => wall))} ${problems.length > 1 ? 'walls do' : 'wall does'} not close: ${whyNot(first, input)}. ${cures.length > 0 ? `${capital(cures.join('; '))}.` : 'Choose another size or another panel system.'}`,
        citation: closesExactly, measured: lengthFigure(first.run), required: inWords(sizes.map(input.show).join(' or ')), subject: `room.${first.wall}.panels`,
        ...(moved && { related: [{ at: size.span, message: `The ${axis} stands here.` }] }),
        fixes: [...fixesOf(moves), ...sizes.map(length => setSize(axis, size.span, length, input))],
    };
}
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

function whyNot({ fault, run }: ProblemOf<'wall-does-not-close'>, input: RuleInput): string {
    const whole = `the run is ${input.show(run)}`;
    switch (fault.kind) {
        case 'run-has-no-length': return 'nothing is left of the run';
        case 'run-too-long': return `${whole}, more than the ${input.show(fault.limit)} a run may be`;
        case 'no-panels-offered': return 'the panel system offers no widths';
        case 'too-many-mixtures': return 'the panel system offers too many unrelated narrow widths';
        case 'section-over-corner': case 'sections-overlap': return `${whole} and its openings do not fit`;
        case 'stretch-does-not-close': {
            const beside = [fault.before, fault.after].flatMap(name => name ?? []);
            const where = beside.length > 0 ? `the stretch beside ${showList(beside)}` : 'the run';
            return `${where} is ${input.show((fault.at.to - fault.at.from) as typeof run)}, and ${stretchWhy(fault.fault, input)}`;
        }
        default: return fault satisfies never;
    }
}
function stretchWhy(fault: StretchFault, { job, show }: RuleInput): string {
    const system = job.room?.values.system?.value.block?.values;
    const range = system?.made_to_measure?.value;
    switch (fault.kind) {
        case 'corner-panel-too-narrow': return `its corner panel has to be ${show(fault.least)} at least`;
        case 'narrower-than-any-panel': return `the narrowest panel is ${show(fault.narrowest)}`;
        case 'rest-cannot-be-made': return `no sum of ${showList((system?.modules?.value ?? []).map(show))}${range ? ` and one panel made to measure of ${show(range.from)} to ${show(range.to)}` : ''} is that`;
        default: return fault satisfies never;
    }
}
