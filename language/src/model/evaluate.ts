import { calculate, dimensionWords, dimensions, sameDimension, toLength, type Dimension, type Quantity } from '../core/quantity.js';
import { parseLiteral } from '../core/literal.js';
import type { Length } from '../core/length.js';
import { nearestWritable, showLength, showRational } from '../core/show.js';
import * as ast from '../syntax/generated/ast.js';
import type { Reading } from './reading.js';

/** Evaluates a calculation in exact rationals. A mistake is reported at its place and gives nothing. */
export function evaluate(expression: ast.Expr | undefined, reading: Reading): Quantity | undefined {
    if (!expression) return undefined;
    switch (expression.$type) {
        case 'Literal': {
            const quantity = parseLiteral(expression.text);
            if (!quantity) reading.report('figure-unreadable', expression, `${expression.text} cannot be read as a figure: a fraction has no zero below.`);
            return quantity;
        }
        case 'Group': return evaluate(expression.inner, reading);
        case 'Negative': {
            const operand = evaluate(expression.operand, reading);
            return operand && { ...operand, value: { n: -operand.value.n, d: operand.value.d } };
        }
        case 'Binary': {
            const left = evaluate(expression.left, reading);
            const right = evaluate(expression.right, reading);
            if (!left || !right) return undefined;
            const result = calculate(left, expression.operator, right);
            if (result.ok) return result.value;
            const what = `${dimensionWords(left.dimension)} and ${dimensionWords(right.dimension)}`;
            if (result.why === 'zero') reading.report('division-by-zero', expression.right, 'This divides by zero.');
            else if (result.why === 'temperature') reading.report('mixed-dimensions', expression, 'A temperature is a point on a scale and takes no part in a calculation. Write the figure itself.');
            else reading.report('mixed-dimensions', expression, `‘${expression.operator}’ stands between ${what}; both sides must be of one kind.`);
            return undefined;
        }
        case 'Word':
            reading.report('name-in-calculation', expression, `‘${wordText(expression)}’ is a name; a figure with its unit stands here, such as 34 3/4".`);
            return undefined;
        case 'Size':
        case 'Range':
        case 'Text':
        case 'DateLiteral':
            reading.report('part-not-expected', expression, 'A single figure with its unit stands here, such as 34 3/4".');
            return undefined;
        default: return expression satisfies never;
    }
}

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
