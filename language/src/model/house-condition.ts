import { AstUtils } from 'langium';
import { brought } from '../core/quantity.js';
import { ofFlag, showValue, type Value } from '../core/value.js';
import type { LengthUnit } from '../core/show.js';
import * as ast from '../syntax/generated/ast.js';
import type { Condition } from '../vocabulary/values.js';
import { definitionOf, isBlockKind } from '../vocabulary/index.js';
import { evaluateValue, sidesOf, wordText } from './evaluate.js';
import type { Names } from './names.js';
import type { LanguageFinding, Reading } from './reading.js';

/** What a condition came to for one job and one thing in it. */
export interface Judged {
    /** Whether it holds; absent when it cannot be told. */
    readonly holds: boolean | undefined;
    /** What a condition that is one fact came to. */
    readonly fact?: Side;
    /** Both sides of a single comparison, as written and as they came out. */
    readonly sides?: { readonly left: Side; readonly operator: string; readonly right: Side };
    /** What is wrong with the text of the condition. */
    readonly mistakes: readonly LanguageFinding[];
}
/** A part of a condition that does not hold and makes the whole fail; with `each` it is asked of every block of that kind. */
export interface FailingPart { readonly condition: HouseCondition; readonly each?: string }
/** The parts, and whether one of them would do or all are needed. */
export interface Failing { readonly joinedBy: 'and' | 'or'; readonly parts: readonly FailingPart[] }
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
        const seen = this.reading.letsOver?.(names) ?? names;
        const reading = this.reading.withNames(seen, false);
        const value = evaluateValue(this.expression, reading);
        const { expression } = this;
        const holds = value?.kind === 'flag' ? value.flag : undefined;
        if (value?.kind === 'list') reading.report('value-of-another-kind', expression, `${this.text} speaks of all at once and gives a list. Write ${this.listed ? `each ${this.listed} in the rule, ` : ''}all(${this.text}) or any(${this.text}).`);
        else if (value && value.kind !== 'flag') reading.report('value-of-another-kind', expression, `${this.text} is no condition. A comparison stands here, such as bench.top <= 40".`);
        const sides = ast.isComparison(expression) && value ? this.shownSides(expression, seen) : undefined;
        const fact = ast.isCall(expression) && wordText(expression.callee) === 'not' ? expression.args[0] : expression;
        const said = ast.isWord(fact) && holds !== undefined ? { text: this.reading.textOf(fact), value: ofFlag(fact === expression ? holds : !holds) } : undefined;
        return { holds, mistakes: reading.findings, ...(sides && { sides }), ...(said && { fact: said }) };
    }

    /** What of a condition that does not hold makes it fail: the halves of an `and` that do not, both halves of an `or`, what `all(…)` asks of each. */
    failing(names: Names): Failing {
        const reading = this.reading.withNames(this.reading.letsOver?.(names) ?? names, true);
        const of = (expression: ast.Expr, joinedBy: 'and' | 'or'): readonly FailingPart[] => {
            if (ast.isGroup(expression)) return of(expression.inner, joinedBy);
            if (ast.isLogic(expression) && expression.operator === joinedBy) {
                return [expression.left, expression.right].flatMap(side => { const value = evaluateValue(side, reading); return value?.kind === 'flag' && !value.flag ? of(side, joinedBy) : []; });
            }
            const condition = expression === this.expression ? this : new HouseCondition(expression, this.reading);
            const [asked, ...more] = ast.isCall(expression) && wordText(expression.callee) === 'all' ? expression.args : [];
            const inner = asked && more.length === 0 ? new HouseCondition(asked, this.reading) : undefined;
            return [inner?.listed === undefined ? { condition } : { condition: inner, each: inner.listed }];
        };
        const whole = this.innermost;
        const joinedBy = ast.isLogic(whole) ? whole.operator : 'and';
        return { joinedBy, parts: of(whole, joinedBy) };
    }
    private get innermost(): ast.Expr { let at = this.expression; while (ast.isGroup(at)) at = at.inner; return at; }

    /** The kind the condition speaks of as a whole, when there is one. */
    private get listed(): string | undefined { return this.paths.map(([first]) => first).find(first => first !== undefined && isBlockKind(first) && definitionOf(first).isRepeatable); }

    private shownSides(expression: ast.Comparison, names: Names): Judged['sides'] {
        const quiet = this.reading.withNames(names, true);
        const [left, right] = sidesOf(expression, quiet);
        // Two figures of one kind are shown in one unit; the sum of nothing takes the other's kind. Lengths have the unit of the whole message.
        const alike = left?.kind === 'quantity' && right?.kind === 'quantity' && right.quantity.dimension.length !== 1 ? { ...right, quantity: { ...brought(left.quantity, right.quantity)[1], unit: left.quantity.unit } } : right;
        const first = left?.kind === 'quantity' && right?.kind === 'quantity' ? { ...left, quantity: brought(left.quantity, right.quantity)[0] } : left;
        return first && alike && { left: { text: quiet.textOf(expression.left), value: first }, operator: expression.operator, right: { text: quiet.textOf(expression.right), value: alike } };
    }
}

/** `room.inside.height - bench.top is 40"`, or the figure alone when that is how it is written. */
export const showSide = ({ text, value }: Side, unit: LengthUnit): string => {
    const shown = showValue(value, unit);
    return text === shown ? shown : `${text} is ${shown}`;
};
