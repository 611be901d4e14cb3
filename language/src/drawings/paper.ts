import type { LengthUnit } from '../core/show.js';
import { isMetric } from '../core/show.js';

/** Trimmed sheets, lying, mm: ISO 216 A sizes; letter and tabloid are the sizes A and B of ASME Y14.1, 11" x 8 1/2" and 17" x 11". From memory. */
export const papers = {
    a3: { widthMm: 420, heightMm: 297 }, a4: { widthMm: 297, heightMm: 210 },
    tabloid: { widthMm: 431.8, heightMm: 279.4 }, letter: { widthMm: 279.4, heightMm: 215.9 },
} as const;
export type PaperName = keyof typeof papers;
/** Paper that has room for a picture and one column of notes, and no more. */
export const isSmallPaper = (paper: PaperName): boolean => papers[paper].widthMm < 400;
export const paperNames = Object.keys(papers) as readonly PaperName[];
export const usualPaper = (unit: LengthUnit): PaperName => isMetric(unit) ? 'a3' : 'tabloid';

/** Margins of the frame, mm: 20 to file the sheet by, 10 elsewhere (ISO 5457, from memory). */
export const marginMm = { left: 20, right: 10, top: 10, bottom: 10 } as const;

export interface SheetScale { readonly ratio: number; readonly text: string }

/** Reductions of ISO 5455 (1 : 2, 5, 10 and their tens, from memory), with 1 : 25 and 1 : 15 between them left out. */
const metricScales: readonly SheetScale[] = [2, 5, 10, 20, 50, 100, 200].map(ratio => ({ ratio, text: `1 : ${ratio}` }));
/** Inches of paper to a foot of room, as builders' rules are divided. Common practice, no source. */
const inchScales: readonly SheetScale[] = [['6"', 2], ['3"', 4], ['1 1/2"', 8], ['1"', 12], ['3/4"', 16], ['1/2"', 24], ['3/8"', 32], ['1/4"', 48], ['3/16"', 64], ['1/8"', 96], ['3/32"', 128], ['1/16"', 192]]
    .map(([paper, ratio]) => ({ ratio: Number(ratio), text: `${paper} = 1'-0" (1 : ${ratio})` }));
/** Largest first. */
export const scalesFor = (unit: LengthUnit): readonly SheetScale[] => isMetric(unit) ? metricScales : inchScales;
