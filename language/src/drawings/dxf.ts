import { Colors, DxfWriter, LineTypes, TextHorizontalAlignment, TextVerticalAlignment, Units, point3d, type DxfBlock, type vec3_t } from '@tarikjabiri/dxf';
import { TICKS_PER_INCH, TICKS_PER_MM } from '../core/length.js';
import { isMetric, type LengthUnit } from '../core/show.js';
import { dashesMm, type Dimension, type Layer, type Lettering, type LineStyle, type Point } from './drawing.js';
import type { Sheet } from './sheet.js';

/**
 * One view as DXF, in the real size of the room: millimetres or inches as the job is written, as the file says of itself. Layers are named after what is on them, with a
 * layer of its own for what is cut and what is hidden. Dimensions are dimension entities between their two witness points, with the figure of the sheet as their text
 * and a block that shows them. Axonometric views hold the projected lines. Equal sheets give equal bytes.
 * @param notes lines of text below the drawing: the job, its standing, the cautions
 */
export function sheetDxf(sheet: Sheet, unit: LengthUnit, notes: readonly string[]): string {
    const writer = new DxfWriter();
    const per = isMetric(unit) ? TICKS_PER_MM : TICKS_PER_INCH;
    writer.setUnits(isMetric(unit) ? Units.Millimeters : Units.Inches);
    const pen = new DxfPen(writer, per, sheet.scale.ratio);
    let left = 0;
    for (const { items } of sheet.figures) {
        const points = items.flatMap(item => item.kind === 'line' ? [item.from, item.to] : item.kind === 'dimension' ? [item.from, item.to, ...item.line, item.lettering.at] : item.kind === 'label' ? [item.lettering.at] : []);
        const [low, high] = [Math.min(...points.map(({ x }) => x)), Math.max(...points.map(({ x }) => x))];
        // the first picture keeps the coordinates of the room; others stand beside it by whole units
        const shift = left === 0 ? 0 : Math.ceil((left - low) / per) * per;
        for (const item of items) pen.item(item, shift);
        left = high + shift + pen.paper(20) * per;
    }
    const bottom = Math.min(0, ...sheet.items.flatMap(item => item.kind === 'dimension' ? [item.lettering.at.y, item.line[0].y, item.line[1].y] : item.kind === 'line' ? [item.from.y, item.to.y] : [])) / per;
    for (const [i, text] of notes.entries()) pen.note(text, bottom - pen.paper(16 + i * 4));
    return writer.stringify();
}

class DxfPen {
    readonly #writer: DxfWriter;
    readonly #per: number;
    readonly #ratio: number;
    #dimensions = 0;

    constructor(writer: DxfWriter, per: number, ratio: number) {
        this.#writer = writer;
        this.#per = per;
        this.#ratio = ratio;
        for (const style of ['hidden', 'centre', 'moving'] as const) writer.addLType(typeOf(style), style, dashesMm[style].map((length, i) => (i % 2 === 0 ? 1 : -1) * this.paper(length)));
    }

    /** Millimetres of the paper in units of the drawing. */
    paper(millimetres: number): number { return millimetres * TICKS_PER_MM * this.#ratio / this.#per; }
    #at({ x, y }: Point, shift: number): vec3_t { return point3d((x + shift) / this.#per, y / this.#per); }

    #layer(layer: Layer, style?: LineStyle): string {
        const name = `${layer.toUpperCase()}${style === 'cut' ? '-CUT' : style === 'hidden' ? '-HIDDEN' : ''}`;
        if (!this.#writer.layer(name)) this.#writer.addLayer(name, Colors.White, style === undefined || style === 'cut' || style === 'visible' || style === 'thin' ? LineTypes.Continuous : typeOf(style));
        return name;
    }

    item(item: Sheet['items'][number], shift: number): void {
        switch (item.kind) {
            case 'line': this.#writer.addLine(this.#at(item.from, shift), this.#at(item.to, shift), this.#style(item.layer, item.style)); return;
            case 'arc': this.#writer.addArc(this.#at(item.centre, shift), item.radius / this.#per, item.fromDegrees, item.toDegrees, this.#style(item.layer, item.style)); return;
            case 'label':
                this.#text(this.#writer.modelSpace, item.lettering, shift, this.#layer(item.layer));
                if (item.leader) this.#writer.addLine(this.#at(item.leader[0], shift), this.#at(item.leader[1], shift), { layerName: this.#layer(item.layer) });
                return;
            case 'dimension': this.#dimension(item, shift); return;
            default: item satisfies never;
        }
    }
    note(text: string, y: number): void { this.#writer.addText(point3d(0, y), this.paper(2.5), text, { layerName: this.#layer('notes') }); }

    #style(layer: Layer, style: LineStyle): { readonly layerName: string; readonly lineType: string } {
        return { layerName: this.#layer(layer, style), lineType: style === 'cut' || style === 'visible' || style === 'thin' ? LineTypes.Continuous : typeOf(style) };
    }

    #dimension({ from, to, line, lettering, leader }: Dimension, shift: number): void {
        const layerName = this.#layer('dimensions');
        this.#dimensions++;
        const block = this.#writer.addBlock(`DIMENSION_${this.#dimensions}`);
        const draw = (a: Point, b: Point): void => { block.addLine(this.#at(a, shift), this.#at(b, shift), { layerName }); };
        draw(from, line[0]);
        draw(to, line[1]);
        draw(...line);
        if (leader) draw(...leader);
        const arm = this.paper(1.1) * this.#per;
        for (const { x, y } of line) draw({ x: x - arm, y: y - arm }, { x: x + arm, y: y + arm });
        this.#text(block, lettering, shift, layerName);
        const shared = { layerName, blockName: block.name, definitionPoint: this.#at(line[1], shift), middlePoint: this.#at(lettering.at, shift), text: lettering.text };
        const isStraight = line[0].x === line[1].x || line[0].y === line[1].y;
        if (isStraight) this.#writer.addLinearDim(this.#at(from, shift), this.#at(to, shift), { ...shared, angle: line[0].y === line[1].y ? 0 : 90 });
        else this.#writer.addAlignedDim(this.#at(from, shift), this.#at(to, shift), shared);
    }

    #text(into: DxfBlock, { text, at, heightMm, turn }: Lettering, shift: number, layerName: string): void {
        const place = this.#at(at, shift);
        into.addText(place, this.paper(heightMm), text, { layerName, rotation: turn, horizontalAlignment: TextHorizontalAlignment.Center, verticalAlignment: TextVerticalAlignment.Middle, secondAlignmentPoint: place });
    }
}

const typeOf = (style: LineStyle): string => ({ hidden: 'DASHED', centre: 'CHAIN', moving: 'CHAIN_DOUBLE_DOT', cut: LineTypes.Continuous, visible: LineTypes.Continuous, thin: LineTypes.Continuous })[style];
