import type { Length } from '../core/length.js';
import { isMetric, showLength, showNumber, type LengthUnit } from '../core/show.js';

/** A sum of money in whole hundredths of its currency. */
interface Money { readonly minor: number; readonly currency: string }

/** `12.40 USD`. */
export function showMoney({ minor, currency }: Money): string {
    const size = Math.abs(minor);
    return `${minor < 0 ? '-' : ''}${Math.floor(size / 100)}.${String(size % 100).padStart(2, '0')} ${currency}`;
}

/** Unit of the saw's scale: plain inches or millimetres, never feet, whatever the designer writes. */
export const sawUnit = (unit: LengthUnit): LengthUnit => isMetric(unit) ? 'mm' : 'in';

/** A length as the saw operator reads it: 1/32" or 0.5 mm, with ≈ before a figure that is not the value. */
export const showCut = (length: Length, unit: LengthUnit): string => showLength(length, sawUnit(unit), 'shop');

/** A board as bought: `8'`, `2400 mm`. */
export const showBoardLength = (length: Length, unit: LengthUnit): string => showLength(length, isMetric(unit) ? 'mm' : 'ft_in', 'shop');

/** `1 1/2" x 3 1/2"`, thickness first. */
export const showSection = (section: { readonly thickness: Length; readonly width: Length }, unit: LengthUnit): string =>
    `${showCut(section.thickness, unit)} x ${showCut(section.width, unit)}`;

/** A share as a percentage with at most two decimals, never shown smaller than it is: `0.42 %`. */
export const showShareUp = (share: number): string => `${showNumber(Math.ceil(share * 10_000 - 1e-9) / 100)} %`;

/** `1 board`, `3 boards`. */
export const showCount = (count: number, one: string, several = `${one}s`): string => `${count} ${count === 1 ? one : several}`;
