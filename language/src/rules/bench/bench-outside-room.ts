import { lengthFigure, type Fix } from '../../core/finding.js';
import { neighbours, type Wall } from '../../core/geometry.js';
import { minus, zero } from '../../core/length.js';
import type { Span } from '../../core/span.js';
import { replaceLength } from '../fixes.js';
import { isRoomTooLow } from '../room-height.js';
import { defineRule, type RuleInput } from '../rule.js';
import { benchFindings, stretchSpan, type BenchCase } from './bench-findings.js';

export const benchOutsideRoom = defineRule({
    id: 'bench-outside-room',
    family: 'bench',
    title: 'A bench runs out of the room',
    severity: 'error',
    why: 'The bench cannot be built, and every part, leg and clearance worked out from it would be wrong.',
    bad: 'bench upper on back { build Slatted; top 37"; depth 20"; from left 0"; length 80" }',
    good: 'bench upper on back { build Slatted; top 37"; depth 20"; from left 0"; length 76 1/2" }',
    sources: [{ kind: 'geometry', text: 'a bench stands between the linings' }],
    isWaivable: true,
    fixes: 'review',
    check: input => benchFindings(input, 'outside-room', found => {
        const { problem: { side, by }, block, name } = found;
        if (isPushed(found, input) || (side === 'ceiling' && isRoomTooLow(input))) return undefined;
        const { at, cure, fixes } = cureOf(found, input);
        const behind = tierBehind(found, input);
        const through = side === 'ceiling' || side === 'floor' ? side : `${side} wall`;
        return {
            at,
            message: `Bench ${name} runs ${input.show(by)} past the lining of the ${through}. ${cure}${behind ? ` ${behind.words}` : ''}`,
            citation: { kind: 'geometry', text: 'a bench stands between the linings' },
            measured: lengthFigure(by), required: lengthFigure(zero), subject: name,
            related: [...at === block.head ? [] : [{ at: block.head, message: 'The bench stands here.' }], ...behind ? [{ at: behind.at, message: 'The depth of the tier behind stands here.' }] : []],
            fixes,
        };
    }),
});

interface Cure { readonly at: Span; readonly cure: string; readonly fixes: readonly Fix[] }

/** A tier is pushed out by the one behind it, whose own finding says so. */
function isPushed({ problem, name }: BenchCase<'outside-room'>, { results: { benches } }: RuleInput): boolean {
    const behind = benches?.result.benches.find(layout => layout.name === name)?.inFrontOf;
    return benches?.result.problems.some(other => other.kind === 'outside-room' && other.bench === behind && other.side === problem.side) ?? false;
}

/** The depth of the tier behind carries a bench out at its front as well as its own. */
function tierBehind({ problem: { side, by, wall }, name }: BenchCase<'outside-room'>, { show, results: { benches } }: RuleInput): { readonly words: string; readonly at: Span } | undefined {
    const behind = benches?.result.benches.find(layout => layout.name === name)?.inFrontOf;
    const depth = behind === undefined ? undefined : benches?.blocks.get(behind)?.values.depth;
    if (!depth || side === 'ceiling' || side === 'floor' || side === wall || isEnd(side, wall) || depth.value <= by) return undefined;
    return { words: `Or make bench ${behind ?? ''} behind it ${show(minus(depth.value, by))} deep at most.`, at: depth.span };
}

/** The figure that carries the bench out of the room, and the nearest one that does not. */
function cureOf({ problem: { side, by, wall }, block }: BenchCase<'outside-room'>, { show, job: { unit } }: RuleInput): Cure {
    const { top, depth, length, from, overlap } = block.values;
    const shorten = (what: string, given: typeof depth): Cure | undefined => {
        if (!given) return undefined;
        const most = minus(given.value, by);
        return { at: given.span, cure: most > 0 ? `The ${what} is ${show(most)} at most here.` : 'Choose another place for it.', fixes: most > 0 ? replaceLength(what, given.span, most, unit) : [] };
    };
    const fallback: Cure = { at: stretchSpan(block), cure: 'Shorten it or move it.', fixes: [] };
    // The head clearance of whoever sits there is a question of its own, so the top is not set either.
    if (side === 'ceiling' || side === 'floor') return { ...(shorten('top', top) ?? fallback), fixes: [] };
    if (side === wall) return shorten('overlap', overlap) ?? fallback;
    // A depth has to be filled by whole slats, so it is named and not set.
    if (!isEnd(side, wall)) return { ...(shorten('depth', depth) ?? fallback), fixes: [] };
    if (length) return shorten('length', length) ?? fallback;
    return from ? { at: from.span, cure: `Measure it from ${from.value.wall} ${show(zero)} or more.`, fixes: [] } : fallback;
}

const isEnd = (side: Wall, wall: Wall): boolean => side === neighbours[wall].left || side === neighbours[wall].right;
