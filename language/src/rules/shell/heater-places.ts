import { extent, neighbours } from '../../core/geometry.js';
import { half, minus, plus, type Length } from '../../core/length.js';
import { showList } from '../../core/show.js';
import type { Fix } from '../../core/finding.js';
import type { JudgedHeater } from '../../assembly/heater-judgement.js';
import { shiftsOffJoints } from '../../engines/shell/off-joints.js';
import type { LengthRange } from '../../vocabulary/values.js';
import { placeEdits, reviewFix, showPositions, writable } from '../heater/heater-findings.js';
import type { RuleInput } from '../rule.js';
import { showAtLeast, showAtMost } from '../rounding.js';

/** Where along its wall the heater keeps all clearances and no joint lies behind its fastenings: how to write that, and the edit for the nearest place. */
export function placesOffJoints(input: RuleInput, judged: JudgedHeater): { readonly words: string; readonly fixes: readonly Fix[] } {
    const { heater, range, block, name } = judged;
    const { results: { shell, inside }, job: { unit } } = input;
    if (!heater || !range || !shell || !inside) return { words: '', fixes: [] };
    if (range.ranges.length === 0) return { words: showPositions(judged, input), fixes: [] };
    const width = extent(heater.onWall.u);
    const run = inside[heater.wall === 'front' || heater.wall === 'back' ? 'width' : 'depth'];
    const isFromLeft = range.from === neighbours[heater.wall].left;
    const now = isFromLeft ? heater.onWall.u.from : minus(run, heater.onWall.u.to);
    // Shifts go to the right; distances from the right wall grow to the left.
    const turned = ({ from, to }: LengthRange, convert: (one: Length) => Length): LengthRange => isFromLeft ? { from: convert(from), to: convert(to) } : { from: convert(to), to: convert(from) };
    const inOrder = (ranges: readonly LengthRange[]): readonly LengthRange[] => isFromLeft ? ranges : [...ranges].reverse();
    const shifts = shiftsOffJoints(shell.input, name, inOrder(range.ranges.map(one => turned(one, near => isFromLeft ? minus(near, now) : minus(now, near)))));
    const free = inOrder(shifts.map(one => turned(one, shift => isFromLeft ? plus(now, shift) : minus(now, shift))));
    const everything = range.never.length > 0 ? 'everything else' : 'everything';
    const isCentre = !block.values.from && block.values.centre !== undefined;
    const written = (near: Length): Length => isCentre ? plus(near, half(width)) : near;
    const stretch = ({ from, to }: LengthRange): string => from === to ? writable(written(from), unit) : `${showAtLeast(written(from), unit)} to ${showAtMost(written(to), unit)}`;
    const [nearest] = free.map(({ from, to }) => now < from ? from : now > to ? to : now).sort((a, b) => Math.abs(a - now) - Math.abs(b - now));
    if (nearest === undefined) {
        return { words: `No place off the joints was found within ${showList(range.ranges.map(stretch), 'or')} from the ${range.from} wall, where the heater clears ${everything}; choose another wall, or move a door or window of this one.`, fixes: [] };
    }
    return {
        words: `Place it ${isCentre ? 'centre from' : 'from'} ${range.from} ${showList(free.map(stretch), 'or')}, where no joint lies behind it and it clears ${everything}.`,
        fixes: reviewFix(`Move heater ${name} to ${isCentre ? 'centre from ' : ''}${range.from} ${writable(written(nearest), unit)}`, placeEdits(block, range.from, nearest, width, unit)),
    };
}
