import { brought, calculate, compareQuantities, dimensionWords, dimensions, sameDimension, toLength, type Dimension, type Quantity } from '../core/quantity.js';
import { parseLiteral } from '../core/literal.js';
import type { Length } from '../core/length.js';
import { nearestName } from '../core/nearest.js';
import { nearestWritable, showList, showLength, showRational } from '../core/show.js';
import { ofFlag, ofList, ofQuantity, ofText, ofWord, sameValue, valueWords, type Value } from '../core/value.js';
import * as ast from '../syntax/generated/ast.js';
import { textOf } from '../syntax/words.js';
import { oftenCalled } from '../vocabulary/index.js';
import { functions, isFunction } from './functions.js';
import { listNames } from './list-names.js';
import type { Reading } from './reading.js';

/**
 * Evaluates an expression in exact rationals, with the names that stand in sight. A mistake is reported at its place and gives nothing; a name whose
 * value waits for something gives nothing without a word.
 */
export function evaluateValue(expression: ast.Expr | undefined, reading: Reading): Value | undefined {
    if (!expression) return undefined;
    switch (expression.$type) {
        case 'Literal': {
            const quantity = parseLiteral(expression.text);
            if (!quantity) reading.report('figure-unreadable', expression, `${expression.text} cannot be read as a figure: a fraction has no zero below.`);
            return quantity && ofQuantity(quantity);
        }
        case 'Text': return ofText(textOf(expression));
        case 'DateLiteral': return { kind: 'date', date: expression.text };
        case 'Group': return evaluateValue(expression.inner, reading);
        case 'Word': return named(expression, reading);
        case 'Negative': return over([evaluateValue(expression.operand, reading)], ([operand]) => {
            const quantity = figureOf(operand, expression.operand, reading);
            return quantity && ofQuantity({ ...quantity, value: { n: -quantity.value.n, d: quantity.value.d } });
        });
        case 'Binary': return over([evaluateValue(expression.left, reading), evaluateValue(expression.right, reading)], ([left, right]) => binary(left, right, expression, reading));
        case 'Comparison': {
            if (isNeverSo(expression, reading) || isWithin(expression, reading)) return undefined;
            const [left, right] = sidesOf(expression, reading);
            return over([left, right], ([one, other]) => compare(one, other, expression, reading));
        }
        case 'Logic': return isHalf(expression, reading) ? undefined : settled(expression, reading) ?? over([evaluateValue(expression.left, reading), evaluateValue(expression.right, reading)], ([left, right]) => {
            const [a, b] = [flagOf(left, expression.left, reading), flagOf(right, expression.right, reading)];
            return a === undefined || b === undefined ? undefined : ofFlag(expression.operator === 'and' ? a && b : a || b);
        });
        case 'Choice': return areUnlike(expression, reading) ? undefined : evaluateValue(chosen(expression, reading), reading);
        case 'Call': return call(expression, reading);
        case 'Size':
        case 'Range':
            reading.report('part-not-expected', expression, 'A single figure with its unit stands here, such as 34 3/4".');
            return undefined;
        default: return expression satisfies never;
    }
}

/** Both sides of a comparison. A word that names nothing stands for itself beside words; beside a figure it is a name nothing answers to. */
export function sidesOf({ left, right }: ast.Comparison, reading: Reading): readonly [Value | undefined, Value | undefined] {
    const first = evaluateValue(left, reading);
    const isFigure = first !== undefined && (first.kind === 'list' ? first.items : [first]).some(({ kind }) => kind === 'quantity');
    return [first, isFigure ? evaluateValue(right, reading) : evaluateOrWord(right, reading)];
}

/** Whether a word stands behind `and` or `or` as if the name before it were said again: `wall = front or left`. */
function isHalf({ left, operator, right }: ast.Logic, reading: Reading): boolean {
    const before = ast.isLogic(left) ? left.right : left;
    if (!ast.isWord(right) || right.path.length > 0 || !ast.isComparison(before) || reading.names.find([right.ref.$refText]).kind !== 'unknown') return false;
    const whole = `${reading.textOf(before.left)} ${before.operator} ${right.ref.$refText}`;
    reading.report('part-not-expected', right, `‘${right.ref.$refText}’ alone is no condition. Say the name again: ${operator} ${whole}.`, { fixes: [reading.replace(`Write ${whole}`, right, whole)] });
    return true;
}

/** What `and` and `or` come to where one side decides alone, whatever the other waits for. */
function settled({ left, operator, right }: ast.Logic, reading: Reading): Value | undefined {
    const decides = operator === 'or';
    const quiet = reading.withNames(reading.names, true);
    const values = [left, right].map(side => evaluateValue(side, quiet));
    return values.some(value => value === undefined) && values.some(value => value?.kind === 'flag' && value.flag === decides) ? ofFlag(decides) : undefined;
}

/** The same, where a single word that names nothing stands for itself: a choice, a wall. */
export function evaluateOrWord(expression: ast.Expr | undefined, reading: Reading): Value | undefined {
    const term = expression && chosenTerm(expression, reading);
    const isPlain = ast.isWord(term) && term.path.length === 0 && reading.names.find([term.ref.$refText]).kind === 'unknown';
    return isPlain ? ofWord(term.ref.$refText) : evaluateValue(term, reading);
}

/** What stands in the brackets, or behind the `then` or `else` that holds: the term whose value counts. Nothing while the condition waits. */
export function chosenTerm(term: ast.Expr, reading: Reading): ast.Expr | undefined {
    let at: ast.Expr | undefined = term;
    while (ast.isGroup(at) || ast.isChoice(at)) at = ast.isGroup(at) ? at.inner : chosen(at, reading);
    return at;
}

/** Whether the two values of an `if` are of two kinds: then one of them is a slip, whichever is chosen. */
function areUnlike(expression: ast.Choice, reading: Reading): boolean {
    const quiet = reading.withNames(reading.names, true);
    const [yes, no] = [expression.yes, expression.no].map(branch => evaluateValue(branch, quiet));
    if (yes?.kind !== 'quantity' || no?.kind !== 'quantity') return false;
    const [a, b] = brought(yes.quantity, no.quantity);
    if (sameDimension(a.dimension, b.dimension)) return false;
    reading.report('mixed-dimensions', expression, `‘then’ gives ${valueWords(yes)} and ‘else’ ${valueWords(no)}; both must be of one kind.`);
    return true;
}

function chosen({ condition, yes, no }: ast.Choice, reading: Reading): ast.Expr | undefined {
    const flag = flagOf(evaluateValue(condition, reading), condition, reading);
    return flag === undefined ? undefined : flag ? yes : no;
}

/** Evaluates to a figure; anything else is reported. */
export function evaluate(expression: ast.Expr | undefined, reading: Reading): Quantity | undefined {
    const value = evaluateValue(expression, reading);
    return value && expression && figureOf(value, expression, reading);
}
/** Evaluates to yes or no; anything else is reported. */
export function evaluateFlag(expression: ast.Expr | undefined, reading: Reading): boolean | undefined {
    const value = evaluateValue(expression, reading);
    return value && expression && flagOf(value, expression, reading);
}

/** Applies a step to every member of a list, pairing two lists member by member; one value goes with every member. */
function over(values: readonly (Value | undefined)[], step: (values: readonly Value[]) => Value | undefined): Value | undefined {
    const all = values.flatMap(value => value ?? []);
    if (all.length < values.length) return undefined;
    const lists = all.flatMap(value => value.kind === 'list' ? [value.items.length] : []);
    if (lists.length === 0) return step(all);
    const items = Array.from({ length: Math.min(...lists) }, (_, i) => over(all.map(value => value.kind === 'list' ? value.items[i] : value), step));
    const made = items.flatMap(item => item ?? []);
    return made.length === items.length ? ofList(made) : undefined;
}

function named(word: ast.Word, reading: Reading): Value | undefined {
    const path = [word.ref.$refText, ...word.path];
    const found = reading.names.find(path);
    switch (found.kind) {
        case 'value': return found.value;
        case 'waits': return undefined;
        case 'unknown': {
            const written = path.join('.');
            const [first = '', ...rest] = path;
            const nearestFirst = rest.length > 0 ? nearestName(first, found.known.filter(name => !name.includes('.'))) : undefined;
            const said = new Map([...rest.length === 1 && found.of !== undefined ? oftenCalled(found.of) : []].map(([said, key]) => [`${first}.${said}`, `${first}.${key}`]));
            const alike = nearestPath(path, [...found.known.filter(name => name !== written), ...said.keys()]);
            const nearest = alike !== undefined ? said.get(alike) ?? alike : nearestFirst !== undefined && nearestFirst !== first ? [nearestFirst, ...rest].join('.') : undefined;
            const help = nearest ? `Is ${nearest} meant?`
                : rest.length > 0 && found.known.length > 0 ? listNames(written, [...new Set(found.known)])
                : found.known.length > 0 && found.known.length <= 12 ? `Names here are ${showList(found.known)}.`
                : isFunction(written) ? `${written} is a function and is followed by its values in brackets: ${functions[written]?.written ?? ''}.`
                : 'A figure with its unit stands here, such as 34 3/4", or a name given by let.';
            reading.report('name-in-calculation', word, `Nothing is called ‘${written}’ here. ${help}`, nearest ? { fixes: [reading.replace(`Write ${nearest}`, word, nearest)] } : {});
            return undefined;
        }
        default: return found satisfies never;
    }
}

/** The name most like the one written: alike in what stands behind the block, or, failing that, the only one that ends in the same word. */
function nearestPath([first = '', ...rest]: readonly string[], known: readonly string[]): string | undefined {
    if (rest.length === 0) return nearestName(first, known.filter(name => !name.includes('.'))) ?? onlyOne(known.filter(name => name.endsWith(`.${first}`)));
    const below = known.filter(name => name.startsWith(`${first}.`)).map(name => name.slice(first.length + 1));
    const nearest = nearestName(rest.join('.'), below) ?? onlyOne(below.filter(name => name.endsWith(`.${rest.at(-1) ?? ''}`)));
    return nearest === undefined ? undefined : `${first}.${nearest}`;
}
const onlyOne = (names: readonly string[]): string | undefined => { const all = new Set(names); return all.size === 1 ? [...all][0] : undefined; };

function binary(left: Value | undefined, right: Value | undefined, expression: ast.Binary, reading: Reading): Value | undefined {
    const [a, b] = [figureOf(left, expression.left, reading), figureOf(right, expression.right, reading)];
    if (!a || !b) return undefined;
    const result = calculate(a, expression.operator, b);
    if (result.ok) return ofQuantity(result.value);
    const what = `${dimensionWords(a.dimension)} and ${dimensionWords(b.dimension)}`;
    if (result.why === 'zero') reading.report('division-by-zero', expression.right, 'This divides by zero.');
    else if (result.why === 'temperature') reading.report('mixed-dimensions', expression, 'A temperature is a point on a scale and takes no part in a calculation. Write the figure itself.');
    else reading.report('mixed-dimensions', expression, `‘${expression.operator}’ stands between ${what}; both sides must be of one kind.`);
    return undefined;
}

/** Whether a name is compared with a word it never stands for; that is a slip of the pen and reported. */
function isNeverSo({ left, operator, right }: ast.Comparison, reading: Reading): boolean {
    if ((operator !== '=' && operator !== '!=') || !ast.isWord(left) || !(ast.isText(right) || (ast.isWord(right) && right.path.length === 0))) return false;
    const found = reading.names.find([left.ref.$refText, ...left.path]);
    const among = found.kind === 'unknown' ? undefined : found.among;
    const word = ast.isText(right) ? textOf(right) : right.ref.$refText;
    if (!among || among.includes(word) || (ast.isWord(right) && reading.names.find([word]).kind !== 'unknown')) return false;
    if (among.length === 0) {
        reading.report('value-of-another-kind', right, `${wordText(left)} is a text to read, put together when it is shown; nothing written here is ever equal to it. Compare a figure or a fact that was written.`);
        return true;
    }
    const nearest = nearestName(word, among);
    reading.report('value-of-another-kind', right, `${wordText(left)} is never ${word}: it is ${showList(among, 'or')}.${nearest ? ` Is ${nearest} meant?` : ''}`, nearest ? { fixes: [reading.replace(`Write ${nearest}`, right, nearest)] } : {});
    return true;
}

/** Whether a figure is compared with a range as if `=` asked whether it lies within; that is reported with the two comparisons that ask it. */
function isWithin(expression: ast.Comparison, reading: Reading): boolean {
    const { left, operator, right } = expression;
    if (operator !== '=' || !ast.isRange(right)) return false;
    const meant = `${reading.textOf(left)} >= ${reading.textOf(right.from)} and ${reading.textOf(left)} <= ${reading.textOf(right.to)}`;
    reading.report('part-not-expected', expression, `A range is no figure to compare with. Write both ends: ${meant}.`, { fixes: [reading.replace('Write both ends', expression, meant)] });
    return true;
}

function compare(left: Value | undefined, right: Value | undefined, expression: ast.Comparison, reading: Reading): Value | undefined {
    if (!left || !right) return undefined;
    const { operator } = expression;
    const isEquality = operator === '=' || operator === '!=';
    if (left.kind === 'quantity' && right.kind === 'quantity') {
        const [a, b] = brought(left.quantity, right.quantity);
        if (!sameDimension(a.dimension, b.dimension)) {
            reading.report('mixed-dimensions', expression, `‘${operator}’ compares ${valueWords(left)} with ${valueWords(right)}; both sides must be of one kind.${unitWanted(a, b, expression)}`);
            return undefined;
        }
        const order = compareQuantities(a, b);
        switch (operator) {
            case '=': return ofFlag(order === 0);
            case '!=': return ofFlag(order !== 0);
            case '<': return ofFlag(order < 0);
            case '<=': return ofFlag(order <= 0);
            case '>': return ofFlag(order > 0);
            case '>=': return ofFlag(order >= 0);
            default: return operator satisfies never;
        }
    }
    if (isEquality && left.kind !== 'quantity' && right.kind !== 'quantity') return ofFlag(sameValue(left, right) === (operator === '='));
    reading.report('mixed-dimensions', expression, `‘${operator}’ compares ${valueWords(left)} with ${valueWords(right)}; ${isEquality ? 'both sides must be of one kind' : 'only figures have an order'}.`);
    return undefined;
}

/** A figure without its unit beside one that has one. */
function unitWanted(left: Quantity, right: Quantity, expression: ast.Comparison): string {
    const [bare, other] = Object.keys(right.dimension).length === 0 ? [expression.right, left] : [expression.left, right];
    const sample = sampleUnits.find(([dimension]) => sameDimension(dimension, other.dimension))?.[1];
    return ast.isLiteral(bare) && sample !== undefined && /^[\d./ -]+$/.test(bare.text) ? ` Put its unit behind ${bare.text}, such as ${bare.text}${sample}.` : '';
}
const sampleUnits: readonly (readonly [Dimension, string])[] = [[dimensions.length, '"'], [dimensions.area, ' ft2'], [dimensions.volume, ' ft3'], [dimensions.power, ' kW'], [dimensions.current, ' A'], [dimensions.voltage, ' V'], [dimensions.time, ' min'], [dimensions.temperature, ' degF'], [dimensions.mass, ' lb']];

function call(expression: ast.Call, reading: Reading): Value | undefined {
    const name = wordText(expression.callee);
    const known = isFunction(name) ? functions[name] : undefined;
    if (!known) {
        const nearest = nearestName(name, Object.keys(functions));
        reading.report('name-in-calculation', expression.callee, `There is no function ${name}. Functions are ${showList(Object.keys(functions))}.`,
            nearest ? { fixes: [reading.replace(`Write ${nearest}`, expression.callee, nearest)] } : {});
        return undefined;
    }
    const count = expression.args.length;
    if (count === 0 || (!known.takesList && count !== known.parameters.length)) {
        reading.report('part-not-expected', expression, `${name} is written ${known.written}.`);
        return undefined;
    }
    const values = expression.args.map(argument => known.takesWords === true ? evaluateOrWord(argument, reading) : evaluateValue(argument, reading));
    const given = values.flatMap(value => value ?? []);
    if (given.length < count) return undefined;
    const result = known.takesList ? known.apply(given) : over(given, one => { const made = known.apply(one); return made.ok ? made.value : undefined; });
    if (result && !('ok' in result)) return result;
    if (result?.ok) return result.value;
    if (result?.waits) return undefined;
    const why = result ? result.why : (step => step.ok ? '' : step.why)(known.apply(given));
    reading.report('mixed-dimensions', expression, `${name} cannot be worked out: ${why}. It is written ${known.written}.`);
    return undefined;
}

function figureOf(value: Value | undefined, at: ast.Expr, reading: Reading): Quantity | undefined {
    if (!value) return undefined;
    if (value.kind === 'quantity') return value.quantity;
    reading.report('value-of-another-kind', at, `${show(at, reading)} is ${valueWords(value)}; a figure is wanted${value.kind === 'list' ? ', such as the max, min, sum or count of the list' : ''}.`);
    return undefined;
}
function flagOf(value: Value | undefined, at: ast.Expr, reading: Reading): boolean | undefined {
    if (!value) return undefined;
    if (value.kind === 'flag') return value.flag;
    if (value.kind === 'word' && (value.word === 'yes' || value.word === 'no')) return value.word === 'yes';
    reading.report('value-of-another-kind', at, `${show(at, reading)} is ${valueWords(value)}; a comparison or yes or no is wanted${value.kind === 'list' ? ', such as any(…) or all(…) of the list' : ''}.`);
    return undefined;
}
const show = (at: ast.Expr, reading: Reading): string => reading.textOf(at);

/** Evaluates to an exact length, or reports what it is instead. */
export function evaluateLength(expression: ast.Expr | undefined, reading: Reading, what: string): { readonly length: Length; readonly unit: string } | undefined {
    const quantity = evaluate(expression, reading);
    if (!quantity || !expression) return undefined;
    if (!expectDimension(quantity, dimensions.length, expression, reading, what)) return undefined;
    const length = toLength(quantity);
    if (length !== undefined) return { length, unit: quantity.unit };
    const { inch, metric } = nearestWritable(quantity.value);
    reading.report('length-not-exact', expression,
        `${reading.textOf(expression)} is no length a shop can set: it falls between the finest marks kept here. The nearest are ${showLength(inch)} and ${showLength(metric, 'mm')}.`);
    return undefined;
}

/** Whether a quantity has the dimension a fact wants; reports the two when not. */
export function expectDimension(quantity: Quantity, wanted: Dimension, at: ast.Expr, reading: Reading, what: string): boolean {
    if (sameDimension(quantity.dimension, wanted)) return true;
    if (Object.keys(quantity.dimension).length === 0) {
        reading.report('unit-missing', at, `${showRational(quantity.value)} has no unit; ${what} is wanted.`);
    } else {
        reading.report('value-of-another-kind', at, `${reading.textOf(at)} is ${dimensionWords(quantity.dimension)}; ${what} is wanted.`);
    }
    return false;
}

export const wordText = (word: ast.Word): string => [word.ref.$refText, ...word.path].join('.');
