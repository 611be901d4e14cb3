import { TICKS_PER_MM } from '../core/length.js';
import { dashesMm, lineWidthMm, type Dimension, type Item, type Label, type Lettering, type LineStyle, type Point } from './drawing.js';
import type { PlacedFigure, Sheet } from './sheet.js';
import { typeSizeMm } from './text-box.js';

export interface SvgOptions {
    /** `file` is black on white; `editor` takes ink and paper from the variables `--drawing-ink` and `--drawing-paper`. */
    readonly theme?: 'file' | 'editor';
    /** Writes the place in the text each solid comes from, for an editor. */
    readonly withSpans?: boolean;
}

const face = 'Helvetica, Arial, \'Liberation Sans\', sans-serif';

/**
 * One sheet as SVG: millimetres of the paper, true to scale when it is printed at its own size. Each solid is a group with its id and a title; each dimension a group
 * with its two witness points, its line and its figure. Texts carry the width they were given room for, so any face fits it. Equal sheets give equal bytes.
 */
export function sheetSvg(sheet: Sheet, { theme = 'file', withSpans = false }: SvgOptions = {}): string {
    const { widthMm, heightMm, title } = sheet;
    const [ink, ground] = theme === 'editor' ? ['var(--drawing-ink, #000)', 'var(--drawing-paper, #fff)'] : ['#000', '#fff'];
    const paint = (style: string): string => theme === 'editor' ? ` style="${style}"` : ` ${style.split('; ').map(one => one.replace(/: (.*)$/, '="$1"')).join(' ')}`;
    const writer = new SvgWriter(sheet, paint(`fill: ${ground}`), paint(`fill: ${ink}`), withSpans);
    return [
        `<svg xmlns="http://www.w3.org/2000/svg" width="${n(widthMm)}mm" height="${n(heightMm)}mm" viewBox="0 0 ${n(widthMm)} ${n(heightMm)}" role="img" data-view="${sheet.view}" data-scale="${sheet.scale.ratio}">`,
        `<title>${escape(title)}</title>`,
        `<rect id="paper" width="${n(widthMm)}" height="${n(heightMm)}"${paint(`fill: ${ground}`)}/>`,
        `<g id="lines" fill="none" stroke-linecap="round"${paint(`stroke: ${ink}`)} font-family="${face}">`,
        ...sheet.figures.flatMap((figure, i) => writer.figure(figure, i + 1)),
        `</g>`,
        `<g id="sheet" fill="none"${paint(`stroke: ${ink}`)}>`,
        ...sheet.lines.map(({ x1, y1, x2, y2, widthMm: width }) => `<path d="M${n(x1)} ${n(heightMm - y1)}L${n(x2)} ${n(heightMm - y2)}" stroke-width="${width}"/>`),
        '</g>',
        `<g id="notes"${paint(`fill: ${ink}`)} font-family="${face}">`,
        ...sheet.texts.filter(({ text }) => text !== '').map(({ text, x, y, heightMm: high, widthMm: wide, isBold }) =>
            `<text x="${n(x)}" y="${n(heightMm - y)}" font-size="${n(typeSizeMm(high))}" textLength="${n(wide)}" lengthAdjust="spacingAndGlyphs"${isBold ? ' font-weight="bold"' : ''}>${escape(text)}</text>`),
        '</g>',
        '</svg>',
        '',
    ].join('\n');
}

class SvgWriter {
    constructor(private readonly sheet: Sheet, private readonly ground: string, private readonly ink: string, private readonly withSpans: boolean) {}

    figure(figure: PlacedFigure, number: number): string[] {
        const { scale, heightMm } = this.sheet;
        const at = ({ x, y }: Point): readonly [number, number] => [figure.x + x / TICKS_PER_MM / scale.ratio, heightMm - figure.y - y / TICKS_PER_MM / scale.ratio];
        const solids = new Map<string, Item[]>();
        for (const item of figure.items) if (item.kind === 'line' || item.kind === 'arc') {
            const key = `${item.layer} ${item.of ?? ''}`;
            solids.set(key, [...solids.get(key) ?? [], item]);
        }
        return [
            `<g id="figure-${number}">`,
            ...[...solids].map(([key, items]) => this.#group(key, items, at, number)),
            ...figure.items.flatMap(item => item.kind === 'label' ? [this.#label(item, at)] : item.kind === 'dimension' ? [this.#dimension(item, at, number)] : []),
            '</g>',
        ];
    }

    #group(key: string, items: readonly Item[], at: Place, number: number): string {
        const [layer = '', of = ''] = key.split(' ');
        const known = this.sheet.titles.get(of);
        const span = known?.span;
        const paths = new Map<LineStyle, string[]>();
        for (const item of items) {
            if (item.kind !== 'line' && item.kind !== 'arc') continue;
            const drawn = paths.get(item.style) ?? [];
            paths.set(item.style, drawn);
            if (item.kind === 'line') { const [[x1, y1], [x2, y2]] = [at(item.from), at(item.to)]; drawn.push(`M${n(x1)} ${n(y1)}L${n(x2)} ${n(y2)}`); continue; }
            const end = (degrees: number): string => { const turn = degrees * Math.PI / 180; const [x, y] = at({ x: item.centre.x + item.radius * Math.cos(turn), y: item.centre.y + item.radius * Math.sin(turn) }); return `${n(x)} ${n(y)}`; };
            const radius = n(item.radius / TICKS_PER_MM / this.sheet.scale.ratio);
            drawn.push(`M${end(item.fromDegrees)}A${radius} ${radius} 0 ${item.toDegrees - item.fromDegrees > 180 ? 1 : 0} 0 ${end(item.toDegrees)}`);
        }
        const id = of === '' ? '' : ` id="f${number}-${layer}-${of}"`;
        const place = this.withSpans && span ? ` data-from="${span.start}" data-to="${span.end}" data-file="${escape(span.uri)}"` : '';
        return `<g${id} class="${layer}"${place}>${known ? `<title>${escape(known.title)}</title>` : ''}${[...paths].map(([style, d]) => `<path class="${style}" d="${d.join('')}" stroke-width="${lineWidthMm[style]}"${dashes(style)}/>`).join('')}</g>`;
    }

    #label({ lettering, leader, layer, of }: Label, at: Place): string {
        return `<g class="label ${layer}"${of === undefined ? '' : ` data-of="${escape(of)}"`}>${leader ? thin(leader, at, 'leader') : ''}${this.#text(lettering, at)}</g>`;
    }

    /** Witness lines start a little off the thing, so that they are not taken for edges of it; the figure's line ends in oblique strokes. */
    #dimension({ id, form, from, to, line, lettering, leader }: Dimension, at: Place, number: number): string {
        const stroke = ([x, y]: readonly [number, number]): string => `M${n(x - 1.1)} ${n(y + 1.1)}L${n(x + 1.1)} ${n(y - 1.1)}`;
        const [a, b] = [at(line[0]), at(line[1])];
        const ends = form === 'running' ? stroke(b) : stroke(a) + stroke(b);
        return `<g id="f${number}-${id}" class="dimension ${form}"><title>${escape(lettering.text)}</title>`
            + `${thin([from, line[0]], at, 'witness')}${thin([to, line[1]], at, 'witness')}${thin(line, at, 'measure')}`
            + `<path class="end" d="${ends}" stroke-width="0.35"/>${form === 'running' ? `<circle class="origin" cx="${n(a[0])}" cy="${n(a[1])}" r="0.8" stroke-width="0.18"/>` : ''}`
            + `${leader ? thin(leader, at, 'leader') : ''}${this.#text(lettering, at)}</g>`;
    }

    /** A text on ground of its own, so that lines behind it do not spoil it. */
    #text({ text, at: middle, heightMm, widthMm, turn, isBold }: Lettering, at: Place): string {
        const [x, y] = at(middle);
        const turned = turn === 90 ? ` transform="rotate(-90 ${n(x)} ${n(y)})"` : '';
        return `<rect x="${n(x - widthMm / 2 - 0.3)}" y="${n(y - heightMm / 2 - 0.3)}" width="${n(widthMm + 0.6)}" height="${n(heightMm + 0.6)}" stroke="none"${this.ground}${turned}/>`
            + `<text x="${n(x)}" y="${n(y + heightMm / 2)}" text-anchor="middle" font-size="${n(typeSizeMm(heightMm))}" textLength="${n(widthMm)}" lengthAdjust="spacingAndGlyphs" stroke="none"${this.ink}${isBold ? ' font-weight="bold"' : ''}${turned}>${escape(text)}</text>`;
    }
}

type Place = (at: Point) => readonly [number, number];

function thin([from, to]: readonly [Point, Point], at: Place, name: string): string {
    const [[x1, y1], [x2, y2]] = [at(from), at(to)];
    return n(x1) === n(x2) && n(y1) === n(y2) && name !== 'witness' ? '' : `<path class="${name}" d="M${n(x1)} ${n(y1)}L${n(x2)} ${n(y2)}" stroke-width="0.18"/>`;
}
const dashes = (style: LineStyle): string => dashesMm[style].length > 0 ? ` stroke-dasharray="${dashesMm[style].join(' ')}"` : '';

/** A coordinate on the paper to a thousandth of a millimetre: at 1 : 20 that is a fiftieth of a millimetre of the room. */
const n = (value: number): string => { const text = value.toFixed(3).replace(/\.?0+$/, ''); return text === '-0' ? '0' : text; };
export const escape = (text: string): string => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');
