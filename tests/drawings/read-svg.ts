/** A reader of the SVG the product writes, by the text of the file alone: nothing here knows the model it was drawn from. */
export interface SvgText { readonly text: string; readonly left: number; readonly right: number; readonly top: number; readonly bottom: number }
export interface SvgDimension {
    readonly id: string;
    readonly figure: string;
    readonly form: string;
    readonly number: number;
    /** Ends of the dimension line and starts of the witness lines, mm on the paper. */
    readonly line: readonly [Point, Point];
    readonly witnesses: readonly [Point, Point];
}
export type Point = readonly [number, number];
export interface ReadSvg { readonly view: string; readonly scale: number; readonly width: number; readonly height: number; readonly texts: readonly SvgText[]; readonly dimensions: readonly SvgDimension[]; readonly ids: readonly string[] }

const attribute = (tag: string, name: string): string | undefined => new RegExp(` ${name}="([^"]*)"`).exec(tag)?.[1];
const numberOf = (tag: string, name: string): number => Number(attribute(tag, name) ?? Number.NaN);
export const unescape = (text: string): string => text.replaceAll('&lt;', '<').replaceAll('&gt;', '>').replaceAll('&quot;', '"').replaceAll('&amp;', '&');

/** Capitals reach 0.718 of the size above the line and letters 0.207 below it: Adobe Font Metrics of Helvetica, from memory of its AFM file. */
const [capital, descent] = [0.718, 0.207];

export function readSvg(svg: string): ReadSvg {
    const [head = ''] = /<svg [^>]*>/.exec(svg) ?? [];
    const texts = [...svg.matchAll(/(<text [^>]*>)([^<]*)<\/text>/g)].map(([, tag = '', content = '']): SvgText => {
        const [x, y, size, width] = [numberOf(tag, 'x'), numberOf(tag, 'y'), numberOf(tag, 'font-size'), numberOf(tag, 'textLength')];
        const left = attribute(tag, 'text-anchor') === 'middle' ? x - width / 2 : x;
        const flat = { left, right: left + width, top: y - size * capital, bottom: y + size * descent };
        const turn = /rotate\(-90 ([\d.-]+) ([\d.-]+)\)/.exec(attribute(tag, 'transform') ?? '');
        if (!turn) return { text: unescape(content), ...flat };
        const [cx, cy] = [Number(turn[1]), Number(turn[2])];
        // a quarter turn to the left: (dx, dy) becomes (dy, -dx)
        return { text: unescape(content), left: cx + flat.top - cy, right: cx + flat.bottom - cy, top: cy - (flat.right - cx), bottom: cy - (flat.left - cx) };
    });
    const dimensions = [...svg.matchAll(/<g id="f(\d+)-(dimension-\d+)" class="dimension (\w+)"><title>([^<]*)<\/title>(.*?)<\/g>/g)].map(([, number, id = '', form = '', title = '', body = '']): SvgDimension => {
        const paths = (name: string): (readonly [Point, Point])[] => [...body.matchAll(new RegExp(`<path class="${name}" d="M([\\d.-]+) ([\\d.-]+)L([\\d.-]+) ([\\d.-]+)"`, 'g'))].map(found => [[Number(found[1]), Number(found[2])], [Number(found[3]), Number(found[4])]]);
        const [measure] = paths('measure');
        const [first, second] = paths('witness');
        if (!measure || !first || !second) throw new Error(`${id} has no line or no witnesses`);
        return { id, form, number: Number(number), figure: unescape(title), line: measure, witnesses: [first[0], second[0]] };
    });
    return {
        view: attribute(head, 'data-view') ?? '', scale: Number(attribute(head, 'data-scale')), width: Number.parseFloat(attribute(head, 'width') ?? ''), height: Number.parseFloat(attribute(head, 'height') ?? ''),
        texts, dimensions, ids: [...svg.matchAll(/ id="([^"]*)"/g)].map(([, id = '']) => id),
    };
}

/** A figure of a drawing in mm, with half of what rounding may have taken: read anew here, by other means than the product writes it. */
export function readFigure(text: string): { readonly mm: number; readonly within: number } {
    const found = /^(≈?)(?:(\d+)'(?: ?(?=\d)|(?= )|$))?(?:(\d+(?:\.\d+)?)(?: (\d+)\/(\d+))?|(\d+)\/(\d+))?("| mm| cm| m|(?<='))/.exec(text);
    if (!found) throw new Error(`No figure: ${text}`);
    const [, rounded, feet, whole, n, d, n2, d2, unit] = found;
    const value = Number(whole ?? 0) + (n !== undefined ? Number(n) / Number(d) : 0) + (n2 !== undefined ? Number(n2) / Number(d2) : 0);
    const per = { '"': 25.4, '': 25.4, ' mm': 1, ' cm': 10, ' m': 1000 }[unit ?? ''] ?? Number.NaN;
    return { mm: Number(feet ?? 0) * 304.8 + value * per, within: rounded === '' ? 0 : per === 25.4 ? 25.4 / 32 : 0.25 };
}

/** Pairs of texts that lie on each other. */
export function collisions({ texts }: ReadSvg): readonly string[] {
    return texts.flatMap((one, i) => texts.slice(i + 1).filter(other => one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom)
        .map(other => `${one.text} | ${other.text}`));
}
/** Texts that leave the paper. */
export const outside = ({ texts, width, height }: ReadSvg): readonly string[] => texts.filter(({ left, right, top, bottom }) => left < 0 || top < 0 || right > width || bottom > height).map(({ text }) => text);

const apart = ([[x1, y1], [x2, y2]]: readonly [Point, Point]): number => Math.hypot(x2 - x1, y2 - y1);

/**
 * What is wrong with the figures: the distance of the ends of each dimension line, and of its witness points along that line, against the text. Ends are written to
 * 0.001 mm of the paper, so two of them may be off by one thousandth at the scale; a rounded figure by half its step besides.
 */
export function wrongFigures({ dimensions, scale }: ReadSvg): readonly string[] {
    return dimensions.flatMap(({ id, figure, line, witnesses }) => {
        const { mm, within } = readFigure(figure);
        const [[ax, ay], [bx, by]] = line;
        const length = apart(line);
        const [[px, py], [qx, qy]] = witnesses;
        const along = length === 0 ? 0 : Math.abs(((qx - px) * (bx - ax) + (qy - py) * (by - ay)) / length);
        return [['line', length], ['witnesses', along]].flatMap(([what, paper]) => {
            const measured = Number(paper) * scale;
            return Math.abs(measured - mm) <= within + 0.0015 * scale ? [] : [`${id}: ${String(what)} ${measured.toFixed(3)} mm, ${figure} = ${mm.toFixed(3)} mm`];
        });
    });
}

/** Chains whose members do not make the overall dimension beside them, or leave gaps. */
export function wrongChains({ dimensions, scale }: ReadSvg): { readonly wrong: readonly string[]; readonly checked: number } {
    const wrong: string[] = [];
    let checked = 0;
    const chains = new Map<string, SvgDimension[]>();
    for (const one of dimensions) {
        if (one.form !== 'chain') continue;
        const [[ax, ay], [bx, by]] = one.line;
        const key = `${one.number} ${ax === bx ? `x${ax}` : `y${ay === by ? ay : 'slanting'}`}`;
        chains.set(key, [...chains.get(key) ?? [], one]);
    }
    for (const [key, members] of chains) {
        const place = (point: Point): number => key.includes('x') ? point[1] : point[0];
        const ends = members.flatMap(({ line }) => line.map(place));
        const [low, high] = [Math.min(...ends), Math.max(...ends)];
        const sum = members.reduce((total, { line }) => total + apart(line), 0);
        if (Math.abs(sum - (high - low)) > 0.0015 * members.length) wrong.push(`${key}: members ${sum}, whole ${high - low}`);
        const overall = dimensions.find(one => one.form === 'overall' && one.number === members[0]!.number && Math.abs(Math.min(...one.line.map(place)) - low) < 0.002 && Math.abs(Math.max(...one.line.map(place)) - high) < 0.002);
        if (!overall) continue;
        checked++;
        const total = members.reduce((all, { figure }) => all + readFigure(figure).mm, 0);
        const slack = members.reduce((all, { figure }) => all + readFigure(figure).within, readFigure(overall.figure).within);
        if (Math.abs(total - readFigure(overall.figure).mm) > slack + 1e-6 * scale) wrong.push(`${key}: figures ${total}, overall ${overall.figure}`);
    }
    return { wrong, checked };
}
