import { textWidthMm } from './text-box.js';

/** A text of the sheet itself; `x` and `y` are the left end of its line, mm from the lower left corner of the paper. */
export interface SheetText { readonly text: string; readonly x: number; readonly y: number; readonly heightMm: number; readonly isBold?: boolean; readonly widthMm: number }
export interface SheetLine { readonly x1: number; readonly y1: number; readonly x2: number; readonly y2: number; readonly widthMm: number }
export const sheetText = (text: string, x: number, y: number, heightMm: number, isBold = false): SheetText => ({ text, x, y, heightMm, widthMm: textWidthMm(text, heightMm, isBold), ...(isBold && { isBold }) });
