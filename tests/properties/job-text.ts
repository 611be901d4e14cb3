import type { Wall } from '../../language/src/core/geometry.js';

/**
 * The text of a job as a small tree, so that one job can be written in two units, in a mirror, in another order and in another layout. Lengths
 * are whole sixteenths of an inch, which are whole tenths of a micrometre too: both writings are exact.
 */
export type Piece = string | { readonly sixteenths: number } | { readonly side: Wall };
export interface FactText { readonly key: string; readonly value: readonly Piece[] }
export interface BlockText { readonly header: readonly Piece[]; readonly body: readonly (FactText | BlockText)[] }
export interface FileText { readonly uses: readonly string[]; readonly jobs: readonly BlockText[] }

export type WrittenUnit = 'in' | 'mm';

export const isBlockText = (item: FactText | BlockText): item is BlockText => 'header' in item;
export const inch = (whole: number, sixteenths = 0): Piece => ({ sixteenths: whole * 16 + sixteenths });
export const length = (sixteenths: number): Piece => ({ sixteenths });
export const side = (wall: Wall): Piece => ({ side: wall });
export const fact = (key: string, ...value: readonly Piece[]): FactText => ({ key, value });
export const block = (header: readonly Piece[], ...body: readonly (FactText | BlockText)[]): BlockText => ({ header, body });

const inMirror: Readonly<Record<Wall, Wall>> = { front: 'front', back: 'back', left: 'right', right: 'left' };
/** Left and right change places wherever a wall is named. Figures measured from the left of the site are the generator's business. */
export function mirrorBlock({ header, body }: BlockText): BlockText {
    const turn = (piece: Piece): Piece => typeof piece === 'object' && 'side' in piece ? side(inMirror[piece.side]) : piece;
    return { header: header.map(turn), body: body.map(item => isBlockText(item) ? mirrorBlock(item) : { key: item.key, value: item.value.map(turn) }) };
}

/** The same facts and blocks at every depth in an order that `pick` decides: it is given a count and answers with an index below it. */
export function shuffleBlock(block: BlockText, pick: (count: number) => number): BlockText {
    const rest = block.body.map(item => isBlockText(item) ? shuffleBlock(item, pick) : item);
    const body: (FactText | BlockText)[] = [];
    while (rest.length > 0) body.push(...rest.splice(pick(rest.length), 1));
    return { header: block.header, body };
}

/** `open` gives every fact a line of its own; `compact` writes a small block on one line, as people do. */
export type Layout = 'open' | 'compact';

export const writeFile = (file: FileText, unit: WrittenUnit = 'in', layout: Layout = 'open'): string =>
    [...file.uses.map(path => `use "${path}"`), '', ...file.jobs.flatMap(job => [...blockLines(job, unit, layout, ''), ''])].join('\n');

function blockLines(text: BlockText, unit: WrittenUnit, layout: Layout, indent: string): string[] {
    const header = writeValue(text.header, unit);
    if (layout === 'compact' && isSmall(text)) return [`${indent}${header} { ${text.body.flatMap(item => isBlockText(item) ? [] : [`${item.key} ${writeValue(item.value, unit)}`]).join('; ')} }`];
    const lines = text.body.flatMap(item => isBlockText(item) ? blockLines(item, unit, layout, `${indent}    `) : [`${indent}    ${item.key.padEnd(9)} ${writeValue(item.value, unit)}`]);
    return [`${indent}${header} {`, ...lines, `${indent}}`];
}

/** Whether people write a block on one line: five facts and no block in it. */
export const isSmall = ({ body }: BlockText): boolean => body.length <= 5 && !body.some(isBlockText);

/** Pieces divided by single spaces; a comma stands close to what it follows. */
export const writeValue = (pieces: readonly Piece[], unit: WrittenUnit): string => pieces.map(piece => writePiece(piece, unit)).join(' ').replaceAll(' ,', ',');

function writePiece(piece: Piece, unit: WrittenUnit): string {
    if (typeof piece === 'string') return piece;
    return 'side' in piece ? piece.side : writeSixteenths(piece.sixteenths, unit);
}

/** `34 3/4"` or `882.65 mm`, exactly. */
export function writeSixteenths(sixteenths: number, unit: WrittenUnit): string {
    if (unit === 'mm') return `${String(sixteenths * 15_875 / 10_000)} mm`;
    const whole = Math.floor(sixteenths / 16);
    let [numerator, denominator] = [sixteenths - whole * 16, 16];
    if (numerator === 0) return `${whole}"`;
    while (numerator % 2 === 0) [numerator, denominator] = [numerator / 2, denominator / 2];
    return whole === 0 ? `${numerator}/${denominator}"` : `${whole} ${numerator}/${denominator}"`;
}
