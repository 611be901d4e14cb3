import { extent, neighbours, type InsideSize, type Wall } from '../../core/geometry.js';
import { inches, minus, plus, ticks, type Length } from '../../core/length.js';
import { divideRun, type Division, type DivisionFault, type RunInput, type SoftRule } from './division.js';
import { suggestForRun, type Suggestions } from './division-suggestions.js';
import { alongWallOpening, isPlaced } from './opening-place.js';
import { panelsOfRun } from './run-panels.js';
import type { ShellInput, ShellOpening } from './shell-input.js';
import type { ShellProblem, WallShell } from './shell-result.js';
import type { WidthOffer } from './stretch.js';
import { cornerAt, wallRun, type WallThickness } from './wall-run.js';

/** A joint closer than this to a ledger's end or a leg's fastening is not wanted. Common practice, no source. */
export const leastJointToFastening: Length = inches(2);

export interface WallPanels {
    readonly shell: WallShell;
    /** The question put to the division, for suggestions that look at several walls at once. */
    readonly run: RunInput;
    readonly division: Division;
    readonly problems: readonly ShellProblem[];
}

/** Divides one wall into panels. Other walls do not matter to it, but for their thickness at its ends. */
export function wallPanels(input: ShellInput, wall: Wall, thickness: WallThickness, inside: InsideSize, panelHeight: Length, offer: WidthOffer): WallPanels {
    const ends = wallRun(input, wall, thickness);
    const onWall = input.openings.filter(opening => opening.wall === wall);
    const run = runOfWall(input, wall, thickness, inside, offer);
    const division = divideRun(run);
    const suggestions = suggestForRun(run, division);
    const { panels, joints } = division.closes
        ? panelsOfRun(run, division, {
            word: wall.toUpperCase(), height: panelHeight, thickness: thickness[wall], layers: input.wallLayers[wall], engagement: input.system.engagement,
            chainStartsAt: input.system.chainStartsAt ?? 'left', origin: ends.interval.from,
            sections: new Map(onWall.map(opening => [opening.name, opening])),
        })
        : { panels: [], joints: [] };
    const shell: WallShell = {
        wall, thickness: thickness[wall], run: ends.interval, runsThrough: ends.runsThrough, panelHeight, panels, joints,
        ...(division.closes && { score: division.score }), suggestions,
    };
    return {
        shell, run, division,
        problems: [
            ...onWall.flatMap(openingProblems),
            ...(division.closes ? [] : division.faults.flatMap(fault => wallProblem(wall, run.run, fault, suggestions))),
            ...jointProblems(shell),
        ],
    };
}

/** The question one wall puts to the division: its run, the sections in it, and where joints are not wanted. */
export function runOfWall(input: ShellInput, wall: Wall, thickness: WallThickness, inside: InsideSize, offer: WidthOffer): RunInput {
    const ends = wallRun(input, wall, thickness);
    const placed = input.openings.filter(opening => opening.wall === wall && isPlaced(opening));
    return {
        run: extent(ends.interval), left: ends.left, right: ends.right, offer,
        sections: placed.map(opening => ({
            name: opening.name, from: minus(alongWallOpening(opening, inside).section.from, ends.interval.from), width: opening.sectionWidth,
            measuredFrom: opening.from === neighbours[wall].left ? 'left' : 'right',
        })),
        softRules: input.fastenings.filter(fastening => fastening.wall === wall).map((fastening): SoftRule => {
            const zone = fastening.kind === 'fastening-zone' ? fastening.zone : { from: minus(fastening.at, leastJointToFastening), to: plus(fastening.at, leastJointToFastening) };
            return { kind: fastening.kind, name: fastening.name, zone: { from: minus(zone.from, ends.interval.from), to: minus(zone.to, ends.interval.from) } };
        }),
    };
}

function openingProblems(opening: ShellOpening): readonly ShellProblem[] {
    const problems: ShellProblem[] = [];
    if (!isPlaced(opening)) problems.push({ kind: 'opening-not-measured-from-neighbour', opening: opening.name, wall: opening.wall, from: opening.from });
    if (opening.clearWidth > opening.sectionWidth) {
        problems.push({ kind: 'opening-wider-than-section', opening: opening.name, clear: opening.clearWidth, section: opening.sectionWidth });
    }
    return problems;
}

/** Faults of size are reported once for the room, not once for each wall. */
function wallProblem(wall: Wall, run: Length, fault: DivisionFault, suggestions: Suggestions): readonly ShellProblem[] {
    switch (fault.kind) {
        case 'run-has-no-length': case 'run-too-long': case 'no-panels-offered': case 'too-many-mixtures': return [];
        case 'section-over-corner':
            return [{ kind: 'opening-overlaps-corner', wall, opening: fault.section, corner: cornerAt(wall, fault.end), by: fault.by, suggestions }];
        case 'sections-overlap': return [{ kind: 'openings-overlap', wall, first: fault.first, second: fault.second, by: fault.by, suggestions }];
        case 'stretch-does-not-close': {
            if (fault.fault.kind !== 'corner-panel-too-narrow') return [{ kind: 'wall-does-not-close', wall, run, fault, suggestions }];
            return [{
                kind: 'corner-panel-too-narrow', wall, corner: cornerAt(wall, fault.before === undefined ? 'left' : 'right'),
                left: extent(fault.at), least: fault.fault.least, suggestions,
            }];
        }
    }
}

function jointProblems({ wall, joints }: WallShell): readonly ShellProblem[] {
    return joints.flatMap(joint => joint.broken.map(({ rule }): ShellProblem => {
        if (rule.kind === 'fastening-zone') return { kind: 'joint-in-fastening-zone', wall, joint: joint.at, between: joint.between, name: rule.name, zone: rule.zone };
        const fastening = plus(rule.zone.from, leastJointToFastening);
        return {
            kind: 'joint-near-fastening', wall, joint: joint.at, between: joint.between, name: rule.name, fastening: rule.kind,
            distance: ticks(Math.abs(joint.at - fastening)), least: leastJointToFastening,
        };
    }));
}
