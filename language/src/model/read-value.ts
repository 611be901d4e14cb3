import { isWall, walls } from '../core/geometry.js';
import { nearestName } from '../core/nearest.js';
import { dimensions, toSi, type DimensionName, type Quantity } from '../core/quantity.js';
import { isWhole, multiply, rational, toNumber } from '../core/rational.js';
import * as ast from '../syntax/generated/ast.js';
import { textOf } from '../syntax/words.js';
import { isBlockKind } from '../vocabulary/index.js';
import type { Property } from '../vocabulary/block.js';
import type { ValueKind } from '../vocabulary/values.js';
import { chosenTerm, evaluate, evaluateFlag, evaluateLength, evaluateOrWord, evaluateValue, expectDimension, wordText } from './evaluate.js';
import { HouseCondition } from './house-condition.js';
import type { Link } from './block.js';
import { readDate } from './read-date.js';
import type { Reading } from './reading.js';
import { reportSpokenComparison } from './spoken-comparisons.js';

/** What reading one fact gave: the value in the shape its type promises, and the unit of its first figure. */
export interface ReadValue { readonly value: unknown; readonly unit?: string }

/** Everything a reader of one value kind gets. */
interface Input {
    readonly fact: ast.Fact;
    readonly key: string;
    readonly property: Property;
    readonly reading: Reading;
    readonly link: (word: ast.Word, kinds: readonly string[]) => Link | undefined;
}
type Terms = readonly (ast.Expr | undefined)[];

/** Reads the value of a property by its type; reports what is wrong, once, and gives nothing then. */
export function readValue(input: Input): ReadValue | undefined {
    const phrases = input.fact.phrases.map(phrase => phrase.terms as Terms);
    const [first] = phrases;
    if (!first || first.length === 0) {
        input.reading.report('value-missing', input.fact, `${input.key} lacks its value: ${input.property.type.words}.`);
        return undefined;
    }
    const { kind } = input.property.type;
    if (takesList(kind)) {
        const values = phrases.map(terms => readTerms(kind, terms, input));
        if (values.some(value => value === undefined)) return undefined;
        const unit = values.find(value => value?.unit)?.unit;
        return { value: values.map(value => value?.value), ...(unit && { unit }) };
    }
    const [, extra] = phrases;
    if (extra?.[0]) {
        input.reading.report('part-not-expected', extra[0], `${input.key} takes one value: ${input.property.type.words}.`);
        return undefined;
    }
    return readTerms(kind, first, input);
}

const takesList = (kind: ValueKind): boolean =>
    kind === 'lengths' || kind === 'choices' || kind === 'walls' || kind === 'wall-lengths' || kind === 'supplies' || kind === 'references' || kind === 'values';

function readTerms(kind: ValueKind, terms: Terms, input: Input): ReadValue | undefined {
    switch (kind) {
        case 'length': case 'lengths': return single(terms, input, term => lengthValue(term, input));
        case 'size': return single(terms, input, term => sizeValue(term, input));
        case 'length-range': return single(terms, input, term => rangeValue(term, input, side => lengthValue(side, input)));
        case 'volume-range': return single(terms, input, term => rangeValue(term, input, side => amountValue('volume', side, input)));
        case 'number': case 'count': case 'percent': return single(terms, input, term => numberValue(kind, term, input));
        case 'power': case 'voltage': case 'current': case 'mass': case 'temperature': case 'area': case 'volume': case 'time': case 'pressure':
            return single(terms, input, term => amountValue(kind, term, input));
        case 'text': return single(terms, input, term => textValue(term, input));
        case 'date': return single(terms, input, term => dateValue(term, input));
        case 'choice': case 'choices': return single(terms, input, term => choiceValue(term, input));
        case 'flag': return single(terms, input, term => flagValue(term, input));
        case 'walls': return single(terms, input, term => choiceValue(term, input));
        case 'reference': case 'references': return single(terms, input, term => linkValue(term, input));
        case 'place': return placeValue(terms, input);
        case 'centre-place': return centrePlaceValue(terms, input);
        case 'wall-lengths': return pair(terms, input, term => wallValue(term, input), term => lengthValue(term, input), (wall, length) => ({ wall, length }));
        case 'layer': return pair(terms, input, term => linkValue(term, input), term => lengthValue(term, input), (of, thickness) => ({ of, thickness }));
        case 'supply': case 'supplies': return pair(terms, input, term => amountValue('voltage', term, input), term => phasesValue(term, input), (volts, phases) => ({ volts, phases }));
        case 'price': return priceValue(terms, input);
        case 'tariff': return tariffValue(terms, input);
        case 'density': return densityValue(terms, input);
        case 'value': case 'values': return single(terms, input, term => { const value = evaluateOrWord(term, input.reading); return value && { value }; });
        case 'holds': return reportSpokenComparison(terms, input.reading) ? undefined : single(terms, input, term => { const value = evaluateFlag(term, input.reading); return value === undefined ? undefined : { value }; });
        case 'condition': return reportSpokenComparison(terms, input.reading) ? undefined : single(terms, input, term => ({ value: new HouseCondition(term, input.reading) }));
        default: return kind satisfies never;
    }
}

function single(terms: Terms, input: Input, read: (term: ast.Expr) => ReadValue | undefined): ReadValue | undefined {
    const [term, extra] = terms;
    if (!term) return undefined;
    if (extra) { unexpected(extra, input); return undefined; }
    return read(term);
}

function pair(terms: Terms, input: Input, readA: (term: ast.Expr) => ReadValue | undefined, readB: (term: ast.Expr) => ReadValue | undefined, make: (a: unknown, b: unknown) => unknown): ReadValue | undefined {
    const [a, b, extra] = terms;
    if (!a) return undefined;
    if (!b) { wrongKind(a, input); return undefined; }
    if (extra) { unexpected(extra, input); return undefined; }
    const first = readA(a);
    if (!first) return undefined;
    const second = readB(b);
    if (!second) return undefined;
    const unit = first.unit ?? second.unit;
    return { value: make(first.value, second.value), ...(unit && { unit }) };
}

/** Two figures in a row mean a missing comma; anything else is a word too many. */
function unexpected(extra: ast.Expr, { reading, key, property }: Input): void {
    const isFigure = ast.isLiteral(extra) && takesList(property.type.kind);
    reading.report('part-not-expected', extra, isFigure
        ? `A comma is missing before ${reading.textOf(extra)}: ${key} takes ${property.type.words}.`
        : isShouted(extra) ? `‘${reading.textOf(extra)}’ is written in small letters: ${reading.textOf(extra).toLowerCase()}.`
        : `‘${reading.textOf(extra)}’ does not belong here: ${key} takes ${property.type.words}.`);
}
/** The words of a calculation in capitals. */
const isShouted = (term: ast.Expr): boolean => ast.isWord(term) && term.path.length === 0 && /^(?:AND|OR|NOT|IF|THEN|ELSE|TO|And|Or)$/.test(term.ref.$refText);

function wrongKind(term: ast.Expr, { reading, key, property }: Input, words = property.type.words): void {
    const found = ast.isWord(term) && term.path.length === 0 ? reading.names.find([term.ref.$refText]) : undefined;
    // A word where a figure stands may be a misspelt name.
    const nearest = found?.kind === 'unknown' && ast.isWord(term) ? nearestName(term.ref.$refText, found.known.filter(name => !name.includes('.') && !isBlockKind(name))) : undefined;
    reading.report('value-of-another-kind', term, `‘${reading.textOf(term)}’ is not what ${key} takes: ${words}.${nearest ? ` Is ${nearest} meant?` : ''}`, nearest ? { fixes: [reading.replace(`Write ${nearest}`, term, nearest)] } : {});
}

function lengthValue(term: ast.Expr, input: Input): ReadValue | undefined {
    if (ast.isText(term) || ast.isDateLiteral(term) || ast.isSize(term) || ast.isRange(term) || isNameless(term, input)) { wrongKind(term, input, 'a length, such as 34 3/4" or 885 mm'); return undefined; }
    const read = evaluateLength(term, input.reading, 'a length, such as 34 3/4" or 885 mm,');
    return read && { value: read.length, unit: read.unit };
}

function sizeValue(term: ast.Expr, input: Input): ReadValue | undefined {
    if (!ast.isSize(term)) { wrongKind(term, input); return undefined; }
    const width = lengthValue(term.width, input);
    const height = lengthValue(term.height, input);
    if (!width || !height) return undefined;
    return { value: { width: width.value, height: height.value }, ...(width.unit && { unit: width.unit }) };
}

function rangeValue(term: ast.Expr, input: Input, side: (term: ast.Expr) => ReadValue | undefined): ReadValue | undefined {
    if (!ast.isRange(term)) { wrongKind(term, input); return undefined; }
    const from = side(term.from);
    const to = side(term.to);
    if (!from || !to) return undefined;
    if ((from.value as number) > (to.value as number)) {
        input.reading.report('value-out-of-range', term, `This range runs backwards: write the smaller figure first.`);
        return undefined;
    }
    return { value: { from: from.value, to: to.value }, ...(from.unit && { unit: from.unit }) };
}

/** A single word that names nothing here: then the fact is spoken of, not the name. */
const isNameless = (term: ast.Expr, { reading }: Input): boolean => ast.isWord(term) && term.path.length === 0 && reading.names.find([term.ref.$refText]).kind === 'unknown';

/**
 * The word a term comes to: the word itself when it is one of `choices`, else what its name or calculation gives.
 * @returns `waits` when that cannot be told yet; nothing when it is no word
 */
function wordFrom(term: ast.Expr, input: Input, choices: readonly string[]): string | undefined {
    if (ast.isWord(term)) {
        const own = wordText(term);
        if (choices.includes(own)) return own;
        if (isNameless(term, input)) return undefined;
    } else if (!ast.isCall(term) && !ast.isComparison(term) && !ast.isLogic(term)) return undefined;
    const value = evaluateValue(term, input.reading);
    if (!value) return 'waits';
    return value.kind === 'word' ? value.word : value.kind === 'flag' ? (value.flag ? 'yes' : 'no') : value.kind === 'text' ? value.text : undefined;
}

function figure(term: ast.Expr, input: Input): Quantity | undefined {
    if (ast.isText(term) || ast.isDateLiteral(term) || ast.isSize(term) || ast.isRange(term) || isNameless(term, input)) { wrongKind(term, input); return undefined; }
    return evaluate(term, input.reading);
}

function numberValue(kind: 'number' | 'count' | 'percent', term: ast.Expr, input: Input): ReadValue | undefined {
    const quantity = figure(term, input);
    if (!quantity || !expectDimension(quantity, dimensions.number, term, input.reading, input.property.type.words)) return undefined;
    const value = toNumber(quantity.value);
    if (kind === 'count' && !(isWhole(quantity.value) && value >= 0)) { wrongKind(term, input); return undefined; }
    if (kind === 'percent' && !(value >= 0 && value <= 100)) { wrongKind(term, input); return undefined; }
    return { value };
}

function amountValue(kind: DimensionName, term: ast.Expr, input: Input): ReadValue | undefined {
    const quantity = figure(term, input);
    if (!quantity || !expectDimension(quantity, dimensions[kind], term, input.reading, input.property.type.words)) return undefined;
    return { value: toSi(quantity), unit: quantity.unit };
}

function textValue(whole: ast.Expr, input: Input): ReadValue | undefined {
    const term = chosenTerm(whole, input.reading);
    if (!term) return undefined;
    if (ast.isText(term)) return { value: textOf(term) };
    if (ast.isWord(term) && !isNameless(term, input)) {
        const found = input.reading.names.find([term.ref.$refText, ...term.path]);
        if (found.kind === 'waits') return undefined;
        if (found.kind === 'value' && (found.value.kind === 'text' || found.value.kind === 'word')) return { value: found.value.kind === 'text' ? found.value.text : found.value.word };
    }
    const fixes = ast.isWord(term) || ast.isLiteral(term) ? [input.reading.replace('Put it in quotes', term, `"${input.reading.textOf(term)}"`)] : [];
    input.reading.report('value-of-another-kind', term, `‘${input.reading.textOf(term)}’ is not what ${input.key} takes: ${input.property.type.words}.`, { fixes });
    return undefined;
}

function dateValue(term: ast.Expr, input: Input): ReadValue | undefined {
    if (!ast.isDateLiteral(term)) { wrongKind(term, input); return undefined; }
    const value = readDate(term, input.reading);
    return value && { value };
}

function choiceValue(whole: ast.Expr, input: Input, choices = input.property.type.choices ?? []): ReadValue | undefined {
    const term = chosenTerm(whole, input.reading);
    if (!term) return undefined;
    const word = wordFrom(term, input, choices) ?? (ast.isWord(term) ? wordText(term) : undefined);
    if (word === 'waits') return undefined;
    if (word !== undefined && choices.includes(word)) return { value: word };
    const nearest = word === undefined ? undefined : nearestName(word, choices);
    input.reading.report('value-of-another-kind', term,
        `‘${input.reading.textOf(term)}’ is not what ${input.key} takes: ${input.property.type.words}.${nearest ? ` Is ${nearest} meant?` : ''}`,
        nearest ? { fixes: [input.reading.replace(`Write ${nearest}`, term, nearest)] } : {});
    return undefined;
}

function flagValue(term: ast.Expr, input: Input): ReadValue | undefined {
    const read = choiceValue(term, input);
    return read && { value: read.value === 'yes' };
}
const phasesValue = (term: ast.Expr, input: Input): ReadValue | undefined => {
    const read = choiceValue(term, input, ['single_phase', 'three_phase']);
    return read && { value: read.value === 'three_phase' ? 'three' : 'single' };
};

function wallValue(whole: ast.Expr, input: Input): ReadValue | undefined {
    const term = chosenTerm(whole, input.reading);
    if (!term) return undefined;
    const word = wordFrom(term, input, walls) ?? (ast.isWord(term) ? wordText(term) : '');
    if (word === 'waits') return undefined;
    if (isWall(word)) return { value: word };
    const nearest = nearestName(word, ['front', 'left', 'back', 'right']);
    input.reading.report('value-of-another-kind', term, `‘${input.reading.textOf(term)}’ is no wall; the walls are front, left, back and right.${nearest ? ` Is ${nearest} meant?` : ''}`,
        nearest ? { fixes: [input.reading.replace(`Write ${nearest}`, term, nearest)] } : {});
    return undefined;
}

function linkValue(whole: ast.Expr, input: Input): ReadValue | undefined {
    const term = chosenTerm(whole, input.reading);
    if (!term) return undefined;
    if (!ast.isWord(term) || term.path.length > 0) { wrongKind(term, input); return undefined; }
    const link = input.link(term, input.property.type.refersTo ?? []);
    return link && { value: link };
}

function placeValue(terms: Terms, input: Input): ReadValue | undefined {
    return pair(terms, input, term => wallValue(term, input), term => lengthValue(term, input), (wall, distance) => ({ wall, distance }));
}
function centrePlaceValue(terms: Terms, input: Input): ReadValue | undefined {
    const [from, ...rest] = terms;
    if (!from) return undefined;
    if (!ast.isWord(from) || wordText(from) !== 'from' || rest.length === 0) { wrongKind(from, input); return undefined; }
    return placeValue(rest, input);
}

function priceValue(terms: Terms, input: Input): ReadValue | undefined {
    const [money, per, unit, extra] = terms;
    if (!money) return undefined;
    if (extra) { unexpected(extra, input); return undefined; }
    const quantity = figure(money, input);
    if (!quantity) return undefined;
    const base = Object.keys(quantity.dimension).find(name => name.startsWith('money '));
    const minor = multiply(quantity.value, rational(100n));
    const word = ast.isWord(unit) ? wordText(unit) : ast.isWord(per) && !unit ? wordText(per) : undefined;
    const isWritten = unit ? ast.isWord(per) && wordText(per) === 'per' : word === 'each';
    if (!base || Object.keys(quantity.dimension).length !== 1 || !isWritten || !word || !['ft', 'm', 'each', 'ft2', 'm2'].includes(word) || !isWhole(minor)) {
        wrongKind(money, input);
        return undefined;
    }
    return { value: { minor: Number(minor.n), currency: base.slice(6), per: word } };
}

function tariffValue(terms: Terms, input: Input): ReadValue | undefined {
    const [money, per, unit, extra] = terms;
    if (!money) return undefined;
    if (extra) { unexpected(extra, input); return undefined; }
    const quantity = figure(money, input);
    if (!quantity) return undefined;
    const base = Object.keys(quantity.dimension).find(name => name.startsWith('money '));
    const isWritten = ast.isWord(per) && wordText(per) === 'per' && ast.isWord(unit) && wordText(unit) === 'kWh';
    if (!base || Object.keys(quantity.dimension).length !== 1 || !isWritten) { wrongKind(money, input); return undefined; }
    return { value: { perKwh: toNumber(quantity.value), currency: base.slice(6) } };
}

const kgPerM3From = { m3: 1, ft3: 1 / 0.028316846592 } as const;
function densityValue(terms: Terms, input: Input): ReadValue | undefined {
    const [mass, per, unit, extra] = terms;
    if (!mass) return undefined;
    if (extra) { unexpected(extra, input); return undefined; }
    const quantity = figure(mass, input);
    if (!quantity || !expectDimension(quantity, dimensions.mass, mass, input.reading, input.property.type.words)) return undefined;
    const word = ast.isWord(unit) ? wordText(unit) : '';
    if (!ast.isWord(per) || wordText(per) !== 'per' || !(word === 'm3' || word === 'ft3')) { wrongKind(mass, input); return undefined; }
    return { value: { kgPerM3: toNumber(quantity.value) * kgPerM3From[word] }, unit: quantity.unit };
}
