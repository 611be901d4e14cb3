import { walls, type Wall } from '../../core/geometry.js';
import { longest, minus, plus, ticks, times, zero, type Length } from '../../core/length.js';
import { basePlatesOf } from './base-plates.js';
import { ceilingPanels } from './ceiling.js';
import { closingCorner } from './closing-corner.js';
import { leastPanelWidth, longestRun, type Division, type RunInput } from './division.js';
import { changeLimit, isHopeless, suggester, varyingWithSize, type Suggestion } from './division-suggestions.js';
import { assemblyHeadroom } from './headroom.js';
import type { ShellInput } from './shell-input.js';
import type { ShellProblem, ShellResult, SizeSuggestions } from './shell-result.js';
import type { WidthOffer } from './stretch.js';
import { wallPanels } from './wall-panels.js';
import { insideSize, thicknessOf } from './wall-run.js';

/**
 * The whole shell of a room: thicknesses, inside size, panels of every wall and the ceiling with their marks, joints, base plates, the corner
 * that is closed last and the headroom the crew needs. Walls do not depend on each other's panels: one that does not close leaves the others as
 * they are. Never throws on sizes a designer may write; whatever is wrong stands in `problems`.
 */
export function computeShell(input: ShellInput): ShellResult {
    const thickness = byWall(wall => thicknessOf(input.wallLayers[wall]));
    const ceilingThickness = thicknessOf(input.ceilingLayers);
    const inside = insideSize(input, thickness, ceilingThickness);
    const wallPanelHeight = minus(input.height, plus(input.system.plate.section.thickness, ceilingThickness));
    const { offer, problems: offerProblems } = usableOffer(input);

    const made = byWall(wall => wallPanels(input, wall, thickness, inside, wallPanelHeight, offer));
    const shells = byWall(wall => made[wall].shell);
    const ceiling = ceilingPanels(input, thickness, ceilingThickness, offer);
    const divisions = [...walls.map(wall => made[wall].division), ...(ceiling.division ? [ceiling.division] : [])];
    const plates = walls.map(wall => basePlatesOf(input, shells[wall], thickness, inside));
    const closing = closingCorner(input, shells);
    const ceilingAxis = ceiling.shell?.acrossAxis === 'x' ? 'width' : 'depth';
    const runsAlong = (axis: 'width' | 'depth'): readonly DividedRun[] => [
        ...(axis === 'width' ? [made.front, made.back] : [made.left, made.right]),
        ...(ceiling.run && ceiling.division && ceilingAxis === axis ? [{ run: ceiling.run, division: ceiling.division }] : []),
    ];
    return {
        thickness, ceilingThickness, inside, wallPanelHeight, walls: shells, ceiling: ceiling.shell,
        sizes: (['width', 'depth'] as const).map(axis => sizeSuggestions(axis, runsAlong(axis))),
        closing: closing.corner, basePlates: plates.flatMap(({ plates: pieces }) => pieces),
        headroom: assemblyHeadroom(input, wallPanelHeight, thickness, ceilingThickness, ceiling.shell),
        problems: [
            ...sizeProblems(input, inside, wallPanelHeight), ...offerProblems,
            ...(divisions.some(hasTooManyMixtures) ? [{ kind: 'too-many-panel-mixtures' as const, modules: offer.modules }] : []),
            // A room with no inside has no runs worth dividing: its size is the one thing wrong along that axis.
            ...walls.filter(wall => inside[axisOf(wall)] > 0).flatMap(wall => made[wall].problems),
            ...(inside[ceilingAxis] > 0 ? ceiling.problems : []),
            ...(closing.none ? [{ kind: 'no-closing-corner' as const, reason: closing.none }] : []),
            ...plates.flatMap(({ problems }) => problems),
        ],
    };
}

function byWall<T>(make: (wall: Wall) => T): Readonly<Record<Wall, T>> {
    return { front: make('front'), left: make('left'), back: make('back'), right: make('right') };
}

const hasTooManyMixtures = (division: Division): boolean => !division.closes && division.faults.some(({ kind }) => kind === 'too-many-mixtures');
const axisOf = (wall: Wall): 'width' | 'depth' => wall === 'front' || wall === 'back' ? 'width' : 'depth';

function sizeProblems(input: ShellInput, inside: ShellResult['inside'], panelHeight: Length): readonly ShellProblem[] {
    const problems: ShellProblem[] = [];
    for (const axis of ['width', 'depth'] as const) {
        if (inside[axis] <= 0) problems.push({ kind: 'room-has-no-inside', axis, outside: input[axis], takenByShell: minus(input[axis], inside[axis]) });
        else if (input[axis] > longestRun) problems.push({ kind: 'room-too-large', axis, outside: input[axis], limit: longestRun });
    }
    if (panelHeight <= 0) problems.push({ kind: 'room-has-no-inside', axis: 'height', outside: input.height, takenByShell: minus(input.height, panelHeight) });
    return problems;
}

/** A width no panel can have is named and left out, so that it does not spoil the division. */
export function usableOffer({ system }: ShellInput): { readonly offer: WidthOffer; readonly problems: readonly ShellProblem[] } {
    const least = longest(leastPanelWidth, times(system.engagement, 2));
    const range = system.madeToMeasure;
    const offer: WidthOffer = {
        modules: system.modules.filter(width => width >= least),
        ...(range && range.to >= least && range.from <= range.to && { madeToMeasure: { from: ticks(Math.max(range.from, least)), to: range.to } }),
    };
    const unusable = [...system.modules, ...(range ? [range.from, range.to] : [])].filter(width => width < least);
    const problems: ShellProblem[] = unusable.map(width => ({ kind: 'panel-width-unusable', width, least }));
    if (offer.modules.length === 0 && !offer.madeToMeasure) problems.push({ kind: 'no-panel-widths' });
    return { offer, problems };
}

interface DividedRun { readonly run: RunInput; readonly division: Division }

/** Outside sizes with which every wall and ceiling along one axis closes, and those that save a panel made to measure in all of them together. */
function sizeSuggestions(axis: 'width' | 'depth', divided: readonly DividedRun[]): SizeSuggestions {
    const divisions = divided.map(({ division }) => division);
    if (divisions.some(isHopeless)) return { axis, sizesThatClose: [], sizesThatSave: [] };
    const stretches = divided.flatMap(({ run }) => varyingWithSize(run));
    const suggest = suggester(stretches, longest(zero, ...divided.map(({ run }) => changeLimit(run))));
    const closing = divisions.filter(division => division.closes);
    const closes = closing.length === divisions.length;
    const sizesThatClose: readonly Suggestion[] = closes ? [] : suggest(stretches.length);
    const now = closes
        ? closing.reduce((total, division) => total + division.score.madeToMeasure, 0)
        : Math.min(...sizesThatClose.map(found => found.madeToMeasure));
    return { axis, sizesThatClose, sizesThatSave: Number.isFinite(now) && now > 0 ? suggest(now - 1) : [] };
}
