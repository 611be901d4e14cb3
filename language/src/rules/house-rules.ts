import type { ReportedFinding } from '../core/finding.js';
import { parseLiteral } from '../core/literal.js';
import { spoken, type LengthUnit } from '../core/show.js';
import type { Span } from '../core/span.js';
import { sameValue, showValue, toFigure, type Value } from '../core/value.js';
import type { FactsTree } from '../facts/facts-tree.js';
import { lookUp } from '../facts/look-up.js';
import { sampleNames } from '../facts/sample-names.js';
import { showBlock, type Block, type Given } from '../model/block.js';
import { HouseCondition, showSide, type Judged, type Side } from '../model/house-condition.js';
import type { Job } from '../model/job.js';
import type { Names } from '../model/names.js';
import { definitionOf, isBlockKind, propertiesOf } from '../vocabulary/index.js';

/**
 * Asks the house rules of a job. A finding looks like a built-in one: the thing, both sides with their values, where the requirement comes from. A rule
 * whose own text is wrong is told so at that text where it stands in the job's file; elsewhere its own file tells it.
 * @param isKnown whether everything in the job could be read; what is asked of all blocks of a kind is not judged by those that could
 * @param isSound whether the job has no error; one that has is not told besides what could not be asked of it
 */
export function judgeHouseRules(rules: readonly Block<'rule'>[], job: Job, facts: FactsTree, { isKnown, isSound }: { readonly isKnown: boolean; readonly isSound: boolean }): readonly ReportedFinding[] {
    return rules.flatMap(rule => rule.isWhole && (isKnown || !speaksOfAll(rule)) ? judgeRule(rule, job, facts, isKnown && isSound) : []);
}

/** Whether a rule asks of all blocks of a kind together. */
function speaksOfAll({ values: { each, when, require } }: Block<'rule'>): boolean {
    return [when?.value, require?.value].some(condition => condition instanceof HouseCondition
        && condition.paths.some(([first = '']) => first !== each?.value && isBlockKind(first) && definitionOf(first).isRepeatable));
}

/** What is wrong with the text of a house rule whatever the job: names that do not exist, comparisons of unlike things. */
export function checkHouseRule({ values: { each, when, require }, isWhole }: Block<'rule'>): readonly ReportedFinding[] {
    if (!isWhole) return [];
    const names = sampleNames(each?.value);
    return [when?.value, require?.value].flatMap(condition => condition instanceof HouseCondition ? condition.judge(names).mistakes : [])
        // Sample figures are all one, so a difference of two may well be zero.
        .filter(({ rule }) => rule !== 'division-by-zero').map(mistake => ({ ...mistake, severity: 'error' }));
}

function judgeRule(rule: Block<'rule'>, job: Job, facts: FactsTree, tellsUnasked: boolean): readonly ReportedFinding[] {
    const { each, when, require, because, severity } = rule.values;
    if (!(require?.value instanceof HouseCondition) || !rule.name || !because) return [];
    const condition = require.value;
    const things: readonly (Block | undefined)[] = each ? job.block.children.filter(block => block.kind === each.value) : [undefined];
    const findings: ReportedFinding[] = [];
    const mistakes = new Map<string, ReportedFinding>();
    const judge = (asked: HouseCondition, names: Names): Judged => {
        const judged = asked.judge(names);
        for (const mistake of judged.mistakes) mistakes.set(`${mistake.rule} ${mistake.at.start} ${mistake.at.end}`, { ...mistake, severity: 'error' });
        return judged;
    };
    const unasked: { readonly thing: Block | undefined; readonly why: string }[] = [];
    for (const thing of things) {
        const lacking: string[] = [];
        const none: string[] = [];
        const names: Names = { find: path => { const found = lookUp(job, facts, path, thing); if (found.kind !== 'value' && path.length > 1) lacking.push(path.join('.')); else if (found.kind === 'value' && found.value.kind === 'list' && found.value.items.length === 0) none.push(path[0] ?? ''); return found; } };
        const applies = when?.value instanceof HouseCondition ? judge(when.value, names).holds : true;
        const judged = applies === true ? judge(condition, names) : undefined;
        if (applies === undefined || (judged && judged.holds === undefined)) unasked.push({ thing, why: lacking[0] !== undefined ? `: ${lacking[0]} has no value there` : none[0] !== undefined ? `: there is no ${spoken(none[0])} to ask of` : '' });
        if (judged?.holds !== false) continue;
        const failing = whatFails(condition, names, job, facts);
        const [one, more] = failing.parts;
        const sides = more ? undefined : one?.sides;
        findings.push({
            rule: rule.name.value, severity: severity?.value ?? 'warning',
            at: one ? placeOf(one.condition, job, one.thing ?? thing, facts, sides?.left.value) : placeOf(condition, job, thing, facts), message: message(rule, failing, thing, because.value, job.unit),
            citation: { kind: 'house', text: because.value }, subject: thing?.name?.value ?? thing?.kind ?? 'room',
            ...(sides && { measured: toFigure(sides.left.value, job.unit), required: toFigure(sides.right.value, job.unit) }),
            related: [{ at: rule.head, message: `House rule${rule.title ? `: ${rule.title.value}` : ` ${rule.name.value}`}.` }],
        });
    }
    const ofText = mistakes.size > 0 || tellsUnasked ? checkHouseRule(rule) : [];
    const own = [...mistakes.values()].filter(({ rule: id, at }) => at.uri === job.block.span.uri && !ofText.some(other => other.rule === id && other.at.start === at.start && other.at.end === at.end));
    const [first, ...others] = tellsUnasked && job.isWhole && own.length === 0 && ofText.length === 0 ? unasked : [];
    if (first) {
        const of = first.thing ? ` of ${showBlock(first.thing)}${others.length > 0 ? ` and ${others.length} more` : ''}` : '';
        findings.push({
            rule: rule.name.value, severity: 'info', at: (first.thing ?? job.block).head, citation: { kind: 'house', text: because.value }, subject: first.thing?.name?.value ?? first.thing?.kind ?? 'room',
            message: `House rule ${rule.name.value} could not be asked${of}${first.why}. Write what it needs, or say in the rule by when where it is asked.`,
            related: [{ at: rule.head, message: 'The house rule is here.' }],
        });
    }
    return [...findings, ...own];
}

const demands: Readonly<Record<string, string>> = { '>=': 'at least ', '>': 'more than ', '<=': 'at most ', '<': 'less than ', '=': '', '!=': 'anything but ' };

/** One thing that is not as a condition wants it. */
interface Failed extends Pick<Judged, 'sides' | 'fact'> { readonly condition: HouseCondition; readonly thing?: Block }

/** What makes a condition fail, down to single comparisons and, of what is asked of all blocks of a kind, down to the blocks. */
function whatFails(condition: HouseCondition, names: Names, job: Job, facts: FactsTree): { readonly joinedBy: 'and' | 'or'; readonly parts: readonly Failed[] } {
    const { joinedBy, parts } = condition.failing(names);
    return { joinedBy, parts: parts.flatMap(({ condition: part, each }): readonly Failed[] => {
        if (each === undefined) {
            const { sides, fact } = part.judge(names);
            return [{ condition: part, ...(sides && { sides }), ...(fact && { fact }) }];
        }
        return job.block.children.filter(({ kind }) => kind === each).flatMap(thing => {
            const ofThing: Names = { find: path => path[0] === each ? lookUp(job, facts, path, thing) : names.find(path) };
            const { holds } = part.judge(ofThing);
            if (holds !== false) return [];
            const inner = whatFails(part, ofThing, job, facts);
            return inner.joinedBy === 'or' ? [{ condition: part, thing }] : inner.parts.map(one => ({ ...one, thing: one.thing ?? thing }));
        });
    }) };
}

function message(rule: Block<'rule'>, { joinedBy, parts }: ReturnType<typeof whatFails>, thing: Block | undefined, because: string, ofJob: LengthUnit): string {
    const title = rule.title?.value ?? rule.name?.value ?? 'House rule';
    const between = parts.length > 1 ? ',' : ';';
    const told = parts.map(({ condition, sides, fact, thing: one }) => {
        const of = one ? `${showBlock(one)}: ` : '';
        if (!sides) return fact ? `${of}${showSide(fact, ofJob)}` : `${of}${condition.text} does not hold`;
        const unit = unitWritten(sides.right, ofJob);
        const right = showValue(sides.right.value, unit);
        const from = sides.right.text === right ? '' : `, ${sides.right.text},`;
        return `${of}${showSide(sides.left, unit)}${between} ${demands[sides.operator] ?? ''}${right}${from} is needed`;
    });
    return `${thing ? `${title}, ${showBlock(thing)}` : title}: ${told.join(joinedBy === 'or' ? ', or ' : '; ')} (${because}).`;
}

/** A requirement written in feet is answered in feet and inches, one in millimetres in millimetres. */
function unitWritten({ text, value }: Side, ofJob: LengthUnit): LengthUnit {
    const unit = value.kind === 'quantity' && parseLiteral(text) ? value.quantity.unit : '';
    return unit === 'ft' || unit === 'ft_in' ? 'ft_in' : unit === 'in' || unit === 'mm' || unit === 'cm' || unit === 'm' ? unit : ofJob;
}

/** The text the designer would change: the first thing given that the condition speaks of, in the block it is about. */
function placeOf(condition: HouseCondition, job: Job, thing: Block | undefined, facts: FactsTree, measured?: Value): Span {
    for (const [first, key, ...rest] of condition.paths) {
        if (key === undefined) continue;
        // Of what is asked of a list, the one that gave the figure: the lowest bench of min(bench.top).
        const isSource = (block: Block): boolean => { const found = block.kind === first && measured ? lookUp(job, facts, [first, key, ...rest], block) : undefined; return found?.kind === 'value' && measured !== undefined && sameValue(found.value, measured); };
        const block = thing?.kind === first ? thing : job.block.children.find(child => child.name?.value === first || (!child.name && child.kind === first)) ?? (thing ? undefined : job.block.children.find(isSource));
        if (!block || (thing && block !== thing)) continue;
        const known = propertiesOf(block.kind).get(key);
        const given = known && (block.values as Readonly<Record<string, Given<unknown>>>)[known.key];
        if (given) return given.span;
    }
    return (thing ?? job.block).head;
}
