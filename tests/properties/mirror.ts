import fc from 'fast-check';
import { expect } from 'vitest';
import type { JobAnalysis } from '../../language/src/analyze.js';
import { minus, type Length } from '../../language/src/core/length.js';
import { walls, type Wall } from '../../language/src/core/geometry.js';
import type { Part, PartPlace } from '../../language/src/engines/parts/part.js';
import { JobReader } from './analysed.js';
import { asText } from './canonical.js';
import { fileOf, randomJob } from './random-job.js';

const inMirror: Readonly<Record<Wall, Wall>> = { front: 'front', back: 'back', left: 'right', right: 'left' };

/** Left and right change places, as words and as marks; running numbers go, for they count from the left in both rooms. */
function turnWords(text: string): string {
    const turned: Readonly<Record<string, string>> = { left: 'right', right: 'left', LEFT: 'RIGHT', RIGHT: 'LEFT' };
    return text.replace(/\b(left|right)\b|LEFT|RIGHT/g, word => turned[word] ?? word).replace(/-\d+\b/g, '-#');
}
const sameWords = (text: string): string => text.replace(/-\d+\b/g, '-#');

/** A part as the other room has it: its notches from the other end, its end angles exchanged. A leg stands upright in both. */
function turnPart(part: Part): unknown {
    const place = part.place && turnPlace(part.place);
    if (part.mark.includes('-LEG-')) return { ...plain(part, turnWords), ...(place && { place: roughly(place) }) };
    return {
        ...plain(part, turnWords), ...(place && { place: roughly(place) }), ends: { ...part.ends, left: part.ends.right, right: part.ends.left },
        notches: part.notches.map(notch => ({ ...notch, from: minus(minus(part.length, notch.from), notch.length), clears: turnWords(notch.clears) })).map(asText).sort(),
    };
}
const turnPlace = (place: PartPlace): PartPlace =>
    ({ ...place, wall: inMirror[place.wall], stretches: place.stretches.map(({ from, to }) => ({ from: minus(place.run, to), to: minus(place.run, from) })).toReversed() });
/** A middle that falls on half a tick has no exact mirror image; a thousand ticks are a hundredth of a millimetre. */
const roughly = (place: PartPlace): PartPlace =>
    ({ ...place, stretches: place.stretches.map(({ from, to }) => ({ from: Math.round(from / 1000) as Length, to: Math.round(to / 1000) as Length })) });
const plain = (part: Part, words: (text: string) => string): object => ({
    ...part, mark: words(part.mark), goesTo: words(part.goesTo), ...(part.measure !== undefined && { measure: words(part.measure) }),
    ...(part.place && { place: roughly(part.place) }),
    notches: part.notches.map(notch => ({ ...notch, clears: words(notch.clears), ...(notch.toward && { toward: words(notch.toward) }) })).map(asText).sort(),
});

/**
 * Walls whose panels stand in the mirror as the mirror has them. "Larger first, left to right" is the one preference with a hand; where it had
 * something to choose the panels differ, and with them the plates, whose joints keep off the joints of the panels.
 */
const alike = (here: JobAnalysis, there: JobAnalysis): ReadonlySet<Wall> => new Set(walls.filter(wall => {
    const covers = (job: JobAnalysis, side: Wall): readonly number[] => job.results.shell?.result.walls[side].panels.map(({ cover }) => cover) ?? [];
    return asText(covers(there, inMirror[wall]).toReversed()) === asText(covers(here, wall));
}));

/** Rules that look at joints and closing panels: where the panels differ, so may they. */
const ofPanelOrder = new Set(['joint-in-fastening-zone', 'joint-near-fastening', 'closing-corner-against-building']);

/** A job and its mirror image have the same parts, with the words for the sides exchanged, and the same findings. */
export async function checkMirror(numRuns: number, seed: number): Promise<{ readonly jobs: number; readonly walls: number }> {
    const reader = new JobReader();
    let seenWalls = 0;
    let jobs = 0;
    await fc.assert(fc.asyncProperty(randomJob, async ({ job, mirrored }) => {
        const here = await reader.job(fileOf(job));
        const there = await reader.job(fileOf(mirrored));
        const same = alike(here, there);
        const isCompared = (part: Part, turn: (wall: Wall) => Wall): boolean => {
            const plate = /^BASE-(FRONT|LEFT|BACK|RIGHT)/.exec(part.mark);
            return !plate || same.has(turn((plate[1] ?? '').toLowerCase() as Wall));
        };
        expect(there.results.parts.filter(part => isCompared(part, wall => inMirror[wall])).map(part => asText(plain(part, sameWords))).sort())
            .toEqual(here.results.parts.filter(part => isCompared(part, wall => wall)).map(part => asText(turnPart(part))).sort());
        expect(asText(there.results.inside)).toBe(asText(here.results.inside));
        for (const wall of walls) expect(asText(there.results.shell?.result.walls[inMirror[wall]].score)).toBe(asText(here.results.shell?.result.walls[wall].score));
        const found = (analysis: JobAnalysis): readonly string[] => analysis.findings.filter(({ rule }) => same.size === 4 || !ofPanelOrder.has(rule)).map(({ rule, severity }) => `${severity} ${rule}`).sort();
        expect(found(there)).toEqual(found(here));
        seenWalls += same.size;
        jobs++;
    }), { numRuns, seed });
    return { jobs, walls: seenWalls };
}
