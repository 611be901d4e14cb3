import type { SheetScale } from './paper.js';
import { linesOf } from './text-box.js';
import { sheetText, type SheetLine, type SheetText } from './sheet-text.js';

/** What every sheet of a job says of itself. */
export interface TitleFacts {
    readonly job: string;
    readonly number: string;
    readonly revision: string;
    /** Rule sets with their editions. */
    readonly rules: string;
    /** What the job stands with, such as open errors. */
    readonly standing: string;
    readonly cautions: readonly string[];
    readonly papers: readonly string[];
    readonly blockHeightMm: number;
}

export const blockHeightMm = 62;
export const deference = 'No approval of any kind. The manual that comes with the heater, the local code and licensed trades decide.';

interface BlockInput {
    readonly facts: TitleFacts;
    readonly title: string;
    /** Absent where nothing on the sheet is to scale. */
    readonly scale: SheetScale | undefined;
    readonly sheet: { readonly of: number; readonly sheet: number };
    readonly bar: { readonly widthMm: number; readonly parts: number; readonly text: string };
    readonly right: number;
    readonly bottom: number;
    readonly width: number;
}

/** Title block in the lower right corner; its fields after ISO 7200:2004 (owner's title, supplementary title, number, revision, sheet), from memory. */
export function titleBlock({ facts, title, scale, sheet, bar, right, bottom, width }: BlockInput): { readonly lines: readonly SheetLine[]; readonly texts: readonly SheetText[] } {
    const left = right - width;
    const rows = [0, 11, 19, 27, 41, blockHeightMm];
    const lines: SheetLine[] = rows.slice(1).map(y => ({ x1: left, x2: right, y1: bottom + y, y2: bottom + y, widthMm: 0.35 }));
    const split = left + width / 2;
    lines.push({ x1: split, x2: split, y1: bottom + 11, y2: bottom + 27, widthMm: 0.18 });
    const texts: SheetText[] = [];
    const field = (name: string, value: string, x: number, row: number, room: number, height = 2.5): void => {
        const y = bottom + (rows[row + 1] ?? 0);
        texts.push(sheetText(name, x + 1.5, y - 2.6, 1.3));
        for (const [i, line] of linesOf(value, room - 3, height).slice(0, 3).entries()) texts.push(sheetText(line, x + 1.5, y - 3.9 - height - i * (height + 1.3), height));
    };
    field('Sheet shows', title, left, 4, width, 3.5);
    texts.push(...linesOf(facts.job, width - 3, 2.5).slice(0, 2).map((line, i) => sheetText(line, left + 1.5, bottom + 50.4 - i * 4, 2.5)));
    field('Rule sets and editions', facts.rules, left, 3, width, 1.8);
    field('Job number', facts.number, left, 2, width / 2);
    field('Revision', facts.revision, split, 2, width / 2);
    field('Scale', scale?.text ?? 'not to scale', left, 1, width / 2, 1.8);
    field('Sheet', `${sheet.sheet} of ${sheet.of}`, split, 1, width / 2);
    for (const [i, line] of linesOf(deference, width - 3, 1.8).entries()) texts.push(sheetText(line, left + 1.5, bottom + 7.4 - i * 3, 1.8));
    texts.push(...(scale ? [sheetText(bar.text, left + 3 + bar.widthMm + 2, bottom + 42.6, 1.8)] : []));
    if (scale) lines.push(...barLines(left + 3, bottom + 42.6, bar));
    if (facts.standing !== '') texts.push(sheetText(facts.standing, left + 1.5, bottom + blockHeightMm + 2, 2.5, true));
    return { lines, texts };
}

function barLines(x: number, y: number, { widthMm, parts }: BlockInput['bar']): readonly SheetLine[] {
    const step = widthMm / parts;
    return [
        { x1: x, x2: x + widthMm, y1: y, y2: y, widthMm: 0.18 },
        ...Array.from({ length: parts + 1 }, (_, i) => ({ x1: x + i * step, x2: x + i * step, y1: y, y2: y + 2, widthMm: 0.18 })),
        ...Array.from({ length: parts / 2 }, (_, i) => ({ x1: x + 2 * i * step, x2: x + (2 * i + 1) * step, y1: y + 1, y2: y + 1, widthMm: 0.7 })),
    ];
}
