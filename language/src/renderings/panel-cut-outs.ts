import { extent, grow, interval, intervalsOverlap, type Interval, type Wall } from '../core/geometry.js';
import { minus, plus, zero, type Length } from '../core/length.js';
import type { ShellPanel } from '../engines/shell/shell-result.js';
import type { RenderedJob } from './rendered-job.js';
import { showCut, type Scale } from './show-figures.js';

/** A hole in a wall panel, in the panel's own frame: from its left cover edge as seen from inside, the tongue not counted. */
export interface PanelCutOut {
    /** `vent intake`. */
    readonly of: string;
    readonly name: string;
    /** What the size is of: a vent's opening, a window's clear glass, the outside of a door frame. */
    readonly what: 'opening' | 'clear glass' | 'frame';
    /** As much of it as lies in this panel. */
    readonly width: Length;
    readonly height: Length;
    readonly isPart: boolean;
    readonly fromLeft: Length;
    /** Its lower edge over the finished floor, on which the base plate lies. */
    readonly overFloor: Length;
    /** Its lower edge over the panel's own; zero when it reaches down to that. */
    readonly overPanel: Length;
}

/** A hole in a wall, in that wall's u and v. */
interface Hole extends Pick<PanelCutOut, 'of' | 'name' | 'what'> {
    readonly wall: Wall;
    readonly u: Interval;
    readonly v: Interval;
}

/** Doors, windows and vents of a wall, in that order and as written. */
function holesOf({ results }: Pick<RenderedJob, 'results'>): readonly Hole[] {
    return [
        ...results.doors.flatMap(({ name, door }): Hole[] => door ? [{
            of: `door ${name}`, name, what: 'frame', wall: door.wall, u: grow(door.frameOpening.u, door.frameWidth),
            // the jambs stand on the floor, whatever lies between them
            v: interval(zero, plus(door.frameOpening.v.to, door.frameWidth)),
        }] : []),
        ...results.windows.flatMap(({ name, window }): Hole[] => window ? [{ of: `window ${name}`, name, what: 'clear glass', wall: window.wall, ...window.glass }] : []),
        ...(results.air?.vents ?? []).flatMap(({ name, vent }): Hole[] => vent ? [{ of: `vent ${name}`, name, what: 'opening', wall: vent.wall, u: vent.onWall.u, v: vent.onWall.v }] : []),
    ];
}

/**
 * The holes of a panel. A door or window is in the section made for it only; a vent is in every panel it reaches into.
 * @param plate thickness of the base plate the wall panels stand on
 */
export function panelCutOuts(job: Pick<RenderedJob, 'results'>, wall: Wall, panel: ShellPanel, plate: Length): readonly PanelCutOut[] {
    return holesOf(job).filter(hole => hole.wall === wall && intervalsOverlap(hole.u, panel.at) && (hole.what === 'opening' || hole.name === panel.opening)).map(({ of, name, what, u, v }): PanelCutOut => {
        const within: Interval = { from: u.from > panel.at.from ? u.from : panel.at.from, to: u.to < panel.at.to ? u.to : panel.at.to };
        return {
            of, name, what, width: extent(within), height: extent(v), isPart: extent(within) < extent(u), fromLeft: minus(within.from, panel.at.from),
            overFloor: v.from, overPanel: v.from > plate ? minus(v.from, plate) : zero,
        };
    });
}

/** `vent intake: opening 8" x 4", 3 1/2" from the panel's left edge, bottom 3" over the finished floor (1 1/2" over the panel's lower edge)`. */
export function showCutOut({ of, what, width, height, isPart, fromLeft, overFloor, overPanel }: PanelCutOut, unit: Scale): string {
    const cut = (length: Length): string => showCut(length, unit);
    const bottom = overFloor === 0 ? 'down to the finished floor' : `bottom ${cut(overFloor)} over the finished floor (${overPanel > 0 ? `${cut(overPanel)} over the panel's lower edge` : 'open to the panel\'s lower edge'})`;
    return `${of}: ${isPart ? 'part of its ' : ''}${what} ${cut(width)} x ${cut(height)}, ${cut(fromLeft)} from the panel's left edge, ${bottom}`;
}
