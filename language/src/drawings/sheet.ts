import { TICKS_PER_FOOT, TICKS_PER_MM } from '../core/length.js';
import { isMetric } from '../core/show.js';
import { Draft, letterMm } from './draft.js';
import type { Drawing, Item } from './drawing.js';
import { isSmallPaper, marginMm, papers, scalesFor, type PaperName, type SheetScale } from './paper.js';
import type { Rectangle } from './projection.js';
import { sheetText, type SheetLine, type SheetText } from './sheet-text.js';
import { linesOf, textWidthMm } from './text-box.js';
import { titleBlock, type TitleFacts } from './title-block.js';
import { shower, type View, type ViewInput } from './views/view.js';

/** Where the origin of a picture lies on the paper; ticks are mm x 80 000 x the scale's ratio. */
export interface PlacedFigure { readonly items: readonly Item[]; readonly x: number; readonly y: number }

/** One sheet: pictures at one scale, what stands round them, frame and title block. */
export interface Sheet extends Drawing {
    readonly view: View['name'];
    readonly title: string;
    readonly paper: PaperName;
    readonly widthMm: number;
    readonly heightMm: number;
    readonly scale: SheetScale;
    readonly figures: readonly PlacedFigure[];
    readonly lines: readonly SheetLine[];
    readonly texts: readonly SheetText[];
}

export const columnMm = 92;
const noteMm = 1.8;
const noteLineMm = 3.05;
const captionMm = 13;
const captionLetterMm = 2.5;
const betweenMm = 8;

export interface SheetInput extends ViewInput { readonly facts: TitleFacts }

/** Draws a view at the largest scale of the series at which it fits the sheet. */
export function makeSheet(view: View, input: SheetInput, paper: PaperName, number: { readonly of: number; readonly sheet: number }): Sheet {
    const { widthMm, heightMm } = papers[paper];
    const notes = noteLines(view, input, paper);
    const columns = notes.columns.length;
    const room = { width: widthMm - marginMm.left - marginMm.right - columns * columnMm - 6, height: heightMm - marginMm.top - marginMm.bottom - 6 };
    const scales = scalesFor(input.unit);
    for (const scale of scales) {
        const last = scale === scales.at(-1);
        if (!last && !couldFit(view, scale, room)) continue;
        const drafts = view.figures.map(figure => {
            const draft = new Draft(scale.ratio, figure.picture, shower(input.unit), isSmallPaper(paper) ? letterMm.mark : letterMm.figure);
            figure.draw(draft);
            return { figure, draft, size: sizeMm(draft.outer, scale.ratio) };
        });
        const places = arrange(drafts.map(({ size, figure }) => ({ ...size, least: Math.min(room.width, textWidthMm(figure.caption, captionLetterMm)) })), room);
        if (!places && !last) continue;
        const left = marginMm.left + 3;
        const top = heightMm - marginMm.top - 3;
        const placed = drafts.map(({ figure, draft, size }, i) => {
            const place = places?.[i] ?? { x: 0, y: 0 };
            const [x, y] = [left + place.x, top - place.y - size.height];
            const origin = { x: x - draft.outer.left / TICKS_PER_MM / scale.ratio, y: y - draft.outer.bottom / TICKS_PER_MM / scale.ratio };
            const caption = linesOf(figure.caption, room.width, captionLetterMm).map((line, row) => {
                const middle = x + (size.width - textWidthMm(line, captionLetterMm)) / 2;
                return sheetText(line, Math.min(Math.max(left, middle), left + room.width - textWidthMm(line, captionLetterMm)), y - 5.5 - row * 4.2, captionLetterMm);
            });
            return { figure: { items: draft.items, ...origin }, caption };
        });
        const block = titleBlock({ facts: input.facts, title: view.title, scale: view.figures.every(({ isPictorial }) => isPictorial === true) ? undefined : scale, sheet: number, right: widthMm - marginMm.right, bottom: marginMm.bottom, width: columnMm, bar: scaleBar(scale, input) });
        const frame: Rectangle = { left: marginMm.left, right: widthMm - marginMm.right, bottom: marginMm.bottom, top: heightMm - marginMm.top };
        return {
            view: view.name, title: view.title, paper, widthMm, heightMm, scale, figures: placed.map(({ figure }) => figure),
            items: placed.flatMap(({ figure }) => figure.items),
            titles: new Map(input.scene.solids.map(({ id, kind, mark, span }) => [id, { title: mark === undefined ? `${kind} ${id.startsWith(kind) ? id.slice(kind.length + 1) : id}`.trim() : `${mark}, ${kind}`, ...(span && { span }) }])),
            lines: [...frameLines(frame), ...block.lines, { x1: frame.right - columns * columnMm, x2: frame.right - columns * columnMm, y1: frame.bottom, y2: frame.top, widthMm: 0.35 }],
            texts: [
                ...placed.flatMap(({ caption }) => caption), ...block.texts,
                ...notes.columns.flatMap((lines, column) => lines.map(({ text, isBold }, row) => sheetText(text, frame.right - (columns - column) * columnMm + 3, frame.top - 5 - row * noteLineMm, noteMm, isBold))),
            ],
        };
    }
    throw new Error(`No scale for the view ${view.name}`);
}

const sizeMm = ({ left, right, bottom, top }: Rectangle, ratio: number): { readonly width: number; readonly height: number } =>
    ({ width: (right - left) / TICKS_PER_MM / ratio, height: (top - bottom) / TICKS_PER_MM / ratio });

/** Whether the bare pictures fit, before anything is written round them. */
function couldFit(view: View, { ratio }: SheetScale, room: { readonly width: number; readonly height: number }): boolean {
    const sizes = view.figures.map(({ picture }) => sizeMm(picture, ratio));
    return sizes.every(({ width, height }) => width < room.width && height < room.height)
        && sizes.reduce((sum, { width, height }) => sum + width * height, 0) < room.width * room.height;
}

/** Pictures in rows from the top left, the rows and what is in them set apart evenly; nothing when they do not fit. */
function arrange(sizes: readonly { readonly width: number; readonly height: number; readonly least: number }[], room: { readonly width: number; readonly height: number }): readonly { readonly x: number; readonly y: number }[] | undefined {
    const rows: (typeof sizes[number] & { readonly wide: number; readonly i: number })[][] = [[]];
    let used = 0;
    for (const [i, size] of sizes.entries()) {
        const wide = Math.max(size.width, size.least);
        if (wide > room.width) return undefined;
        const gap = used > 0 ? betweenMm : 0;
        if (used + gap + wide > room.width) { rows.push([]); used = 0; }
        rows.at(-1)?.push({ ...size, wide, i });
        used += (used > 0 ? betweenMm : 0) + wide;
    }
    const heights = rows.map(row => Math.max(...row.map(({ height }) => height)) + captionMm);
    const spareY = room.height - heights.reduce((sum, height) => sum + height, 0) - betweenMm * (rows.length - 1);
    if (spareY < 0) return undefined;
    const places: { x: number; y: number }[] = [];
    let y = spareY / (rows.length + 1);
    for (const [r, row] of rows.entries()) {
        const spareX = room.width - row.reduce((sum, { wide }) => sum + wide, 0) - betweenMm * (row.length - 1);
        let x = spareX / (row.length + 1);
        for (const { i, wide, width, height } of row) {
            places[i] = { x: x + (wide - width) / 2, y: y + (heights[r] ?? 0) - captionMm - height };
            x += wide + betweenMm + spareX / (row.length + 1);
        }
        y += (heights[r] ?? 0) + betweenMm + spareY / (rows.length + 1);
    }
    return places;
}

interface NoteLine { readonly text: string; readonly isBold: boolean }

/** Notes beside the picture, as many columns as they need; on small paper one column, the cautions first. Cautions are never cut short. */
function noteLines(view: View, { facts, unit }: SheetInput, paper: PaperName): { readonly columns: readonly (readonly NoteLine[])[] } {
    const width = columnMm - 6;
    const group = (title: string, notes: readonly string[]): NoteLine[] => notes.length === 0 ? [] : [
        { text: title, isBold: true }, ...notes.flatMap(note => linesOf(note, width, noteMm).map(text => ({ text, isBold: false }))), { text: '', isBold: false },
    ];
    const fits = Math.floor((papers[paper].heightMm - marginMm.top - marginMm.bottom - 8) / noteLineMm);
    const beside = Math.floor((papers[paper].heightMm - marginMm.top - marginMm.bottom - 8 - facts.blockHeightMm) / noteLineMm);
    if (isSmallPaper(paper)) {
        const cautions = group('Cautions', facts.cautions);
        const more = group('On larger paper', ['How to read the lines, the papers used, what was not checked, and what of the notes has no room here.']);
        return { columns: [[...cautions, ...more, ...group('Of this sheet', view.notes).slice(0, Math.max(0, beside - cautions.length - more.length))]] };
    }
    const lines = [
        ...group('Of this sheet', view.notes),
        ...group('Reading it', [
            `Lengths are in ${isMetric(unit) ? 'millimetres, rounded to 0.5 mm' : `${unit === 'in' ? 'inches' : 'feet and inches'}, rounded to 1/16"`} where they are shown and nowhere else; ≈ stands before a figure that is not the exact value. Figures go before the scale.`,
            'Extra-wide lines are cut, wide ones seen, dashed ones hidden; narrow ones are dimensions and hatching. Lines, hatching and dimensions after ISO 128-2, ISO 128-3 and ISO 129-1.',
            'Heights are over the finished floor. Positions along a wall are from the lining of the neighbouring wall.',
        ]),
        ...group('Cautions', facts.cautions),
        ...group('Rules and papers', facts.papers),
    ];
    if (lines.length <= beside) return { columns: [lines] };
    const columns: NoteLine[][] = [];
    let rest = lines;
    while (rest.length > beside) { columns.push(rest.slice(0, fits)); rest = rest.slice(fits); }
    return { columns: [...columns, rest] };
}

const frameLines = ({ left, right, bottom, top }: Rectangle): readonly SheetLine[] =>
    [[left, bottom, right, bottom], [right, bottom, right, top], [right, top, left, top], [left, top, left, bottom]].map(([x1 = 0, y1 = 0, x2 = 0, y2 = 0]) => ({ x1, y1, x2, y2, widthMm: 0.7 }));

/** A bar of round length, at most 60 mm long on the paper. */
function scaleBar({ ratio }: SheetScale, { unit }: SheetInput): { readonly widthMm: number; readonly parts: number; readonly text: string } {
    const steps = isMetric(unit) ? [100, 200, 500, 1000, 2000, 5000].map(mm => ({ mm, text: `${mm} mm` })) : [0.5, 1, 2, 4, 8, 16].map(feet => ({ mm: feet * TICKS_PER_FOOT / TICKS_PER_MM, text: feet < 1 ? '6"' : `${feet}'-0"` }));
    const best = steps.filter(({ mm }) => mm / ratio <= 60).at(-1) ?? steps[0] ?? { mm: 100, text: '100 mm' };
    return { widthMm: best.mm / ratio, parts: 4, text: best.text };
}

