import { units } from '../core/quantity.js';

/**
 * Figures as word processors, other countries and drawing boards write them: `34½"`, `34–3/4"`, `68 °F`, `36''`, `34,5 mm`, `8"×4"`. Each is brought
 * into the writing of the language where it can mean one thing only. Where it can mean two nothing is guessed: a size is never changed.
 */
export interface SeenFigure {
    readonly end: number;
    /** The figure in the writing of the language. */
    readonly written: string;
    /** Whether it carries a mark or a unit. */
    readonly hasUnit: boolean;
    /** What is unusual about it; nothing for a figure as the language writes it. */
    readonly oddity?: Oddity;
}
/** A certain one is read as `written`; an uncertain one takes the value of its fact away until somebody says what is meant. */
export type Oddity =
    | { readonly kind: 'curly' }
    | { readonly kind: 'certain' | 'comma'; readonly has: string; readonly need: string }
    | { readonly kind: 'uncertain' | 'uncertain-comma'; readonly why: string };

export const oddSpaces = '\\u00a0\\u2000-\\u200a\\u202f\\u205f\\u3000';
export const gap = `[ \\t${oddSpaces}]`;
export const dash = '[-\\u2010-\\u2015\\u2212]';
const vulgar = '[\\u00bc-\\u00be\\u2150-\\u215e]';
const slash = '[/\\u2044\\u2215]';
const fraction = `(?:\\d+${slash}\\d+|${vulgar})`;
const number = `\\d{1,3}(?:[${oddSpaces}]\\d{3})+(?![\\d/\\u2044\\u2215])|\\d+(?:[.,]\\d+)*`;
/** Whole figure, what joins, fraction. */
const core = `(?:(${fraction})|(${number})(?:(${gap}+|${dash})?(${fraction}))?)`;
const inchMark = '(?:["\\u2033\\u201c\\u201d]|\'\'|\\u2032\\u2032|\\u2019\\u2019|\\u2018\\u2018)';
const footMark = '(?:[\'\\u2032\\u2019\\u2018])';
const unitNames = [...Object.keys(units)].sort((a, b) => b.length - a.length).join('|');
const degrees = `(?:[\\u00b0\\u00ba\\u02da]${gap}?(?:([FC])(?![A-Za-z0-9_]))?|([\\u2103\\u2109])|deg(?:rees?)?\\.?${gap}*(?:(F)(?:ahrenheit)?|(C)(?:elsius)?)(?![A-Za-z0-9_]))`;
const tail = `(?:(${inchMark})|(${gap}*)(?:(${degrees})|((?:${unitNames}|[A-Z]{3})(?![A-Za-z0-9_-]))))`;

const feetFirst = new RegExp(`${core}(${footMark})(?!['\\u2032\\u2019\\u2018])(?:(${gap}|${dash})?${core}(${inchMark}))?`, 'y');
const plain = new RegExp(`${core}${tail}?`, 'y');
export const startsFigure = new RegExp(`[0-9]|${vulgar}`);

interface Context {
    /** Whether commas may divide whole values where this figure stands. */
    readonly takesList: boolean;
}

/** The figure that begins at `at`, or nothing. */
export function seeFigure(text: string, at: number, context: Context): SeenFigure | undefined {
    feetFirst.lastIndex = at;
    const feet = feetFirst.exec(text);
    if (feet) {
        const [all, , , , , , join, , , , , inch] = feet;
        const first = seeCore(feet.slice(1, 5), context);
        if (inch === undefined) return finish(all, `${first.written}'`, at, true, [...first.odd]);
        const second = seeCore(feet.slice(7, 11), context);
        return finish(all, `${first.written}'${joined(join)}${second.written}"`, at, true, [...first.odd, ...oddJoin(join, true), ...second.odd, ...oddInch(inch)]);
    }
    plain.lastIndex = at;
    const figure = plain.exec(text);
    if (!figure) return undefined;
    const [all, , , , , inch, space = '', temperature, ...rest] = figure;
    const first = seeCore(figure.slice(1, 5), context);
    if (inch !== undefined) return finish(all, `${first.written}"`, at, true, [...first.odd, ...oddInch(inch)]);
    if (temperature !== undefined) {
        const scale = rest[0] ?? rest[2] ?? rest[3] ?? (rest[1] === '\u2109' ? 'F' : rest[1] === '\u2103' ? 'C' : undefined);
        if (scale === undefined) return finish(all, first.written, at, true, [{ kind: 'uncertain', why: `does not say on which scale; a temperature is written 68 degF or 20 degC. Write the one that is meant.` }]);
        const isUsual = temperature === `deg${scale}`;
        return finish(all, `${first.written}${space === '' && isUsual ? '' : ' '}deg${scale}`, at, true,
            [...first.odd, ...(isUsual ? oddSpace(space) : [{ kind: 'certain' as const, has: temperature.startsWith('d') ? 'its unit in words' : 'a degree sign', need: `the unit is deg${scale}` }])]);
    }
    const unit = rest[4];
    if (unit !== undefined) return finish(all, `${first.written}${plainSpace(space)}${unit}`, at, true, [...first.odd, ...oddSpace(space)]);
    return finish(all, first.written, at, false, [...first.odd]);
}

function finish(seen: string, written: string, at: number, hasUnit: boolean, odd: readonly Oddity[]): SeenFigure {
    const oddity = odd.find(({ kind }) => kind === 'uncertain' || kind === 'uncertain-comma') ?? odd.find(({ kind }) => kind === 'certain' || kind === 'comma')
        ?? (/[\u2018\u2019\u201c\u201d]/.test(seen) ? { kind: 'curly' as const } : undefined);
    return { end: at + seen.length, hasUnit, written: oddity ? written : seen, ...(oddity && { oddity }) };
}

/** The whole figure and its fraction. */
function seeCore([lone, whole, join, part]: readonly (string | undefined)[], { takesList }: Context): { readonly written: string; readonly odd: readonly Oddity[] } {
    if (lone !== undefined) return { written: plainFraction(lone), odd: oddFraction(lone) };
    const odd: Oddity[] = [];
    let figure = whole ?? '';
    if (new RegExp(`[${oddSpaces}]`).test(figure)) {
        figure = figure.replace(new RegExp(`[${oddSpaces}]`, 'g'), '');
        odd.push({ kind: 'certain', has: 'a space inside', need: 'the digits of a figure stand without spaces' });
    }
    const comma = /^(\d+),(\d+)$/.exec(figure);
    if (comma) {
        const [, before = '', after = ''] = comma;
        figure = `${before}.${after}`;
        if (after.length === 3 && Number(before) !== 0 && before.length <= 3) odd.push({ kind: 'uncertain-comma', why: `can be read as ${before}${after} and as ${before}.${after}; the decimal mark is a point, and thousands are not divided. Write the one that is meant.` });
        else if (takesList) odd.push({ kind: 'uncertain-comma', why: `can be read as one figure and as two; the decimal mark is a point, and a comma between two values has a space behind it. Write ${before}.${after} or ${before}, ${after}.` });
        else odd.push({ kind: 'comma', has: 'a decimal comma', need: 'the decimal mark is a point' });
    } else if (figure.includes(',') || /\..*\./.test(figure)) {
        odd.push({ kind: 'uncertain-comma', why: 'has several points or commas; the decimal mark is one point, and thousands are not divided. Write the figure that is meant.' });
        figure = figure.replace(/[.,].*$/, '');
    }
    if (part === undefined) return { written: figure, odd };
    const [numerator = 0, denominator = 1] = plainFraction(part).split('/').map(Number);
    const isTouching = join === undefined || join === '';
    if (isTouching) return { written: `${figure}-${plainFraction(part)}`, odd: [...odd, ...oddFraction(part)] };
    return { written: `${figure}${joined(join, oddFraction(part).length > 0)}${plainFraction(part)}`, odd: [...odd, ...oddJoin(join, numerator < denominator), ...oddFraction(part)] };
}

const plainFraction = (part: string): string => part.normalize('NFKD').replace(/[\u2044\u2215]/g, '/');
function oddFraction(part: string): Oddity[] {
    if (/^\d+\/\d+$/.test(part)) return [];
    const sign = /[\u2044\u2215]/.exec(part)?.[0];
    return [{ kind: 'certain', has: sign === undefined ? `the fraction sign ${part}` : `the fraction line ${sign}`, need: 'a fraction is written with a slash' }];
}
const plainSpace = (space: string): string => space.replace(new RegExp(`[${oddSpaces}]`, 'g'), ' ');
function oddSpace(space: string): Oddity[] {
    return new RegExp(`[${oddSpaces}]`).test(space) ? [{ kind: 'certain', has: 'a no-break or thin space', need: 'a plain space is needed' }] : [];
}
/** What joins feet and inches or whole and fraction, as the language writes it. */
function joined(join: string | undefined, isHyphen = false): string {
    if (join === undefined || join === '') return '';
    return new RegExp(`^${gap}`).test(join) && !isHyphen ? plainSpace(join) : '-';
}
function oddJoin(join: string | undefined, isPart: boolean): Oddity[] {
    if (join === undefined || join === '' || join === '-') return [];
    if (join === '\u2212') return [{ kind: 'uncertain', why: 'has a minus sign inside; a hyphen without spaces joins, and one between spaces subtracts. Write the one that is meant.' }];
    if (new RegExp(`^${gap}`).test(join)) return oddSpace(join);
    return isPart ? [{ kind: 'certain', has: `the dash ${join}`, need: 'a hyphen joins the parts of a figure' }]
        : [{ kind: 'uncertain', why: `has the dash ${join}; a range is written with to, and a hyphen between spaces subtracts. Write the one that is meant.` }];
}
function oddInch(mark: string): Oddity[] {
    return mark.length === 2 ? [{ kind: 'certain', has: 'two foot marks', need: 'the inch mark is "' }] : [];
}
