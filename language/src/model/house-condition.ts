import { AstUtils } from 'langium';
import { showValue, type Value } from '../core/value.js';
import type { LengthUnit } from '../core/show.js';
import * as ast from '../syntax/generated/ast.js';
import type { Condition } from '../vocabulary/values.js';
import { evaluateValue } from './evaluate.js';
import type { Names } from './names.js';
import type { LanguageFinding, Reading } from './reading.js';

/** What a condition came to for one job and one thing in it. */
export interface Judged {
    /** Whether it holds; absent when it cannot be told. */
    readonly holds: boolean | undefined;
    /** Both sides of a single comparison, as written and as they came out. */
    readonly sides?: { readonly left: Side; readonly operator: string; readonly right: Side };
    /** What is wrong with the text of the condition. */
    readonly mistakes: readonly LanguageFinding[];
}
export interface Side { readonly text: string; readonly value: Value }

/** A condition of a house rule: its expression, kept so that it can be worked out for each job. The one value of the model that holds on to its text. */
export class HouseCondition implements Condition {
    readonly text: string;
    constructor(private readonly expression: ast.Expr, private readonly reading: Reading) {
        this.text = reading.textOf(expression);
    }

    /** Every name the condition asks for, in the order written. */
    get paths(): readonly (readonly string[])[] {
        return AstUtils.streamAst(this.expression).filter(ast.isWord).filter(word => !(ast.isCall(word.$container) && word.$container.callee === word)).map(word => [word.ref.$refText, ...word.path]).toArray();
    }

    judge(names: Names): Judged {
        const reading = this.reading.withNames(this.reading.letsOver?.(names) ?? names, false);
        const value = evaluateValue(this.expression, reading);
        const { expression } = this;
        const holds = value?.kind === 'flag' ? value.flag : undefined;
        if (value && value.kind !== 'flag') reading.report('value-of-another-kind', expression, `${this.text} is no condition. A comparison stands here, such as bench.top <= 40".`);
        const sides = ast.isComparison(expression) && value ? this.sidesOf(expression, reading) : undefined;
        return { holds, mistakes: reading.findings, ...(sides && { sides }) };
    }

    private sidesOf(expression: ast.Comparison, reading: Reading): Judged['sides'] {
        const [left, right] = [expression.left, expression.right].map(side => { const value = evaluateValue(side, reading); return value && { text: reading.textOf(side), value }; });
        return left && right && { left, operator: expression.operator, right };
    }
}

/** `room.inside.height - bench.top is 40"`, or the figure alone when that is how it is written. */
export const showSide = ({ text, value }: Side, unit: LengthUnit): string => {
    const shown = showValue(value, unit);
    return text === shown ? shown : `${text} is ${shown}`;
};
