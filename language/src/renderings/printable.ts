/**
 * Text that is safe to print: control characters (which a terminal obeys) and the marks that turn the direction of writing (which hide what a line
 * says) are written out as `\u{1b}`. Line breaks and tabs go the same way; who wants them keeps them before.
 */
export const printable = (text: string): string =>
    text.replaceAll(/[\u0000-\u001f\u007f-\u009f\u200e\u200f\u2028-\u202e\u2066-\u2069\ufeff]/g, found => `\\u{${(found.codePointAt(0) ?? 0).toString(16)}}`);

/** Columns a text takes in a terminal: two for East Asian wide characters and emoji, none for marks that combine with the letter before. */
export function displayWidth(text: string): number {
    let width = 0;
    for (const character of text) width += characterWidth(character);
    return width;
}

const joins = /^[\p{Mn}\p{Me}\u200b-\u200d\ufe00-\ufe0f]$/u;
const isWide = /^[\p{Emoji_Presentation}\u1100-\u115f\u2e80-\u303e\u3041-\u33ff\u3400-\u4dbf\u4e00-\u9fff\ua000-\ua4cf\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe4f\uff00-\uff60\uffe0-\uffe6\u{20000}-\u{3fffd}]$/u;

export const characterWidth = (character: string): number => joins.test(character) ? 0 : isWide.test(character) ? 2 : 1;
