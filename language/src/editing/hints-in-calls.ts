import { AstUtils } from 'langium';
import { functions, isFunction } from '../model/functions.js';
import * as ast from '../syntax/generated/ast.js';
import { baseTermOf, nameOf, textOf } from '../syntax/words.js';
import type { Hint } from './hints.js';

/** Before each value given by place: the parameter it is given to. */
export function callHints(root: ast.File): readonly Hint[] {
    const hints: Hint[] = [];
    const add = (argument: ast.Expr, name: string, tooltip: string): void => {
        const at = argument.$cstNode;
        // A word that says it itself needs no saying.
        if (at && !(ast.isWord(argument) && argument.path.length === 0 && argument.ref.$refText === name)) hints.push({ kind: 'parameterNames', at: at.offset, label: `${name}:`, tooltip, side: 'before' });
    };
    for (const fact of root.items) {
        const base = baseTermOf(fact);
        const series = base?.word.ref.ref;
        if (!base || !series) continue;
        const parameters = parametersOf(series);
        base.args.filter(argument => !isByName(argument)).forEach((argument, i) => {
            const parameter = parameters[i];
            const name = parameter && nameOf(parameter);
            if (parameter && name !== undefined) add(argument, name, docOf(parameter) ?? '');
        });
    }
    for (const call of AstUtils.streamAllContents(root).filter(ast.isCall)) {
        const name = call.callee.ref.$refText;
        const known = isFunction(name) ? functions[name] : undefined;
        if (!known || known.takesList || known.parameters.length < 2 || isBase(call)) continue;
        call.args.forEach((argument, i) => { const parameter = known.parameters[i]; if (parameter !== undefined) add(argument, parameter, `${known.written}: ${known.doc}`); });
    }
    return hints;
}

const isByName = (argument: ast.Expr): boolean => ast.isComparison(argument) && argument.operator === '=' && ast.isWord(argument.left);
function isBase(call: ast.Call): boolean {
    const fact = AstUtils.getContainerOfType(call, ast.isFact);
    return fact !== undefined && baseTermOf(fact)?.term === call;
}

/** Parameters of a series in the order values are given: first those of what it is made from, each once. */
export function parametersOf(series: ast.Fact, seen = new Set<ast.Fact>()): readonly ast.Fact[] {
    if (seen.has(series)) return [];
    seen.add(series);
    const base = baseTermOf(series)?.word.ref.ref;
    const below = base ? parametersOf(base, seen) : [];
    return [...below, ...series.body.filter(fact => fact.key === 'parameter' && !below.some(other => nameOf(other) === nameOf(fact)))];
}
function docOf(parameter: ast.Fact): string | undefined {
    const [text] = parameter.body.find(({ key }) => key === 'doc')?.phrases[0]?.terms ?? [];
    return ast.isText(text) ? textOf(text) : undefined;
}
