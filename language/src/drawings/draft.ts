import { ticks, type Length } from '../core/length.js';
import type { Rectangle } from './projection.js';
import { point, type Dimension, type Item, type Layer, type LineStyle, type Point, type Stroke } from './drawing.js';
import { Placement, type Candidate } from './placement.js';
import { textWidthMm } from './text-box.js';

export type Side = 'left' | 'right' | 'bottom' | 'top';
/** A place on a running dimension: where on the thing, and the words behind the figure. */
export interface Stop { readonly at: Point; readonly words?: string }

/** Heights of lettering, mm: figures and names, and the small print of marks. ISO 3098-1, nominal sizes, from memory. */
export const letterMm = { figure: 2.5, mark: 1.8, title: 3.5 } as const;

/**
 * One view while it is being drawn at one scale. Dimensions stand outside the picture, each line of them beyond the one before, with an oblique stroke at each
 * end and the figure over the line, read from the bottom and from the right (ISO 129-1:2018, from memory).
 */
export class Draft {
    readonly items: Item[] = [];
    readonly placement: Placement;
    /** How far the view reaches with all that stands round it. */
    outer: Rectangle;
    readonly #show: (length: Length) => string;
    readonly #figureMm: number;
    #count = 0;

    /**
     * @param picture what the solids fill
     * @param show a length as the sheet writes it
     * @param figureMm height of the figures; names are no higher
     */
    constructor(scale: number, picture: Rectangle, show: (length: Length) => string, figureMm: number = letterMm.figure) {
        this.#figureMm = figureMm;
        this.placement = new Placement(scale);
        this.outer = picture;
        this.#show = show;
    }

    paper(millimetres: number): number { return this.placement.paper(millimetres); }
    show(length: number): string { return this.#show(ticks(Math.round(length))); }

    strokes(strokes: readonly Stroke[]): void {
        for (const stroke of strokes) {
            this.items.push(stroke);
            if (stroke.layer !== 'hatch') this.placement.addLine(stroke.from, stroke.to);
        }
    }
    line(layer: Layer, style: LineStyle, from: Point, to: Point, of?: string): void { this.strokes([{ kind: 'line', layer, style, from, to, ...(of !== undefined && { of }) }]); }
    rectangle(layer: Layer, style: LineStyle, { left, right, bottom, top }: Rectangle, of?: string): void {
        const corners = [point(left, bottom), point(right, bottom), point(right, top), point(left, top)] as const;
        for (const [i, from] of corners.entries()) this.line(layer, style, from, corners[(i + 1) % 4] ?? from, of);
    }

    /**
     * Dimensions end to end along one side, and the whole of them on a line beyond when it is asked for and there are several.
     * @param stops places along the side, on the thing; equal ones count once
     */
    chain(side: Side, stops: readonly Point[], { overall = false }: { readonly overall?: boolean } = {}): void {
        const isAcross = side === 'bottom' || side === 'top';
        const along = (at: Point): number => isAcross ? at.x : at.y;
        const sorted = [...stops].sort((a, b) => along(a) - along(b)).filter((at, i, all) => i === 0 || along(at) !== along(all[i - 1] ?? at));
        if (sorted.length < 2) return;
        const line = this.#nextLine(side, 8);
        const form = sorted.length > 2 || !overall ? 'chain' : 'overall';
        const members = sorted.slice(1).map((to, i) => [sorted[i] ?? to, to] as const);
        // figures that stand over their own stretch take their room before those that have to look for it
        const fits = ([from, to]: (typeof members)[number]): boolean => this.#fits(this.show(Math.abs(along(to) - along(from))), Math.abs(along(to) - along(from)));
        const made = [...members.filter(fits), ...members.filter(member => !fits(member))].map(([from, to]) => this.#between(from, to, side, line, form));
        this.#grow(made, side);
        const [first, last] = [sorted[0], sorted.at(-1)];
        if (overall && sorted.length > 2 && first && last) this.#grow([this.#between(first, last, side, this.#nextLine(side, 6), 'overall')], side);
    }

    /** Dimensions from one origin, superimposed on one line, each with its words beside its end: set-out as a tape reads it. */
    running(side: Side, origin: Point, stops: readonly Stop[]): void {
        if (stops.length === 0) return;
        const isAcross = side === 'bottom' || side === 'top';
        const along = (at: Point): number => isAcross ? at.x : at.y;
        const start = along(origin);
        const together = new Map<number, { readonly at: Point; readonly words: string[] }>();
        for (const { at, words } of stops) {
            const known = together.get(along(at)) ?? { at, words: [] };
            if (words !== undefined && !known.words.includes(words)) known.words.push(words);
            together.set(along(at), known);
        }
        const sorted = [...together.values()].filter(({ at }) => along(at) !== start).sort((a, b) => along(a.at) - along(b.at));
        const line = this.#nextLine(side, 8);
        const outward = side === 'left' || side === 'bottom' ? -1 : 1;
        const turn = isAcross ? 90 : 0;
        const spread = spreadOut(sorted.map(({ at }) => along(at)), this.paper(4.4));
        const made: Dimension[] = [];
        const startPoint = isAcross ? point(start, line) : point(line, start);
        for (const [i, { at, words }] of sorted.entries()) {
            const place = spread[i] ?? along(at);
            const measure = ticks(Math.abs(along(at) - start));
            const text = [this.show(measure), words.join(', ')].filter(Boolean).join('  ');
            const half = this.paper(textWidthMm(text, this.#figureMm) / 2);
            const end = isAcross ? point(along(at), line) : point(line, along(at));
            const candidates = (function* (paper: (mm: number) => number): Generator<Candidate> {
                for (let row = 0; row < 60; row++) for (const slide of row === 0 ? [0] : [paper(1.5 * row), -paper(1.5 * row)]) {
                    const reach = line + outward * paper(4);
                    const text = place + slide;
                    const leader = isAcross ? [point(along(at), line + outward * paper(1)), point(text, reach)] as const : [point(line + outward * paper(1), along(at)), point(reach, text)] as const;
                    yield isAcross ? { at: point(text, reach + outward * (half + paper(0.7))), turn, leader } : { at: point(reach + outward * (half + paper(0.7)), text), turn, leader };
                }
            })(mm => this.paper(mm));
            const { lettering, leader } = this.placement.place(text, this.#figureMm, candidates, { enough: 1 });
            made.push({ kind: 'dimension', id: this.#id(), form: 'running', from: origin, to: at, line: [startPoint, end], measure, lettering, ...(leader && { leader }) });
        }
        for (const one of made) this.#keep(one);
        this.#grow(made, side);
    }

    /** One dimension inside the picture, between two points that share a coordinate, with its line where they are. */
    single(from: Point, to: Point, words = ''): void {
        const isAcross = from.y === to.y;
        if (isAcross ? from.x === to.x : from.x === to.x && from.y === to.y) return;
        if (isAcross) { this.#keep(this.#between(from, to, 'bottom', from.y, 'single', words)); return; }
        this.#keep(this.#between(from, to, 'left', from.x, 'single', words));
    }

    /** A slanting dimension on its own line, such as a diagonal. `measure` is the exact distance. */
    diagonal(from: Point, to: Point, measure: Length, words: string): void {
        this.placement.addLine(from, to);
        const text = `${this.show(measure)}  ${words}`;
        const half = this.paper(textWidthMm(text, this.#figureMm) / 2);
        const paper = (mm: number): number => this.paper(mm);
        const candidates = (function* (): Generator<Candidate> {
            for (const share of [0.35, 0.3, 0.4, 0.25, 0.6, 0.65, 0.7]) for (const rise of [4, -4, 8, -8, 12, -12, 16, -16]) {
                const on = point(from.x + (to.x - from.x) * share, from.y + (to.y - from.y) * share);
                yield { at: point(on.x + (rise > 0 ? -1 : 1) * half * 0.6, on.y + paper(rise)), leader: [on, point(on.x, on.y + paper(rise - Math.sign(rise) * 2))] };
            }
        })();
        const { lettering, leader } = this.placement.place(text, this.#figureMm, candidates);
        this.items.push({ kind: 'dimension', id: this.#id(), form: 'single', from, to, line: [from, to], measure, lettering, ...(leader && { leader }) });
    }

    /**
     * Writes a mark or a name in its rectangle, turned when it only fits so, else beside it with a leader.
     * @param inside what of the picture it names
     */
    label(text: string, inside: Rectangle, { layer = 'marks', of, heightMm: wanted = letterMm.mark, isBold = false, mayTurn = true }: { readonly layer?: Layer; readonly of?: string; readonly heightMm?: number; readonly isBold?: boolean; readonly mayTurn?: boolean } = {}): void {
        const heightMm = Math.min(wanted, this.#figureMm);
        const width = this.paper(textWidthMm(text, heightMm, isBold) + 0.8);
        const height = this.paper(heightMm * 1.3 + 0.8);
        const paper = (mm: number): number => this.paper(mm);
        const { left, right, bottom, top } = inside;
        const centre = point((left + right) / 2, (bottom + top) / 2);
        const candidates = (function* (): Generator<Candidate> {
            for (const turn of mayTurn ? [0, 90] as const : [0] as const) {
                const [wide, high] = turn === 0 ? [width, height] : [height, width];
                const [slackX, slackY] = [right - left - wide, top - bottom - high];
                if (slackX < 0 || slackY < 0) continue;
                for (const dy of [0, 0.25, -0.25, 0.45, -0.45]) for (const dx of [0, 0.25, -0.25, 0.45, -0.45]) yield { at: point(centre.x + dx * slackX, centre.y + dy * slackY), turn };
            }
            for (let ring = 1; ring < 60; ring++) for (const [dx, dy] of around8) {
                const at = point(centre.x + dx * (Math.min(right - left, paper(6)) / 2 + width / 2 + paper(2 + 2.5 * ring)), centre.y + dy * (Math.min(top - bottom, paper(6)) / 2 + paper(2 + 2.5 * ring)));
                // the leader ends at the nearer end of the text, or under its middle
                const toward = point(dx === 0 ? at.x : at.x - Math.sign(dx) * width / 2, dx === 0 ? at.y - Math.sign(dy) * height / 2 : at.y);
                yield { at, leader: [centre, toward] };
            }
        })();
        const { lettering, leader } = this.placement.place(text, heightMm, candidates, { enough: 30, isBold });
        this.items.push({ kind: 'label', layer, lettering, ...(leader && { leader }), ...(of !== undefined && { of }) });
        this.#include(this.placement.boxOf(lettering));
    }

    #between(from: Point, to: Point, side: Side, line: number, form: Dimension['form'], words = ''): Dimension {
        const isAcross = side === 'bottom' || side === 'top';
        const [low, high] = isAcross ? [from.x, to.x] : [from.y, to.y];
        const ends = isAcross ? [point(low, line), point(high, line)] as const : [point(line, low), point(line, high)] as const;
        const measure = ticks(Math.abs(high - low));
        const text = [this.show(measure), words].filter(Boolean).join('  ');
        const middle = (low + high) / 2;
        const outward = side === 'left' || side === 'bottom' ? -1 : 1;
        const above = isAcross ? 1 : -1;
        const fits = this.#fits(text, Math.abs(high - low));
        const off = (mm: number): number => this.paper(mm);
        const isInside = form === 'single';
        const wide = textWidthMm(text, this.#figureMm);
        const candidates = (function* (): Generator<Candidate> {
            const stand = (along: number, across: number): Point => isAcross ? point(along, across) : point(across, along);
            const turn = isAcross ? 0 : 90;
            if (fits) yield { at: stand(middle, line + above * off(2.1)), turn };
            if (fits && isInside) yield { at: stand(middle, line - above * off(2.1)), turn };
            const half = off(wide / 2 + 2);
            for (let row = 1; row < 40; row++) for (const slide of [0, 0.5, -0.5, 1, -1, 1.6, -1.6, 2.4, -2.4]) for (const way of isInside ? [1, -1] : [1]) {
                const across = line + outward * way * off(1 + 3.6 * row);
                const along = middle + slide * half;
                const leader = [stand(middle, line), stand(along, across - outward * way * off(1.9))] as const;
                // a turned figure would need a turned leader; beside a vertical line a lying one reads better
                yield isAcross ? { at: stand(along, across), turn, leader } : { at: point(line + outward * way * (off(0.5 + 3.6 * row) + half), middle + slide * off(5)), turn: 0, leader: [point(line, middle), point(line + outward * way * off(0.5 + 3.6 * row + 1.4), middle + slide * off(5))] };
            }
        })();
        const { lettering, leader } = this.placement.place(text, this.#figureMm, candidates, { enough: isInside ? 8 : 1 });
        const made: Dimension = { kind: 'dimension', id: this.#id(), form, from, to, line: ends, measure, lettering, ...(leader && { leader }) };
        if (form !== 'single') this.#keep(made);
        return made;
    }

    #fits(text: string, stretch: number): boolean { return this.paper(textWidthMm(text, this.#figureMm) + 1) <= stretch; }

    #keep(made: Dimension): void {
        this.items.push(made);
        this.placement.addLine(...made.line);
    }
    #id(): string { this.#count++; return `dimension-${this.#count}`; }

    /** Where the next line of dimensions on a side lies. */
    #nextLine(side: Side, gapMm: number): number {
        const gap = this.paper(gapMm);
        return Math.round(side === 'left' ? this.outer.left - gap : side === 'right' ? this.outer.right + gap : side === 'bottom' ? this.outer.bottom - gap : this.outer.top + gap);
    }
    #grow(made: readonly Dimension[], side: Side): void {
        for (const { lettering, line } of made) {
            this.#include(this.placement.boxOf(lettering));
            for (const { x, y } of line) this.#include({ left: x, right: x, bottom: y, top: y });
        }
        // a line of dimensions keeps its side to itself
        const room = this.paper(1);
        if (side === 'bottom') this.outer = { ...this.outer, bottom: this.outer.bottom - room };
    }
    #include({ left, right, bottom, top }: Rectangle): void {
        const { outer } = this;
        this.outer = { left: Math.min(outer.left, left), right: Math.max(outer.right, right), bottom: Math.min(outer.bottom, bottom), top: Math.max(outer.top, top) };
    }
}

const around8 = [[1, 1], [-1, 1], [1, -1], [-1, -1], [0, 1], [0, -1], [1, 0], [-1, 0], [1, 2], [-1, 2], [1, -2], [-1, -2]] as const;

/** Places nearest to the wanted ones that keep a distance from each other, in their order: groups that crowd are moved apart about their middle. */
export function spreadOut(wanted: readonly number[], distance: number): readonly number[] {
    const groups: { first: number; count: number; sum: number }[] = [];
    for (const at of wanted) {
        groups.push({ first: at, count: 1, sum: at });
        for (;;) {
            const [last, before] = [groups.at(-1), groups.at(-2)];
            if (!last || !before || before.first + before.count * distance <= last.first) break;
            groups.splice(-2, 2, merged(before, last, distance));
        }
    }
    return groups.flatMap(({ first, count }) => Array.from({ length: count }, (_, i) => Math.round(first + i * distance)));
}

/** `sum` holds what each member wants less its place in the group, so that the group's first place is the mean of it. */
function merged(a: { first: number; count: number; sum: number }, b: { first: number; count: number; sum: number }, distance: number): { first: number; count: number; sum: number } {
    const count = a.count + b.count;
    const sum = a.sum + b.sum - b.count * a.count * distance;
    return { first: sum / count, count, sum };
}
