import type { Edit, Finding, Fix, Related } from '../../core/finding.js';
import { extent, type Wall } from '../../core/geometry.js';
import { half, inches, plus, type Length } from '../../core/length.js';
import { showLength, showList, showNumber, type LengthUnit } from '../../core/show.js';
import type { Span } from '../../core/span.js';
import type { JudgedHeater } from '../../assembly/heater-judgement.js';
import type { Block, Given } from '../../model/block.js';
import type { Place } from '../../vocabulary/values.js';
import { exactText } from '../fixes.js';
import type { RuleInput } from '../rule.js';

/** Common practice is no figure to the millimetre: within an inch of it nobody is told. */
export const nearEnough = inches(1);

/** Findings about every heater that the engines judged, in the order of the job. */
export function* heaterFindings({ results }: RuleInput, make: (heater: JudgedHeater) => Iterable<Finding | undefined> | Finding | undefined): Generator<Finding> {
    for (const heater of results.heaters) {
        const made = make(heater);
        for (const finding of made && Symbol.iterator in made ? made : [made]) if (finding) yield finding;
    }
}

/** A block that may have a place along its wall. */
interface Placeable { readonly values: { readonly from?: Given<Place>; readonly centre?: Given<Place> }; readonly head: Span }
/** The text that says where a thing stands along its wall; its header when nothing does. */
export const placeSpan = ({ values, head }: Placeable): Span => (values.from ?? values.centre)?.span ?? head;
/** The text that names the model of a heater. */
export const modelSpan = ({ block }: Pick<JudgedHeater, 'block'>): Span => block.values.model?.span ?? block.head;

/** Whether a fact may be called missing: everything in the block was read and it is not there. */
export const lacks = (block: Pick<Block, 'isWhole' | 'written'>, ...keys: readonly string[]): boolean => block.isWhole && !keys.some(key => block.written.has(key));

/** A length as text that reads back as exactly that length, in the designer's unit when it can; with ≈ where no mark shows it. */
export const writable = (length: Length, unit: LengthUnit): string => exactText(length, unit) ?? showLength(length, unit);

/** The edit that puts a thing of `width` with its near side `near` off a wall, written the way its place is written now. */
export function placeEdits({ values }: Placeable, from: Wall, near: Length, width: Length, unit: LengthUnit): readonly Edit[] {
    if (values.from) return [{ span: values.from.span, newText: `${from} ${writable(near, unit)}` }];
    return values.centre ? [{ span: values.centre.span, newText: `from ${from} ${writable(plus(near, half(width)), unit)}` }] : [];
}

/** Moves the heater to the nearest position that clears everything a move can clear. */
export function moveToClear({ block, name, heater, range }: JudgedHeater, { job }: RuleInput): readonly Fix[] {
    if (!heater || range?.nearest === undefined) return [];
    return reviewFix(`Move heater ${name} to ${writable(range.nearest, job.unit)} from the ${range.from} wall`, placeEdits(block, range.from, range.nearest, extent(heater.onWall.u), job.unit));
}

/** Where the near side of the heater clears what a move along its wall can clear. */
export function showPositions({ heater, range }: JudgedHeater, { job }: RuleInput): string {
    if (!heater || !range) return '';
    if (range.ranges.length === 0) return `No position along the ${heater.wall} wall clears everything; move what stands in the way or choose another wall.`;
    const stretches = range.ranges.map(({ from, to }) => from === to ? writable(from, job.unit) : `${writable(from, job.unit)} to ${writable(to, job.unit)}`);
    return `Its near side clears ${range.never.length > 0 ? 'everything else' : 'everything'} at ${showList(stretches, 'or')} from the ${range.from} wall.`;
}

/** A fact put at the end of a block that stands in a job. */
export const addFact = (block: Pick<Block, 'insertAt'>, key: string, value: string): readonly Edit[] =>
    block.insertAt ? [{ span: block.insertAt, newText: `\n        ${key.padEnd(9)} ${value}` }] : [];
/** A block put after another one of the job. */
export const addBlockAfter = (block: Pick<Block, 'span'>, text: string): readonly Edit[] => [{ span: { ...block.span, start: block.span.end }, newText: `\n    ${text}` }];
/** A fix someone has to agree with; none where there is nothing to write, or a length no mark shows. */
export const reviewFix = (title: string, edits: readonly Edit[]): readonly Fix[] =>
    edits.length === 0 || edits.some(({ newText }) => newText.includes('≈')) ? [] : [{ title, safety: 'review', edits }];

/** The entry of the catalogue, as a place to look. */
export const inCatalogue = ({ model, manual }: Pick<JudgedHeater, 'model' | 'manual'>, span: Span | undefined, message = `What ${manual.title} states is written here.`): readonly Related[] => [{ at: span ?? model.head, message }];

const cubicMetresPerCubicFoot = 0.3048 ** 3;
/** A volume in the unit its range is written in, with as many decimals as tell it from the range's ends. */
export function volumeText(cubicMetres: number, unit: string | undefined, apartFrom: readonly number[] = [], least?: number): string {
    const isCubicFeet = unit === 'ft3';
    const value = (m3: number): number => isCubicFeet ? m3 / cubicMetresPerCubicFoot : m3;
    const places = [least ?? (isCubicFeet ? 1 : 2), 3, 6].find(count => apartFrom.every(end => showNumber(value(end), count) !== showNumber(value(cubicMetres), count))) ?? 6;
    return `${showNumber(value(cubicMetres), places)} ${isCubicFeet ? 'ft3' : 'm3'}`;
}
