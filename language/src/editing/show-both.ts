import type { Figure } from '../core/finding.js';
import type { Length } from '../core/length.js';
import { units } from '../core/quantity.js';
import { toNumber } from '../core/rational.js';
import { isMetric, showBoth, showLength, showNumber, showOther, type LengthUnit } from '../core/show.js';
import type { Given } from '../model/block.js';
import type { Property } from '../vocabulary/block.js';
import type { LengthRange, NumberRange, Place, Size, WallLength } from '../vocabulary/values.js';

/** Units of one thing, the one of the inch world first. */
const pairs: readonly (readonly [string, string])[] = [['ft3', 'm3'], ['ft2', 'm2'], ['in2', 'cm2'], ['lb', 'kg'], ['degF', 'degC']];

/** `258 ft3 (7.31 m3)`, the system the job is written in first; a unit both share, such as A, once. */
export function showAmountBoth(value: number, unit: string, metricFirst: boolean): string {
    const pair = pairs.find(([inch, metric]) => inch === unit || metric === unit);
    if (!pair) return unit === '' ? showNumber(value) : `${showNumber(value)} ${unit}`;
    const [inch, metric] = pair.map(other => `${showNumber(convert(value, unit, other))} ${other}`);
    return metricFirst ? `${metric ?? ''} (${inch ?? ''})` : `${inch ?? ''} (${metric ?? ''})`;
}

function convert(value: number, from: string, to: string): number {
    const [a, b] = [units[from], units[to]];
    if (from === to || !a || !b) return value;
    const base = value * toNumber(a.factor) + (a.offset ? toNumber(a.offset) : 0);
    return (base - (b.offset ? toNumber(b.offset) : 0)) / toNumber(b.factor);
}

/** A computed figure in both systems. */
export function showFigureBoth(figure: Figure, unit: LengthUnit): string {
    switch (figure.kind) {
        case 'length': return showBoth(figure.length, unit);
        case 'amount': return showAmountBoth(figure.value, figure.unit, isMetric(unit));
        case 'words': return figure.words;
        default: return figure satisfies never;
    }
}

/** A computed figure as short as it goes, in the job's own system, for hints between the text. */
export function showFigureShort(figure: Figure, unit: LengthUnit): string {
    return figure.kind === 'length' ? showLength(figure.length, unit, 'drawing') : showFigureBoth(figure, unit).replace(/ \(.*\)$/, '');
}

/** The SI unit each amount is kept in, as `Given.value` holds it. */
const siUnits: Readonly<Record<string, string>> = { mass: 'kg', temperature: 'degC', area: 'm2', volume: 'm3' };

/** A value as it was given, in both systems; nothing when there is no more to say than the text says. */
export function showGivenBoth(property: Property, given: Given<unknown>): string | undefined {
    const unit = (given.unit ?? 'in') as LengthUnit;
    const metricFirst = ['kg', 'degC', 'm2', 'cm2', 'm3'].includes(given.unit ?? '') || isMetric(unit);
    const exact = (length: Length): string => showLength(length, unit);
    const other = (length: Length): string => showOther(length, unit);
    const both = (own: string, converted: string): string => `${own} (${converted})`;
    const { value } = given;
    switch (property.type.kind) {
        case 'length': return both(exact(value as Length), other(value as Length));
        case 'lengths': return (value as readonly Length[]).map(length => both(exact(length), other(length))).join(', ');
        case 'size': { const { width, height } = value as Size; return both(`${exact(width)} x ${exact(height)}`, `${other(width)} x ${other(height)}`); }
        case 'length-range': { const { from, to } = value as LengthRange; return both(`${exact(from)} to ${exact(to)}`, `${other(from)} to ${other(to)}`); }
        case 'place': case 'centre-place': { const { wall, distance } = value as Place; return `${wall} ${both(exact(distance), other(distance))}`; }
        case 'wall-lengths': return (value as readonly WallLength[]).map(({ wall, length }) => `${wall} ${both(exact(length), other(length))}`).join(', ');
        case 'layer': { const { thickness } = value as { thickness: Length }; return both(exact(thickness), other(thickness)); }
        case 'mass': case 'temperature': case 'area': case 'volume': return showAmountBoth(value as number, siUnits[property.type.kind] ?? '', metricFirst);
        case 'volume-range': { const { from, to } = value as NumberRange; return `${showAmountBoth(from, 'm3', metricFirst)} to ${showAmountBoth(to, 'm3', metricFirst)}`; }
        case 'density': return showAmountBoth((value as { kgPerM3: number }).kgPerM3, 'kg/m3', metricFirst);
        default: return undefined;
    }
}
