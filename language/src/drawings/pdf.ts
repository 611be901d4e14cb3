import {
    appendBezierCurve, closePath, degrees, fill, LineCapStyle, lineTo, moveTo, PDFDocument, popGraphicsState, pushGraphicsState, rectangle, rgb, setDashPattern, setFillingColor, setLineCap, setLineWidth, setStrokingColor,
    StandardFonts, stroke, type PDFFont, type PDFOperator, type PDFPage,
} from 'pdf-lib';
import { TICKS_PER_MM } from '../core/length.js';
import { dashesMm, lineWidthMm, type Arc, type Dimension, type Lettering, type LineStyle, type Point } from './drawing.js';
import type { PlacedFigure, Sheet } from './sheet.js';
import { isInFace, isInSign, textWidthMm, typeSizeMm } from './text-box.js';

/** Points of a page in a millimetre. */
export const POINTS_PER_MM = 72 / 25.4;
const pt = (millimetres: number): number => Math.round(millimetres * POINTS_PER_MM * 1e4) / 1e4;

/**
 * Sheets as one PDF, a page each, in the size of their paper and true to scale; black on white, in Helvetica, which every reader has. No date and no chance in it: equal
 * sheets give equal bytes.
 * @param title of the document
 */
export async function sheetsPdf(sheets: readonly Sheet[], title: string): Promise<Uint8Array> {
    const file = await PDFDocument.create({ updateMetadata: false });
    file.setTitle(title, { showInWindowTitleBar: true });
    file.setCreator('Hotroom');
    file.setLanguage('en');
    const fonts: Fonts = {
        regular: await file.embedFont(StandardFonts.Helvetica), bold: await file.embedFont(StandardFonts.HelveticaBold), sign: await file.embedFont(StandardFonts.Symbol),
    };
    for (const sheet of sheets) drawPage(file.addPage([pt(sheet.widthMm), pt(sheet.heightMm)]), sheet, fonts);
    return file.save({ addDefaultPage: false, updateFieldAppearances: false });
}

interface Fonts { readonly regular: PDFFont; readonly bold: PDFFont; readonly sign: PDFFont }

function drawPage(page: PDFPage, sheet: Sheet, fonts: Fonts): void {
    for (const figure of sheet.figures) drawFigure(page, figure, sheet, fonts);
    page.pushOperators(pushGraphicsState(), setStrokingColor(rgb(0, 0, 0)), ...sheet.lines.flatMap(({ x1, y1, x2, y2, widthMm }) => [setLineWidth(pt(widthMm)), moveTo(pt(x1), pt(y1)), lineTo(pt(x2), pt(y2)), stroke()]), popGraphicsState());
    for (const { text, x, y, heightMm, isBold } of sheet.texts) write(page, fonts, text, x, y, heightMm, isBold === true, 0);
}

function drawFigure(page: PDFPage, figure: PlacedFigure, { scale }: Sheet, fonts: Fonts): void {
    const at = ({ x, y }: Point): readonly [number, number] => [figure.x + x / TICKS_PER_MM / scale.ratio, figure.y + y / TICKS_PER_MM / scale.ratio];
    const straight = (a: Point, b: Point): readonly PDFOperator[] => {
        const [[x1, y1], [x2, y2]] = [at(a), at(b)];
        return [moveTo(pt(x1), pt(y1)), lineTo(pt(x2), pt(y2))];
    };
    const paths = new Map<LineStyle, PDFOperator[]>();
    const add = (style: LineStyle, operators: readonly PDFOperator[]): void => { const known = paths.get(style) ?? []; known.push(...operators); paths.set(style, known); };
    const ends: PDFOperator[] = [];
    for (const item of figure.items) {
        switch (item.kind) {
            case 'line': add(item.style, straight(item.from, item.to)); break;
            case 'arc': add(item.style, curve(item, at, scale.ratio)); break;
            case 'label': if (item.leader) add('thin', straight(...item.leader)); break;
            case 'dimension':
                add('thin', [...straight(item.from, item.line[0]), ...straight(item.to, item.line[1]), ...straight(...item.line), ...(item.leader ? straight(...item.leader) : [])]);
                ends.push(...endsOf(item, at));
                break;
            default: item satisfies never;
        }
    }
    page.pushOperators(pushGraphicsState(), setStrokingColor(rgb(0, 0, 0)), setLineCap(LineCapStyle.Round));
    for (const [style, operators] of paths) page.pushOperators(setLineWidth(pt(lineWidthMm[style])), setDashPattern(dashesMm[style].map(pt), 0), ...operators, stroke());
    page.pushOperators(setDashPattern([], 0), setLineWidth(pt(lineWidthMm.visible)), ...ends, stroke(), popGraphicsState());
    for (const item of figure.items) if (item.kind === 'label' || item.kind === 'dimension') letter(page, fonts, item.lettering, at(item.lettering.at));
}

function endsOf({ line, form }: Dimension, at: (point: Point) => readonly [number, number]): readonly PDFOperator[] {
    return (form === 'running' ? [line[1]] : line).flatMap(end => { const [x, y] = at(end); return [moveTo(pt(x - 1.1), pt(y - 1.1)), lineTo(pt(x + 1.1), pt(y + 1.1))]; });
}

/** An arc by cubic curves of at most 45 degrees each: off the circle by less than a millionth of its radius (control points at 4/3 tan of a quarter of the angle). */
function curve({ centre, radius, fromDegrees, toDegrees }: Arc, at: (point: Point) => readonly [number, number], ratio: number): readonly PDFOperator[] {
    const [cx, cy] = at(centre);
    const r = radius / TICKS_PER_MM / ratio;
    const count = Math.max(1, Math.ceil((toDegrees - fromDegrees) / 45));
    const step = (toDegrees - fromDegrees) / count * Math.PI / 180;
    const reach = 4 / 3 * Math.tan(step / 4) * r;
    const spot = (turn: number, along: number): readonly [number, number] => [pt(cx + r * Math.cos(turn) - along * Math.sin(turn)), pt(cy + r * Math.sin(turn) + along * Math.cos(turn))];
    const first = fromDegrees * Math.PI / 180;
    return [moveTo(...spot(first, 0)), ...Array.from({ length: count }, (_, i) => {
        const [a, b] = [first + i * step, first + (i + 1) * step];
        return appendBezierCurve(...spot(a, reach), ...spot(b, -reach), ...spot(b, 0));
    })];
}

/** A text on white ground of its own. */
function letter(page: PDFPage, fonts: Fonts, { text, heightMm, widthMm, turn, isBold }: Lettering, [x, y]: readonly [number, number]): void {
    const [wide, high] = turn === 90 ? [heightMm + 0.6, widthMm + 0.6] : [widthMm + 0.6, heightMm + 0.6];
    page.pushOperators(pushGraphicsState(), setFillingColor(rgb(1, 1, 1)), rectangle(pt(x - wide / 2), pt(y - high / 2), pt(wide), pt(high)), closePath(), fill(), popGraphicsState());
    const [left, base] = turn === 90 ? [x + heightMm / 2, y - widthMm / 2] : [x - widthMm / 2, y - heightMm / 2];
    write(page, fonts, text, left, base, heightMm, isBold === true, turn);
}

/** Writes a line of text piece by piece, each in the face that has its letters. */
function write(page: PDFPage, fonts: Fonts, text: string, x: number, y: number, heightMm: number, isBold: boolean, turn: 0 | 90): void {
    let along = 0;
    for (const piece of text.match(/[≈≥≤]|[^≈≥≤]+/g) ?? []) {
        const isSign = isInSign(piece);
        const known = isSign ? piece : Array.from(piece, one => isInFace(one) ? one : '?').join('');
        page.drawText(known, {
            x: pt(turn === 90 ? x : x + along), y: pt(turn === 90 ? y + along : y), size: pt(typeSizeMm(heightMm)), font: isSign ? fonts.sign : isBold ? fonts.bold : fonts.regular, color: rgb(0, 0, 0), rotate: degrees(turn),
        });
        along += textWidthMm(piece, heightMm, isBold);
    }
}
