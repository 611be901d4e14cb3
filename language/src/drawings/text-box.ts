import { Font, FontNames, Encodings } from '@pdf-lib/standard-fonts';

/**
 * Height of a capital of Helvetica over its size, and how far letters reach over and under their line: Adobe Font Metrics of the core 14 fonts (CapHeight 718,
 * Ascender 718, Descender -207), read from the library.
 */
const faces = { regular: Font.load(FontNames.Helvetica), bold: Font.load(FontNames.HelveticaBold), sign: Font.load(FontNames.Symbol) };
export const capitalShare = 0.718;

/** Whether a letter can be set in the sheet's own face; the sign ≈ comes from the Symbol face, and what is in neither is set as `?`. */
export const isInFace = (letter: string): boolean => Encodings.WinAnsi.canEncodeUnicodeCodePoint(letter.codePointAt(0) ?? 0);
export const isInSign = (letter: string): boolean => letter === '≈' || letter === '≥' || letter === '≤';

/** Size of type in mm that gives capitals of a height. */
export const typeSizeMm = (heightMm: number): number => heightMm / capitalShare;

/** Width of a text in mm for capitals of `heightMm`, by the published metrics of the face. */
export function textWidthMm(text: string, heightMm: number, isBold = false): number {
    const face = isBold ? faces.bold : faces.regular;
    let width = 0;
    for (const letter of text) {
        if (isInSign(letter)) { width += 549; continue; }
        const known = isInFace(letter) ? letter : '?';
        const glyph = Encodings.WinAnsi.encodeUnicodeCodePoint(known.codePointAt(0) ?? 0);
        width += face.getWidthOfGlyph(glyph.name) ?? 556;
    }
    return Math.ceil(width * typeSizeMm(heightMm)) / 1000;
}

/** Breaks a text into lines no wider than asked; a word that is wider stands alone. */
export function linesOf(text: string, widthMm: number, heightMm: number): readonly string[] {
    const lines: string[] = [];
    for (const word of text.split(/\s+/)) {
        const longer = lines.length > 0 ? `${lines.at(-1) ?? ''} ${word}` : word;
        if (lines.length > 0 && textWidthMm(longer, heightMm) <= widthMm) lines[lines.length - 1] = longer; else lines.push(word);
    }
    return lines;
}
