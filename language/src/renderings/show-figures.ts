import { TICKS_PER_FOOT, type Length } from '../core/length.js';
import { isMetric, showLength, showNumber, type LengthUnit, type Purpose } from '../core/show.js';
import type { RenderedJob } from './rendered-job.js';

/** A sum of money in whole hundredths of its currency. */
interface Money { readonly minor: number; readonly currency: string }

/** `12.40 USD`. */
export function showMoney({ minor, currency }: Money): string {
    const size = Math.abs(minor);
    return `${minor < 0 ? '-' : ''}${Math.floor(size / 100)}.${String(size % 100).padStart(2, '0')} ${currency}`;
}

/** The unit a document is written in, and how finely when not as the shop reads it: 1/32" or 0.5 mm. */
export type Scale = LengthUnit | { readonly unit: LengthUnit; readonly purpose: Purpose };
export const isMetricScale = (scale: Scale): boolean => isMetric(typeof scale === 'string' ? scale : scale.unit);
export const purposeOf = (scale: Scale): Purpose => typeof scale === 'string' ? 'shop' : scale.purpose;

/** The scale of a job's documents, as its project or else the job says. */
export function scaleOf({ job, settings }: Pick<RenderedJob, 'job' | 'settings'>): Scale {
    const purpose = settings?.rounding?.value;
    return purpose === undefined ? job.unit : { unit: job.unit, purpose };
}

/** Unit of the saw's scale: plain inches or millimetres, never feet, whatever the designer writes. */
export const sawUnit = (scale: Scale): LengthUnit => isMetricScale(scale) ? 'mm' : 'in';

/** A length as the saw operator reads it, with ≈ before a figure that is not the value. */
export const showCut = (length: Length, scale: Scale): string => showLength(length, sawUnit(scale), purposeOf(scale));

/** A board as bought: `8'`, `2400 mm`. One that is no whole number of feet is written in inches, as every other length on the page: `100"`. */
export const showBoardLength = (length: Length, scale: Scale): string => showLength(length, isMetricScale(scale) ? 'mm' : length % TICKS_PER_FOOT === 0 ? 'ft_in' : 'in', 'shop');

/** `1 1/2" x 3 1/2"`, thickness first. */
export const showSection = (section: { readonly thickness: Length; readonly width: Length }, unit: Scale): string =>
    `${showCut(section.thickness, unit)} x ${showCut(section.width, unit)}`;

/** A share as a percentage with at most two decimals, never shown smaller than it is: `0.42 %`. */
export const showShareUp = (share: number): string => `${showNumber(Math.ceil(share * 10_000 - 1e-9) / 100)} %`;

/** `1 board`, `3 boards`. */
export const showCount = (count: number, one: string, several = `${one}s`): string => `${count} ${count === 1 ? one : several}`;
