import { TICKS_PER_MM } from '../core/length.js';
import { point, type Lettering, type Point } from './drawing.js';
import { textWidthMm } from './text-box.js';

/** Room a text takes on the sheet, in ticks of the view. */
export interface TextBox { readonly left: number; readonly right: number; readonly bottom: number; readonly top: number }

/** A place a text might stand at, its middle, with the leader it needs there. */
export interface Candidate { readonly at: Point; readonly turn?: 0 | 90; readonly leader?: readonly [Point, Point] }

/** Free room round a text, mm on the paper. */
const airMm = 0.5;
/** Letters that hang below their line reach as far as this beyond the capitals: descender over capital height. */
const hangShare = 0.3;

/**
 * Finds room for the texts of one view at one scale: no text lies on another, and of the places that are free the one is taken that fewest lines cross, the
 * first of equals. Equal calls in equal order give equal places.
 */
export class Placement {
    readonly boxes: TextBox[] = [];
    readonly #lines: (readonly [Point, Point])[] = [];
    /** @param scale real size over size on the paper */
    constructor(readonly scale: number) {}

    /** A length on the paper as a length in the view. */
    paper(millimetres: number): number { return Math.round(millimetres * TICKS_PER_MM * this.scale); }
    /** A length of the view on the paper, mm. */
    onPaper(ticks: number): number { return ticks / TICKS_PER_MM / this.scale; }

    /** Something that is drawn, which texts rather keep off. */
    addLine(from: Point, to: Point): void { this.#lines.push([from, to]); }

    boxOf({ at, heightMm, widthMm, turn }: Lettering): TextBox {
        const [wide, high] = [this.paper(widthMm / 2 + airMm), this.paper(heightMm / 2 * (1 + hangShare) + airMm)];
        const [x, y] = turn === 90 ? [high, wide] : [wide, high];
        return { left: at.x - x, right: at.x + x, bottom: at.y - y, top: at.y + y };
    }

    isFree(box: TextBox): boolean {
        return !this.boxes.some(other => other.left < box.right && box.left < other.right && other.bottom < box.top && box.bottom < other.top);
    }

    /**
     * Puts a text at the best of its places.
     * @param candidates in order of preference; asked for one after another until enough are known, so the list may have no end
     * @param enough how many free places are compared
     */
    place(text: string, heightMm: number, candidates: Iterable<Candidate>, { enough = 6, isBold = false }: { readonly enough?: number; readonly isBold?: boolean } = {}): { readonly lettering: Lettering; readonly leader?: readonly [Point, Point] } {
        const widthMm = textWidthMm(text, heightMm, isBold);
        let best: { readonly lettering: Lettering; readonly leader?: readonly [Point, Point]; readonly box: TextBox } | undefined;
        let least = Infinity;
        let found = 0;
        for (const { at, turn = 0, leader } of candidates) {
            const lettering: Lettering = { text, at: point(Math.round(at.x), Math.round(at.y)), heightMm, turn, widthMm, ...(isBold && { isBold }) };
            const box = this.boxOf(lettering);
            if (!this.isFree(box)) continue;
            const crossings = this.#crossings(box) + (leader ? 0.5 + this.#under(leader) * 4 : 0);
            if (crossings < least) { least = crossings; best = { lettering, box, ...(leader && { leader }) }; }
            found++;
            if (least === 0 || found >= enough) break;
        }
        if (!best) throw new Error(`No place for the text ${text}`);
        this.boxes.push(best.box);
        if (best.leader) this.addLine(...best.leader);
        return { lettering: best.lettering, ...(best.leader && { leader: best.leader }) };
    }

    #crossings(box: TextBox): number { return this.#lines.reduce((count, line) => count + (crosses(line, box) ? 1 : 0), 0); }
    #under(leader: readonly [Point, Point]): number { return this.boxes.reduce((count, box) => count + (crosses(leader, box) ? 1 : 0), 0); }
}

/** Whether a straight line enters a box (Liang and Barsky's clipping). */
function crosses([from, to]: readonly [Point, Point], { left, right, bottom, top }: TextBox): boolean {
    let [first, last] = [0, 1];
    const [dx, dy] = [to.x - from.x, to.y - from.y];
    for (const [p, q] of [[-dx, from.x - left], [dx, right - from.x], [-dy, from.y - bottom], [dy, top - from.y]] as const) {
        if (p === 0) { if (q <= 0) return false; continue; }
        if (p < 0) first = Math.max(first, q / p); else last = Math.min(last, q / p);
    }
    return first < last;
}
