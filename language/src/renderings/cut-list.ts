import { minus, plus, zero, type Length } from '../core/length.js';
import { showNumber } from '../core/show.js';
import type { Span } from '../core/span.js';
import type { EndCuts, NominalSize, Notch, Part, Section } from '../engines/parts/part.js';
import { showCut, type Scale } from './show-figures.js';

/** One line of the list, with the text of the job it comes from. */
export interface CutListLine {
    readonly part: Part;
    readonly at?: Span;
}

/** What is cut with the saw set up once: one material in one section. */
export interface CutListGroup {
    /** Catalogue name of the stock; absent when the job names none. */
    readonly stock?: string;
    readonly nominal?: NominalSize;
    readonly section: Section;
    readonly lines: readonly CutListLine[];
}

/**
 * Parts in the order a saw operator works: material by material, the heaviest section first, then the longest piece first, then by mark. Equal input
 * gives equal output, whatever order the parts arrive in, except that lines alike in everything shown keep theirs.
 */
export function cutListGroups(lines: readonly CutListLine[]): readonly CutListGroup[] {
    const groups = new Map<string, CutListLine[]>();
    for (const line of lines) {
        const { material, nominal, section } = line.part;
        const key = [material.stock ?? '', nominal ?? '', section.thickness, section.width].join('\n');
        const group = groups.get(key);
        if (group) group.push(line); else groups.set(key, [line]);
    }
    return [...groups.values()].flatMap((group): CutListGroup[] => {
        const [first] = group;
        if (!first) return [];
        const { material, nominal, section } = first.part;
        return [{ ...(material.stock !== undefined && { stock: material.stock }), ...(nominal !== undefined && { nominal }), section, lines: group.sort(compareLines) }];
    }).sort(compareGroups);
}

function compareGroups(a: CutListGroup, b: CutListGroup): number {
    if ((a.stock === undefined) !== (b.stock === undefined)) return a.stock === undefined ? 1 : -1;
    return compareText(a.stock ?? '', b.stock ?? '')
        || b.section.thickness - a.section.thickness
        || b.section.width - a.section.width
        || compareText(a.nominal ?? '', b.nominal ?? '');
}

function compareLines({ part: a }: CutListLine, { part: b }: CutListLine): number {
    return b.length - a.length || compareMarks(a.mark, b.mark) || compareText(a.cut, b.cut) || compareText(a.what, b.what);
}

const compareText = (a: string, b: string): number => a < b ? -1 : a > b ? 1 : 0;

/** Marks by their words, running numbers by value: `RAIL-2` stands before `RAIL-10`. */
export function compareMarks(a: string, b: string): number {
    const [left, right] = [a.split(/(\d+)/), b.split(/(\d+)/)];
    for (let i = 0; i < Math.min(left.length, right.length); i++) {
        const [x, y] = [left[i] ?? '', right[i] ?? ''];
        const isNumber = i % 2 === 1;
        const order = isNumber ? Number(x) - Number(y) : compareText(x, y);
        if (order !== 0) return order;
    }
    return left.length - right.length || compareText(a, b);
}

/** `square`, `mitred 45° across the face at both ends, length to the long points`, `left 45°, right square`: angles away from a square cut. */
export function showEnds({ left, right, across }: EndCuts): string {
    const end = (angle: number): string => angle === 0 ? 'square' : `${across ? 'mitred ' : ''}${showNumber(angle, 3)}°${across ? ` across the ${across}` : ''}`;
    if (left === 0 && right === 0) return 'square';
    const points = across ? `, length to the long ${left === 0 || right === 0 ? 'point' : 'points'}` : '';
    return left === right ? `${end(left)} ${across ? 'at ' : ''}both ends${points}` : `left ${end(left)}, right ${end(right)}${points}`;
}

/** Where each notch begins and ends and from which end that is measured, how deep it is, on which face, and what passes. */
export const showNotches = ({ notches, section }: Pick<Part, 'notches' | 'section'>, unit: Scale): string => notches.map(notch => {
    const { end, from, length, depth, clears } = notch;
    const cut = (value: Length): string => showCut(value, unit);
    return `${cut(from)} to ${cut(plus(from, length))} from the ${end === 'head' ? 'head (the top end)' : end}, ${cut(length)} long, ${cut(depth)} deep, across the ${notchFace(notch, section, unit)}, for ${clears}`;
}).join('; ');

/** Width of the face a notch is cut across. */
export const notchFaceWidth = ({ side }: Pick<Notch, 'side'>, { thickness, width }: Section): Length => side === 'front' || side === 'back' ? thickness : width;

/** `narrow face (1 1/2" wide) that looks toward the front wall`. */
export function notchFace({ side, toward }: Notch, section: Section, unit: Scale): string {
    const across = notchFaceWidth({ side }, section);
    const other = across === section.width ? section.thickness : section.width;
    const size = across === other ? 'face' : across < other ? 'narrow face' : 'wide face';
    return `${toward === undefined ? `${side} ` : ''}${size} (${showCut(across, unit)} wide)${toward === undefined ? '' : ` that looks toward the ${toward} wall`}`;
}

/** What is left of a part after the cut on site; a shop part is finished as it is cut. */
export const finishedLength = ({ length, allowance = zero }: Pick<Part, 'length' | 'allowance'>): Length => minus(length, allowance);

/** Where it is cut, and that a site part comes longer than it ends up. */
export const showCutPlace = (cut: Part['cut']): string => cut === 'shop' ? 'shop' : 'site, ships long';

/** Pieces and summed length of some lines. */
export function totals(lines: readonly CutListLine[]): { readonly pieces: number; readonly length: bigint } {
    return lines.reduce(({ pieces, length }, { part }) => ({ pieces: pieces + part.count, length: length + BigInt(part.count) * BigInt(part.length) }), { pieces: 0, length: 0n });
}
