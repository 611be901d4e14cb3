import { lengthFigure, type Fix } from '../../core/finding.js';
import { extent, neighbours, overlap } from '../../core/geometry.js';
import { minus, plus, zero, type Length } from '../../core/length.js';
import type { AssembledWindow } from '../../assembly/openings.js';
import type { Thing } from '../../engines/fittings/things.js';
import { onWall } from '../../engines/fittings/wall-frame.js';
import { benchesOutOfPlace } from '../astray.js';
import { exactText, replaceLength, replaceValue } from '../fixes.js';
import { showAtLeast } from '../rounding.js';
import { defineRule, type RuleInput } from '../rule.js';
import { placeFact, placeText } from './opening-findings.js';

const citation = { kind: 'geometry', text: 'trim lies on the lining, and a bench beside it cannot fill its place' } as const;

export const windowTrimInBench = defineRule({
    id: 'window-trim-in-bench',
    family: 'opening',
    title: 'The trim of a window and a bench fill one place',
    severity: 'warning',
    why: 'Trim stands proud of the lining. A bench that reaches the lining there does not go in, or the trim is notched on site and leaves an edge to catch on.',
    bad: 'window view on left { model View18; from back 3"; sill 30" }',
    good: 'window view on left { model View18; from back 3"; sill 39 1/2" }',
    sources: [citation],
    isWaivable: true,
    fixes: 'review',
    *check(input) {
        const { results: { inside, windows, things, benches }, show } = input;
        if (!inside) return;
        const astray = benchesOutOfPlace(input);
        for (const window of windows) {
            if (!window.window?.trim) continue;
            const { trim, wall } = window.window;
            const pieces = things.filter(({ kind, name }) => kind === 'trim' && name === `${window.name} trim`);
            for (const [bench, block] of benches?.blocks ?? []) {
                const parts = things.filter(({ kind, name }) => kind === 'bench' && name === bench);
                const met = parts.filter(part => pieces.some(piece => overlap(piece.box, part.box)));
                const [first] = met;
                // A build that could not be read whole may keep a gap that clears the trim.
                if (!first || astray.has(bench) || block.values.build?.value.block?.isWhole === false) continue;
                const clear = trim.thickness;
                const gap = minus(clear, shortestGap(met, wall, input));
                const { words, fixes } = cures(window, bench, parts, input);
                yield {
                    at: window.block.head,
                    message: `The trim of window ${window.name} stands ${show(clear)} proud of the ${wall} wall, and bench ${bench} runs ${show(gap)} into it. ${words}`,
                    citation, measured: lengthFigure(minus(clear, gap)), required: lengthFigure(clear), subject: window.name,
                    related: [{ at: block.head, message: 'The bench stands here.' }], fixes,
                };
            }
        }
    },
});

/** How far off the lining of the window's wall the parts begin that meet the trim. */
function shortestGap(parts: readonly Thing[], wall: AssembledWindow['block']['walls'][number]['value'], { results: { inside } }: RuleInput): Length {
    return parts.reduce<Length | undefined>((least, { box }) => {
        if (!inside) return least;
        const off = onWall(wall, box, inside).w.from;
        return least === undefined || off < least ? off : least;
    }, undefined) ?? zero;
}

/** What clears the trim: a sill that carries it over the bench, a place along the wall, or a gap at the bench. */
function cures({ window, block }: AssembledWindow, bench: string, parts: readonly Thing[], { results: { inside, benches }, show, job: { unit } }: RuleInput): { readonly words: string; readonly fixes: readonly Fix[] } {
    const trim = window?.trim;
    const layout = benches?.result.benches.find(({ name }) => name === bench);
    if (!window || !trim || !layout || !inside) return { words: '', fixes: [] };
    const sill = block.values.sill;
    const over = plus(layout.top, trim.width);
    const fits = plus(over, plus(extent(window.glass.v), trim.width)) <= inside.height;
    const { left, right } = neighbours[window.wall];
    const place = placeFact(block);
    // A leg out in the room meets no trim, wherever the window is.
    const seen = parts.map(({ box }) => onWall(window.wall, box, inside)).filter(({ w }) => w.from < trim.thickness);
    const [from, to] = [Math.min(...seen.map(({ u }) => u.from)) as Length, Math.max(...seen.map(({ u }) => u.to)) as Length];
    // Along the wall the trim clears the bench on whichever side the room has more of.
    const run = window.wall === 'front' || window.wall === 'back' ? inside.width : inside.depth;
    const by = from >= minus(run, to) ? { toward: left, length: minus(trim.outer.u.to, from) } : { toward: right, length: minus(to, trim.outer.u.from) };
    const near = place && (place.given.value.wall === by.toward ? minus(place.given.value.distance, by.length) : plus(place.given.value.distance, by.length));
    const hasRoom = by.toward === left ? minus(trim.outer.u.from, by.length) >= 0 : plus(trim.outer.u.to, by.length) <= run;
    const isAlong = hasRoom && near !== undefined && near >= 0;
    const text = isAlong ? exactText(near, unit) : undefined;
    const words = [
        ...(fits ? [`set the sill to ${showAtLeast(over, unit)} or higher`] : []),
        ...(isAlong ? [`move the window ${show(by.length)} toward the ${by.toward} wall`] : []),
        `use a bench build whose wall_gap is ${showAtLeast(trim.thickness, unit)} or more`, 'choose a window without trim',
    ].join(', or ');
    return {
        words: `${words.charAt(0).toUpperCase()}${words.slice(1)}.`,
        fixes: [
            ...(fits && sill ? replaceLength('sill', sill.span, over, unit) : []),
            ...(place && text !== undefined ? [replaceValue(`Set the window ${text} from the ${place.given.value.wall} wall`, place.given.span, placeText(place.given.value.wall, text, place.isCentre))] : []),
        ],
    };
}
