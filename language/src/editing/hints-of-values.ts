import type { Analysis, JobAnalysis } from '../analyze.js';
import type { LengthUnit } from '../core/show.js';
import { sameValue, showValue, type Value } from '../core/value.js';
import type { Block, Given } from '../model/block.js';
import { givenValue } from '../model/given-value.js';
import { letsIn } from '../model/lets.js';
import * as ast from '../syntax/generated/ast.js';
import { nameOf } from '../syntax/words.js';
import { propertiesOf } from '../vocabulary/index.js';
import { offsetOf } from './name-texts.js';
import type { Hint } from './hints.js';

/** Behind a `let` and behind a value that was worked out: what it comes to. Nothing in a series, where it may come to something else for each job. */
export function valueHints(analysis: Analysis, root: ast.File, unit: LengthUnit | undefined): readonly Hint[] {
    const hints: Hint[] = [];
    const add = (term: ast.Expr | undefined, end: number | undefined, shown: string | undefined, written: string): void => {
        if (term && end !== undefined && shown !== undefined && isWorkedOut(term) && shown !== written) hints.push({ kind: 'computedValues', at: end, label: `= ${shown}`, tooltip: `${written.replace(/\s+/g, ' ')} = ${shown}`, side: 'behind' });
    };
    const jobs = analysis.jobs.filter(({ job }) => job.block.span.uri === analysis.file.uri);
    const lets = (facts: readonly ast.Fact[], seenBy: readonly JobAnalysis[], isHidden: (name: string) => boolean = () => false): void => {
        for (const { name, expression } of letsIn(facts)) if (!isHidden(name.ref.$refText)) add(expression, expression?.$cstNode?.end, agreed(name.ref.$refText, seenBy, unit), expression?.$cstNode?.text ?? '');
    };
    // A `let` at the top of the file is shown as its jobs see it, those aside that say it otherwise.
    const saidAgain = new Set(root.items.flatMap(item => [...item.body, ...item.body.flatMap(({ body }) => body)]).flatMap(fact => letsIn([fact]).map(({ name }) => name.ref.$refText)));
    lets(root.items, jobs, name => saidAgain.has(name) || jobs.some(({ job }) => job.block.base !== undefined && job.block.base.span.uri === analysis.file.uri && takesParameter(root, name)));
    for (const item of root.items) {
        if (item.key !== 'job') continue;
        const own = jobs.find(({ job }) => job.variant === undefined && job.block.span.start === offsetOf(item));
        if (!own) continue;
        lets(item.body, [own]);
        facts(item, own.job.block, own, unit, add);
        for (const variant of item.body) {
            if (variant.key !== 'variant') continue;
            const its = jobs.find(({ job }) => job.variant?.name === nameOf(variant) && job.block.span.start === offsetOf(variant));
            if (!its) continue;
            lets(variant.body, [its]);
            facts(variant, its.job.block, its, unit, add);
        }
    }
    return hints;
}
const takesParameter = (root: ast.File, name: string): boolean => root.items.some(item => item.body.some(fact => fact.key === 'parameter' && nameOf(fact) === name));

/** What a `let` comes to for all of some jobs, when they agree. */
function agreed(name: string, jobs: readonly JobAnalysis[], unit: LengthUnit | undefined): string | undefined {
    const values = jobs.flatMap(job => { const found = job.names.find([name]); return found.kind === 'value' ? [found.value] : []; });
    const [first] = values;
    return first && values.length === jobs.length && values.every(other => sameValue(first, other)) ? showValue(first, unit ?? jobs[0]?.job.unit ?? 'in') : undefined;
}

/** Facts of a text and of the blocks in it. */
function facts(text: ast.Fact, block: Block, job: JobAnalysis, unit: LengthUnit | undefined, add: (term: ast.Expr | undefined, end: number | undefined, shown: string | undefined, written: string) => void): void {
    const given = new Map<number, { readonly block: Block; readonly key: string; readonly value: Given<unknown> }>();
    const gather = (one: Block): void => {
        for (const [key, value] of Object.entries<Given<unknown>>(one.values)) if (value.fact.uri === job.job.block.span.uri) given.set(value.fact.start, { block: one, key, value });
        one.children.forEach(gather);
    };
    gather(block);
    const visit = (fact: ast.Fact): void => {
        for (const item of fact.body) {
            if (item.key === 'variant') continue;
            visit(item);
            const found = given.get(offsetOf(item));
            const term = item.phrases.flatMap(({ terms }) => terms.length > 1 ? terms.filter(one => !ast.isWord(one)) : terms).find(isWorkedOut);
            const last = item.phrases.at(-1)?.$cstNode;
            if (found && term && last) add(term, last.end, shown(found.block, found.key, found.value, unit ?? job.job.unit), item.phrases.map(({ $cstNode: at }) => at?.text ?? '').join(', '));
        }
    };
    visit(text);
}

function shown(block: Block, key: string, { value }: Given<unknown>, unit: LengthUnit): string | undefined {
    const kind = propertiesOf(block.kind).get(key)?.property.type.kind;
    if (kind === undefined || kind === 'holds') return undefined;
    const part = (name?: string): string | undefined => { const found: Value | undefined = givenValue(kind, value, name); return found && showValue(found, unit); };
    const [width, height, from, to] = ['width', 'height', 'from', 'to'].map(part);
    if (kind === 'size') return width !== undefined && height !== undefined ? `${width} x ${height}` : undefined;
    if (kind === 'length-range' || kind === 'volume-range') return from !== undefined && to !== undefined ? `${from} to ${to}` : undefined;
    return part();
}

/** Whether a term is more than a figure, a text or a word that stands for itself. */
function isWorkedOut(term: ast.Expr): boolean {
    switch (term.$type) {
        case 'Literal': case 'Text': case 'DateLiteral': return false;
        case 'Negative': return isWorkedOut(term.operand);
        case 'Group': return isWorkedOut(term.inner);
        case 'Size': return isWorkedOut(term.width) || isWorkedOut(term.height);
        case 'Range': return isWorkedOut(term.from) || isWorkedOut(term.to);
        case 'Word': case 'Binary': case 'Comparison': case 'Logic': case 'Choice': case 'Call': return true;
        default: return term satisfies never;
    }
}
